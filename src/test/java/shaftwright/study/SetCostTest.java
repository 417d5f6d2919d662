package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shaftwright.build.OwnCosts;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.joint.Boot;
import shaftwright.joint.MountedJoint;

/** What a set costs, by hand from invented prices. */
class SetCostTest {
    private static ScenarioStudy study(Scenario.Builder scenario) {
        return Study.of(PricedBuild.with(scenario)).scenario("A");
    }

    /** Four joints at 110, four kits at 20, 46 besides; a spare shaft, two joints, one kit. */
    @Test
    void aSetIsTwoShaftsFourJointsFourBootsAndWhatIsAdded() {
        ScenarioStudy study = study(PricedBuild.scenario(PricedBuild.LARGE));
        double blank =
                study.side(Side.LEFT)
                        .result()
                        .orElseThrow()
                        .plan()
                        .orElseThrow()
                        .blank()
                        .price()
                        .orElseThrow();

        SetCost cost = study.cost();

        assertThat(cost.shafts()).isEqualTo(Price.of(2 * blank));
        assertThat(cost.joints()).isEqualTo(Price.of(440));
        assertThat(cost.boots()).isEqualTo(Price.of(80));
        assertThat(cost.total()).isEqualTo(Price.of(2 * blank + 566));
        assertThat(cost.spares()).isEqualTo(Price.of(blank + 220 + 20));
    }

    @Test
    void aPairOfItsOwnPriceCountsInPlaceOfTwoBlanks() {
        Scenario.Builder scenario =
                PricedBuild.scenario(PricedBuild.LARGE)
                        .costs(new OwnCosts(OptionalDouble.of(400), 0));

        assertThat(study(scenario).cost().shafts()).isEqualTo(Price.of(400));
    }

    @Test
    void aJointWithoutABootHasNoneToPay() {
        MountedJoint bare = PricedBuild.mounted(PricedBuild.LARGE).under(Boot.PLAIN);

        SetCost cost = study(PricedBuild.scenario(PricedBuild.LARGE).joints(bare, bare)).cost();

        assertThat(cost.boots()).isEqualTo(Price.of(0));
    }

    @Test
    void aBootOfUnknownPriceIsNotFree() {
        MountedJoint booted = PricedBuild.mounted(PricedBuild.LARGE).under(Boot.changing(-1));

        SetCost cost = study(PricedBuild.scenario(PricedBuild.LARGE).joints(booted, booted)).cost();

        assertThat(cost.missing()).containsExactly("boots");
        assertThat(cost.spares()).isEqualTo(Price.lacking("not priced"));
    }
}
