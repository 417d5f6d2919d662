package shaftwright.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static shaftwright.doubt.Contribution.Kind.BIAS;
import static shaftwright.doubt.Contribution.Kind.GRADUATION;
import static shaftwright.doubt.Contribution.Kind.PLUS_MINUS;
import static shaftwright.doubt.Contribution.Kind.SCATTER;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContributionTest {
    /**
     * JCGM 100:2008, H.1, end gauge: u(d) = 9.7 nm from the mean of five repeats (s = 13 nm, u =
     * 5.8 nm), 3.9 nm and 6.7 nm; u_c(l) = 32 nm from 25, 9.7, 2.9 and 16.6 nm.
     */
    @Test
    void endGaugeOfTheGuide() {
        Contribution repeats = Contribution.ofRepeats("repeats", 13, 5);
        Combined difference =
                Combined.of(
                        List.of(
                                repeats,
                                new Contribution("comparator, random", SCATTER, 3.9),
                                new Contribution("comparator, systematic", SCATTER, 6.7)));
        Combined length =
                Combined.of(
                        List.of(
                                new Contribution("standard", SCATTER, 25),
                                new Contribution("difference", SCATTER, difference.standard()),
                                new Contribution("expansion", SCATTER, 2.9),
                                new Contribution("temperature", SCATTER, 16.6)));

        assertThat(repeats.standard()).isCloseTo(5.8, within(0.05));
        assertThat(difference.standard()).isCloseTo(9.7, within(0.05));
        assertThat(length.standard()).isCloseTo(32, within(0.5));
    }

    /**
     * JCGM 100:2008: H.1.3.6, a difference of temperature within ±0.05 °C has u = 0.029 °C;
     * F.2.2.1, a display's step of 1 has u = 0.29.
     */
    @Test
    void evenSpreads() {
        assertThat(new Contribution("temperature difference", PLUS_MINUS, 0.05).standard())
                .isCloseTo(0.029, within(0.0005));
        assertThat(new Contribution("display", GRADUATION, 1).standard())
                .isCloseTo(0.29, within(0.005));
    }

    /** By hand: u² = 3 + 4 = 7, so 2u + 0.5 = 5.79; at worst 3 + 4 + 0.5. */
    @Test
    void biasAddsOnceOnTop() {
        Combined combined =
                Combined.of(
                        List.of(
                                new Contribution("soft mounts", PLUS_MINUS, 3),
                                new Contribution("flex", SCATTER, 2),
                                new Contribution("tape hook", BIAS, 0.5)));

        assertThat(combined.rootSumSquare()).isCloseTo(5.79, within(0.005));
        assertThat(combined.worst()).isEqualTo(7.5);
        assertThat(combined.bias()).isEqualTo(0.5);
    }

    @Test
    void nothingMakesNoDoubt() {
        assertThat(Combined.of(List.of())).isEqualTo(new Combined(0, 0, 0));
    }

    @Test
    void amountIsNotNegative() {
        assertThatThrownBy(() -> new Contribution("flex", PLUS_MINUS, -1))
                .hasMessageContaining("amount of flex must not be negative; have -1.0");
        assertThatThrownBy(() -> Contribution.ofRepeats("repeats", 1, 0))
                .hasMessageContaining("repeats must be 1 or more; have 0");
    }
}
