package shaftwright.cli;

import shaftwright.contract.Contract;
import shaftwright.reading.ScenarioOutcome;

/**
 * A scenario that the command line names.
 *
 * @param number its zero-based column, below the most that a workbook may have
 */
record ScenarioLetter(int number) {
    /** Reads a letter of either case. */
    static ScenarioLetter parse(String typed) {
        return new ScenarioLetter(
                ScenarioOutcome.number(typed)
                        .orElseThrow(
                                () ->
                                        TypedWords.refused(
                                                typed,
                                                "a letter from A to "
                                                        + ScenarioOutcome.letter(
                                                                Contract.MOST_SCENARIOS - 1))));
    }

    /** The capital letter. */
    @Override
    public String toString() {
        return ScenarioOutcome.letter(number);
    }
}
