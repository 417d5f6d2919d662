package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Worked examples of Budynas, Nisbett, <i>Shigley's Mechanical Engineering Design</i>, eighth
 * edition, and of its solutions manual (chapters 6 and 7, file budynas_SM of 2006).
 */
class FatigueTest {
    private static final double KPSI = 6.894757;

    /** Problem 7-2: 1226 MPa, machined, 22 mm: k_a 0.685, k_b 0.893, in bending S_e 375 MPa. */
    @Test
    void enduranceLimitOfAMachinedShaft() {
        assertThat(Surface.MACHINED.factor(1226)).isCloseTo(0.685, within(5e-4));
        assertThat(Fatigue.sizeFactor(22)).isCloseTo(0.893, within(5e-4));
        assertThat(Fatigue.endurance(1226, Surface.MACHINED, 1) * Fatigue.sizeFactor(22))
                .isCloseTo(Fatigue.SHEAR_SHARE * 375, within(0.5));
    }

    /**
     * Problem 6-1: 242.6 kpsi, ground, 1/4 in: k_a 0.840, k_b 1.02, in bending S_e 85.7 kpsi, since
     * the limit stops at 100 kpsi; here at 700 MPa, which is 101.5 kpsi.
     */
    @Test
    void enduranceLimitOfHardSteelStopsRising() {
        assertThat(Surface.GROUND.factor(242.6 * KPSI)).isCloseTo(0.840, within(2e-3));
        assertThat(Fatigue.sizeFactor(25.4 / 4)).isCloseTo(1.02, within(5e-3));
        assertThat(
                        Fatigue.endurance(242.6 * KPSI, Surface.GROUND, 100 * KPSI / 700)
                                * Fatigue.sizeFactor(25.4 / 4))
                .isCloseTo(Fatigue.SHEAR_SHARE * 85.7 * KPSI, within(2.5));
    }

    /** Problem 7-2: K_ts 1.5, q_s 0.97, K_fs 1.49 (rounded up). Example 7-1: 1.42, 0.88, 1.37. */
    @Test
    void notchFactorInTorsion() {
        assertThat(Fatigue.notchFactor(1.5, 0.97)).isCloseTo(1.485, within(1e-9));
        assertThat(Fatigue.notchFactor(1.42, 0.88)).isCloseTo(1.37, within(5e-4));
        assertThatThrownBy(() -> Fatigue.notchFactor(0.9, 1)).hasMessageContaining("have 0.9");
        assertThatThrownBy(() -> Fatigue.notchFactor(2, 1.1)).hasMessageContaining("have 1.1");
    }

    /** Problem 6-12: stresses 172 and 178.4 MPa, limits 276 and 551 MPa: 1.06. */
    @Test
    void goodmanLine() {
        assertThat(Fatigue.goodman(172, 178.4, 276, 551)).isCloseTo(1.06, within(5e-3));
    }

    /**
     * By hand: 200 N·m both ways on 20 mm is 127.3 MPa; with a notch of 1.5 against 191 MPa the
     * factor is 1. On and off, 63.66 MPa is mean and as much alternates: 1/(95.49/191 + 63.66/670)
     * = 1.681, with the notch on the mean too 1/(95.49/191 + 95.49/670) = 1.557.
     */
    @Test
    void torqueOnAndOffTiresLessThanBothWays() {
        double shear = Bar.shearStress(1, 20, 0);

        assertThat(new TorqueCycles(200, 0).factor(shear, 1.5, 1, 191, 670))
                .isCloseTo(1, within(1e-3));
        assertThat(new TorqueCycles(0, 200).factor(shear, 1.5, 1, 191, 670))
                .isCloseTo(1.681, within(1e-3));
        assertThat(new TorqueCycles(0, 200).factor(shear, 1.5, 1.5, 191, 670))
                .isCloseTo(1.557, within(1e-3));
    }

    @Test
    void worseOfBothKindsCounts() {
        double shear = Bar.shearStress(1, 20, 0);

        assertThat(new TorqueCycles(50, 200).factor(shear, 1.5, 1, 191, 670))
                .isEqualTo(new TorqueCycles(0, 200).factor(shear, 1.5, 1, 191, 670));
        assertThat(new TorqueCycles(190, 200).factor(shear, 1.5, 1, 191, 670))
                .isEqualTo(new TorqueCycles(190, 0).factor(shear, 1.5, 1, 191, 670));
    }
}
