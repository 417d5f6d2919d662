package shaftwright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shaftwright.build.BumpRule;
import shaftwright.build.RatedJoint;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.WheelTravel;
import shaftwright.shaft.Blank;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;

/**
 * Every pairing of the joints that can be had, with the best blank of the list, at several hub
 * shifts and shares of the scenario's travel; those that fit and that no other beats in cost,
 * travel and least slack at once.
 */
public final class TradeOffSearch {
    /** Slack from which on more is no better, mm: own assumption. */
    public static final double AMPLE_SLACK = 10;

    private static final int SHIFTS = 7;
    private static final double SHIFT_STEP = 12.7;
    private static final double[] SHARES = {1, 0.9, 0.8, 0.7, 0.6};

    /** Lengths are compared in tenths of a millimetre. */
    private static final double PARTS = 10;

    private static final Comparator<TradeOff> CHEAPEST_FIRST =
            Comparator.comparingDouble(TradeOffSearch::cost)
                    .thenComparing(Comparator.comparingDouble(TradeOff::travel).reversed())
                    .thenComparing(Comparator.comparingDouble(TradeOff::leastSlack).reversed());

    private final ScenarioVariants variants;
    private final SideStudy now;

    private TradeOffSearch(ScenarioVariants variants, SideStudy now) {
        this.variants = variants;
        this.now = now;
    }

    /** Unbeaten variants, cheapest first; none when the scenario has no shaft on the left. */
    static List<TradeOff> of(ScenarioVariants variants) {
        return variants.now()
                .map(study -> study.side(Side.LEFT))
                .filter(left -> left.result().isPresent())
                .map(left -> new TradeOffSearch(variants, left).front())
                .orElse(List.of());
    }

    private List<TradeOff> front() {
        return ParetoFront.of(candidates(), TradeOffSearch::merits).stream()
                .sorted(CHEAPEST_FIRST)
                .toList();
    }

    /** Nobody knows of what is not priced that it is cheap. */
    private static double cost(TradeOff one) {
        return one.cost().amount().orElse(Double.POSITIVE_INFINITY);
    }

    private static double[] merits(TradeOff one) {
        return new double[] {
            -cost(one),
            Math.rint(one.travel() * PARTS),
            Math.rint(Math.min(one.leastSlack(), AMPLE_SLACK) * PARTS)
        };
    }

    private List<TradeOff> candidates() {
        List<RatedJoint> joints = variants.build().market().joints();
        List<TradeOff> fitting = new ArrayList<>();
        for (RatedJoint inner : joints) {
            for (RatedJoint outer : joints) {
                for (int shift = 0; shift < SHIFTS; shift++) {
                    for (double share : SHARES) {
                        tried(inner, outer, shift * SHIFT_STEP, share).ifPresent(fitting::add);
                    }
                }
            }
        }
        return fitting;
    }

    private Optional<TradeOff> tried(
            RatedJoint inner, RatedJoint outer, double hubShift, double share) {
        double bump = share * now.bump();
        return variants.tried(scenario -> variant(scenario, inner, outer, hubShift, share))
                .filter(ScenarioStudy::fits)
                .map(
                        study ->
                                new TradeOff(
                                        study.scenario(),
                                        bump,
                                        blank(study, Side.LEFT),
                                        blank(study, Side.RIGHT),
                                        Math.min(slack(study, Side.LEFT), slack(study, Side.RIGHT)),
                                        study.cost().total()));
    }

    private Scenario variant(
            Scenario scenario, RatedJoint inner, RatedJoint outer, double hubShift, double share) {
        WheelTravel travel = scenario.travel();
        return scenario.toBuilder()
                .swap(ShaftEnd.INNER, inner)
                .swap(ShaftEnd.OUTER, outer)
                .anyBlank()
                .hubShift(hubShift)
                .travel(
                        new WheelTravel(
                                share * travel.droop(),
                                new BumpRule.Stop(share * now.bump(), travel.bump().clearance())))
                .build();
    }

    private static SideResult shaft(ScenarioStudy study, Side side) {
        return study.side(side).result().orElseThrow();
    }

    private static Blank blank(ScenarioStudy study, Side side) {
        return shaft(study, side).plan().map(CutPlan::blank).orElseThrow();
    }

    private static double slack(ScenarioStudy study, Side side) {
        SideResult shaft = shaft(study, side);
        return Math.min(shaft.leastSlackIn().value(), shaft.leastSlackOut().value());
    }
}
