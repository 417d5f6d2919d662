package shaftwright.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TrialNumbersTest {
    /** First outputs of SplitMix64 for seed 1234567 as published with its task on Rosetta Code. */
    @Test
    void publishedSequence() {
        TrialNumbers numbers = new TrialNumbers(1234567);
        String[] published = {
            "6457827717110365317",
            "3203168211198807973",
            "9817491932198370423",
            "4593380528125082431",
            "16408922859458223821"
        };

        for (String expected : published) {
            assertThat(Long.toUnsignedString(numbers.next())).isEqualTo(expected);
        }
    }

    /** The library's generator of the same family: same constants, so the same numbers. */
    @Test
    void sameAsTheLibrarysGenerator() {
        SplittableRandom library = new SplittableRandom(42);
        TrialNumbers numbers = new TrialNumbers(42);

        for (int i = 0; i < 1000; i++) {
            assertThat(numbers.next()).isEqualTo(library.nextLong());
        }
    }

    /** Moments of the standard normal distribution: 0, 1, 0, 3; bands of four standard errors. */
    @Test
    void normalMoments() {
        TrialNumbers numbers = new TrialNumbers(7);
        int n = 400_000;
        double[] sums = new double[4];
        for (int i = 0; i < n; i++) {
            double power = 1;
            double z = numbers.normal();
            for (int k = 0; k < 4; k++) {
                power *= z;
                sums[k] += power;
            }
        }

        double error = 4 / Math.sqrt(n);
        assertThat(sums[0] / n).isCloseTo(0, within(error));
        assertThat(sums[1] / n).isCloseTo(1, within(error * Math.sqrt(2)));
        assertThat(sums[2] / n).isCloseTo(0, within(error * Math.sqrt(15)));
        assertThat(sums[3] / n).isCloseTo(3, within(error * Math.sqrt(96)));
    }
}
