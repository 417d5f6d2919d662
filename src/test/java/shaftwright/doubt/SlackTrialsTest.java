package shaftwright.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static shaftwright.doubt.Contribution.Kind.BIAS;
import static shaftwright.doubt.Contribution.Kind.PLUS_MINUS;
import static shaftwright.doubt.Contribution.Kind.SCATTER;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SlackTrialsTest {
    private static final int TRIALS = 200_000;

    /** Four standard errors of a chance of 0.025 in as many trials. */
    private static final double BAND = 4 * Math.sqrt(0.025 * 0.975 / TRIALS);

    private static SlackTable oneRow(double slackIn, double slackOut) {
        return new SlackTable(new double[] {slackIn}, new double[] {slackOut}, new double[0][], 0);
    }

    private static List<Contribution> four(Contribution.Kind kind, double... amounts) {
        List<Contribution> contributions = new ArrayList<>();
        for (double amount : amounts) {
            contributions.add(new Contribution("part " + contributions.size(), kind, amount));
        }
        return contributions;
    }

    /** JCGM 101:2008, 9.2.2: four standard normal quantities; 95 % within ±3.92. */
    @Test
    void fourNormalQuantities() {
        SlackChances chances =
                SlackTrials.run(oneRow(3.92, 3.92), four(SCATTER, 1, 1, 1, 1), 1, TRIALS);

        assertThat(chances.bottoming()).isCloseTo(0.025, within(BAND));
        assertThat(chances.pullOut()).isCloseTo(0.025, within(BAND));
    }

    /** JCGM 101:2008, 9.2.3: four rectangular quantities of unit deviation; 95 % within ±3.88. */
    @Test
    void fourRectangularQuantities() {
        double half = Math.sqrt(3);
        SlackChances chances =
                SlackTrials.run(
                        oneRow(3.88, 3.88), four(PLUS_MINUS, half, half, half, half), 1, TRIALS);

        assertThat(chances.bottoming()).isCloseTo(0.025, within(BAND));
        assertThat(chances.pullOut()).isCloseTo(0.025, within(BAND));
    }

    /** JCGM 101:2008, 9.2.4: one rectangular quantity ten times the others; 95 % within ±17.0. */
    @Test
    void oneLargeRectangularQuantity() {
        double half = Math.sqrt(3);
        SlackChances chances =
                SlackTrials.run(
                        oneRow(17.0, 17.0),
                        four(PLUS_MINUS, half, half, half, 10 * half),
                        1,
                        TRIALS);

        assertThat(chances.bottoming()).isCloseTo(0.025, within(0.002));
        assertThat(chances.pullOut()).isCloseTo(0.025, within(0.002));
    }

    /** Tail of the normal distribution beyond 2 is 0.02275 (any table of it); beyond 1 0.15866. */
    @Test
    void eachEndHasItsOwnChance() {
        double[][] tilt = {{-1, 0, 1}};
        SlackTable table =
                new SlackTable(new double[] {2, 50, 1}, new double[] {50, 50, 50}, tilt, 0);

        SlackChances chances = SlackTrials.run(table, List.of(), 3, TRIALS);

        assertThat(chances.bottomingAtDroop()).isCloseTo(0.02275, within(BAND));
        assertThat(chances.bottomingAtBump()).isCloseTo(0.15866, within(0.0035));
        assertThat(chances.bottoming()).isCloseTo(0.02275 + 0.15866, within(0.004));
        assertThat(chances.pullOut()).isZero();
    }

    /** A difference that is the same over the travel moves the window and leaves its width. */
    @Test
    void commonShiftLeavesTheWindowsWidth() {
        SlackTable table =
                new SlackTable(new double[] {4, 3}, new double[] {2, 5}, new double[0][], 1.5);

        SlackChances chances = SlackTrials.run(table, four(SCATTER, 1, 2), 3, 1000);

        assertThat(chances.windowMean()).isCloseTo(5, within(1e-9));
        assertThat(chances.windowSpread()).isCloseTo(0, within(1e-9));
    }

    /** A bias is always there in full, either way: half the trials lose 1 mm, half gain it. */
    @Test
    void biasIsThereInFull() {
        SlackChances chances = SlackTrials.run(oneRow(0.9, 1.1), four(BIAS, 1), 5, TRIALS);

        assertThat(chances.bottoming()).isCloseTo(0.5, within(0.005));
        assertThat(chances.pullOut()).isZero();
    }

    @Test
    void sameSeedSameAnswer() {
        List<Contribution> contributions = four(SCATTER, 1, 2);

        assertThat(SlackTrials.run(oneRow(1, 2), contributions, 9, 5000))
                .isEqualTo(SlackTrials.run(oneRow(1, 2), contributions, 9, 5000))
                .isNotEqualTo(SlackTrials.run(oneRow(1, 2), contributions, 10, 5000));
    }

    @Test
    void tableHasBothSlacksInEveryRow() {
        assertThatThrownBy(
                        () -> new SlackTable(new double[] {1}, new double[0], new double[0][], 0))
                .hasMessageContaining("both slacks at every row; have 1 and 0");
    }
}
