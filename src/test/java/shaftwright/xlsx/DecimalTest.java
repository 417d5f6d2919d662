package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick comparison against the library's exact reading. */
class DecimalTest {
    private static final long MANTISSAS = (1L << 52) - 1;

    /** Any double of that size. */
    private static double number(long mantissa, int exponent) {
        return Math.scalb(1 + Math.scalb((double) mantissa, -52), exponent);
    }

    private static Decimal.Match match(String text, double value) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Decimal.match(bytes, 0, bytes.length, value);
    }

    /** It may say that it does not know, but never the wrong thing. */
    private static void agrees(String text, double value) {
        Decimal.Match said = match(text, value);
        if (said != Decimal.Match.UNKNOWN) {
            assertThat(said == Decimal.Match.YES)
                    .as(text + " as " + value)
                    .isEqualTo(Double.parseDouble(text) == value);
        }
    }

    @Property(tries = 20_000)
    void recognisesWhatTheLibraryWrites(
            @ForAll @LongRange(min = 0, max = MANTISSAS) long mantissa,
            @ForAll @IntRange(min = -20, max = 20) int exponent,
            @ForAll boolean negative) {
        double size = number(mantissa, exponent);
        double value = negative ? -size : size;
        agrees(Double.toString(value), value);
        if (Math.abs(value) >= 1e-3) {
            assertThat(match(Double.toString(value), value)).isEqualTo(Decimal.Match.YES);
        }
    }

    @Property(tries = 20_000)
    void tellsNeighboursApart(
            @ForAll @LongRange(min = 0, max = MANTISSAS) long mantissa,
            @ForAll @IntRange(min = -10, max = 10) int exponent,
            @ForAll @IntRange(min = -3, max = 3) int steps) {
        double value = number(mantissa, exponent);
        double other = value;
        for (int i = 0; i < Math.abs(steps); i++) {
            other = steps < 0 ? Math.nextDown(other) : Math.nextUp(other);
        }
        agrees(Double.toString(value), other);
        agrees(new BigDecimal(value).round(new MathContext(17)).toPlainString(), other);
        agrees(new BigDecimal(value).round(new MathContext(15)).toPlainString(), other);
    }

    /** The halfway points between neighbours, where rounding decides. */
    @Property(tries = 20_000)
    void neverErrsHalfWay(
            @ForAll @LongRange(min = 0, max = MANTISSAS) long mantissa,
            @ForAll @IntRange(min = -10, max = 10) int exponent) {
        double value = number(mantissa, exponent);
        BigDecimal half =
                new BigDecimal(value)
                        .add(new BigDecimal(Math.nextUp(value)))
                        .divide(BigDecimal.valueOf(2));
        String near = half.round(new MathContext(17)).toPlainString();
        agrees(near, value);
        agrees(near, Math.nextUp(value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4, 0.5, 0.25, 1024, 0.0009765625})
    void isRightAtPowersOfTwo(double power) {
        for (double value : new double[] {power, Math.nextDown(power), Math.nextUp(power)}) {
            for (double other : new double[] {power, Math.nextDown(power), Math.nextUp(power)}) {
                agrees(Double.toString(value), other);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "-", ".", "1e5", "1E+5", "1E", "1E-", "0x1", " 1", "1 ", "NaN", "1E123"})
    void leavesUnusualTextsToExactReading(String text) {
        assertThat(match(text, 1)).isEqualTo(Decimal.Match.UNKNOWN);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "-0", "0.000E-5"})
    void takesEveryZeroForZero(String text) {
        assertThat(match(text, 0)).isEqualTo(Decimal.Match.YES);
        assertThat(match(text, 1e-300)).isEqualTo(Decimal.Match.NO);
    }
}
