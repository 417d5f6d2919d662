package shaftwright.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class BootSeatsTest {
    private static final double ANGLE = Math.toRadians(24);

    /**
     * A centre line hides what tears: with seats of radius 38 and 12 mm it is 37 mm long at 24°,
     * the fibres 19 and 63 (checked by hand, seats 39.6 and 69.8 mm off).
     */
    @Test
    void fibresAreFarShorterAndLongerThanTheCentreLine() {
        BootSeats seats = new BootSeats(39.6, 69.8, 38, 12);
        assertThat(seats.centreLine(0, ANGLE)).isCloseTo(37, within(0.5));
        assertThat(seats.shortestFibre(0, ANGLE)).isCloseTo(19, within(0.5));
        assertThat(seats.longestFibre(0, ANGLE)).isCloseTo(63, within(0.5));
    }

    @Test
    void allFibresOfAStraightBootAreAlike() {
        BootSeats seats = new BootSeats(20, 80, 40, 14);
        assertThat(seats.centreLine(5, 0)).isCloseTo(55, within(1e-9));
        assertThat(seats.shortestFibre(5, 0)).isCloseTo(Math.hypot(55, 26), within(1e-9));
        assertThat(seats.longestFibre(5, 0)).isCloseTo(seats.straightFibre(55), within(1e-9));
    }

    @Test
    void raceThatGoesInShortensTheBoot() {
        BootSeats seats = new BootSeats(20, 80, 40, 14);
        assertThat(seats.centreLine(10, ANGLE)).isLessThan(seats.centreLine(-10, ANGLE));
        assertThat(seats.longestFibre(10, ANGLE)).isLessThan(seats.longestFibre(-10, ANGLE));
    }

    /**
     * Reference: points of both circles in space (Hipparchus), opposite ones paired, by brute
     * force.
     */
    @Property(tries = 200)
    void fibresAreThoseBetweenTwoCirclesInSpace(
            @ForAll @DoubleRange(min = -20, max = 60) double cup,
            @ForAll @DoubleRange(min = 30, max = 160) double shaft,
            @ForAll @DoubleRange(min = 20, max = 60) double cupRadius,
            @ForAll @DoubleRange(min = 8, max = 30) double shaftRadius,
            @ForAll @DoubleRange(min = -25, max = 25) double inward,
            @ForAll @DoubleRange(min = 0, max = 0.6) double angle) {
        BootSeats seats = new BootSeats(cup, shaft, cupRadius, shaftRadius);
        Vector3D race = new Vector3D(-inward, Vector3D.PLUS_I);
        Rotation tilt = new Rotation(Vector3D.PLUS_K, angle, RotationConvention.VECTOR_OPERATOR);
        Vector3D along = tilt.applyTo(Vector3D.PLUS_I);
        Vector3D onCup = new Vector3D(cup, Vector3D.PLUS_I);
        Vector3D onShaft = race.add(shaft, along);
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        for (int degree = 0; degree < 360; degree++) {
            Vector3D round =
                    new Vector3D(
                            Math.cos(Math.toRadians(degree)),
                            Vector3D.PLUS_J,
                            Math.sin(Math.toRadians(degree)),
                            Vector3D.PLUS_K);
            double fibre =
                    onCup.add(cupRadius, round)
                            .distance(onShaft.add(shaftRadius, tilt.applyTo(round)));
            shortest = Math.min(shortest, fibre);
            longest = Math.max(longest, fibre);
        }
        assertThat(seats.centreLine(inward, angle))
                .isCloseTo(onCup.distance(onShaft), within(1e-9));
        // The least may lie between two whole degrees.
        assertThat(seats.shortestFibre(inward, angle)).isBetween(shortest - 0.05, shortest + 1e-9);
        assertThat(seats.longestFibre(inward, angle)).isCloseTo(longest, within(1e-9));
    }
}
