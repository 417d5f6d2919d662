package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the verdicts on both sides of a scenario have in common.
 *
 * @param strength what the parts carry
 * @param clearanceAtBump ground clearance at full bump, mm; empty while it is not known
 * @param width overall width and the builder's limit, when both are known
 */
public record ScenarioFacts(
        StrengthFacts strength, OptionalDouble clearanceAtBump, Optional<SideFacts.Width> width) {
    /**
     * Gathers them.
     *
     * @param left the side that the ground clearance is told of; empty while it is not set up
     * @param overallWidth at the tyres, mm; empty while it is not known
     * @param widthLimit mm; empty when the builder has none
     */
    public static ScenarioFacts of(
            StrengthStudy strength,
            Optional<SideStudy> left,
            OptionalDouble overallWidth,
            OptionalDouble widthLimit) {
        return new ScenarioFacts(
                strength.facts(),
                left.map(SideStudy::clearanceAtBump).orElse(OptionalDouble.empty()),
                overallWidth.isEmpty() || widthLimit.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                new SideFacts.Width(
                                        overallWidth.getAsDouble(), widthLimit.getAsDouble())));
    }
}
