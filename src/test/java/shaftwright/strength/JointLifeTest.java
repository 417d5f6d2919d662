package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class JointLifeTest {
    /**
     * Seherr-Thoss, Schmelz, Aucktor, <i>Universal Joints and Driveshafts</i> (formulas from
     * memory), worked by hand: straight at 100 rpm with M = M_d 25339/100^0.577 = 1777 hours; at
     * 2000 rpm 235.4 hours; at 1000 rpm both formulas give 470.7.
     */
    @Test
    void hoursWorkedByHand() {
        assertThat(JointLife.hours(300, 300, 0, 100)).isCloseTo(1777, within(1.0));
        assertThat(JointLife.hours(300, 300, 0, 2000)).isCloseTo(235.4, within(0.05));
        assertThat(JointLife.hours(300, 300, 0, 1000))
                .isCloseTo(JointLife.hours(300, 300, 0, 1000.001), within(0.2));
    }

    /** By hand: (1 - sin 10°) cos² 10° = 0.8264·0.9698 = 0.8014. */
    @Test
    void angleTakesCapacity() {
        assertThat(JointLife.angleFactor(0)).isEqualTo(1);
        assertThat(JointLife.angleFactor(Math.toRadians(10))).isCloseTo(0.8014, within(5e-5));
    }

    /** Ball contacts: half the torque gives eight times the life. */
    @Test
    void lifeGoesWithTheCubeOfTorque() {
        assertThat(JointLife.hours(300, 100, 0.1, 500))
                .isCloseTo(8 * JointLife.hours(300, 200, 0.1, 500), within(1e-6));
    }

    /** Palmgren and Miner by hand: half the time at 100 h, half at 300 h, makes 150 h. */
    @Test
    void mixOfDuties() {
        assertThat(JointLife.mixed(new double[] {1, 1}, new double[] {100, 300}))
                .isCloseTo(150, within(1e-9));
        assertThatThrownBy(() -> JointLife.mixed(new double[] {1}, new double[] {100, 300}))
                .hasMessageContaining("one life per share; have 1 and 2");
    }
}
