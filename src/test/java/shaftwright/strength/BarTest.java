package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shaftwright.units.ContradictingSizesException;

class BarTest {
    private static final double INCH = 25.4;
    private static final double PSI = 0.006894757293168361;
    private static final double POUND_INCH = 0.1129848290276167;
    private static final double POUND_MASS_PER_CUBIC_INCH = 2.767990471020e-8;

    private static final Material STEEL = new Material("steel", 1000, 206000, 79300, 7.85e-9);

    /**
     * Singer, Pytel, <i>Strength of Materials</i>, problem 304 (from memory, edition not at hand):
     * a steel shaft of 4 in diameter and 3 ft length under 15 kip·ft, G = 12e6 psi, sees 14.3 ksi
     * and twists by 1.23°.
     */
    @Test
    void solidShaftOfATextbookProblem() {
        Material steel = new Material("steel", 250, 30e6 * PSI, 12e6 * PSI, 7.85e-9);
        Bar shaft = new Bar(4 * INCH, 0, steel);
        double torque = 15_000 * 12 * POUND_INCH;

        assertThat(shaft.shearStress(torque) / PSI / 1000).isCloseTo(14.3, within(0.05));
        assertThat(Math.toDegrees(shaft.twist(torque, 36 * INCH))).isCloseTo(1.23, within(0.005));
    }

    /**
     * Shigley, <i>Mechanical Engineering Design</i>, example on critical speeds (from memory): a
     * steel shaft of 1 in diameter on supports 31 in apart, E = 30e6 psi, 0.282 lb/in³, has its
     * first critical speed at 520 rad/s.
     */
    @Test
    void criticalSpeedOfATextbookExample() {
        Material steel =
                new Material(
                        "steel", 250, 30e6 * PSI, 11.5e6 * PSI, 0.282 * POUND_MASS_PER_CUBIC_INCH);
        double rpm = new Bar(INCH, 0, steel).criticalSpeed(31 * INCH);

        assertThat(rpm * Math.PI / 30).isCloseTo(520, within(1.0));
    }

    /**
     * Machinists' handbooks (from memory): 4,760,000 d/L² rpm for a plain steel shaft on two
     * supports, inches.
     */
    @Test
    void criticalSpeedOfTheHandbooksFormula() {
        double rpm = new Bar(1.25 * INCH, 0, STEEL).criticalSpeed(24 * INCH);

        assertThat(rpm).isCloseTo(4_760_000 * 1.25 / (24 * 24), within(0.02 * rpm));
    }

    /**
     * Distortion energy: shear yield is 0.577 of the tensile (any text on strength of materials).
     */
    @Test
    void shearYieldByDistortionEnergy() {
        assertThat(STEEL.shearYield()).isCloseTo(577, within(0.5));
    }

    @Property
    void stressAtTheYieldTorqueIsTheShearYield(
            @ForAll @DoubleRange(min = 10, max = 60) double diameter,
            @ForAll @DoubleRange(min = 0, max = 0.95) double hollow) {
        Bar bar = new Bar(diameter, diameter * hollow, STEEL);

        assertThat(bar.shearStress(bar.yieldTorque()))
                .isCloseTo(STEEL.shearYield(), within(1e-9 * STEEL.shearYield()));
    }

    /**
     * Polar moments and second moments add up: what the bore takes away is a solid bar of its size.
     */
    @Property
    void hollowBarIsASolidOneLessItsCore(
            @ForAll @DoubleRange(min = 10, max = 60) double diameter,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double hollow) {
        double whole = 1 / new Bar(diameter, 0, STEEL).twist(100, 500);
        double core = 1 / new Bar(diameter * hollow, 0, STEEL).twist(100, 500);
        double rest = 1 / new Bar(diameter, diameter * hollow, STEEL).twist(100, 500);

        assertThat(rest).isCloseTo(whole - core, within(1e-9 * whole));
    }

    /** A tube of the same outside whirls faster: {@code √(D² + d²)} against {@code D}. */
    @Test
    void tubeWhirlsFaster() {
        double solid = new Bar(40, 0, STEEL).criticalSpeed(600);
        double tube = new Bar(40, 30, STEEL).criticalSpeed(600);

        assertThat(tube / solid).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void boreMustBeSmallerThanTheBar() {
        assertThatThrownBy(() -> new Bar(30, 30, STEEL))
                .isInstanceOf(ContradictingSizesException.class)
                .hasMessageContaining(
                        "diameter of a bar must be more than its bore; have 30.0 and 30.0");
    }

    @Test
    void materialNeedsItsStrength() {
        assertThatThrownBy(() -> new Material("steel", 0, 206000, 79300, 7.85e-9))
                .hasMessageContaining("yield strength must be above zero; have 0.0");
    }
}
