package shaftwright.live;

import static shaftwright.contract.Grid.POWER;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.formula.FormulaText.joined;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleBiFunction;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;

/**
 * A fitted curve: the share of each orthogonal polynomial in it, {@code c_k = Σ w v p_k / N_k}, and
 * what they come to, its coefficients in powers of the rows' normalised travel.
 */
final class FitCoefficientLines {
    private FitCoefficientLines() {}

    private static LineSet<Sizing> all(LiveLines lines) {
        return LineSet.in(lines, Section.PATH_WORK, TERM);
    }

    /** Of the first curve of the reach. */
    static void declareFirst(LiveLines lines) {
        coefficients(
                all(lines).since(2),
                "first_reach",
                "First coefficient of squared reach",
                power -> sum("first_share", Basis.FIRST, power),
                path -> path.firstPath().reachSquared());
    }

    /** Shares of curves of the distances, of the first one and the others. */
    static void declareShares(LiveLines lines) {
        LineSet<Sizing> all = all(lines);
        share(
                all.since(2),
                "first_share",
                "Share in the first squared reach",
                Basis.FIRST,
                "row_squared",
                MeasuredPath::firstShare);
        share(all.revised(2), "term_reach", "Share in squared reach", Basis.REACH, "row_centred");
        share(all.revised(2), "term_fore_aft", "Share in fore-aft", Basis.FORE_AFT, "row_ahead");
    }

    /** Shares and coefficients of camber or toe. */
    static void declare(LiveLines lines, Basis basis, Function<HubPath, Polynomial> curve) {
        LineSet<Sizing> all = all(lines);
        String word = basis.word;
        share(all, word + "_share", "Share in " + word, basis, "row_" + word + "_value");
        coefficients(
                all,
                "fit_" + word,
                "Fitted coefficient of " + word,
                power -> sum(word + "_share", basis, power),
                path -> curve.apply(path.path()));
    }

    private static void share(
            LineSet<Sizing> set, String name, String label, Basis basis, String value) {
        share(
                set,
                name,
                label,
                basis,
                value,
                (path, row) -> path.fit(basis.quantity()).map(fit -> fit.share(row)).orElse(0.0));
    }

    private static void share(
            LineSet<Sizing> set,
            String name,
            String label,
            Basis basis,
            String value,
            ToDoubleBiFunction<MeasuredPath, Integer> core) {
        set.only(Known.FIT, Lacking.NOT_AVAILABLE)
                .number(name, label)
                .is(
                        index ->
                                Pieces.of("weight", basis.weight)
                                        .and("value", value)
                                        .and("values", basis.values(index.row()))
                                        .and("word", basis.word)
                                        .in(
                                                "SUMPRODUCT({<weight>:all},{<value>:all},<values>)*{<word>_inverse}"),
                        (path, index) -> core.applyAsDouble(path, index.row()));
    }

    /** A curve's coefficient of a power, {@code Σ_k c_k P_k[power]}, as a formula. */
    private static String sum(String shares, Basis basis, int power) {
        return power >= BasisLines.TERMS
                ? "0"
                : joined(
                        "+",
                        power,
                        BasisLines.TERMS - 1,
                        k ->
                                Pieces.of("shares", shares)
                                        .and("word", basis.word)
                                        .and("k", k)
                                        .and("power", power)
                                        .in("{<shares>#<k>}*{<word>_poly_<k>#<power>}"));
    }

    /** What the distances tell. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> all = all(lines);
        coefficients(
                all,
                "fit_reach_squared",
                "Fitted coefficient of squared reach",
                power ->
                        sum("term_reach", Basis.REACH, power)
                                + (power == 0 ? "+{mean_squared}" : ""),
                path -> path.path().reachSquared());
        coefficients(
                all.revised(2),
                "fit_fore_aft",
                "Fitted coefficient of fore-aft",
                power -> sum("term_fore_aft", Basis.FORE_AFT, power),
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
            LineSet<Sizing> set,
            String name,
            String label,
            IntFunction<String> formula,
            Function<MeasuredPath, Polynomial> curve) {
        set.in(Section.PATH_WORK, POWER)
                .only(Known.FIT, Lacking.NOT_AVAILABLE)
                .number(name, label)
                .is(
                        index -> formula.apply(index.row()),
                        (path, index) -> curve.apply(path).coefficient(index.row()));
    }

    /** {@code Σ_k Σ_(i+j=power) P_k[i] P_k[j] / N_k}, grown where rows contradict. */
    private static String hat(int power) {
        List<String> terms = new ArrayList<>();
        for (int k = (power + 1) / 2; k < BasisLines.TERMS; k++) {
            int degree = k;
            String products =
                    joined(
                            "+",
                            Math.max(0, power - k),
                            power / 2,
                            i ->
                                    Pieces.of("twice", 2 * i == power ? "" : "2*")
                                            .and("k", degree)
                                            .and("i", i)
                                            .and("j", power - i)
                                            .in("<twice>{term_poly_<k>#<i>}*{term_poly_<k>#<j>}"));
            terms.add("{term_inverse#" + k + "}*(" + products + ")");
        }
        return terms.isEmpty() ? "0" : "{reach_scale}^2*(" + String.join("+", terms) + ")";
    }
}
