package shaftwright.workbook;

import java.util.List;

/**
 * Something that a builder may change, and what it does for a scenario.
 *
 * @param words what is changed, in the workbook's unit
 * @param gain what it adds to the length window of the tighter side, mm
 * @param cost what it adds to the cost of the vehicle's set, in the builder's currency
 * @param fits whether the scenario fits then
 * @param changes the inputs that say so
 */
public record Lever(String words, double gain, double cost, boolean fits, List<Change> changes) {
    public Lever {
        changes = List.copyOf(changes);
    }
}
