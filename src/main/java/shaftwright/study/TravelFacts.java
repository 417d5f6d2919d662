package shaftwright.study;

import java.util.Optional;
import shaftwright.shaft.Binding;

/**
 * What else than the shaft ends the travel that is wanted; mm.
 *
 * @param bump what ends bump first, when it does so before the wanted travel
 * @param droop the same of droop
 * @param ground ground clearance at full bump that is less than wanted
 * @param innerBoot gap of the inner boot to the nearest tube, when both are known
 * @param outerBoot gap of the outer boot
 */
public record TravelFacts(
        Optional<EarlyEnd> bump,
        Optional<EarlyEnd> droop,
        Optional<Clearance> ground,
        Optional<Binding> innerBoot,
        Optional<Binding> outerBoot) {
    /** Nothing is known of dampers, ground or tubes. */
    public static final TravelFacts FREE =
            new TravelFacts(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /**
     * A travel that ends before the wanted one.
     *
     * @param stop what ends it, such as "strap tight"
     * @param at travel, mm, positive in bump
     * @param wanted travel, mm, positive in bump
     */
    public record EarlyEnd(String stop, double at, double wanted) {}

    /** Ground clearance at full bump, and what is wanted. */
    public record Clearance(double atBump, double wanted) {}

    static boolean touches(Optional<Binding> gap) {
        return gap.isPresent() && gap.get().value() < 0;
    }
}
