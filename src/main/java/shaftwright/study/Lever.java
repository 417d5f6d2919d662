package shaftwright.study;

import java.util.List;
import java.util.stream.Collectors;
import shaftwright.build.Scenario;
import shaftwright.units.LengthUnit;

/**
 * Something that a builder may change, and what it does for a scenario.
 *
 * @param changes one, or two at once
 * @param scenario with them
 * @param gain what they add to the length window of the tighter side, mm
 * @param cost what they add to the cost of the vehicle's set, the work by the builder's own prices
 *     included; not known where any of it is not priced
 * @param fits whether the scenario fits then
 */
public record Lever(
        List<Modification> changes, Scenario scenario, double gain, Price cost, boolean fits) {
    public Lever {
        changes = List.copyOf(changes);
    }

    /** What is changed, amounts in steps of the shop's scale. */
    public String words(LengthUnit unit) {
        return changes.stream()
                .map(change -> change.words(unit))
                .collect(Collectors.joining("; and "));
    }
}
