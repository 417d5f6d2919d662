package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.SIDE;

import java.util.function.Function;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.Vector;

/** Set-up of one side of each scenario: axes, travel, shifts, joints on their flanges, margins. */
final class SideLines {
    private SideLines() {}

    static void declare(LiveLines lines) {
        LineSet<Vector> flange =
                LineSet.in(lines, Section.PATH_WORK, SIDE)
                        .of((sizing, index) -> sizing.innerFlange().axis());
        parts(
                axis -> flange.with(axis.words).number("flange_<x>", "Flange axis <forward>"),
                "SIN(inner_sweep_read)*COS(inner_tilt_read)",
                "COS(inner_sweep_read)*COS(inner_tilt_read)",
                "SIN(inner_tilt_read)");
        LineSet<Sizing> all = LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE);
        LineSet<SideOutcome> any = all.of(SideLines::outcome);
        LineSet<SideOutcome> sides = all.only(Known.SETUP, Lacking.NOT_AVAILABLE);
        any.whole("setup_ready", "Set-up complete")
                .yes(
                        "IF(AND({used}=1,{scenario_trouble}=\"\",{path_ready}=1),1,0)",
                        SideOutcome::isSetUp);
        sides.mm("t_low", "Droop").is("0-{droop_limit_read}", SideOutcome::droop);
        for (int step = 0; step < SideOutcome.BUMP_STEPS; step++) {
            bump(sides, step);
        }
        sides.mm("t_high", "Bump")
                .is("{bump_step_" + (SideOutcome.BUMP_STEPS - 1) + "}", SideOutcome::bump);
        flange(all.only(Known.SETUP.inWorkbook(), Lacking.NOT_AVAILABLE), sides);
        for (ShaftEnd end : ShaftEnd.values()) {
            FlangeLines.declare(sides, end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            MatingLines.sides(all.only(Known.SETUP.inWorkbook(), Lacking.NOT_AVAILABLE), end);
        }
        sides.mm("margin_in", "Margin before bottoming")
                .is(builtUp("{margin_inward_read}"), SideOutcome::marginInward);
        sides.mm("margin_out", "Margin before pull-out")
                .is(builtUp("{margin_outward_read}"), SideOutcome::marginOutward);
        any.revised(6)
                .text("side_trouble", "What keeps it from use")
                .is(trouble(), SideOutcome::trouble);
        all.about(Known.RESULT.source(), Lacking.ZERO.value())
                .whole("ready", "Computed")
                .yes("IF({side_trouble}=\"\",1,0)", result -> true);
        SteerLines.declare(lines);
    }

    static SideOutcome outcome(Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).side(index.side());
    }

    /** A vector's parts by name, each with its formula. */
    private static void parts(
            Function<Axis, LineSet.NumberLine<Vector>> line, String x, String y, String z) {
        line.apply(Axis.X).is(x, Vector::x);
        line.apply(Axis.Y).is(y, Vector::y);
        line.apply(Axis.Z).is(z, Vector::z);
    }

    /** By the clearance rule the wheel centre's rise, not the datum's, uses the clearance up. */
    private static void bump(LineSet<SideOutcome> sides, int step) {
        String byClearance =
                step == 0
                        ? "clearance_ride_read+{tyre_radius_gain}-{clearance_wanted_read}"
                        : "{bump_step_0}+{wheel_arm}*(SIN(%s)-SIN(%s))"
                                .formatted(camber("{bump_step_" + (step - 1) + "}"), camber("0"));
        sides.mm("bump_step_" + step, "Bump, step " + step)
                .is(
                        "IF({bump_rule}=\"clearance\"," + byClearance + ",{bump_limit_read})",
                        side -> side.bumpStep(step));
    }

    private static String camber(String travel) {
        String norm = "((2*" + travel + "-{path_high}-{path_low})/({path_high}-{path_low}))";
        return PathLines.curve("camber", norm);
    }

    /** How the drive unit and its mounts move the inner flange. */
    private static void flange(LineSet<Sizing> setUp, LineSet<SideOutcome> sides) {
        setUp.rad("side_roll", "Drive unit rolled, this side up")
                .is(
                        "<mirror>{mount_roll}",
                        (sizing, index) ->
                                index.side().leftward()
                                        * sizing.mountMove(index.scenario(), "roll"));
        LineSet<Vector> axes = sides.of((side, index) -> side.flange().axis());
        parts(
                axis -> axes.with(axis.words).number("u_<x>", "Inner axis <forward>"),
                "{flange_x}",
                "{flange_y}*COS({side_roll})-{flange_z}*SIN({side_roll})",
                "{flange_y}*SIN({side_roll})+{flange_z}*COS({side_roll})");
        LineSet<Vector> shifts = sides.of((side, index) -> side.flange().shift());
        parts(
                axis -> shifts.with(axis.words).mm("shift_<x>", "Flange moved <forward>"),
                "{transaxle_forward_read}+{mount_forward}",
                """
                <mirror>({transaxle_left_read}+{mount_left})
                +SUM({inner_offset_used})*(COS({side_roll})-1)
                """,
                "{transaxle_up_read}+{mount_up}+SUM({inner_offset_used})*SIN({side_roll})");
        sides.mm("shift_hub", "Hub outward").is("{hub_shift_read}", SideOutcome::hubShift);
    }

    /** A margin, unless one that is built up is to count. */
    private static String builtUp(String typed) {
        return "IF(ISNUMBER(margin_built),margin_built," + typed + ")";
    }

    private static String trouble() {
        return new Cases()
                .say("{used}=0", Sizing.UNUSED)
                .when("{scenario_trouble}<>\"\"", "{scenario_trouble}")
                .when("{path_trouble}<>\"\"", "{path_trouble}")
                .when("{own_trouble}<>\"\"", "{own_trouble}")
                .say(
                        "IF(OR({mount_roll}<>0,"
                                + StateLines.rolls()
                                + "),NOT(ISNUMBER({inner_offset_used})),FALSE)",
                        Sizing.NO_CENTRE)
                .say("{t_high}<=0", Sizing.NO_BUMP_LEFT)
                .say("ROUND({t_high}-{path_high},6)>0", Sizing.BUMP_BEYOND)
                .say("ROUND({path_low}-{t_low},6)>0", Sizing.DROOP_BEYOND)
                .otherwise("\"\"");
    }
}
