package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TorquePathTest {
    private static final OptionalDouble NOT_GIVEN = OptionalDouble.empty();

    private static TorquePath path(
            OptionalDouble engine, OptionalDouble clutch, Optional<TyreGrip> grip) {
        return new TorquePath(
                engine, clutch, 14, 0.9, Differential.OPEN, grip, Optional.empty(), 1.5);
    }

    /** By hand: 180·14·0.9/2 = 1134 N·m at a shaft, 1701 N·m with the shock. */
    @Test
    void engineThroughAnOpenDifferential() {
        assertThat(
                        path(OptionalDouble.of(180), NOT_GIVEN, Optional.empty())
                                .driving()
                                .orElseThrow())
                .isCloseTo(1701, within(1e-9));
    }

    /** By hand: 0.9·4000·0.35 = 1260 N·m of grip, 1890 N·m with the shock. */
    @Test
    void gripLimitsAStrongEngine() {
        Optional<TyreGrip> grip = Optional.of(new TyreGrip(0.9, 4000, 350));

        assertThat(path(OptionalDouble.of(300), NOT_GIVEN, grip).driving().orElseThrow())
                .isCloseTo(1890, within(1e-9));
    }

    @Test
    void clutchLimitsEngineAndLanding() {
        TorquePath path =
                new TorquePath(
                        OptionalDouble.of(300),
                        OptionalDouble.of(250),
                        14,
                        0.9,
                        Differential.LOCKED,
                        Optional.empty(),
                        Optional.of(new TyreGrip(1, 20_000, 350)),
                        1);

        assertThat(path.driving().orElseThrow()).isCloseTo(250 * 14 * 0.9, within(1e-9));
        assertThat(path.landing().orElseThrow()).isCloseTo(250 * 14 * 0.9, within(1e-9));
    }

    @Test
    void engineDoesNotLimitTheLanding() {
        TorquePath path =
                new TorquePath(
                        OptionalDouble.of(50),
                        NOT_GIVEN,
                        14,
                        0.9,
                        Differential.OPEN,
                        Optional.empty(),
                        Optional.of(new TyreGrip(1, 8000, 350)),
                        1);

        assertThat(path.landing().orElseThrow()).isCloseTo(2800, within(1e-9));
        assertThat(path.driving().orElseThrow()).isCloseTo(315, within(1e-9));
    }

    @Test
    void nothingKnownGivesNoTorque() {
        TorquePath path = path(NOT_GIVEN, NOT_GIVEN, Optional.empty());

        assertThat(path.driving()).isEmpty();
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
        assertThatThrownBy(
                        () ->
                                new TorquePath(
                                        NOT_GIVEN,
                                        NOT_GIVEN,
                                        14,
                                        0.9,
                                        Differential.OPEN,
                                        Optional.empty(),
                                        Optional.empty(),
                                        0.5))
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
