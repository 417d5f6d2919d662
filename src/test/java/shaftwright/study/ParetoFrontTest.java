package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Against the definition, written out: V. Pareto's dominance in every pair. */
class ParetoFrontTest {
    private static List<int[]> front(List<int[]> candidates) {
        return ParetoFront.of(candidates, one -> new double[] {one[0], one[1], one[2]});
    }

    @Property(tries = 300)
    void isWhatComparingAllPairsLeaves(
            @ForAll @Size(max = 40) List<@IntRange(max = 728) Integer> numbers) {
        List<int[]> candidates = new ArrayList<>();
        for (int number : numbers) {
            candidates.add(new int[] {number % 9, number / 9 % 9, number / 81});
        }
        List<int[]> expected = new ArrayList<>(candidates);
        for (int[] one : candidates) {
            for (int[] other : candidates) {
                int sum = other[0] + other[1] + other[2] - one[0] - one[1] - one[2];
                if (other[0] >= one[0] && other[1] >= one[1] && other[2] >= one[2] && sum > 0) {
                    expected.remove(one);
                }
            }
        }

        assertThat(front(candidates)).containsExactlyElementsOf(expected);
    }

    @Test
    void equalsAllStay() {
        int[] one = {1, 2, 3};
        int[] same = {1, 2, 3};

        assertThat(front(List.of(one, same))).containsExactly(one, same);
    }

    @Test
    void aMeritThatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> ParetoFront.of(List.of(1), one -> new double[] {Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
