package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.WheelTravel;
import shaftwright.joint.Joint;
import shaftwright.shaft.FittedPosition;

/** Trade-offs of a build without a workbook, held against every variant studied for itself. */
class TradeOffSearchTest {
    private static final Scenario START = PricedBuild.scenario(PricedBuild.LARGE).build();
    private static final Build BUILD = PricedBuild.with(START.toBuilder());

    /** What a variant is worth, in whole tenths of a millimetre where it is a length. */
    private record Worth(double cost, long travel, long slack) {
        boolean beats(Worth other) {
            return cost <= other.cost
                    && travel >= other.travel
                    && slack >= other.slack
                    && !equals(other);
        }

        static Worth of(ScenarioStudy study, double travel) {
            double least = 10;
            for (Side side : Side.values()) {
                for (FittedPosition at : study.side(side).result().orElseThrow().fitted()) {
                    least = Math.min(least, Math.min(at.slackIn(), at.slackOut()));
                }
            }
            return new Worth(
                    study.cost().total().amount().orElseThrow(),
                    Math.round(travel * 10),
                    Math.round(least * 10));
        }
    }

    private static ScenarioStudy anew(Scenario scenario) {
        return Study.of(BUILD.withScenario(scenario)).scenario("A");
    }

    @Test
    void theyAreTheUnbeatenOnesOfAllThatFit() {
        List<Worth> all = new ArrayList<>();
        for (Joint inner : List.of(PricedBuild.SMALL, PricedBuild.LARGE)) {
            for (Joint outer : List.of(PricedBuild.SMALL, PricedBuild.LARGE)) {
                for (int shift = 0; shift < 7; shift++) {
                    for (double travel : new double[] {110, 99, 88, 77, 66}) {
                        ScenarioStudy study =
                                anew(
                                        START.toBuilder()
                                                .joints(
                                                        PricedBuild.mounted(inner),
                                                        PricedBuild.mounted(outer))
                                                .hubShift(12.7 * shift)
                                                .travel(WheelTravel.of(travel, travel))
                                                .build());
                        if (study.fits()) {
                            all.add(Worth.of(study, 2 * travel));
                        }
                    }
                }
            }
        }
        List<Worth> unbeaten =
                all.stream().filter(one -> all.stream().noneMatch(o -> o.beats(one))).toList();

        List<TradeOff> found = Study.of(BUILD).tradeOffs("A");

        assertThat(all).hasSizeGreaterThan(unbeaten.size());
        assertThat(found)
                .extracting(one -> Worth.of(anew(one.scenario()), one.travel()))
                .containsExactlyInAnyOrderElementsOf(unbeaten);
        assertThat(found).extracting(one -> one.cost().amount().orElseThrow()).isSorted();
    }

    @Test
    void aScenarioWithoutAShaftHasNone() {
        Scenario far = START.toBuilder().travel(WheelTravel.of(300, 110)).build();

        assertThat(Study.of(BUILD.withScenario(far)).tradeOffs("A")).isEmpty();
    }
}
