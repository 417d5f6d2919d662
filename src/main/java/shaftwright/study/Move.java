package shaftwright.study;

import java.util.OptionalDouble;
import shaftwright.build.BumpRule;
import shaftwright.build.Scenario;
import shaftwright.build.WorkPrices;

/** A limit of the travel that is taken back, or something of the vehicle that is moved. */
public enum Move {
    LESS_DROOP(
            "limit strap",
            "less droop",
            ScenarioFigure.DROOP,
            (now, by) -> now.travel().droop() - by),
    /** Where the ground ends the travel, more clearance is kept. */
    LESS_BUMP("bump stop", "less bump", ScenarioFigure.BUMP, (now, by) -> bump(now) - by),
    HIGHER(
            "transaxle",
            "higher",
            ScenarioFigure.DRIVE_UNIT_UP,
            (now, by) -> now.driveUnit().up() + by),
    LOWER(
            "transaxle",
            "lower",
            ScenarioFigure.DRIVE_UNIT_UP,
            (now, by) -> now.driveUnit().up() - by),
    FORWARD(
            "transaxle",
            "further forward",
            ScenarioFigure.DRIVE_UNIT_FORWARD,
            (now, by) -> now.driveUnit().forward() + by),
    BACK(
            "transaxle",
            "further back",
            ScenarioFigure.DRIVE_UNIT_FORWARD,
            (now, by) -> now.driveUnit().forward() - by),
    HUBS_OUT(
            "hubs",
            "further out on each side",
            ScenarioFigure.HUB_SHIFT,
            (now, by) -> now.hubShift() + by),
    HUBS_IN(
            "hubs",
            "further in on each side",
            ScenarioFigure.HUB_SHIFT,
            (now, by) -> now.hubShift() - by);

    /** What a figure comes to. */
    private interface Moved {
        double of(Scenario now, double by);
    }

    private final String what;
    private final String how;
    private final ScenarioFigure figure;

    private final Moved moved;

    Move(String what, String how, ScenarioFigure figure, Moved moved) {
        this.what = what;
        this.how = how;
        this.figure = figure;
        this.moved = moved;
    }

    private static double bump(Scenario now) {
        return ((BumpRule.Stop) now.travel().bump()).travel();
    }

    Scenario of(Scenario now, double by) {
        return this == LESS_BUMP && now.travel().bump() instanceof BumpRule.Clearance ground
                ? ScenarioFigure.CLEARANCE.set(now, ground.left() + by)
                : figure.set(now, moved.of(now, by));
    }

    /** Whether both move the same thing. */
    boolean meets(Move other) {
        return figure == other.figure;
    }

    /** "hubs 1/2 in further out on each side" of an amount in words. */
    String words(String amount) {
        return what + " " + amount + " " + how;
    }

    /** On the whole vehicle. */
    Price work(WorkPrices prices) {
        return switch (this) {
            case LESS_DROOP -> onBothSides(prices.strap());
            case LESS_BUMP -> onBothSides(prices.bumpStop());
            case HIGHER, LOWER, FORWARD, BACK -> Price.typed(prices.driveUnit());
            case HUBS_OUT, HUBS_IN -> onBothSides(prices.hub());
        };
    }

    private static Price onBothSides(OptionalDouble each) {
        return Price.typed(each).times(2);
    }
}
