package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.number;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;

import java.util.function.Function;
import shaftwright.formula.Pieces;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/**
 * The steered hub of one side of each scenario: kingpin line at ride and what the turn about it
 * makes of stub axis and outer datum, all along the hub's own directions (outward, ahead, up; a
 * left-handed set, hence the signs of the cross products).
 */
final class SteerLines {
    private static final Pieces TURN =
            Pieces.of("camber", "{path_camber#<ride>}")
                    .and("toe", "{path_toe#<ride>}")
                    .and("lean", "(1-COS({steer_turn}))")
                    .and("sine", "SIN({steer_turn})");

    private SteerLines() {}

    static void declare(LiveLines lines) {
        LineSet<Steer> set =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE)
                        .of((result, index) -> result.setup().steer())
                        .with(TURN);
        set.rad("steer_turn", "Hub's front turned outward")
                .is("<mirror>{steer_angle_read}", (steer, index) -> steer.angle());
        for (HubAxis axis : HubAxis.values()) {
            part(
                    set.revised(6),
                    axis,
                    NUMBER,
                    "<kingpin>",
                    "Kingpin line <along>",
                    kingpin(axis),
                    Steer::line);
        }
        for (HubAxis axis : HubAxis.values()) {
            String arm = along(axis, "{kingpin_ahead_used}", "(0-{kingpin_inward_used})", "0");
            String label = "Datum to kingpin line, <along>";
            part(set.revised(6), axis, MILLIMETRE, "steer_arm_<hub>", label, arm, Steer::arm);
        }
        for (HubAxis axis : HubAxis.values()) {
            String label = "Steered stub axis, <outward>";
            part(set, axis, NUMBER, "steer_axis_<hub>", label, stub(axis), Steer::stubAxis);
        }
        for (HubAxis axis : HubAxis.values()) {
            String label = "Datum moved <outward>";
            part(set, axis, MILLIMETRE, "steer_move_<hub>", label, move(axis), Steer::datum);
        }
    }

    private static void part(
            LineSet<Steer> set,
            HubAxis axis,
            Quantity quantity,
            String name,
            String label,
            String steered,
            Function<Steer, Vector> core) {
        double straight = axis.part.applyAsDouble(core.apply(Steer.STRAIGHT));
        set.with(axis.words)
                .of(quantity, name, label)
                .is(
                        "IF({steer_turn}=0," + number(straight) + "," + steered + ")",
                        steer -> axis.part.applyAsDouble(core.apply(steer)));
    }

    /** Part, at ride, of a direction in the vehicle's. */
    private static String along(HubAxis axis, String x, String y, String z) {
        return Pieces.of("x", x)
                .and("y", y)
                .and("z", z)
                .in(
                        switch (axis) {
                            case OUT ->
                                    """
                                    <x>*SIN(<toe>)*COS(<camber>)+<y>*COS(<toe>)*COS(<camber>)
                                    -<z>*SIN(<camber>)
                                    """;
                            case AHEAD -> "<x>*COS(<toe>)-<y>*SIN(<toe>)";
                            case UP ->
                                    """
                                    <x>*SIN(<camber>)*SIN(<toe>)+<y>*SIN(<camber>)*COS(<toe>)
                                    +<z>*COS(<camber>)
                                    """;
                        });
    }

    /** Of length one; it leans by the tangents of two angles. */
    private static String kingpin(HubAxis axis) {
        return "("
                + along(
                        axis,
                        "(0-TAN({kingpin_caster_used}))",
                        "(0-TAN({kingpin_inclination_used}))",
                        "1")
                + ")/SQRT(TAN({kingpin_caster_used})^2+TAN({kingpin_inclination_used})^2+1)";
    }

    /** The stub axis, turned. */
    private static String stub(HubAxis axis) {
        return switch (axis) {
            case OUT -> "COS({steer_turn})+<lean>*{kingpin_out}^2";
            case AHEAD -> "<lean>*{kingpin_out}*{kingpin_level}-<sine>*{kingpin_up}";
            case UP -> "<lean>*{kingpin_out}*{kingpin_up}+<sine>*{kingpin_level}";
        };
    }

    /** What the turn moves the datum by. */
    private static String move(HubAxis axis) {
        HubAxis next = axis.next();
        String across = "{<kingpin>}*{steer_arm_" + next.next().word + "}";
        String back = "{steer_arm_<hub>}";
        return """
        <lean>*({steer_arm_<hub>}-({kingpin_out}*{steer_arm_out}+{kingpin_level}*{steer_arm_ahead}
        +{kingpin_up}*{steer_arm_up})*{<kingpin>})+<sine>*(
        """
                + (next.words.in(across) + "-" + next.next().words.in("{<kingpin>}*"))
                + (next.words.in(back) + ")");
    }
}
