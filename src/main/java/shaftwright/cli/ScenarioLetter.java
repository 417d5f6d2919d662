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
        int number = ScenarioOutcome.number(typed);
        if (number < 0) {
            throw TypedWords.refused(
                    typed,
                    "a letter from A to " + ScenarioOutcome.letter(Contract.MOST_SCENARIOS - 1));
        }
        return new ScenarioLetter(number);
    }

    /** The capital letter. */
    @Override
    public String toString() {
        return ScenarioOutcome.letter(number);
    }
}
