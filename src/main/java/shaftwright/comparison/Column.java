package shaftwright.comparison;

import shaftwright.reading.ScenarioOutcome;

/**
 * One column of a comparison.
 *
 * @param book number of the sizing workbook in the comparison, from 1
 * @param scenario zero-based scenario there
 */
public record Column(int book, int scenario) {
    public Column {
        if (book < 1 || scenario < 0) {
            throw new IllegalArgumentException(
                    "not a column: book " + book + ", scenario " + scenario);
        }
    }

    /** Letter of the scenario in its own workbook. */
    public String letter() {
        return ScenarioOutcome.letter(scenario);
    }

    /** As charts and headings call it: {@code 2B}. */
    public String key() {
        return book + letter();
    }
}
