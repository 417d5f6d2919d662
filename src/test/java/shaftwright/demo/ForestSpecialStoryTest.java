package shaftwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.joint.BenchTable;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.joint.SplineForm;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.BlankReview;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.LengthWindow;
import shaftwright.shaft.Refusal;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.Treatment;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** The demo's five scenarios tell the story that they are meant to tell, on both sides. */
class ForestSpecialStoryTest {
    private static final int AS_MEASURED = 0;
    private static final int SMALL_JOINTS = 1;
    private static final int WIDER = 2;
    private static final int RAISED = 3;
    private static final int WIDE = 4;

    private final DemoInputs inputs = new DemoInputs();

    @Test
    void asMeasuredFitsWithRoomToSpare() {
        for (SideResult side : bothSides(AS_MEASURED)) {
            assertThat(side.window().width()).isGreaterThan(25);
            assertThat(angle(side)).isLessThan(20);
            assertThat(side.plungeUsed()).isBetween(20.0, 35.0);
            assertThat(side.plan()).isPresent();
        }
    }

    @Test
    void smallJointsLackPlungeAndACounterboreMakesUpForMostOfIt() {
        for (SideResult side : bothSides(SMALL_JOINTS)) {
            assertThat(side.window().fits()).isFalse();
            assertThat(side.window().width()).isBetween(-8.0, -2.0);
        }
        double sunk = 3 / 16.0 * ForestSpecialReadings.INCH;
        for (ForestSpecialReadings.Side side : ForestSpecialTest.sides()) {
            LengthWindow plain = result(side, SMALL_JOINTS, 0).window();
            LengthWindow sunkIn = result(side, SMALL_JOINTS, sunk).window();
            assertThat(sunkIn.width()).isGreaterThan(plain.width() / 2);
        }
    }

    @Test
    void widerHubsNeedALongerBlank() {
        for (SideResult side : bothSides(WIDER)) {
            assertThat(side.window().width()).isGreaterThan(25);
            assertThat(side.plan()).isPresent();
            assertThat(side.plan().orElseThrow().blank().name())
                    .isEqualTo("31-spline blank 26 9/16 in");
        }
    }

    @Test
    void raisedTransaxleFitsInLengthButIsTooSteep() {
        for (SideResult side : bothSides(RAISED)) {
            assertThat(side.window().fits()).isTrue();
            assertThat(angle(side))
                    .isGreaterThan(Math.toDegrees(side.setup().inner().joint().angleMax()));
        }
    }

    @Test
    void bigJointsCarryTheWideTrack() {
        for (SideResult side : bothSides(WIDE)) {
            assertThat(side.window().fits()).isTrue();
            assertThat(angle(side))
                    .isLessThan(Math.toDegrees(side.setup().inner().joint().angleMax()) - 2);
            assertThat(side.plan()).isPresent();
        }
    }

    @Test
    void blanksAreRefusedForDifferentReasons() {
        List<Refusal.Reason> reasons = new ArrayList<>();
        for (BlankReview review : bothSides(AS_MEASURED).get(0).blankReviews()) {
            review.refusal().ifPresent(refusal -> reasons.add(refusal.reason()));
        }
        assertThat(reasons)
                .contains(
                        Refusal.Reason.NOT_IN_STOCK,
                        Refusal.Reason.SPLINES_DIFFER,
                        Refusal.Reason.INNER_SPLINE_CLASHES,
                        Refusal.Reason.TOO_SHORT);
        assertThat(reasons.stream().distinct().count()).isGreaterThanOrEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(ints = {AS_MEASURED, SMALL_JOINTS, WIDER, RAISED, WIDE})
    void travelWasMeasuredAndNothingTouchesTheCup(int scenario) {
        for (SideResult side : bothSides(scenario)) {
            HubPath path = side.setup().path();
            assertThat(path.covers(side.setup().droop())).isTrue();
            assertThat(path.covers(side.setup().bump())).isTrue();
            assertThat(side.leastMouthClearance().orElseThrow().value()).isGreaterThan(5);
            assertThat(side.leastSoftReserve()).isEmpty();
        }
    }

    @Test
    void bumpByClearanceStopsWhereTheGroundIsWanted() {
        assertThat(bump(WIDER) / ForestSpecialReadings.INCH).isCloseTo(4.9375, within(1e-9));
    }

    /** Steepest angle of either joint with the shaft in, degrees. */
    private static double angle(SideResult side) {
        return Math.toDegrees(Math.max(side.steepestInner().value(), side.steepestOuter().value()));
    }

    private List<SideResult> bothSides(int scenario) {
        List<SideResult> results = new ArrayList<>();
        for (ForestSpecialReadings.Side side : ForestSpecialTest.sides()) {
            results.add(result(side, scenario, 0));
        }
        return results;
    }

    private SideResult result(ForestSpecialReadings.Side side, int scenario, double counterbore) {
        double outward = side.name().equals("left") ? 1 : -1;
        SideSetup setup =
                new SideSetup(
                        ForestSpecialTest.measured(side).path(),
                        InnerFlange.of(0, 0)
                                .moved(
                                        new Vector(
                                                inputs.length("transaxle_forward", scenario),
                                                outward * inputs.length("transaxle_left", scenario),
                                                inputs.length("transaxle_up", scenario))),
                        mounted("inner", scenario, counterbore),
                        mounted("outer", scenario, counterbore),
                        inputs.length("hub_shift", scenario),
                        Steer.STRAIGHT,
                        inputs.length("margin_inward", scenario),
                        inputs.length("margin_outward", scenario),
                        -inputs.length("droop_limit", scenario),
                        bump(scenario));
        LengthRule rule =
                new LengthRule(
                        inputs.number("length_bias", scenario), inputs.length("shop_increment"));
        RingSpec ring =
                new RingSpec(
                        inputs.length("ring_thickness"),
                        inputs.length("groove_width"),
                        inputs.length("groove_depth"),
                        inputs.length("spline_runout"));
        String choice = inputs.text("blank_choice", scenario);
        return SideResult.of(
                setup,
                rule,
                ring,
                blanks(),
                choice.equals("auto") ? OptionalInt.empty() : OptionalInt.of(blankRow(choice)));
    }

    private int blankRow(String name) {
        int row = 0;
        while (!inputs.text("blank_name", row).equals(name)) {
            row++;
        }
        return row;
    }

    /** Typed, or where the ground clearance is what is wanted, taking the wheel to rise as t. */
    private double bump(int scenario) {
        if (inputs.text("bump_rule", scenario).equals("typed")) {
            return inputs.length("bump_limit", scenario);
        }
        double taller =
                inputs.length("tyre_measured", scenario) - inputs.length("clearance_tyre_diameter");
        return inputs.length("clearance_ride")
                + taller / 2
                - inputs.length("clearance_wanted", scenario);
    }

    private MountedJoint mounted(String end, int scenario, double counterbore) {
        return new MountedJoint(
                joint(inputs.text("joint_" + end, scenario))
                        .behindSpacer(inputs.length("joint_spacer_" + end, scenario)),
                inputs.length("cup_spacer_" + end, scenario),
                inputs.length("counterbore_" + end, scenario) + counterbore,
                inputs.length("stub_" + end, scenario),
                inputs.length("shaft_end_diameter_" + end),
                inputs.length("boot_outward_change", bootRow(end, scenario)));
    }

    private int bootRow(String end, int scenario) {
        return row("boot_name", inputs.text("boot_" + end, scenario));
    }

    private int row(String column, String name) {
        int row = 0;
        while (!inputs.text(column, row).equals(name)) {
            row++;
        }
        return row;
    }

    private Joint joint(String name) {
        int row = row("joint_name", name);
        double angleMax = Math.toRadians(inputs.number("joint_angle_max", row));
        return new Joint(
                name,
                inputs.length("joint_body_diameter", row),
                inputs.length("joint_race_half_width", row),
                inputs.length("joint_datum_offset", row),
                inputs.length("joint_cup_bottom", row),
                inputs.optionalLength("joint_cup_radius", row),
                inputs.blank("joint_lip_radius", row)
                        ? Optional.empty()
                        : Optional.of(
                                new CupLip(
                                        inputs.length("joint_lip_radius", row),
                                        inputs.length("joint_lip_depth", row))),
                inputs.optionalLength("joint_mouth", row),
                angleMax,
                Math.toRadians(inputs.number("joint_angle_continuous", row)),
                inputs.text("joint_outward_stop", row).equals("hard")
                        ? OutwardStop.HARD
                        : OutwardStop.SOFT,
                bench(name, row, angleMax),
                (int) inputs.number("joint_splines", row),
                inputs.number("joint_mass", row),
                OptionalDouble.of(inputs.number("joint_price", row)),
                0,
                new Mating(teeth("spline_joint", name), BoltPattern.UNKNOWN));
    }

    private BenchTable bench(String name, int row, double angleMax) {
        if (!inputs.blank("joint_plunge", row)) {
            return BenchTable.straight(
                    inputs.length("joint_plunge", row),
                    angleMax,
                    inputs.number("joint_plunge_residual", row));
        }
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < inputs.size("bench_joint"); i++) {
            if (inputs.text("bench_joint", i).equals(name)) {
                rows.add(
                        new double[] {
                            Math.toRadians(inputs.number("bench_angle", i)),
                            inputs.length("bench_inward", i),
                            inputs.length("bench_outward", i)
                        });
            }
        }
        return BenchTable.of(column(rows, 0), column(rows, 1), column(rows, 2));
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private List<Blank> blanks() {
        List<Blank> blanks = new ArrayList<>();
        for (int row = 0; row < inputs.size("blank_name"); row++) {
            blanks.add(
                    new Blank(
                                    inputs.text("blank_name", row),
                                    inputs.length("blank_length", row),
                                    inputs.length("blank_diameter", row),
                                    end("inner", row),
                                    end("outer", row),
                                    inputs.number("blank_price", row),
                                    inputs.text("blank_in_stock", row).equals("yes"))
                            .treated(
                                    inputs.text("blank_treatment", row).equals("case-hardened")
                                            ? Treatment.CASE_HARDENED
                                            : Treatment.THROUGH_HARDENED));
        }
        return blanks;
    }

    private BlankEnd end(String end, int row) {
        OptionalDouble groove = inputs.optionalLength("blank_groove_" + end, row);
        return new BlankEnd(
                        (int) inputs.number("blank_splines_" + end, row),
                        inputs.length("blank_spline_length_" + end, row),
                        groove)
                .of(teeth("spline_blank", inputs.text("blank_name", row)));
    }

    /** How the teeth of a joint or a blank are shaped. */
    private SplineForm teeth(String column, String part) {
        for (int row = 0; row < inputs.size(column); row++) {
            if (inputs.text(column, row).equals(part)) {
                return new SplineForm(
                        "",
                        OptionalDouble.of(SplineForm.module(inputs.number("spline_pitch", row))),
                        OptionalDouble.of(Math.toRadians(inputs.number("spline_angle", row))),
                        inputs.text("spline_root", row),
                        "");
            }
        }
        return SplineForm.UNKNOWN;
    }
}
