package shaftwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shaftwright.build.Side;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.study.ParetoFront;

/**
 * Every pairing of the joint table's joints, with the best blank of the list, at several hub shifts
 * and shares of the scenario's travel; those that fit and that no other beats in cost, travel and
 * least slack at once. A slack beyond 10 mm is as good as any.
 */
public final class TradeOffSearch {
    /** Slack from which on more is no better, mm: own assumption. */
    public static final double AMPLE_SLACK = 10;

    private static final int SHIFTS = 7;
    private static final double SHIFT_STEP = 12.7;
    private static final double[] SHARES = {1, 0.9, 0.8, 0.7, 0.6};

    private final Sizing sizing;
    private final int scenario;
    private final ScenarioOutcome now;

    private TradeOffSearch(Sizing sizing, int scenario) {
        this.sizing = sizing;
        this.scenario = scenario;
        now = sizing.scenario(scenario);
    }

    /** Unbeaten variants, cheapest first; none when the scenario has no results. */
    public static List<TradeOff> of(Sizing sizing, int scenario) {
        TradeOffSearch search = new TradeOffSearch(sizing, scenario);
        if (search.now.side(Side.LEFT).result().isEmpty()) {
            return List.of();
        }
        List<TradeOff> front =
                new ArrayList<>(ParetoFront.of(search.candidates(), TradeOffSearch::merits));
        front.sort(
                Comparator.comparingDouble(TradeOffSearch::cost)
                        .thenComparing(Comparator.comparingDouble(TradeOff::travel).reversed())
                        .thenComparing(
                                Comparator.comparingDouble(TradeOff::leastSlack).reversed()));
        return List.copyOf(front);
    }

    /** Nobody knows of what is not priced that it is cheap. */
    private static double cost(TradeOff one) {
        return one.cost().amount().orElse(Double.POSITIVE_INFINITY);
    }

    /** Differences below a tenth of a millimetre are none. */
    private static double[] merits(TradeOff one) {
        return new double[] {
            -cost(one),
            Math.rint(one.travel() * 10),
            Math.rint(Math.min(one.leastSlack(), AMPLE_SLACK) * 10)
        };
    }

    /** Variants that fit. */
    List<TradeOff> candidates() {
        List<TradeOff> fitting = new ArrayList<>();
        List<String> joints = sizing.parts().names("joint_name");
        for (String inner : joints) {
            for (String outer : joints) {
                for (int shift = 0; shift < SHIFTS; shift++) {
                    for (double share : SHARES) {
                        tried(inner, outer, shift * SHIFT_STEP, share).ifPresent(fitting::add);
                    }
                }
            }
        }
        return fitting;
    }

    private Optional<TradeOff> tried(String inner, String outer, double hubShift, double share) {
        double bump = share * now.side(Side.LEFT).bump();
        double droop = -share * now.side(Side.LEFT).droop();
        ScenarioOutcome outcome =
                sizing.trial(
                        scenario,
                        List.of(
                                Change.text("joint_inner", scenario, inner),
                                Change.text("joint_outer", scenario, outer),
                                Change.text("blank_choice", scenario, "auto"),
                                Change.number("hub_shift", scenario, hubShift),
                                Change.text("bump_rule", scenario, "typed"),
                                Change.number("bump_limit", scenario, bump),
                                Change.number("droop_limit", scenario, droop)));
        SideOutcome left = outcome.side(Side.LEFT);
        SideOutcome right = outcome.side(Side.RIGHT);
        if (!outcome.holds()) {
            return Optional.empty();
        }
        return Optional.of(
                new TradeOff(
                        inner,
                        outer,
                        blank(left) + (blank(left).equals(blank(right)) ? "" : ", " + blank(right)),
                        hubShift,
                        bump,
                        droop,
                        Math.min(slack(left), slack(right)),
                        outcome.cost().total()));
    }

    private static String blank(SideOutcome side) {
        return side.result().flatMap(SideResult::plan).map(CutPlan::blank).orElseThrow().name();
    }

    private static double slack(SideOutcome side) {
        double least = Double.POSITIVE_INFINITY;
        for (FittedPosition position : side.result().orElseThrow().fitted()) {
            least = Math.min(least, Math.min(position.slackIn(), position.slackOut()));
        }
        return least;
    }
}
