package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TravelSharesTest {
    private static final double BUMP = Math.toRadians(17);
    private static final double RIDE = Math.toRadians(6);
    private static final double DROOP = Math.toRadians(14);

    /**
     * The published formula (Seherr-Thoss, Schmelz, Aucktor, from memory) at each angle alone,
     * summed by hand as Palmgren and Miner do: 1/(0.2/L_bump + 0.7/L_ride + 0.1/L_droop).
     */
    @Test
    void lifeIsSpreadOverTheTravel() {
        TravelShares shares = TravelShares.percent(20, 70, 10);
        double straight = JointLife.hours(300, 300, 0, 400);
        double used =
                0.2 / JointLife.hours(300, 120, BUMP, 400)
                        + 0.7 / JointLife.hours(300, 120, RIDE, 400)
                        + 0.1 / JointLife.hours(300, 120, DROOP, 400);

        assertThat(JointLife.hoursAt(straight, 300, 120, shares.use(BUMP, RIDE, DROOP)))
                .isCloseTo(1 / used, within(1e-9 / used));
    }

    /**
     * By calculator: A is 0.6471 at 17°, 0.8857 at 6°, 0.7137 at 14°; 0.2/A³ + 0.7/A³ + 0.1/A³ =
     * 0.7380 + 1.0075 + 0.2751 = 2.0206.
     */
    @Test
    void useWorkedByHand() {
        assertThat(TravelShares.percent(20, 70, 10).use(BUMP, RIDE, DROOP))
                .isCloseTo(2.0206, within(1e-4));
    }

    @Test
    void allAtRideIsTheLifeAtThatAngle() {
        assertThat(JointLife.hoursAt(1777, 300, 120, TravelShares.RIDE.use(BUMP, RIDE, DROOP)))
                .isCloseTo(JointLife.hoursFrom(1777, 300, 120, RIDE), within(1e-9));
    }

    @Test
    void sharesAddToAHundred() {
        assertThat(TravelShares.add(33.33, 33.33, 33.34)).isTrue();
        assertThat(TravelShares.add(20, 70, 5)).isFalse();
        assertThatThrownBy(() -> TravelShares.percent(20, 70, 5))
                .hasMessageContaining("sum of the shares of time");
    }

    /** By hand: 600 rpm at 8.5° are 5100 rpm times degrees. */
    @Test
    void speedTimesAngle() {
        assertThat(JointLife.speedAngle(600, Math.toRadians(8.5))).isCloseTo(5100, within(1e-9));
    }
}
