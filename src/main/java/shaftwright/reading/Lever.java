package shaftwright.reading;

import java.util.List;
import shaftwright.study.Price;

/**
 * Something that a builder may change, and what it does for a scenario.
 *
 * @param words what is changed, in the workbook's unit
 * @param gain what it adds to the length window of the tighter side, mm
 * @param cost what it adds to the cost of the vehicle's set, the work by the builder's own prices
 *     included; not known where any of it is not priced
 * @param fits whether the scenario fits then
 * @param changes the inputs that say so
 */
public record Lever(String words, double gain, Price cost, boolean fits, List<Change> changes) {
    public Lever {
        changes = List.copyOf(changes);
    }
}
