package shaftwright.reading;

import shaftwright.contract.Contract;
import shaftwright.contract.Input;

/**
 * An input that is something else for a try.
 *
 * @param name of the input
 * @param place scenario or table row, zero-based
 * @param number mm, rad or plain; NaN for none
 * @param text as it would be typed; empty for a number
 */
public record Change(String name, int place, double number, String text) {
    static Change number(String name, int place, double number) {
        return new Change(name, place, number, "");
    }

    static Change text(String name, int place, String text) {
        return new Change(name, place, Double.NaN, text);
    }

    public Input input() {
        return Contract.input(name);
    }

    /** Whether it is in a table that scenarios share. */
    boolean ofParts() {
        return !input().grid().perScenario();
    }
}
