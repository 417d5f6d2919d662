package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;
import shaftwright.suspension.LinkageKind;

/** Typed cells of the pick-up points that a scenario has of its own. */
public final class OwnPointInputs {
    /** The one point that is no pick-up point: where the hub itself is. */
    public static final String OUTER_DATUM = "outer datum";

    /** Its number, after those of all pick-up points. */
    public static final int OUTER_DATUM_NUMBER = LinkageKind.MOST_POINTS + 1;

    private static final Range PLACE = new Range(-20_000, 20_000);
    private static final Range AHEAD = new Range(-3_500, 3_500);
    private static final Range OUTWARD = new Range(0, 1_500);
    private static final Range HEIGHT = new Range(0, 1_500);

    private OwnPointInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "own_point",
                        Grid.OWN_POINT,
                        "Point",
                        InputKind.TEXT,
                        List.of(),
                        "Its name as it stands beside the points of the linkage, or \""
                                + OUTER_DATUM
                                + "\": arms that are longer move that as well."));
        all.add(
                Input.words(
                        "own_scenario",
                        Grid.OWN_POINT,
                        "Scenario",
                        InputKind.TEXT,
                        List.of(),
                        "Letter of the scenario that has this point elsewhere."));
        all.add(
                Input.words(
                        "own_side",
                        Grid.OWN_POINT,
                        "Side",
                        InputKind.CHOICE,
                        List.of("both", "left", "right"),
                        "Side or sides on which it does. Empty: both."));
        all.add(
                Input.length(
                        "own_ahead",
                        Grid.OWN_POINT,
                        "Ahead of the mark",
                        PLACE,
                        AHEAD,
                        "Where it is in that scenario, at ride. Empty: as in all others."));
        all.add(
                Input.length(
                        "own_out",
                        Grid.OWN_POINT,
                        "From the centreline",
                        PLACE,
                        OUTWARD,
                        "Where it is in that scenario, at ride. Empty: as in all others."));
        all.add(
                Input.length(
                        "own_height",
                        Grid.OWN_POINT,
                        "Height",
                        PLACE,
                        HEIGHT,
                        "Where it is in that scenario, at ride. Empty: as in all others."));
    }
}
