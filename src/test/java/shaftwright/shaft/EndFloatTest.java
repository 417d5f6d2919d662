package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.MountedJoint;
import shaftwright.joint.OutwardStop;

class EndFloatTest {
    /** How near the float comes to the exact one where the shaft's angles change little, mm. */
    private static final double NEAR = 0.1;

    /**
     * Reference: every place of the inner race in steps of a hundredth of a millimetre, the outer
     * race's found by a root finder (Hipparchus), kept when both stay within their limits at the
     * angles that they then have.
     */
    @ParameterizedTest
    @CsvSource({
        "-130, -12, 36, 10",
        "-130, 9, 20, 15",
        "-60, -4, 19, 20",
        "0, 0, 24, -20",
        "90, 8, 18, 2",
        "90, -20, 22, 30"
    })
    void gapsAreTheLeastOfAllPlacesThatTheShaftCanFloatTo(
            double travel, double longer, double lipRadius, double lipDepth) {
        SideSetup setup = lipped(lipRadius, lipDepth);
        Position position = Position.of(setup, travel);
        double spacing = position.distance() + longer;
        FittedPosition fitted = FittedPosition.of(setup, position, spacing);
        ShaftLine line = position.line();
        double inner = Double.POSITIVE_INFINITY;
        double outer = Double.POSITIVE_INFINITY;
        double innerIn = Double.NEGATIVE_INFINITY;
        double innerOut = Double.POSITIVE_INFINITY;
        for (double a = -40; a <= 40; a += 0.01) {
            double at = a;
            double b =
                    new BrentSolver(1e-10).solve(100, x -> line.length(at, x) - spacing, -150, 150);
            double innerAngle = line.innerAngle(a, b);
            double outerAngle = line.outerAngle(a, b);
            if (allows(setup.inner(), a, innerAngle) && allows(setup.outer(), b, outerAngle)) {
                inner = Math.min(inner, setup.inner().mouthClearance(a, innerAngle));
                outer = Math.min(outer, setup.outer().mouthClearance(b, outerAngle));
                innerIn = Math.max(innerIn, a);
                innerOut = Math.min(innerOut, a);
            }
        }
        assertThat(innerIn).isGreaterThan(innerOut);
        assertThat(fitted.endFloat().orElseThrow().innerIn()).isCloseTo(innerIn, within(0.3));
        assertThat(fitted.endFloat().orElseThrow().innerOut()).isCloseTo(innerOut, within(0.3));
        assertThat(fitted.innerMouth()).isCloseTo(inner, within(NEAR));
        assertThat(fitted.outerMouth()).isCloseTo(outer, within(NEAR));
    }

    /** A gap at equal push says nothing of one end of the float. */
    @Test
    void aLipThatOnlyAFloatedShaftTouchesIsTouched() {
        SideSetup setup = lipped(20.6, 20);
        Position droop = Position.of(setup, -130);
        FittedPosition fitted = FittedPosition.of(setup, droop, droop.distance());
        double still = setup.inner().mouthClearance(fitted.push(), fitted.innerAngle());
        assertThat(still).isPositive();
        assertThat(fitted.innerMouth()).isNegative();
    }

    @Test
    void withoutBoreOrLipNoFloatIsAskedFor() {
        SideSetup setup = Samples.side(Samples.path(), without(), without());
        Position ride = Position.of(setup, 0);
        FittedPosition fitted = FittedPosition.of(setup, ride, ride.distance());
        assertThat(fitted.endFloat()).isEmpty();
        assertThat(fitted.innerMouth()).isInfinite().isPositive();
    }

    private static boolean allows(MountedJoint joint, double travel, double angle) {
        return travel <= joint.inward(angle) && -travel <= joint.outward(angle);
    }

    private static SideSetup lipped(double radius, double depth) {
        MountedJoint joint = joint(OptionalDouble.of(40), Optional.of(new CupLip(radius, depth)));
        return Samples.side(Samples.path(), joint, joint);
    }

    private static MountedJoint without() {
        return joint(OptionalDouble.empty(), Optional.empty());
    }

    private static MountedJoint joint(OptionalDouble bore, Optional<CupLip> lip) {
        MountedJoint sample = Samples.mounted(Samples.BENCH, OutwardStop.HARD, 44, 0);
        Joint plain = sample.joint();
        Joint joint =
                new Joint(
                        plain.name(),
                        plain.bodyDiameter(),
                        plain.raceHalfWidth(),
                        plain.datumOffset(),
                        plain.cupBottom(),
                        bore,
                        lip,
                        plain.mouth(),
                        plain.angleMax(),
                        plain.angleContinuous(),
                        plain.outwardStop(),
                        plain.bench(),
                        plain.splines(),
                        plain.mass(),
                        plain.price(),
                        plain.spacer(),
                        Mating.UNKNOWN);
        return new MountedJoint(joint, 0, 0, sample.stub(), sample.endDiameter(), 0);
    }
}
