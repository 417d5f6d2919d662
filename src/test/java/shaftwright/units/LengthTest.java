package shaftwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 25.4 mm to the inch, exactly: ISO 31-1:1992 annex, and the inch agreement of 1959. */
class LengthTest {
    private static final double TIGHT = 1e-12;

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "25 3/8; 25.375",
                "25-3/8\"; 25.375",
                "25.375 in; 25.375",
                "3/8; 0.375",
                "25 3/8 inches; 25.375",
                "25 3/8''; 25.375",
                "2' 1 3/8\"; 25.375",
                "2'-1 3/8\"; 25.375",
                "2\u2032 6\u2033; 30",
                "25 24/64; 25.375",
                ".5; 0.5",
                "25,5; 25.5",
                "-1/2; -0.5",
                "\u22121/2; -0.5",
                "+30; 30",
                "25,3750 in; 25.375",
                "24 \u00bd; 24.5",
                "24\u00bd\"; 24.5",
                "24-\u00be; 24.75",
                "-\u215c; -0.375",
                "2' 1\u215e; 25.875",
                "25 3\u20448; 25.375",
                "25\u00a03/8\u202fin; 25.375",
                "12 cm; 4.724409448818898"
            })
    void tapeInInches(String text, double inches) {
        assertThat(Length.parse(text, LengthUnit.INCH).inches()).isCloseTo(inches, within(TIGHT));
    }

    @Test
    void bareNumberIsInTheWorkbooksUnit() {
        assertThat(Length.parse("645", LengthUnit.MILLIMETRE).mm()).isEqualTo(645);
        assertThat(Length.parse("10", LengthUnit.INCH).mm()).isEqualTo(254);
    }

    @Test
    void millimetresMayBeWrittenInAnInchWorkbook() {
        assertThat(Length.parse("645 mm", LengthUnit.INCH).mm()).isEqualTo(645);
        assertThat(Length.parse("645,5mm", LengthUnit.INCH).mm()).isEqualTo(645.5);
    }

    @Test
    void thirdsAreReadFromTheirSignsAndWrittenOut() {
        for (String text : new String[] {"\u2153", "1/3", "2\u2153 in", "2 1/3"}) {
            double whole = text.startsWith("2") ? 2 : 0;
            assertThat(Length.parse(text, LengthUnit.MILLIMETRE).inches())
                    .isCloseTo(whole + 1 / 3.0, within(TIGHT));
        }
        assertThat(Length.parse("\u2154", LengthUnit.INCH).inches())
                .isCloseTo(2 / 3.0, within(TIGHT));
    }

    @Test
    void centimetresMayBeWrittenInEitherWorkbook() {
        assertThat(Length.parse("64,5 cm", LengthUnit.INCH).mm()).isEqualTo(645);
        assertThat(Length.parse("64.5cm", LengthUnit.MILLIMETRE).mm()).isEqualTo(645);
    }

    @Test
    void fractionIsInchesEvenInAMillimetreWorkbook() {
        assertThat(Length.parse("10 1/2", LengthUnit.MILLIMETRE).mm())
                .isCloseTo(266.7, within(TIGHT));
        assertThat(Length.parse("1' 6", LengthUnit.MILLIMETRE).mm())
                .isCloseTo(457.2, within(TIGHT));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "~~; nothing in it",
                "~  ~; only spaces",
                "25 3/0; the bottom of a fraction is 2, 3, 4, 8, 16, 32 or 64, not 0",
                "25 3/10; or 64, not 10",
                "25 3/; or 64, not nothing",
                "25 12/8; a number from 1 to 7, not 12",
                "25 3; the second is no fraction",
                "25.5 3/8; a decimal and a fraction do not go together",
                "25--3/8; \"--3/8\" is left over",
                "1 1/2 1/2; \"1/2\" is left over",
                "2'3mm; mm does not go with them",
                "25 3/8 mm; mm does not go with them",
                "1e3; \"e3\" is left over",
                "5%; \"%\" is left over",
                "1:30; \":30\" is left over",
                "3 May; \"may\" is left over",
                "1,234.5; may mean thousands",
                "25,375; may mean thousands",
                "25.; a digit is missing after the decimal sign",
                "25 \u2155; \"\u2155\" is left over",
                "25.5\u00bd; a decimal and a fraction do not go together",
                "2'-; a number is missing before \"-\"",
                "-; a number is missing at the end",
                "2\u00bd cm; cm does not go with them",
                "2 ft; \"ft\" is left over",
                "12345678901234567; more than 16 digits"
            })
    void refusalSaysWhy(String text, String reason) {
        assertThatThrownBy(() -> Length.parse(text, LengthUnit.INCH))
                .isInstanceOf(UnreadableLengthException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining("found \"" + text + "\"")
                .hasMessageEndingWith("expected " + UnreadableLengthException.EXPECTED);
    }

    @Test
    void lineBreakIsNamed() {
        assertThatThrownBy(() -> Length.parse("25\n3/8", LengthUnit.INCH))
                .hasMessageContaining("line break or tab");
    }

    @Test
    void shownAsTheTapeReads() {
        Length length = Length.of(25.375, LengthUnit.INCH);
        assertThat(length.format(LengthStyle.DECIMAL_INCH)).isEqualTo("25.375 in");
        assertThat(length.format(LengthStyle.SIXTEENTHS)).isEqualTo("25 3/8 in");
        assertThat(length.format(LengthStyle.THIRTY_SECONDS)).isEqualTo("25 3/8 in");
        assertThat(length.format(LengthStyle.SIXTY_FOURTHS)).isEqualTo("25 3/8 in");
        assertThat(length.format(LengthStyle.MILLIMETRES)).isEqualTo("644.5 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 in",
        "24, 24 in",
        "0.375, 3/8 in",
        "-0.375, -3/8 in",
        "-24.5, -24 1/2 in",
        "0.001, 0 in",
        "-0.001, 0 in",
        "25.999, 26 in",
        "25.984375, 25 63/64 in",
        "25.3828125, 25 25/64 in",
        "-25.3828125, -25 25/64 in"
    })
    void nearestSixtyFourthReduced(double inches, String shown) {
        assertThat(Length.of(inches, LengthUnit.INCH).format(LengthStyle.SIXTY_FOURTHS))
                .isEqualTo(shown);
    }

    @Test
    void coarserMarksRoundFurther() {
        Length length = Length.parse("25 25/64", LengthUnit.INCH);
        assertThat(length.format(LengthStyle.THIRTY_SECONDS)).isEqualTo("25 13/32 in");
        assertThat(length.format(LengthStyle.SIXTEENTHS)).isEqualTo("25 3/8 in");
    }

    @Test
    void smallNegativeShowsNoMinus() {
        assertThat(new Length(-0.01).format(LengthStyle.MILLIMETRES)).isEqualTo("0.0 mm");
        assertThat(new Length(-0.01).format(LengthStyle.DECIMAL_INCH)).isEqualTo("0.000 in");
    }

    @Test
    void endlessLengthIsRefused() {
        assertThatThrownBy(() -> new Length(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }
}
