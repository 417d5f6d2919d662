package shaftwright.live;

import static shaftwright.contract.Grid.POWER;

/**
 * The measured hub path of one side: typed readings as numbers, the fit by orthogonal polynomials,
 * its polynomials in normalised travel, its doubt and the readings that it makes doubtful. What
 * follows from the path reads {@link CoefficientLines} and {@link PathFigureLines}.
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
        ShareLines.FIRST_REACH.declareIn(lines);
        ShareLines.SQUARED_REACH.declareIn(lines);
        ShareLines.FORE_AFT.declareIn(lines);
        FitCoefficientLines.declareFirst(lines);
        angle(lines, Basis.CAMBER, ShareLines.CAMBER);
        FitCoefficientLines.declareCamber(lines);
        angle(lines, Basis.TOE, ShareLines.TOE);
        FitCoefficientLines.declareToe(lines);
        for (OutlierLines curve : SuspectLines.CURVES) {
            curve.declare(lines);
        }
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
        CoefficientLines.declare(lines);
    }

    private static void angle(LiveLines lines, Basis basis, ShareLines share) {
        AngleLines.declare(lines, basis);
        BasisLines.declare(lines, basis);
        share.declareIn(lines);
    }

    /** {@code c0 + c1 s + c2 s² …} as nested products. */
    static String horner(String coefficients, String s) {
        StringBuilder text = new StringBuilder();
        int powers = POWER.rows();
        text.append("(".repeat(powers - 1));
        for (int power = powers - 1; power > 0; power--) {
            text.append('{').append(coefficients).append('#').append(power).append('}');
            text.append(power == powers - 1 ? "" : ")").append('*').append(s).append('+');
        }
        text.append('{').append(coefficients).append("#0})");
        return text.toString();
    }

    /** Derivative by s of the same polynomial. */
    static String hornerSlope(String coefficients, String s) {
        StringBuilder text = new StringBuilder();
        int powers = POWER.rows();
        text.append("(".repeat(powers - 2));
        for (int power = powers - 1; power > 1; power--) {
            text.append(power).append("*{").append(coefficients).append('#').append(power);
            text.append(power == powers - 1 ? "}" : "})").append('*').append(s).append('+');
        }
        text.append('{').append(coefficients).append("#1})");
        return text.toString();
    }
}
