package shaftwright.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TyreTest {
    private static final double INCH = 25.4;
    private static final Tyre THIRTY = of("30x9.50-15");

    private static Tyre of(String size) {
        return new Tyre(TyreSize.parse(size).freeDiameter().orElseThrow());
    }

    /** Common practice, no source. */
    @Test
    void thirtyInchTyreThatMeasuresTwentyNineCostsHalfAnInchOfClearance() {
        Tyre measured = new Tyre(29 * INCH);
        assertThat(measured.clearanceGainOver(THIRTY)).isCloseTo(-INCH / 2, within(1e-12));
    }

    /**
     * 195/65 R15 rolls 1937 mm in the ETRTO tables (from memory), which round the diameter to whole
     * millimetres before they multiply, and then the circumference.
     */
    @Test
    void rollingCircumferenceOfACommonSize() {
        Tyre tyre = of("195/65 R15");
        assertThat(tyre.rollingCircumference()).isCloseTo(1937, within(3.05 * 0.5 + 0.5));
    }

    /** 100 km/h are 100 000 m / 60 min: by hand. */
    @Test
    void wheelSpeedTimesCircumferenceIsRoadSpeed() {
        double metresPerMinute = THIRTY.wheelSpeed(100) * THIRTY.rollingCircumference() / 1000;
        assertThat(metresPerMinute).isCloseTo(100_000 / 60.0, within(1e-9));
    }

    @Test
    void moreOffsetNarrowsAndSpacerWidensTheTrack() {
        assertThat(Tyre.trackWidth(750, 0, 0)).isEqualTo(1500);
        assertThat(Tyre.trackWidth(750, 0, 20)).isEqualTo(1460);
        assertThat(Tyre.trackWidth(750, 25, 0)).isEqualTo(1550);
    }

    @Test
    void overallWidthAddsOneSectionWidth() {
        assertThat(Tyre.overallWidth(1500, 9.5 * INCH)).isCloseTo(1500 + 9.5 * INCH, within(1e-9));
    }

    /** By hand: 2π times the radius is the way of one turn. */
    @Test
    void wheelOfTheRollingRadiusRollsAsFar() {
        assertThat(2 * Math.PI * THIRTY.rollingRadius())
                .isCloseTo(THIRTY.rollingCircumference(), within(1e-9));
    }

    @Test
    void diameterMustBeKnown() {
        assertThatThrownBy(() -> new Tyre(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tyre diameter must be a number; have NaN");
    }

    @Property
    void spacerAndLessOffsetAreTheSameThing(
            @ForAll @DoubleRange(min = 400, max = 1200) double face,
            @ForAll @DoubleRange(min = 0, max = 100) double spacer) {
        assertThat(Tyre.trackWidth(face, spacer, 0))
                .isCloseTo(Tyre.trackWidth(face, 0, -spacer), within(1e-9));
    }
}
