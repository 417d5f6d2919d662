package shaftwright.study;

import java.util.Optional;
import shaftwright.shaft.Binding;
import shaftwright.shaft.ShaftEnd;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.TravelStop;

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
     * @param stop what ends it
     * @param at travel, mm, positive in bump
     * @param wanted travel, mm, positive in bump
     */
    public record EarlyEnd(TravelStop stop, double at, double wanted) {
        private static EarlyEnd of(TravelEnds.End end, double wanted) {
            return new EarlyEnd(end.stop(), end.travel(), wanted);
        }
    }

    /** Ground clearance at full bump, and what is wanted. */
    public record Clearance(double atBump, double wanted) {}

    /** These with what is left of the ground clearance, where that is too little. */
    TravelFacts with(Optional<Clearance> tooLow) {
        return new TravelFacts(bump, droop, tooLow, innerBoot, outerBoot);
    }

    /** These with what dampers, straps and tubes make of a wanted travel, mm. */
    TravelFacts with(SideStops stops, double wantedBump, double wantedDroop) {
        return new TravelFacts(
                stops.earlyUp().map(end -> EarlyEnd.of(end, wantedBump)),
                stops.earlyDown().map(end -> EarlyEnd.of(end, wantedDroop)),
                ground,
                stops.gap(ShaftEnd.INNER).map(TravelFacts::binding),
                stops.gap(ShaftEnd.OUTER).map(TravelFacts::binding));
    }

    private static Binding binding(SideStops.Gap gap) {
        return new Binding(gap.least(), 0, gap.leastAt());
    }

    static boolean touches(Optional<Binding> gap) {
        return gap.isPresent() && gap.get().value() < 0;
    }
}
