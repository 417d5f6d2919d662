package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.SideReadings;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.OutlierTest;
import shaftwright.suspension.QuantityFit;
import shaftwright.suspension.TapeSettings;

/**
 * How the rows go with the curve of a quantity, as far as it does not depend on the round: see
 * {@link OutlierTest}. What a round does is in {@link OutlierRoundLines}.
 *
 * @param basis of the curve
 */
record OutlierLines(Basis basis, What what) implements LiveLine.Formula, LiveLine.Core {
    private enum What {
        /** e of a row. */
        OFF,
        /** d of a row. */
        FREE,
        FREEDOM,
        LEFT_OUT,
        UNPLACED,
        SHIFT,
        SCALE
    }

    static void declare(LiveLines lines, Basis basis) {
        String word = word(basis);
        new OutlierLines(basis, What.OFF)
                .declare(lines, "row_" + word + "_off", READING_SLOT, "e of " + word, NUMBER);
        new OutlierLines(basis, What.FREE)
                .declare(lines, "row_" + word + "_free", READING_SLOT, "d of " + word, NUMBER);
        new OutlierLines(basis, What.FREEDOM)
                .declare(lines, word + "_freedom", SIDE, "Degrees of freedom, " + word, WHOLE);
        for (int round = 1; round <= rounds(basis); round++) {
            OutlierRoundLines.declare(lines, basis, round);
        }
        new OutlierLines(basis, What.LEFT_OUT)
                .declare(lines, word + "_left_out", SIDE, "Suspect rows, " + word, WHOLE);
        new OutlierLines(basis, What.UNPLACED)
                .declare(lines, word + "_unplaced", SIDE, "Contradict unplaced, " + word, WHOLE);
        new OutlierLines(basis, What.SHIFT)
                .declare(lines, word + "_shift", TERM, "Shift without suspects, " + word, NUMBER);
        if (basis == Basis.REACH) {
            new OutlierLines(basis, What.SCALE)
                    .declare(lines, word + "_scale", SIDE, "Doubt grows by, " + word, NUMBER);
        }
    }

    private void declare(LiveLines lines, String name, Grid grid, String label, Quantity quantity) {
        lines.add(
                new LiveLine(name, Section.PATH_WORK, grid, label, quantity, this, this).since(2));
    }

    /** Part of the names of these lines. */
    static String word(Basis basis) {
        return switch (basis.quantity()) {
            case DISTANCE -> "reach";
            case FORE_AFT -> "fore_aft";
            case CAMBER -> "camber";
            case TOE -> "toe";
        };
    }

    static int rounds(Basis basis) {
        return basis.quantity().mostSuspects();
    }

    /** The share of each polynomial in the curve. */
    static String shares(Basis basis) {
        return switch (basis.quantity()) {
            case DISTANCE -> "term_reach";
            case FORE_AFT -> "term_fore_aft";
            case CAMBER -> "camber_share";
            case TOE -> "toe_share";
        };
    }

    /** What is fitted at a row. */
    static String value(Basis basis) {
        return switch (basis.quantity()) {
            case DISTANCE -> "{row_centred}";
            case FORE_AFT -> "{row_ahead}";
            case CAMBER -> "{row_camber_value}";
            case TOE -> "{row_toe_value}";
        };
    }

    /** What a row's value is divided by, as a formula. */
    static String deviation(Basis basis) {
        return switch (basis.quantity()) {
            case DISTANCE -> "SQRT({" + basis.weight + "})";
            case FORE_AFT -> "{fit_fore_aft_deviation}";
            case CAMBER, TOE -> String.valueOf(TapeSettings.ANGLE_DEVIATION);
        };
    }

    @Override
    public String at(Index index) {
        String word = word(basis);
        return switch (what) {
            case OFF ->
                    ifRow(
                            "("
                                    + value(basis)
                                    + "-("
                                    + basis.sumAtRow(shares(basis))
                                    + "))"
                                    + perDeviation());
            case FREE -> ifRow("1-" + (basis == Basis.REACH ? "{row_hat}" : basis.hat()));
            case FREEDOM ->
                    "IF({fit_ready}=1,COUNTIF({"
                            + basis.weight
                            + ":all},\">0\")-{"
                            + basis.degree
                            + "}-1,0)";
            case LEFT_OUT -> sum("IF({" + word + "_out%d}>0,1,0)", "+");
            case UNPLACED ->
                    "IF(OR("
                            + sum(
                                    "AND({"
                                            + word
                                            + "_out%d}=0,{"
                                            + word
                                            + "_worst%d}>"
                                            + OutlierTest.LIMIT
                                            + ")",
                                    ",")
                            + "),1,0)";
            case SHIFT -> "0-(" + sum("{" + word + "_size%d}*{" + word + "_b%d}", "+") + ")";
            case SCALE ->
                    "IF({"
                            + word
                            + "_unplaced}=1,MAX(1,SQRT((SUMSQ({row_"
                            + word
                            + "_off:all})-("
                            + sum("{" + word + "_size%d}^2", "+")
                            + "))/({"
                            + word
                            + "_freedom}-{"
                            + word
                            + "_left_out}))),1)";
        };
    }

    private String perDeviation() {
        return (basis == Basis.REACH ? "*" : "/") + deviation(basis);
    }

    private String ifRow(String formula) {
        return "IF({" + basis.weight + "}*{fit_ready}>0," + formula + ",0)";
    }

    /** The same for all rounds. */
    private String sum(String term, String between) {
        StringBuilder text = new StringBuilder();
        for (int round = 1; round <= rounds(basis); round++) {
            text.append(round == 1 ? "" : between);
            text.append(term.replace("%d", String.valueOf(round)));
        }
        return text.toString();
    }

    /** The core's curve of the quantity, when there is one. */
    static Optional<QuantityFit> fit(Sizing sizing, Index index, MeasuredQuantity quantity) {
        return sizing.readings(index.side()).path().flatMap(path -> path.fit(quantity));
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideReadings side = sizing.readings(index.side());
        Optional<QuantityFit> fit = fit(sizing, index, basis.quantity());
        if (fit.isEmpty()) {
            boolean none = what == What.FREEDOM && side.path().isPresent();
            return CellValue.of(what == What.SCALE ? 1 : none ? -1 : 0);
        }
        OutlierTest test = fit.get().test();
        int point = what == What.OFF || what == What.FREE ? basis.point(side, index.row()) : 0;
        if (point < 0) {
            return CellValue.of(0);
        }
        return CellValue.of(
                switch (what) {
                    case OFF -> test.residual(point);
                    case FREE -> test.freedom(point);
                    case FREEDOM -> test.freedom();
                    case LEFT_OUT -> test.leftOut();
                    case UNPLACED -> test.contradictsUnplaced() ? 1 : 0;
                    case SHIFT -> test.shiftShare(index.row());
                    case SCALE -> test.scale();
                });
    }
}
