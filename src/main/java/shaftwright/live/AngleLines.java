package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.RADIAN;
import static shaftwright.live.Quantity.WHOLE;

import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.FittedRow;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.OrthogonalBasis;

/**
 * Which rows have camber or toe, each with weight one, and the degree of the curve through them.
 */
record AngleLines(Basis basis, What what) implements LiveLine.Formula, LiveLine.Core {
    private enum What {
        WEIGHT,
        VALUE,
        DEGREE
    }

    static void declare(LiveLines lines, Basis basis) {
        String word = basis.word;
        AngleLines weight = new AngleLines(basis, What.WEIGHT);
        AngleLines value = new AngleLines(basis, What.VALUE);
        AngleLines degree = new AngleLines(basis, What.DEGREE);
        lines.add(
                new LiveLine(
                        basis.weight,
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Has " + word,
                        WHOLE,
                        weight,
                        weight));
        lines.add(
                new LiveLine(
                        "row_" + word + "_value",
                        Section.PATH_WORK,
                        READING_SLOT,
                        "Used " + word,
                        RADIAN,
                        value,
                        value));
        lines.add(
                new LiveLine(
                        basis.degree,
                        Section.PATH_WORK,
                        SIDE,
                        "Degree of " + word,
                        WHOLE,
                        degree,
                        degree));
    }

    @Override
    public String at(Index index) {
        String typed = "{row_" + basis.word + "}";
        return switch (what) {
            case WEIGHT -> ifReady("IF(ISNUMBER(" + typed + "),1,0)");
            case VALUE -> ifReady("IF(ISNUMBER(" + typed + ")," + typed + ",0)");
            case DEGREE ->
                    "IF({fit_ready}=1,"
                            + PathFigureLines.degree("SUM({" + basis.weight + ":all})")
                            + ",NA())";
        };
    }

    private static String ifReady(String formula) {
        return "IF({row_weight}*{fit_ready}>0," + formula + ",0)";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        if (what == What.DEGREE) {
            MeasuredPath path = sizing.readings(index.side()).path().orElse(null);
            return path == null ? CellValue.NOT_AVAILABLE : CellValue.of(degree(path));
        }
        FittedRow row = sizing.readings(index.side()).fitted(index.row()).orElse(null);
        OptionalDouble angle = row == null ? OptionalDouble.empty() : basis.angle(row);
        if (what == What.WEIGHT) {
            return CellValue.of(angle.isPresent() ? 1 : 0);
        }
        return CellValue.of(angle.orElse(0));
    }

    private int degree(MeasuredPath path) {
        OrthogonalBasis polynomials = basis.orNull(path);
        return polynomials == null ? 0 : polynomials.degree();
    }
}
