package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import shaftwright.joint.BenchTable;
import shaftwright.joint.MountedJoint;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** What must hold whatever the vehicle. */
class SidePropertiesTest {
    private static final MountedJoint JOINT = Samples.joint(Samples.BENCH);

    private static LengthWindow window(SideSetup setup) {
        return LengthWindow.of(Position.table(setup));
    }

    private static HubPath path(double foreAft, double toe, double sense) {
        return Samples.path(
                Polynomial.of(sense * foreAft, sense * 6, sense * -2),
                Polynomial.of(310000, -9000, -12000, 500),
                Polynomial.of(sense * toe, sense * 0.003));
    }

    private static SideSetup setup(
            HubPath path, double sweep, Vector transaxle, double hub, double margin) {
        return new SideSetup(
                path,
                InnerFlange.of(0.02, sweep).moved(transaxle),
                JOINT,
                JOINT,
                hub,
                Steer.STRAIGHT,
                margin,
                margin,
                -130,
                90);
    }

    @Property
    void frontAndRearMayBeSwapped(
            @ForAll @DoubleRange(min = -60, max = 60) double foreAft,
            @ForAll @DoubleRange(min = -0.05, max = 0.05) double toe,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double sweep,
            @ForAll @DoubleRange(min = -20, max = 20) double forward) {
        LengthWindow one =
                window(setup(path(foreAft, toe, 1), sweep, new Vector(forward, 0, 0), 0, 3));
        LengthWindow mirrored =
                window(setup(path(foreAft, toe, -1), -sweep, new Vector(-forward, 0, 0), 0, 3));
        assertThat(mirrored.shortest().value()).isCloseTo(one.shortest().value(), within(1e-9));
        assertThat(mirrored.longest().value()).isCloseTo(one.longest().value(), within(1e-9));
    }

    @Property
    void movingBothEndsSidewaysTogetherChangesNothing(
            @ForAll @DoubleRange(min = -60, max = 60) double sideways) {
        LengthWindow still = window(setup(path(20, 0, 1), 0, Vector.ZERO, 0, 3));
        LengthWindow moved =
                window(setup(path(20, 0, 1), 0, new Vector(0, sideways, 0), sideways, 3));
        assertThat(moved.shortest().value()).isCloseTo(still.shortest().value(), within(1e-9));
        assertThat(moved.longest().value()).isCloseTo(still.longest().value(), within(1e-9));
    }

    @Property
    void moreMarginNeverWidensTheWindow(
            @ForAll @DoubleRange(min = 0, max = 30) double margin,
            @ForAll @DoubleRange(min = 0, max = 30) double more) {
        LengthWindow narrow = window(setup(path(20, 0, 1), 0, Vector.ZERO, 0, margin + more));
        LengthWindow wide = window(setup(path(20, 0, 1), 0, Vector.ZERO, 0, margin));
        assertThat(wide.width() - narrow.width()).isCloseTo(2 * more, within(1e-9));
    }

    @Property
    void moreTravelNeverWidensTheWindowBeyondItsVertices(
            @ForAll @DoubleRange(min = 40, max = 130) double droop) {
        SideSetup less =
                new SideSetup(
                        path(20, 0, 1),
                        InnerFlange.of(0, 0),
                        JOINT,
                        JOINT,
                        0,
                        Steer.STRAIGHT,
                        3,
                        3,
                        -droop,
                        90);
        SideSetup all =
                new SideSetup(
                        path(20, 0, 1),
                        InnerFlange.of(0, 0),
                        JOINT,
                        JOINT,
                        0,
                        Steer.STRAIGHT,
                        3,
                        3,
                        -140,
                        90);
        // The two tables stand at different travels, so a vertex may differ by a hundredth.
        assertThat(window(all).width()).isLessThanOrEqualTo(window(less).width() + 0.01);
    }

    @Property
    void moreJointTravelNeverNarrowsTheWindow(
            @ForAll @DoubleRange(min = 0, max = 20) double inward,
            @ForAll @DoubleRange(min = 0, max = 20) double outward) {
        double[] angles = {0, 0.4};
        BenchTable less = BenchTable.of(angles, new double[] {15, 9}, new double[] {15, 8});
        BenchTable more =
                BenchTable.of(
                        angles,
                        new double[] {15 + inward, 9 + inward},
                        new double[] {15 + outward, 8 + outward});
        SideSetup small = Samples.side(path(20, 0, 1), Samples.joint(less), Samples.joint(less));
        SideSetup big = Samples.side(path(20, 0, 1), Samples.joint(more), Samples.joint(more));
        assertThat(window(big).shortest().value())
                .isLessThanOrEqualTo(window(small).shortest().value() + 1e-9);
        assertThat(window(big).longest().value())
                .isGreaterThanOrEqualTo(window(small).longest().value() - 1e-9);
    }
}
