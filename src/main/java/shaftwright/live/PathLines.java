package shaftwright.live;

import static shaftwright.contract.Grid.POWER;

import java.util.function.Function;
import shaftwright.suspension.HubPath;
import shaftwright.suspension.Polynomial;

/**
 * The measured hub path of one side: typed readings as numbers, the fit by orthogonal polynomials,
 * its polynomials in normalised travel, its doubt and the readings that it makes doubtful. What
 * follows from the path reads {@link ChosenPathLines} and {@link PathFigureLines}.
 */
final class PathLines {
    private PathLines() {}

    static void declare(LiveLines lines) {
        ReadingLines.declare(lines);
        PathFigureLines.declare(lines);
        FitRowLines.declareKept(lines);
        FitRowLines.declareFitted(lines);
        BasisLines.declare(lines, Basis.FIRST);
        BasisLines.declare(lines, Basis.REACH);
        BasisLines.declare(lines, Basis.FORE_AFT);
        FitCoefficientLines.declareShares(lines);
        FitCoefficientLines.declareFirst(lines);
        angle(lines, Basis.CAMBER, HubPath::camber);
        angle(lines, Basis.TOE, HubPath::toe);
        SuspectLines.declareOutliers(lines);
        FitCoefficientLines.declare(lines);
        FitRowLines.declareCompared(lines);
        SuspectLines.declare(lines);
        GapLines.declare(lines);
        ReadingNoteLines.declareRows(lines);
        PathFigureLines.declareDoubt(lines);
        ReadingNoteLines.declareSides(lines);
        LinkagePointLines.declare(lines);
        LinkageLines.declare(lines);
        ChosenPathLines.declare(lines);
    }

    private static void angle(LiveLines lines, Basis basis, Function<HubPath, Polynomial> curve) {
        FitRowLines.declareAngle(lines, basis);
        BasisLines.declare(lines, basis);
        FitCoefficientLines.declare(lines, basis, curve);
    }

    /** {@code c0 + c1 s + c2 s² …} as nested products. */
    static String horner(String coefficients, String s) {
        int most = POWER.rows() - 1;
        String inner = "(".repeat(most) + "{" + coefficients + "#" + most + "}";
        for (int power = most - 1; power >= 0; power--) {
            inner += "*" + s + "+{" + coefficients + "#" + power + "})";
        }
        return inner;
    }

    /** A curve of the chosen path, which a scenario may have of its own, at a normalised travel. */
    static String curve(String curve, String norm) {
        return OwnPointLines.either(horner("own_" + curve, norm), horner("coef_" + curve, norm));
    }

    /** Derivative by s of the same polynomial. */
    static String hornerSlope(String coefficients, String s) {
        int most = POWER.rows() - 1;
        String inner = "(".repeat(most - 1) + most + "*{" + coefficients + "#" + most + "}";
        for (int power = most - 1; power > 0; power--) {
            String times = power > 1 ? power + "*" : "";
            inner += "*" + s + "+" + times + "{" + coefficients + "#" + power + "})";
        }
        return inner;
    }
}
