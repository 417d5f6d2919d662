package shaftwright.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreSizeTest {
    /** The tables round section height and rim diameter to whole millimetres, each. */
    private static final double TABLE_ROUNDING = 1.6;

    @ParameterizedTest
    @CsvFileSource(resources = "metric-diameters.csv", numLinesToSkip = 1)
    void metricDiameterAgreesWithTheTable(String size, double diameter) {
        TyreSize tyre = TyreSize.parse(size);
        assertThat(tyre.freeDiameter().orElseThrow()).isCloseTo(diameter, within(TABLE_ROUNDING));
    }

    /** The tables give flotation tyres 12 mm less diameter than stated, and the stated width. */
    @ParameterizedTest
    @CsvFileSource(resources = "flotation-design-sizes.csv", numLinesToSkip = 1)
    void flotationSizeIsTwelveMillimetresOverTheDesignTable(
            String size, double width, double diameter) {
        TyreSize tyre = TyreSize.parse(size);
        assertThat(tyre.freeDiameter().orElseThrow() - diameter).isCloseTo(12, within(1.0));
        assertThat(tyre.sectionWidth()).isCloseTo(width, within(2.6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"235/75 R15", "235/75R15", "P235/75 R 15", "LT235/75R15", "235/75-15"})
    void metricSizeInAllItsSpellings(String text) {
        assertThat(TyreSize.parse(text)).isEqualTo(new TyreSize.Metric(235, 75, 15));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "30x9.50-15",
                "30x9.50R15",
                "30X9.5 R15 LT",
                "30 \u00d7 9,5 - 15",
                "LT30x9.5R15"
            })
    void flotationSizeInAllItsSpellings(String text) {
        assertThat(TyreSize.parse(text)).isEqualTo(new TyreSize.Flotation(30, 9.5, 15));
    }

    @Test
    void rimIsInInches() {
        assertThat(TyreSize.parse("235/75 R15").rimDiameter()).isEqualTo(381);
        assertThat(TyreSize.parse("33x12.50R16.5").rimInches()).isEqualTo(16.5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "~~; nothing in it",
                "~ ~; nothing in it",
                "105S; only a load index in it",
                "235/75 R15 104; a sign between them is missing",
                "235/75 R15 XXL; something is left over",
                "75/235 R15; the section width of a metric size has three digits",
                "235/7 R15; the aspect ratio has two digits",
                "235/75 15; a sign between them is missing",
                "235/75 S15; R, ZR, D or a hyphen goes before the rim",
                "235/75 R5; 10 inches or more",
                "2 35/75 R15; two numbers stand side by side",
                "035/75 R15; begins with 0",
                "155; the first number is followed by /",
                "7-16; has three digits, in mm",
                "155 R9; 10 inches or more",
                "300x9.50-15; two digits before the point",
                "30x950-15; one or two digits before the point",
                "30x9.500-15; one or two digits",
                "30x9.50-150; the rim diameter is in inches",
                "tyre; a number is missing at the start"
            })
    void refusalSaysWhy(String text, String reason) {
        assertThatThrownBy(() -> TyreSize.parse(text))
                .isInstanceOf(UnreadableTyreSizeException.class)
                .hasMessageContaining("found \"" + text + "\"")
                .hasMessageContaining(reason.strip())
                .hasMessageEndingWith("expected " + UnreadableTyreSizeException.EXPECTED);
    }

    @Test
    void sizeMadeOfNothingIsRefused() {
        assertThatThrownBy(() -> new TyreSize.Metric(0, 75, 15)).hasMessageContaining("have 0");
        assertThatThrownBy(() -> new TyreSize.Flotation(30, Double.NaN, 15))
                .hasMessageContaining("have NaN");
    }

    @Property
    void metricTextIsReadBack(
            @ForAll @IntRange(min = 100, max = 999) int width,
            @ForAll @IntRange(min = 10, max = 99) int aspect,
            @ForAll @IntRange(min = 20, max = 60) int halfInches) {
        TyreSize size = new TyreSize.Metric(width, aspect, halfInches / 2.0);
        assertThat(TyreSize.parse(size.toString())).isEqualTo(size);
    }

    /** Sizes without an aspect ratio state section width and rim, and no diameter. */
    @ParameterizedTest
    @CsvSource({
        "165R13, 165, 13",
        "145SR12, 145, 12",
        "195R14C, 195, 14",
        "195 R 14 C 106/104R, 195, 14",
        "6.00-16, 152.4, 16",
        "7.50-16, 190.5, 16",
        "'7,50-16', 190.5, 16"
    })
    void sizeWithoutAspectRatioStatesNoDiameter(String text, double width, double rim) {
        TyreSize size = TyreSize.parse(text);

        assertThat(size.freeDiameter()).isEmpty();
        assertThat(size.sectionWidth()).isCloseTo(width, within(1e-9));
        assertThat(size.rimInches()).isEqualTo(rim);
        assertThat(TyreSize.parse(size.toString())).isEqualTo(size);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "235/75R15C",
                "235/75R15 LT",
                "235/75 R15 105S",
                "235/75R15 XL 109T",
                "ST235/75D15",
                "T235/75D15",
                "235/75SR15"
            })
    void classLoadAndSpeedDoNotChangeAMetricSize(String text) {
        assertThat(TyreSize.parse(text)).isEqualTo(new TyreSize.Metric(235, 75, 15));
    }

    @Property
    void flotationTextIsReadBack(
            @ForAll @IntRange(min = 40, max = 190) int quartersOfDiameter,
            @ForAll @IntRange(min = 4, max = 80) int quartersOfWidth,
            @ForAll @IntRange(min = 4, max = 60) int halfInches) {
        TyreSize size =
                new TyreSize.Flotation(
                        quartersOfDiameter / 4.0, quartersOfWidth / 4.0, halfInches / 2.0);
        assertThat(TyreSize.parse(size.toString())).isEqualTo(size);
    }
}
