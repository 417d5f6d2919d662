package shaftwright.live;

import static shaftwright.contract.Grid.POWER;

import java.util.function.Function;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

/**
 * The hub path's polynomials by their coefficients in powers of the normalised travel, from the
 * chosen source. Everything behind the path reads these and nothing of the sources.
 */
final class CoefficientLines {
    private CoefficientLines() {}

    static void declare(LiveLines lines) {
        LineSet<HubPath> paths =
                LineSet.in(lines, Section.PATH_WORK, POWER).only(Known.PATH, Lacking.NOT_AVAILABLE);
        of(paths, "camber", "camber", "{linkage_camber}", HubPath::camber);
        of(paths, "toe", "toe", "{linkage_toe}", HubPath::toe);
        of(
                paths,
                "reach_squared",
                "squared reach",
                "{linkage_reach_squared}",
                HubPath::reachSquared);
        of(paths, "fore_aft", "fore-aft", "{linkage_fore_aft}", HubPath::foreAft);
        // A linkage has no readings whose places could make its curves doubtful.
        of(paths, "hat", "the variance of squared reach", "0", path -> path.doubt().variance());
        of(
                paths.since(2),
                "shift",
                "the shift without suspect readings",
                "0",
                path -> path.doubt().shift());
    }

    private static void of(
            LineSet<HubPath> paths,
            String curve,
            String words,
            String linkage,
            Function<HubPath, Polynomial> core) {
        paths.number("coef_" + curve, "Coefficient of " + words)
                .is(
                        "IF({linkage_used}=1," + linkage + ",{fit_" + curve + "})",
                        (path, index) -> core.apply(path).coefficient(index.row()));
    }
}
