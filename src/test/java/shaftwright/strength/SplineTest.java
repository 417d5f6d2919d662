package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.units.ContradictingSizesException;

class SplineTest {
    private static final double KSI = 6.894757293168361;

    /**
     * The four stresses in the terms of Dudley's article, which several handbooks reprint, worked
     * by hand: 30 teeth, D = 1.25 in, D_re = 1.175 in, L_e = 1 in, t = 0.065 in, h = 0.0417 in and
     * 20,000 lb·in. Root 16·20000/(π 1.6222) = 62.79 ksi; teeth 4·20000/(1.25·30·1·0.065) = 32.82
     * ksi; flanks 2·20000/(1.25·30·1·0.0417) = 25.58 ksi when flexible, 2.842 ksi when fixed.
     */
    @Test
    void stressesWorkedByHand() {
        Spline spline = new Spline(30, 31.75, 29.845, 25.4, 1.651, 1.05918, 0);
        double torque = 20_000 * 0.1129848290276167;

        assertThat(spline.rootShear(torque) / KSI).isCloseTo(62.79, within(0.01));
        assertThat(spline.toothShear(torque, 1) / KSI).isCloseTo(32.82, within(0.01));
        assertThat(spline.bearing(torque, 1, SplineHold.FLEXIBLE) / KSI)
                .isCloseTo(25.58, within(0.01));
        assertThat(spline.bearing(torque, 1, SplineHold.FIXED) / KSI)
                .isCloseTo(2.842, within(0.001));
    }

    /**
     * A hollow shaft's root shear is a tube's, {@code 16 T D/(π (D⁴ - d⁴))} (any text on strength
     * of materials), worked by hand: 1,000 N·m, D = 26 mm, d = 20 mm: 16·26·10⁶/(π 296,976) = 445.9
     * MPa, where the solid shaft has 16·10⁶/(π 17,576) = 289.8 MPa.
     */
    @Test
    void aBoreRaisesTheShearUnderTheRoots() {
        Spline solid = new Spline(28, 28, 26, 25.4, 1.57, 0.9, 0);

        assertThat(solid.rootShear(1_000)).isCloseTo(289.8, within(0.05));
        assertThat(solid.on(26, 20).rootShear(1_000)).isCloseTo(445.9, within(0.05));
    }

    /**
     * ANSI B92.1, 24/48 pitch, fillet root, side fit (from memory): pitch diameter N/P, outside (N
     * + 1)/P, root (N - 1.8)/P, circular tooth thickness π/2P.
     */
    @Test
    void standardProportions() {
        Spline spline = Spline.ofModule(30, 25.4 / 24, 25.4);

        assertThat(spline.pitchDiameter() / 25.4).isCloseTo(1.25, within(1e-12));
        assertThat(spline.rootDiameter() / 25.4).isCloseTo(1.175, within(1e-12));
        assertThat(spline.toothThickness() / 25.4).isCloseTo(0.06545, within(5e-6));
        assertThat(spline.contactHeight() / 25.4).isCloseTo(0.0417, within(5e-5));
        assertThat(Spline.ofOutside(30, 25.4 * 31 / 24, 25.4))
                .usingRecursiveComparison()
                .withComparatorForType(
                        (a, b) -> Math.abs(a - b) < 1e-12 ? 0 : Double.compare(a, b), Double.class)
                .isEqualTo(spline);
    }

    /**
     * Allowed stresses in ksi: Dudley, "When splines need stress control", Product Engineering,
     * 1957, as Machinery's Handbook repeats them under involute splines; from memory.
     */
    @ParameterizedTest
    @CsvSource({"SOFT,20,1.5", "TOUGH,30,2", "HARD,40,3", "SURFACE,40,4", "CASE,50,5"})
    void allowedStresses(SplineStrength.Hardness hardness, double shear, double bearing) {
        assertThat(hardness.strength().shear() / KSI).isCloseTo(shear, within(1e-5));
        assertThat(hardness.strength().bearing() / KSI).isCloseTo(bearing, within(1e-5));
    }

    @Property
    void atItsCapacityTheWorstStressIsJustAllowed(
            @ForAll @DoubleRange(min = 0.5, max = 2) double module,
            @ForAll @DoubleRange(min = 5, max = 80) double length,
            @ForAll SplineHold hold) {
        SplineStrength strength = SplineStrength.Hardness.CASE.strength().forLife(1.8, 4);
        Spline spline = Spline.ofModule(28, module, length);
        double torque = spline.capacity(strength, 1.5, hold);

        double life = hold == SplineHold.FIXED ? 1.8 : 4;
        double worst =
                Math.max(
                        Math.max(spline.rootShear(torque), spline.toothShear(torque, 1.5))
                                / (strength.shear() * 1.8),
                        spline.bearing(torque, 1.5, hold) / (strength.bearing() * life));
        assertThat(worst).isCloseTo(1, within(1e-9));
    }

    @Test
    void rootLiesBelowThePitchDiameter() {
        assertThatThrownBy(() -> new Spline(30, 30, 31, 20, 1.5, 1, 0))
                .isInstanceOf(ContradictingSizesException.class)
                .hasMessageContaining("must be more than root diameter; have 30.0 and 31.0");
    }
}
