package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.FitDoubt;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

class ClearanceRuleTest {
    /** Camber goes in by 3 degrees over 130 mm either way. */
    private static final HubPath PATH =
            new HubPath(
                    -130,
                    130,
                    -50,
                    Polynomial.ZERO,
                    Polynomial.of(300_000),
                    Polynomial.of(0, -Math.toRadians(3)),
                    Polynomial.ZERO,
                    FitDoubt.NONE);

    @Test
    void withTheWheelCentreAtTheDatumTheClearanceIsTheTravel() {
        List<Double> steps = new ClearanceRule(290, 10, 200, 0).steps(PATH);

        assertThat(steps).containsOnly(100.0);
    }

    @Test
    void theWantedClearanceIsLeftAtTheLastStep() {
        ClearanceRule rule = new ClearanceRule(290, -6, 190, 85);
        List<Double> steps = rule.steps(PATH);

        assertThat(rule.clearance(PATH, steps.get(ClearanceRule.STEPS - 1)))
                .isCloseTo(190, within(1e-3));
    }

    @Test
    void aWheelThatLeansInRisesMoreThanItsHub() {
        ClearanceRule rule = new ClearanceRule(290, 0, 190, 85);

        assertThat(rule.clearance(PATH, 100)).isLessThan(190);
    }
}
