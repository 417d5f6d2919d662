package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.build.Side;
import shaftwright.shaft.TravelSteps;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/**
 * The steered hub of one side of each scenario: kingpin line at ride and what the turn about it
 * makes of stub axis and outer datum, all along the hub's own directions (outward, ahead, up; a
 * left-handed set, hence the signs of the cross products).
 */
final class SteerLines {
    private static final String SIN_CAMBER = "SIN({path_camber#" + TravelSteps.RIDE + "})";
    private static final String COS_CAMBER = "COS({path_camber#" + TravelSteps.RIDE + "})";
    private static final String SIN_TOE = "SIN({path_toe#" + TravelSteps.RIDE + "})";
    private static final String COS_TOE = "COS({path_toe#" + TravelSteps.RIDE + "})";
    private static final String LEAN = "(1-COS({steer_turn}))";
    private static final String SINE = "SIN({steer_turn})";

    private SteerLines() {}

    /** A direction that goes along with the hub. */
    private enum Axis {
        OUT("out", "{kingpin_out}", "along stub axis", "outward", Vector::x),
        AHEAD("ahead", "{kingpin_level}", "level ahead", "ahead", Vector::y),
        UP("up", "{kingpin_up}", "up", "up", Vector::z);

        final String word;

        /** Line of the kingpin line's part, as a place. */
        final String line;

        final String along;
        final String moved;
        final ToDoubleFunction<Vector> part;

        Axis(String word, String line, String along, String moved, ToDoubleFunction<Vector> part) {
            this.word = word;
            this.line = line;
            this.along = along;
            this.moved = moved;
            this.part = part;
        }

        Axis next() {
            return switch (this) {
                case OUT -> AHEAD;
                case AHEAD -> UP;
                case UP -> OUT;
            };
        }

        String arm() {
            return "{steer_arm_" + word + "}";
        }

        /** This part, at ride, of a direction in the vehicle's. */
        String of(String x, String y, String z) {
            return switch (this) {
                case OUT ->
                        x
                                + "*"
                                + SIN_TOE
                                + "*"
                                + COS_CAMBER
                                + "+"
                                + y
                                + "*"
                                + COS_TOE
                                + "*"
                                + COS_CAMBER
                                + "-"
                                + z
                                + "*"
                                + SIN_CAMBER;
                case AHEAD -> x + "*" + COS_TOE + "-" + y + "*" + SIN_TOE;
                case UP ->
                        x
                                + "*"
                                + SIN_CAMBER
                                + "*"
                                + SIN_TOE
                                + "+"
                                + y
                                + "*"
                                + SIN_CAMBER
                                + "*"
                                + COS_TOE
                                + "+"
                                + z
                                + "*"
                                + COS_CAMBER;
            };
        }
    }

    static void declare(LiveLines lines) {
        LineSet<Steer> set =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE)
                        .of((result, index) -> result.setup().steer());
        set.rad("steer_turn", "Hub's front turned outward")
                .is(
                        index -> (index.side() == Side.LEFT ? "" : "0-") + "{steer_angle_read}",
                        (steer, index) -> steer.angle());
        for (Axis axis : Axis.values()) {
            String name = axis.line.substring(1, axis.line.length() - 1);
            String label = "Kingpin line " + axis.along;
            part(set, name, label, NUMBER, axis, kingpin(axis), Steer::line);
        }
        for (Axis axis : Axis.values()) {
            String label = "Datum to kingpin line, " + axis.along;
            String arm = axis.of("kingpin_ahead_read", "(0-kingpin_inward_read)", "0");
            part(set, "steer_arm_" + axis.word, label, MILLIMETRE, axis, arm, Steer::arm);
        }
        for (Axis axis : Axis.values()) {
            String label = "Steered stub axis, " + axis.moved;
            part(set, "steer_axis_" + axis.word, label, NUMBER, axis, stub(axis), Steer::stubAxis);
        }
        for (Axis axis : Axis.values()) {
            String label = "Datum moved " + axis.moved;
            part(set, "steer_move_" + axis.word, label, MILLIMETRE, axis, move(axis), Steer::datum);
        }
    }

    private static void part(
            LineSet<Steer> set,
            String name,
            String label,
            Quantity quantity,
            Axis axis,
            String steered,
            Function<Steer, Vector> core) {
        double straight = axis.part.applyAsDouble(core.apply(Steer.STRAIGHT));
        set.of(quantity, name, label)
                .is(
                        "IF({steer_turn}=0," + Phrases.number(straight) + "," + steered + ")",
                        steer -> axis.part.applyAsDouble(core.apply(steer)));
    }

    /** Of length one; it leans by the tangents of two angles. */
    private static String kingpin(Axis axis) {
        String line =
                axis.of("(0-TAN(kingpin_caster_read))", "(0-TAN(kingpin_inclination_read))", "1");
        return "(" + line + ")/SQRT(TAN(kingpin_caster_read)^2+TAN(kingpin_inclination_read)^2+1)";
    }

    /** The stub axis, turned. */
    private static String stub(Axis axis) {
        String lean = LEAN + "*{kingpin_out}";
        return switch (axis) {
            case OUT -> "COS({steer_turn})+" + lean + "^2";
            case AHEAD -> lean + "*{kingpin_level}-" + SINE + "*{kingpin_up}";
            case UP -> lean + "*{kingpin_up}+" + SINE + "*{kingpin_level}";
        };
    }

    /** What the turn moves the datum by. */
    private static String move(Axis axis) {
        String along =
                "({kingpin_out}*{steer_arm_out}+{kingpin_level}*{steer_arm_ahead}"
                        + "+{kingpin_up}*{steer_arm_up})";
        Axis next = axis.next();
        Axis last = next.next();
        return LEAN
                + "*("
                + axis.arm()
                + "-"
                + along
                + "*"
                + axis.line
                + ")+"
                + SINE
                + "*("
                + next.line
                + "*"
                + last.arm()
                + "-"
                + last.line
                + "*"
                + next.arm()
                + ")";
    }
}
