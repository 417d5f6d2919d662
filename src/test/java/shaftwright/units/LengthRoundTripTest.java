package shaftwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class LengthRoundTripTest {
    @Property
    void everySixtyFourthIsShownAndReadBack(
            @ForAll @IntRange(min = -12_800, max = 12_800) int count) {
        Length length = Length.of(count / 64.0, LengthUnit.INCH);
        Length again =
                Length.parse(length.format(LengthStyle.SIXTY_FOURTHS), LengthUnit.MILLIMETRE);
        assertThat(again.mm()).isCloseTo(length.mm(), within(1e-10));
    }

    @Property
    void toStringIsReadBack(@ForAll @DoubleRange(min = -5_000, max = 5_000) double mm) {
        Length again = Length.parse(new Length(mm).toString(), LengthUnit.INCH);
        assertThat(again.mm()).isCloseTo(mm, within(1e-12));
    }

    @Property
    void shownTextIsWithinHalfOfItsLastPlace(
            @ForAll @DoubleRange(min = -5_000, max = 5_000) double mm, @ForAll LengthStyle style) {
        double step =
                switch (style) {
                    case DECIMAL_INCH -> 0.0254;
                    case SIXTEENTHS -> 25.4 / 16;
                    case THIRTY_SECONDS -> 25.4 / 32;
                    case SIXTY_FOURTHS -> 25.4 / 64;
                    case MILLIMETRES -> 0.1;
                };
        Length again = Length.parse(new Length(mm).format(style), LengthUnit.MILLIMETRE);
        // Settling six decimals first may move a half by a millionth of a step.
        assertThat(again.mm()).isCloseTo(mm, within(step * (0.5 + 1e-6)));
    }

    @Property
    void mirroredTextIsMirroredLength(
            @ForAll @IntRange(max = 99) int whole, @ForAll @IntRange(min = 1, max = 31) int count) {
        String text = whole + " " + count + "/32";
        assertThat(Length.parse("-" + text, LengthUnit.INCH).mm())
                .isEqualTo(-Length.parse(text, LengthUnit.INCH).mm());
    }
}
