package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.MarginChoice;
import shaftwright.build.Side;
import shaftwright.build.Trials;
import shaftwright.build.Uncertainty;
import shaftwright.doubt.Contribution;
import shaftwright.doubt.Contribution.Kind;
import shaftwright.doubt.SlackChances;

/** Chances and margins that follow from what may move the joints. */
class ChancesTest {
    private static final int MANY = 20_000;

    private static SideStudy left(Build build) {
        return Study.of(build).scenario("A").side(Side.LEFT);
    }

    private static Uncertainty tried(Contribution... contributions) {
        return new Uncertainty(
                List.of(contributions), MarginChoice.TYPED, Optional.of(new Trials(MANY, 7)));
    }

    @Test
    void noneWithoutTrials() {
        assertThat(left(LinkageBuild.of(LinkageBuild.unread())).chances()).isEmpty();
    }

    /**
     * A sure path moved evenly by ±a bottoms where it comes nearer by more than the slack s: (a −
     * s)/2a.
     */
    @Test
    void evenMoveBottomsInItsShareBeyondTheSlack() {
        Build build = LinkageBuild.of(LinkageBuild.unread());
        double slack = left(build).result().orElseThrow().leastSlackIn().value();
        double most = 2 * slack;
        SideStudy study =
                left(build.with(tried(new Contribution("mounts", Kind.PLUS_MINUS, most))));

        SlackChances chances = study.chances().orElseThrow();

        assertThat(chances.trials()).isEqualTo(MANY);
        // Four standard deviations of a share of a quarter.
        double error = 4 * Math.sqrt(0.25 * 0.75 / MANY);
        assertThat(chances.bottoming()).isCloseTo(0.25, within(error));
    }

    /**
     * A linkage that readings put in doubt by d is off by d/2 as one standard deviation, everywhere
     * alike: the shaft bottoms where that is beyond −s. Normal tail by Abramowitz and Stegun,
     * 26.2.17.
     */
    @Test
    void linkagesDoubtCountsTwoStandardDeviations() {
        Build build = LinkageBuild.of(LinkageBuild.read(5)).with(tried());
        SideStudy study = left(build);
        double deviations =
                study.result().orElseThrow().leastSlackIn().value()
                        / (study.path().path().doubt().allowance() / 2);
        assertThat(study.chances().orElseThrow().bottoming())
                .isCloseTo(tail(deviations), within(4 * Math.sqrt(0.05 / MANY)));
    }

    private static double tail(double x) {
        double t = 1 / (1 + 0.2316419 * x);
        double sum =
                t
                        * (0.319381530
                                + t
                                        * (-0.356563782
                                                + t
                                                        * (1.781477937
                                                                + t
                                                                        * (-1.821255978
                                                                                + t
                                                                                        * 1.330274429))));
        return sum * Math.exp(-x * x / 2) / Math.sqrt(2 * Math.PI);
    }

    @Test
    void builtUpMarginsTakeThePlaceOfTyped() {
        Contribution mounts = new Contribution("mounts", Kind.PLUS_MINUS, 6);
        Contribution hook = new Contribution("hook", Kind.BIAS, 1);
        Build build = LinkageBuild.of(LinkageBuild.unread());
        assertThat(left(build).result().orElseThrow().setup().marginOutward()).isEqualTo(4);
        for (MarginChoice choice : MarginChoice.values()) {
            Uncertainty doubt = new Uncertainty(List.of(mounts, hook), choice, Optional.empty());
            double margin = left(build.with(doubt)).result().orElseThrow().setup().marginOutward();
            assertThat(margin)
                    .isEqualTo(
                            switch (choice) {
                                case TYPED -> 4;
                                // Twice a/√3, the bias on top: JCGM 100:2008, 4.3.7 and 6.2.1.
                                case ROOT_SUM_SQUARE -> 2 * 6 / Math.sqrt(3) + 1;
                                case WORST_CASE -> 6 + 1;
                            });
        }
    }

    @Test
    void nothingToBuildFromLeavesMarginsTyped() {
        Uncertainty empty = new Uncertainty(List.of(), MarginChoice.WORST_CASE, Optional.empty());
        Build build = LinkageBuild.of(LinkageBuild.unread()).with(empty);
        assertThat(left(build).margins().outward()).isEqualTo(4);
    }
}
