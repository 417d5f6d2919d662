package shaftwright.mockup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.shaft.CorrectionLine;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthWindow;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.WindowCorrection;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.Steer;

class MockUpCheckTest {
    private static final double TAPE = 0.3;
    private static final double DOUBT = 0.8;
    private static final double RACE = 12;
    private static final double COUNTERBORE = 3;
    private static final double PIN = 6;
    private static final double[] HEIGHTS = {-110, -60, 0, 45, 85};
    private static final StickEnd END = new StickEnd(Optional.of(RaceStop.COLLAR), 0, 12, 25);
    private static final Stick STICK = new Stick(PIN, END, END);

    private static SideSetup side(double droopHeight, BenchTable bench, double cupBottom) {
        HubPath path =
                new HubPath(
                        -150,
                        110,
                        droopHeight,
                        Polynomial.of(25, 6, -2, 1),
                        Polynomial.of(310000, -9000, -12000, 500),
                        Polynomial.of(-0.01, -0.03, 0.004),
                        Polynomial.of(0.002, 0.003, 0, 0.001),
                        new FitDoubt(Polynomial.ZERO, Polynomial.ZERO, DOUBT));
        MountedJoint joint =
                new MountedJoint(
                        new Joint(
                                "102 mm six-ball plunging joint",
                                100,
                                RACE,
                                40,
                                cupBottom,
                                OptionalDouble.empty(),
                                Optional.empty(),
                                OptionalDouble.empty(),
                                0.4,
                                0.3,
                                OutwardStop.HARD,
                                bench,
                                33,
                                2.5,
                                OptionalDouble.of(90),
                                0,
                                Mating.UNKNOWN),
                        0,
                        COUNTERBORE,
                        12,
                        25,
                        0);
        return new SideSetup(
                path, InnerFlange.of(0.02, -0.03), joint, joint, 0, Steer.STRAIGHT, 3, 4, -130, 90);
    }

    /** Its races stop well before its ends reach the cups, at every angle alike. */
    private static SideSetup level() {
        return side(-20, BenchTable.of(new double[] {0}, new double[] {15}, new double[] {18}), 80);
    }

    private static StickReading sliding(int row, double travel, double in, double out) {
        return StickReading.sliding(row, travel, OptionalDouble.of(in), OptionalDouble.of(out));
    }

    private static MockUpCheck check(SideSetup side, StickReading... readings) {
        return MockUpCheck.of(new MockUp(STICK, List.of(readings)), side, TAPE);
    }

    /** What a stick reads where joints and path are as the figures say, with this added. */
    private static StickReading right(int row, double travel, double in, double out) {
        SideSetup side = level();
        Position position = Position.of(side, travel);
        double over = 2 * (RACE - COUNTERBORE) + PIN;
        return sliding(
                row,
                travel,
                position.inward().spacing() + over + in,
                position.outward().spacing() + over + out);
    }

    /** Reference: both races moved along their cups' axes by Hipparchus vectors. */
    @Test
    void expectedHolesAreARaceSpacingFurtherBySeatsAndPin() {
        SideSetup side = level();
        Position position = Position.of(side, 45);
        Vector3D d = vector(position.line().d());
        Vector3D u = vector(position.line().u());
        Vector3D n = vector(position.line().n());
        double in = d.add(15, u).add(15, n).getNorm() + 2 * (RACE - COUNTERBORE) + PIN;
        double out = d.add(-18, u).add(-18, n).getNorm() + 2 * (RACE - COUNTERBORE) + PIN;

        MockUpCheck found = check(side, sliding(0, 45, in + 1, out - 2));

        assertThat(found.at(0, WindowEnd.IN).orElseThrow().expected()).isCloseTo(in, within(1e-9));
        assertThat(found.at(0, WindowEnd.IN).orElseThrow().difference()).isCloseTo(1, within(1e-9));
        assertThat(found.at(0, WindowEnd.OUT).orElseThrow().difference())
                .isCloseTo(-2, within(1e-9));
    }

    private static Vector3D vector(shaftwright.suspension.Vector v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }

    /**
     * Reference: a fixed stick pushed along in steps of 0.01 mm, from the place where nothing lets
     * it go further inboard to that where nothing lets it go outboard, how far it goes along itself
     * summed up. The joints' limits are those at each step's own angles.
     */
    @Test
    void fixedStickFloatsAsFarAsExpectedAlongItself() {
        SideSetup side = level();
        for (double travel : HEIGHTS) {
            Position position = Position.of(side, travel);
            double longest = position.inward().spacing();
            double shortest = position.outward().spacing();
            assertThat(floated(side, position, longest - 5)).isCloseTo(5, within(0.05));
            assertThat(floated(side, position, shortest + 7)).isCloseTo(7, within(0.05));
        }
    }

    /** How far a stick of this race spacing goes along itself. */
    private static double floated(SideSetup side, Position position, double spacing) {
        Vector3D d = vector(position.line().d());
        Vector3D u = vector(position.line().u());
        Vector3D n = vector(position.line().n());
        double sum = 0;
        Vector3D lastInner = null;
        Vector3D lastOuter = null;
        for (double push = 15; push >= -18; push -= 0.01) {
            double inner = push;
            double outer =
                    new BrentSolver(1e-12)
                            .solve(
                                    100,
                                    b -> d.add(inner, u).add(b, n).getNorm() - spacing,
                                    -90,
                                    90);
            double innerAngle = position.line().innerAngle(inner, outer);
            double outerAngle = position.line().outerAngle(inner, outer);
            boolean stands =
                    inner <= side.inner().inward(innerAngle) + 1e-9
                            && inner >= -side.inner().outward(innerAngle) - 1e-9
                            && outer <= side.outer().inward(outerAngle)
                            && outer >= -side.outer().outward(outerAngle);
            // The outer race moves away from its cup's back, along its axis, as b falls.
            Vector3D atInner = u.scalarMultiply(-inner);
            Vector3D atOuter = d.add(outer, n);
            if (stands && lastInner != null) {
                Vector3D along = atOuter.subtract(atInner).normalize();
                sum += atOuter.subtract(lastOuter).dotProduct(along);
            }
            lastInner = stands ? atInner : null;
            lastOuter = stands ? atOuter : null;
        }
        return Math.abs(sum);
    }

    @Test
    void fixedStickTellsOneEndOfTheWindowByItsPlay() {
        StickReading bottoms =
                StickReading.fixed(
                        0, 10, 560, OptionalDouble.of(5), FloatStop.BOTTOM, FloatStop.BOTTOM);
        StickReading pulls =
                StickReading.fixed(
                        0, 10, 560, OptionalDouble.of(5), FloatStop.PULL, FloatStop.PULL);
        StickReading stroke =
                StickReading.fixed(
                        0, 10, 560, OptionalDouble.of(5), FloatStop.BOTTOM, FloatStop.PULL);

        assertThat(bottoms.holes(WindowEnd.IN)).hasValue(565);
        assertThat(bottoms.holes(WindowEnd.OUT)).isEmpty();
        assertThat(pulls.holes(WindowEnd.OUT)).hasValue(555);
        assertThat(pulls.holes(WindowEnd.IN)).isEmpty();
        assertThat(stroke.holes(WindowEnd.IN)).isEmpty();
        assertThat(stroke.holes(WindowEnd.OUT)).isEmpty();
    }

    @Test
    void stickWithALongerEndBottomsWhereTheShaftWouldNot() {
        SideSetup side =
                side(
                        -20,
                        BenchTable.of(new double[] {0}, new double[] {15}, new double[] {18}),
                        40);
        StickEnd longer = new StickEnd(Optional.of(RaceStop.COLLAR), 0, 20, 25);
        double shaft = check(side).expected(WindowEnd.IN, 0).orElseThrow();
        double stick =
                MockUpCheck.of(new MockUp(new Stick(PIN, longer, longer), List.of()), side, TAPE)
                        .expected(WindowEnd.IN, 0)
                        .orElseThrow();
        // The end reaches the cup 40 - (9 + 20) cos b - 12.5 sin b from the middle, not 15.
        assertThat(stick).isLessThan(shaft - 5);
    }

    @Test
    void stickThatWouldReachThroughTheCupsIsHeldAgainstNothing() {
        double room = check(level(), right(0, 45, 0, 0)).roomBetweenCups(45);
        // A stub of 12 mm beyond the side of each pin: 2 x 12 - 6 more than the holes.
        double most = room - 18;
        double allowed = Math.hypot(DOUBT, 2 * TAPE);

        MockUpCheck found =
                check(
                        level(),
                        sliding(0, 45, most + allowed + 0.01, 540),
                        sliding(1, 45, most + allowed - 0.01, 540));

        assertThat(found.at(0, WindowEnd.IN)).isEmpty();
        assertThat(found.at(0, WindowEnd.OUT)).isEmpty();
        assertThat(found.at(1, WindowEnd.IN)).isPresent();
        assertThat(found.unusable())
                .singleElement()
                .satisfies(
                        unusable -> {
                            assertThat(unusable.flaw()).isEqualTo(UnusableReading.Flaw.TOO_LONG);
                            assertThat(unusable.most()).isCloseTo(most, within(1e-9));
                        });
    }

    @Test
    void stickThatIsNoLongerFullyInThanFullyOutIsHeldAgainstNothing() {
        MockUpCheck found = check(level(), sliding(0, 45, 540, 560), right(1, 0, 0, 0));

        assertThat(found.comparisons()).allMatch(each -> each.reading().row() == 1);
        assertThat(found.leastUsable().orElseThrow().flaw())
                .isEqualTo(UnusableReading.Flaw.SWAPPED);
    }

    /** A race that slides 2 mm from pin to collar stands 2 mm further in at either end. */
    @Test
    void playOfTheRacesAddsToTheHolesWhereTheyArePushedIn() {
        StickEnd loose = new StickEnd(Optional.of(RaceStop.SECOND_PIN), 2, 12, 25);
        StickReading reading = sliding(0, 0, 600, 540);
        MockUpCheck tight = check(level(), reading);
        MockUpCheck slack =
                MockUpCheck.of(
                        new MockUp(new Stick(PIN, loose, loose), List.of(reading)), level(), TAPE);
        assertThat(slack.at(0, WindowEnd.IN).orElseThrow().expected())
                .isCloseTo(tight.at(0, WindowEnd.IN).orElseThrow().expected() + 4, within(1e-9));
        assertThat(slack.at(0, WindowEnd.OUT).orElseThrow().expected())
                .isCloseTo(tight.at(0, WindowEnd.OUT).orElseThrow().expected(), within(1e-9));
    }

    @Test
    void stickThatNothingStopsInboardSaysNothingOfTheInwardLimit() {
        StickEnd free = new StickEnd(Optional.of(RaceStop.NOTHING), 0, 12, 25);
        MockUpCheck found =
                MockUpCheck.of(
                        new MockUp(new Stick(PIN, END, free), List.of(sliding(0, 0, 600, 540))),
                        level(),
                        TAPE);
        assertThat(found.at(0, WindowEnd.IN)).isEmpty();
        assertThat(found.at(0, WindowEnd.OUT)).isPresent();
    }

    /** The doubt is doubled already, a tape's deviation is not. */
    @Test
    void differenceIsJudgedAgainstPathAndTape() {
        double allowed = Math.sqrt(DOUBT * DOUBT + 4 * TAPE * TAPE);
        MockUpCheck found =
                check(level(), right(0, 0, allowed - 1e-3, 0), right(1, 45, allowed + 1e-3, 0));
        assertThat(found.at(0, WindowEnd.IN).orElseThrow().contradicts(false)).isFalse();
        assertThat(found.at(1, WindowEnd.IN).orElseThrow().contradicts(false)).isTrue();
        assertThat(found.contradicting(false)).isOne();
        assertThat(found.worst(false).orElseThrow().reading().row()).isOne();
    }

    @Test
    void whatToLookAtFollowsFromWhichEndsAreOff() {
        assertThat(check(level(), right(0, 0, -9, -9)).suspicion(false))
                .isEqualTo(Suspicion.PLACES);
        assertThat(check(level(), right(0, 0, -9, 9)).suspicion(false)).isEqualTo(Suspicion.PLUNGE);
        assertThat(check(level(), right(0, 0, -9, 0)).suspicion(false))
                .isEqualTo(Suspicion.BOTTOMS);
        assertThat(check(level(), right(0, 0, 0, 9)).suspicion(false))
                .isEqualTo(Suspicion.PULL_OUTS);
    }

    @Test
    void oneHeightShiftsTheWindowAndKeepsItsWholeDoubt() {
        WindowCorrection found = check(level(), right(0, 20, -9, -8)).correction();
        for (double travel : HEIGHTS) {
            assertThat(found.addedInward(travel)).isCloseTo(-9, within(1e-9));
            assertThat(found.addedOutward(travel)).isCloseTo(-8, within(1e-9));
        }
        assertThat(found.doubt()).isCloseTo(Math.hypot(DOUBT, 2 * TAPE), within(1e-12));
    }

    @Test
    void twoHeightsMakeALineThatIsHeldBeyondThem() {
        WindowCorrection found =
                check(level(), right(0, -50, -4, -4), right(1, 50, -8, -8)).correction();
        assertThat(found.addedInward(0)).isCloseTo(-6, within(1e-9));
        assertThat(found.addedInward(-130)).isCloseTo(-4, within(1e-9));
        assertThat(found.addedInward(90)).isCloseTo(-8, within(1e-9));
        assertThat(found.doubt()).isCloseTo(Math.hypot(DOUBT, 2 * TAPE), within(1e-12));
    }

    /** Reference: Hipparchus' least squares by QR decomposition. */
    @Test
    void moreHeightsMakeALeastSquaresLineWithItsScatter() {
        double[] off = {-7.5, -9.5, -6.25, -10, -9};
        List<StickReading> readings = new ArrayList<>();
        RealMatrix design = MatrixUtils.createRealMatrix(HEIGHTS.length, 2);
        for (int i = 0; i < HEIGHTS.length; i++) {
            readings.add(right(i, HEIGHTS[i], off[i], -6));
            design.setRow(i, new double[] {1, HEIGHTS[i]});
        }
        RealVector read = MatrixUtils.createRealVector(off);
        RealVector line = new QRDecomposition(design).getSolver().solve(read);
        RealVector left = read.subtract(design.operate(line));
        MockUpCheck check = check(level(), readings.toArray(new StickReading[0]));

        CorrectionLine found = check.correction().inward().orElseThrow();

        assertThat(found.slope()).isCloseTo(line.getEntry(1), within(1e-10));
        assertThat(found.level()).isCloseTo(line.getEntry(0), within(1e-9));
        assertThat(check.correction().doubt())
                .isCloseTo(2 * Math.sqrt(left.dotProduct(left) / 3), within(1e-9));
        for (int i = 0; i < HEIGHTS.length; i++) {
            assertThat(check.at(i, WindowEnd.IN).orElseThrow().left())
                    .isCloseTo(left.getEntry(i), within(1e-9));
        }
    }

    @Test
    void correctionOfAnEndThatWasNotReadOnlyNarrowsTheWindow() {
        StickReading in = right(0, 0, -9, 0);
        StickReading sooner = StickReading.sliding(0, 0, in.holesIn(), OptionalDouble.empty());
        assertThat(check(level(), sooner).correction().addedOutward(0)).isZero();
        StickReading longer = right(0, 0, 9, 0);
        StickReading later = StickReading.sliding(0, 0, longer.holesIn(), OptionalDouble.empty());
        assertThat(check(level(), later).correction().addedOutward(0)).isCloseTo(9, within(1e-9));
        StickReading outward =
                StickReading.sliding(0, 0, OptionalDouble.empty(), right(0, 0, 0, 9).holesOut());
        assertThat(check(level(), outward).correction().addedInward(0)).isZero();
    }

    /** A mock-up that was built with the datum 6 mm nearer than it truly is. */
    @Test
    void correctedWindowIsThatOfTheTrueDistance() {
        SideSetup typed = level();
        SideSetup truth =
                new SideSetup(
                        typed.path(),
                        typed.flange(),
                        typed.inner(),
                        typed.outer().withCupSpacer(6),
                        0,
                        Steer.STRAIGHT,
                        3,
                        4,
                        -130,
                        90);
        List<StickReading> readings = new ArrayList<>();
        double over = 2 * (RACE - COUNTERBORE) + PIN;
        for (int i = 0; i < HEIGHTS.length; i++) {
            Position position = Position.of(truth, HEIGHTS[i]);
            readings.add(
                    sliding(
                            i,
                            HEIGHTS[i],
                            position.inward().spacing() + over,
                            position.outward().spacing() + over));
        }
        MockUpCheck check = check(typed, readings.toArray(new StickReading[0]));
        LengthWindow wanted = LengthWindow.of(Position.table(truth));
        LengthWindow corrected = LengthWindow.of(Position.table(typed.with(check.correction())));
        double more = check.correction().doubt();
        assertThat(check.suspicion(false)).isEqualTo(Suspicion.PLACES);
        assertThat(check.contradicting(true)).isZero();
        assertThat(corrected.longest().value() + more)
                .isCloseTo(wanted.longest().value(), within(0.25));
        assertThat(corrected.shortest().value() - more)
                .isCloseTo(wanted.shortest().value(), within(0.25));
    }

    @Test
    void heightOutsideThePathIsNotCompared() {
        assertThat(check(level(), sliding(0, 200, 600, 540)).comparisons()).isEmpty();
    }
}
