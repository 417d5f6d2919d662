package shaftwright.shaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.Polynomial;

class LengthWindowTest {
    /** Reference: Hipparchus' Lagrange polynomial, and Brent's search for its least value. */
    @Property
    void vertexIsTheLeastPointOfTheParabolaThroughThreeRows(
            @ForAll @DoubleRange(min = 0.01, max = 3) double left,
            @ForAll @DoubleRange(min = 0.01, max = 3) double right) {
        double[] travels = {-10, 0, 6};
        double[] values = {500 + left, 500, 500 + right};
        PolynomialFunctionLagrangeForm parabola =
                new PolynomialFunctionLagrangeForm(travels, values);
        UnivariatePointValuePair least =
                new BrentOptimizer(1e-9, 1e-12)
                        .optimize(
                                new MaxEval(500),
                                GoalType.MINIMIZE,
                                new SearchInterval(-10, 6),
                                new UnivariateObjectiveFunction(parabola));
        Binding vertex = Extremes.minima(travels, values)[1];
        assertThat(vertex.value()).isCloseTo(least.getValue(), within(1e-9));
        assertThat(vertex.travel()).isCloseTo(least.getPoint(), within(1e-3));
        assertThat(vertex.row()).isEqualTo(1);
    }

    @Test
    void maximaMirrorMinima() {
        double[] travels = {-10, 0, 6, 12};
        double[] values = {3, 5, 4.5, -1};
        double[] mirrored = {-3, -5, -4.5, 1};
        for (int row = 0; row < 4; row++) {
            Binding high = Extremes.maxima(travels, values)[row];
            Binding low = Extremes.minima(travels, mirrored)[row];
            assertThat(high.value()).isEqualTo(-low.value());
            assertThat(high.travel()).isEqualTo(low.travel());
        }
        assertThat(Extremes.maxima(travels, values)[1].value()).isGreaterThan(5);
    }

    @Test
    void rowsThatAreNoExtremeOrStandAtAnEndStayThemselves() {
        double[] travels = {0, 1, 2, 3};
        double[] values = {1, 2, 2, 2};
        Binding[] rows = Extremes.minima(travels, values);
        assertThat(rows).extracting(Binding::value).containsExactly(1.0, 2.0, 2.0, 2.0);
        assertThat(rows).extracting(Binding::travel).containsExactly(0.0, 1.0, 2.0, 3.0);
    }

    @Test
    void firstOfEqualRowsBinds() {
        Binding[] rows = {new Binding(2, 0, -5), new Binding(1, 1, 0), new Binding(1, 2, 5)};
        assertThat(Extremes.least(rows).row()).isEqualTo(1);
        assertThat(Extremes.greatest(rows).row()).isZero();
        Binding[] level = {new Binding(1, 0, -5), new Binding(1, 1, 0)};
        assertThat(Extremes.greatest(level).row()).isZero();
    }

    /** Reference: the limits at 5,000 travels. */
    @Test
    void windowIsWithinAHundredthOfManyMoreSteps() {
        SideSetup setup = turningInside();
        LengthWindow window = LengthWindow.of(Position.table(setup));
        double longest = Double.POSITIVE_INFINITY;
        double shortest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= 5000; i++) {
            double travel = setup.droop() + (setup.bump() - setup.droop()) * i / 5000.0;
            Position position = Position.of(setup, travel);
            longest = Math.min(longest, position.longest());
            shortest = Math.max(shortest, position.shortest());
        }
        assertThat(window.longest().row()).isBetween(1, 23);
        assertThat(window.longest().value()).isCloseTo(longest, within(0.01));
        assertThat(window.shortest().value()).isCloseTo(shortest, within(0.01));
    }

    @Test
    void windowEndsBindWhereTheirRowsSayIt() {
        LengthWindow window = LengthWindow.of(Position.table(Samples.side()));
        assertThat(window.fits()).isTrue();
        assertThat(window.longest())
                .isEqualTo(window.longestVertices().get(window.longest().row()));
        assertThat(window.shortest())
                .isEqualTo(window.shortestVertices().get(window.shortest().row()));
        // Joint centres stand farthest apart with this wheel hanging, so there it pulls out first.
        assertThat(window.shortest().row()).isZero();
    }

    @Test
    void crossedWindowIsNarrowerThanNothing() {
        SideSetup setup = LengthChoiceTest.withMargins(Samples.side(), 40, 30);
        LengthWindow window = LengthWindow.of(Position.table(setup));
        assertThat(window.fits()).isFalse();
        assertThat(window.width()).isNegative();
    }

    @Test
    void refusesAnEmptyTable() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthWindow.of(List.of()))
                .withMessageContaining("needs positions");
    }

    /** A path that comes closest to the transaxle inside its travel. */
    private static SideSetup turningInside() {
        return Samples.side(
                Samples.path(
                        Polynomial.of(25, 6, -2, 1),
                        Polynomial.of(300000, 4000, -1000, 500),
                        Polynomial.of(0.002, 0.003, 0, 0.001)),
                Samples.joint(Samples.BENCH),
                Samples.joint(Samples.BENCH));
    }
}
