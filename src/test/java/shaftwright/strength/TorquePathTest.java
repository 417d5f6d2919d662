package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TorquePathTest {
    private static final OptionalDouble NOT_GIVEN = OptionalDouble.empty();

    private static final Gears OPEN = new Gears(14, 0.9, Differential.OPEN);
    private static final Gears LOCKED = new Gears(14, 0.9, Differential.LOCKED);

    private static OptionalDouble torque(double newtonMetres) {
        return OptionalDouble.of(newtonMetres);
    }

    /** By hand: 180·14·0.9/2 = 1134 N·m at a shaft, 1701 N·m with the shock. */
    @Test
    void engineThroughAnOpenDifferential() {
        TorquePath path =
                new TorquePath(torque(OPEN.shaftTorque(180)), NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, 1.5);

        assertThat(path.running().orElseThrow()).isCloseTo(1134, within(1e-9));
        assertThat(path.driving().orElseThrow()).isCloseTo(1701, within(1e-9));
    }

    /** By hand: 0.9·4000·0.35 = 1260 N·m of grip, 1890 N·m with the shock. */
    @Test
    void gripLimitsAStrongEngine() {
        TorquePath path =
                new TorquePath(
                        torque(OPEN.shaftTorque(300)),
                        NOT_GIVEN,
                        torque(new TyreGrip(0.9, 4000, 350).torque()),
                        NOT_GIVEN,
                        1.5);

        assertThat(path.driving().orElseThrow()).isCloseTo(1890, within(1e-9));
    }

    @Test
    void clutchLimitsEngineAndLanding() {
        TorquePath path =
                new TorquePath(
                        torque(LOCKED.shaftTorque(300)),
                        torque(LOCKED.shaftTorque(250)),
                        NOT_GIVEN,
                        torque(new TyreGrip(1, 20_000, 350).torque()),
                        1);

        assertThat(path.driving().orElseThrow()).isCloseTo(250 * 14 * 0.9, within(1e-9));
        assertThat(path.landing().orElseThrow()).isCloseTo(250 * 14 * 0.9, within(1e-9));
    }

    @Test
    void engineDoesNotLimitTheLandingWhichPartsMustTake() {
        TorquePath path =
                new TorquePath(
                        torque(OPEN.shaftTorque(50)),
                        NOT_GIVEN,
                        NOT_GIVEN,
                        torque(new TyreGrip(1, 8000, 350).torque()),
                        1);

        assertThat(path.landing().orElseThrow()).isCloseTo(2800, within(1e-9));
        assertThat(path.driving().orElseThrow()).isCloseTo(315, within(1e-9));
        assertThat(path.needed().orElseThrow()).isCloseTo(2800, within(1e-9));
    }

    @Test
    void nothingKnownGivesNoTorque() {
        TorquePath path = new TorquePath(NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, 1);

        assertThat(path.driving()).isEmpty();
        assertThat(path.landing()).isEmpty();
        assertThat(path.needed()).isEmpty();
    }

    /** What the ground lets through is not known, and a clutch alone is no landing. */
    @Test
    void aClutchAloneGivesNoLanding() {
        TorquePath path = new TorquePath(NOT_GIVEN, torque(2000), NOT_GIVEN, NOT_GIVEN, 1);

        assertThat(path.landing()).isEmpty();
    }

    /** A bias of 3 gives three quarters to one side: b/(1 + b). */
    @Test
    void limitedSlipSharesByItsBias() {
        assertThat(Differential.limitedSlip(3).share()).isEqualTo(0.75);
        assertThat(Differential.limitedSlip(1)).isEqualTo(Differential.OPEN);
    }

    @Test
    void shockFactorIsAtLeastOne() {
        assertThatThrownBy(() -> new TorquePath(NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, NOT_GIVEN, 0.5))
                .hasMessageContaining("shock factor must be 1 or more; have 0.5");
    }

    @Test
    void weakestPartComesFirst() {
        WeakestPart parts =
                new WeakestPart(
                        1500,
                        List.of(
                                new RatingRow("shaft bar", 3200),
                                new RatingRow("hub spline", 2100),
                                new RatingRow("flange bolts", 2400)));

        assertThat(parts.least().part()).isEqualTo("hub spline");
        assertThat(parts.factor()).isCloseTo(1.4, within(1e-12));
        assertThat(parts.rows())
                .extracting(RatingRow::part)
                .containsExactly("hub spline", "flange bolts", "shaft bar");
    }
}
