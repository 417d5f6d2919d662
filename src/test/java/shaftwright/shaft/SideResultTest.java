package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;
import shaftwright.suspension.Vector;

class SideResultTest {
    private static final LengthRule RULE = new LengthRule(0.25, 25.4 / 16);

    private static SideResult result(SideSetup setup) {
        return SideResult.of(setup, RULE, Samples.RING, List.of(), OptionalInt.empty());
    }

    @Test
    void aLengthInsideTheWindowKeepsMarginAndDoubtEverywhere() {
        SideResult result = result(Samples.side());
        assertThat(result.window().fits()).isTrue();
        assertThat(result.choice().rounded()).isEqualTo(Rounded.TO_INCREMENT);
        for (FittedPosition row : result.fitted()) {
            double doubt = row.position().hub().doubt();
            assertThat(row.slackIn()).isGreaterThanOrEqualTo(3 + doubt - 1e-9);
            assertThat(row.slackOut()).isGreaterThanOrEqualTo(4 + doubt - 1e-9);
        }
    }

    @Test
    void shaftSitsPushedEquallyIntoBothCups() {
        SideResult result = result(Samples.side());
        for (FittedPosition row : result.fitted()) {
            ShaftLine line = row.position().line();
            assertThat(line.length(row.push(), row.push()))
                    .isCloseTo(result.length().spacing(), within(1e-9));
        }
        // Pulled out at droop, pushed in at bump.
        assertThat(result.atDroop().push()).isNegative();
        assertThat(result.atDroop().innerAngle())
                .isGreaterThan(result.atDroop().position().innerAngle());
    }

    @Test
    void extremesAreThoseOfTheRows() {
        SideResult result = result(Samples.side());
        assertThat(result.leastSlackOut().row()).isEqualTo(TravelSteps.DROOP);
        assertThat(result.leastSlackOut().value()).isEqualTo(result.atDroop().slackOut());
        assertThat(result.leastSlackOut().travel()).isEqualTo(-130);
        assertThat(result.fitted())
                .allSatisfy(
                        row -> {
                            assertThat(row.slackIn())
                                    .isGreaterThanOrEqualTo(result.leastSlackIn().value());
                            assertThat(row.freePlay())
                                    .isGreaterThanOrEqualTo(result.leastFreePlay().value());
                            assertThat(row.innerAngle())
                                    .isLessThanOrEqualTo(result.steepestInner().value());
                            assertThat(row.outerAngle())
                                    .isLessThanOrEqualTo(result.steepestOuter().value());
                            assertThat(Math.min(row.innerMouth(), row.outerMouth()))
                                    .isGreaterThanOrEqualTo(
                                            result.leastMouthClearance().orElseThrow().value());
                        });
        assertThat(result.steepestInner().row()).isEqualTo(TravelSteps.DROOP);
        assertThat(result.atRide().travel()).isZero();
        assertThat(result.atBump().travel()).isEqualTo(90);
    }

    /** Reference: Hipparchus distances between the joint centres at droop and at bump. */
    @Test
    void plungeUsedIsTheChangeOfTheCentreDistance() {
        SideResult result = result(Samples.side());
        Vector droop = result.positions().get(0).line().d();
        Vector bump = result.positions().get(24).line().d();
        double change =
                new Vector3D(droop.x(), droop.y(), droop.z()).getNorm()
                        - new Vector3D(bump.x(), bump.y(), bump.z()).getNorm();
        assertThat(result.plungeUsed()).isCloseTo(change, within(1e-9));
    }

    @Test
    void freePlayIsTheLeastOfSlacksAndStrokes() {
        SideSetup setup = Samples.side();
        Position ride = Position.of(setup, 0);
        double innerStroke = ride.inward().innerTravel() + ride.outward().innerTravel();
        double outerStroke = ride.inward().outerTravel() + ride.outward().outerTravel();
        double both = ride.inward().spacing() - ride.outward().spacing();
        // In the middle of its range the shaft floats as far as the shorter stroke.
        double middle = ride.outward().spacing() + both / 2;
        FittedPosition fitted = FittedPosition.of(setup, ride, middle);
        assertThat(fitted.freePlay())
                .isCloseTo(Math.min(both / 2, Math.min(innerStroke, outerStroke)), within(1e-9));
        FittedPosition shorter = FittedPosition.of(setup, ride, ride.outward().spacing() + 1.5);
        assertThat(shorter.freePlay()).isCloseTo(1.5, within(1e-9));
    }

    private static final MountedJoint SOFT =
            Samples.mounted(Samples.BENCH, OutwardStop.SOFT, 44, 0);

    /** Reference: Hipparchus vectors, limits and angles worked out in turns until they settle. */
    @Test
    void softStopIsReachedWithTheOtherRaceFullyIn() {
        SideSetup setup = Samples.side(Samples.path(), Samples.joint(Samples.BENCH), SOFT);
        for (Position position : Position.table(setup)) {
            ShaftLine line = position.line();
            Vector3D d = vector(line.d());
            Vector3D u = vector(line.u());
            Vector3D n = vector(line.n());
            Vector3D shaft = d;
            for (int turn = 0; turn < 20; turn++) {
                double in = setup.inner().inward(Vector3D.angle(shaft, u));
                double out = setup.outer().outward(Vector3D.angle(shaft, n));
                shaft = d.add(in, u).subtract(out, n);
            }

            double spacing = position.outerPulled().orElseThrow().spacing();
            assertThat(spacing).isCloseTo(shaft.getNorm(), within(0.02));
            assertThat(position.innerPulled()).isEmpty();
            assertThat(FittedPosition.of(setup, position, spacing + 1).softReserve())
                    .isCloseTo(1, within(1e-9));
        }
    }

    private static Vector3D vector(Vector v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }

    @Test
    void softStopsAskForALongerShaftByTheMarginToo() {
        SideSetup hard = Samples.side();
        SideSetup soft = Samples.side(Samples.path(), SOFT, SOFT);
        LengthWindow window = result(soft).window();

        assertThat(window.longest()).isEqualTo(result(hard).window().longest());
        assertThat(window.shortest().value())
                .isGreaterThan(result(hard).window().shortest().value() + 5);
        for (Position position : Position.table(soft)) {
            assertThat(window.shortest().value())
                    .isGreaterThanOrEqualTo(
                            position.shortestBySoftStops()
                                    + soft.marginOutward()
                                    + position.hub().doubt());
        }
        assertThat(result(hard).leastSoftReserve()).isEmpty();
    }

    @Test
    void theChosenBlankDecidesTheFinalLength() {
        SideSetup setup = Samples.side();
        double wanted = result(setup).choice().chosen().clipToClip();
        BlankEnd grooved = new BlankEnd(33, 60, OptionalDouble.of(12));
        Blank ready = new Blank("ready", wanted + 25, 30, grooved, grooved, 120, true);
        SideResult result =
                SideResult.of(setup, RULE, Samples.RING, List.of(ready), OptionalInt.empty());
        assertThat(result.plan().orElseThrow().newGrooves()).isZero();
        assertThat(result.length().clipToClip()).isCloseTo(wanted + 1, within(1e-9));
        double plain = result(setup).atDroop().slackOut();
        assertThat(result.atDroop().slackOut()).isCloseTo(plain + 1, within(1e-9));
    }

    @Test
    void aCounterboreAddsOutwardSlackAtTheSameClipToClip() {
        MountedJoint plain = Samples.joint(Samples.BENCH);
        MountedJoint sunk = Samples.mounted(Samples.BENCH, OutwardStop.HARD, 44, 3);
        assertThat(slackOut(sunk) - slackOut(plain)).isCloseTo(6, within(1e-9));
    }

    private static double slackOut(MountedJoint joint) {
        SideSetup setup = Samples.side(Samples.path(), joint, joint);
        double spacing = ShaftLength.ofClipToClip(490, joint, joint).spacing();
        return FittedPosition.of(setup, Position.of(setup, 0), spacing).slackOut();
    }

    /** Rims and axes as points and vectors of a geometry library (Hipparchus). */
    @Test
    void theGapBetweenTheRimsIsTheDistanceOfTheirMiddles() {
        SideResult result = result(Samples.side());
        double rim = 16;
        double widest = 0;
        for (Position position : result.positions()) {
            ShaftLine line = position.line();
            Vector3D inner = library(line.u()).scalarMultiply(-rim);
            Vector3D outer = library(line.d()).add(rim, library(line.n()));
            widest = Math.max(widest, inner.distance(outer));
        }

        assertThat(result.widestMouthGap().orElseThrow().value()).isCloseTo(widest, within(1e-9));
        assertThat(result.widestMouthGap().orElseThrow().row()).isEqualTo(TravelSteps.DROOP);
    }

    private static Vector3D library(Vector v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }

    /** Every distance inside the cup grows by the spacer, and the joint centre moves off it. */
    @Test
    void aSpacerBetweenJointAndCupIsRoomForTheShaftsEnd() {
        MountedJoint plain = Samples.joint(Samples.BENCH);
        MountedJoint spaced =
                new MountedJoint(
                        plain.joint().behindSpacer(5),
                        plain.cupSpacer(),
                        plain.counterbore(),
                        plain.stub(),
                        plain.endDiameter(),
                        plain.boot());

        assertThat(spaced.datumToCentre()).isEqualTo(plain.datumToCentre() + 5);
        assertThat(spaced.joint().cupBottom()).isEqualTo(plain.joint().cupBottom() + 5);
        assertThat(spaced.joint().mouth().getAsDouble())
                .isEqualTo(plain.joint().mouth().getAsDouble() + 5);
        assertThat(spaced.joint().lip().orElseThrow().depth())
                .isEqualTo(plain.joint().lip().orElseThrow().depth() + 5);
        assertThat(spaced.outward(0.2)).isEqualTo(plain.outward(0.2));
    }
}
