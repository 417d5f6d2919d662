package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TapeSettingsTest {
    /** JCGM 100:2008, F.2.2.1: a resolution δx gives u = 0.29 δx. */
    @Test
    void resolutionGivesItsStandardUncertainty() {
        TapeSettings settings = TapeSettings.of(1, 2);
        assertThat(settings.tapeDeviation()).isCloseTo(0.29, within(0.005));
        assertThat(settings.heightDeviation()).isCloseTo(0.58, within(0.005));
    }

    /** Simulated wishbone and arm paths: 2.0 and 0.8 mm at 450 mm; halving is by third power. */
    @ParameterizedTest
    @CsvSource({
        "1, 450, 2.0",
        "2, 450, 2.0",
        "3, 450, 0.8",
        "5, 450, 0.8",
        "2, 225, 0.25",
        "3, 225, 0.05"
    })
    void curveAllowanceGrowsWithTravel(int degree, double travel, double allowance) {
        assertThat(TapeSettings.of(1, 1).curveAllowance(degree, travel))
                .isCloseTo(allowance, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "AUTO, 1, 0",
        "AUTO, 2, 1",
        "AUTO, 3, 2",
        "AUTO, 4, 2",
        "AUTO, 5, 3",
        "AUTO, 15, 3",
        "QUARTIC, 9, 4",
        "QUINTIC, 9, 5",
        "QUARTIC, 8, 3",
        "QUINTIC, 3, 2"
    })
    void degreeFollowsTheNumberOfRows(DegreeChoice choice, int rows, int degree) {
        assertThat(choice.degree(rows)).isEqualTo(degree);
    }

    @Test
    void refusesATapeWithoutMarks() {
        assertThatThrownBy(() -> TapeSettings.of(0, 1)).hasMessageContaining("tape graduation");
        assertThatThrownBy(() -> TapeSettings.of(1, -1)).hasMessageContaining("height");
    }
}
