package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.formula.FormulaText.joined;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import shaftwright.formula.Pieces;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;

/**
 * A fitted curve: the share of each orthogonal polynomial in it, {@code c_k = Σ w v p_k / N_k}, and
 * what they come to, its coefficients in powers of the rows' normalised travel.
 */
final class FitCoefficientLines {
    private FitCoefficientLines() {}

    private static LineSet<MeasuredPath> all(LiveLines lines) {
        return LineSet.in(lines, Section.PATH_WORK, TERM).only(Known.FIT, Lacking.NOT_AVAILABLE);
    }

    /** Of the first curve of the reach. */
    static void declareFirst(LiveLines lines) {
        coefficients(
                all(lines).since(2),
                "first_reach",
                "First coefficient of squared reach",
                power -> sum("<share>", Basis.FIRST, power),
                path -> path.firstPath().reachSquared());
    }

    /** Shares of curves of the distances, of the first one and the others. */
    static void declareShares(LiveLines lines) {
        LineSet<MeasuredPath> all = all(lines);
        share(all.since(2), Basis.FIRST, "the first squared reach");
        share(all.revised(2), Basis.REACH, "squared reach");
        share(all.revised(2), Basis.FORE_AFT, "fore-aft");
    }

    /** Shares and coefficients of camber or toe. */
    static void declare(LiveLines lines, Basis basis, Function<HubPath, Polynomial> curve) {
        LineSet<MeasuredPath> all = all(lines);
        share(all, basis, "<word>");
        coefficients(
                all.with(basis.words),
                "fit_<word>",
                "Fitted coefficient of <word>",
                power -> sum("<share>", basis, power),
                path -> curve.apply(path.path()));
    }

    private static void share(LineSet<MeasuredPath> set, Basis basis, String curve) {
        set.with(basis.words)
                .number("<share>", "Share in " + curve)
                .byRow(
                        """
                        SUMPRODUCT({<weight>:all},{<value>:all},{row_<word>_<row_from_0>:all})
                        *{<word>_inverse}
                        """,
                        basis::share);
    }

    /** A curve's coefficient of a power, {@code Σ_k c_k P_k[power]}, as a formula. */
    private static String sum(String shares, Basis basis, int power) {
        Pieces pieces = basis.words.and("power", power);
        return power >= Basis.TERMS
                ? "0"
                : joined(
                        "+",
                        power,
                        Basis.TERMS - 1,
                        k ->
                                pieces.and("k", k)
                                        .in("{" + shares + "#<k>}*{<word>_poly_<k>#<power>}"));
    }

    /** What the distances tell. */
    static void declare(LiveLines lines) {
        LineSet<MeasuredPath> all = all(lines);
        coefficients(
                all,
                "fit_reach_squared",
                "Fitted coefficient of squared reach",
                power -> sum("<share>", Basis.REACH, power) + (power == 0 ? "+{mean_squared}" : ""),
                path -> path.path().reachSquared());
        coefficients(
                all.revised(2),
                "fit_fore_aft",
                "Fitted coefficient of fore-aft",
                power -> sum("<share>", Basis.FORE_AFT, power),
                path -> path.path().foreAft());
        coefficients(
                all.revised(2),
                "fit_hat",
                "Fitted coefficient of the variance of squared reach",
                FitCoefficientLines::hat,
                path -> path.path().doubt().variance());
        coefficients(
                all.since(2),
                "fit_shift",
                "Coefficient of the shift without suspect readings",
                power -> sum("reach_shift", Basis.REACH, power),
                path -> path.path().doubt().shift());
    }

    private static void coefficients(
            LineSet<MeasuredPath> set,
            String name,
            String label,
            IntFunction<String> formula,
            Function<MeasuredPath, Polynomial> curve) {
        set.in(Section.PATH_WORK, POWER)
                .number(name, label)
                .byRow(formula, (path, power) -> curve.apply(path).coefficient(power));
    }

    /** {@code Σ_k Σ_(i+j=power) P_k[i] P_k[j] / N_k}, grown where rows contradict. */
    private static String hat(int power) {
        List<String> terms = new ArrayList<>();
        for (int k = (power + 1) / 2; k < Basis.TERMS; k++) {
            Pieces degree = Pieces.of("k", k);
            String products =
                    joined(
                            "+",
                            Math.max(0, power - k),
                            power / 2,
                            i ->
                                    degree.and("twice", 2 * i == power ? "" : "2*")
                                            .and("i", i)
                                            .and("j", power - i)
                                            .in("<twice>{term_poly_<k>#<i>}*{term_poly_<k>#<j>}"));
            terms.add("{term_inverse#" + k + "}*(" + products + ")");
        }
        return terms.isEmpty() ? "0" : "{reach_scale}^2*(" + String.join("+", terms) + ")";
    }
}
