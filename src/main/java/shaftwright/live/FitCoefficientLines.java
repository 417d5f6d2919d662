package shaftwright.live;

import static shaftwright.contract.Grid.POWER;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;

/** The fitted curves by their coefficients in powers of the rows' normalised travel. */
final class FitCoefficientLines {
    private FitCoefficientLines() {}

    private static LineSet<MeasuredPath> paths(LiveLines lines) {
        return LineSet.in(lines, Section.PATH_WORK, POWER).only(Known.FIT, Lacking.NOT_AVAILABLE);
    }

    /** Of the first curve of the reach. */
    static void declareFirst(LiveLines lines) {
        declare(
                paths(lines).since(2),
                "first_reach",
                "First coefficient of squared reach",
                ShareLines.FIRST_REACH::sum,
                path -> path.firstPath().reachSquared());
    }

    static void declareCamber(LiveLines lines) {
        declare(
                paths(lines),
                "fit_camber",
                "Fitted coefficient of camber",
                ShareLines.CAMBER::sum,
                path -> path.path().camber());
    }

    static void declareToe(LiveLines lines) {
        declare(
                paths(lines),
                "fit_toe",
                "Fitted coefficient of toe",
                ShareLines.TOE::sum,
                path -> path.path().toe());
    }

    /** What the distances tell. */
    static void declare(LiveLines lines) {
        LineSet<MeasuredPath> paths = paths(lines);
        declare(
                paths,
                "fit_reach_squared",
                "Fitted coefficient of squared reach",
                power ->
                        ShareLines.SQUARED_REACH.sum(power) + (power == 0 ? "+{mean_squared}" : ""),
                path -> path.path().reachSquared());
        declare(
                paths.revised(2),
                "fit_fore_aft",
                "Fitted coefficient of fore-aft",
                ShareLines.FORE_AFT::sum,
                path -> path.path().foreAft());
        declare(
                paths.revised(2),
                "fit_hat",
                "Fitted coefficient of the variance of squared reach",
                FitCoefficientLines::hat,
                path -> path.path().doubt().variance());
        declare(
                paths.since(2),
                "fit_shift",
                "Coefficient of the shift without suspect readings",
                power -> ShareLines.sum("reach_shift", Basis.REACH, power),
                path -> path.path().doubt().shift());
    }

    private static void declare(
            LineSet<MeasuredPath> paths,
            String name,
            String label,
            IntFunction<String> formula,
            Function<MeasuredPath, Polynomial> curve) {
        paths.number(name, label)
                .is(
                        index -> formula.apply(index.row()),
                        (path, index) -> curve.apply(path).coefficient(index.row()));
    }

    /** {@code Σ_k Σ_(i+j=power) P_k[i] P_k[j] / N_k}, grown where rows contradict. */
    private static String hat(int power) {
        List<String> terms = new ArrayList<>();
        for (int k = (power + 1) / 2; k < BasisLines.TERMS; k++) {
            List<String> products = new ArrayList<>();
            for (int i = Math.max(0, power - k); 2 * i <= power; i++) {
                int j = power - i;
                products.add(
                        "%s{term_poly_%s#%s}*{term_poly_%s#%s}"
                                .formatted(i == j ? "" : "2*", k, i, k, j));
            }
            terms.add("{term_inverse#" + k + "}*(" + String.join("+", products) + ")");
        }
        return terms.isEmpty() ? "0" : "{reach_scale}^2*(" + String.join("+", terms) + ")";
    }
}
