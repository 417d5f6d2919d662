package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.TERM;

import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shaftwright.reading.SideReadings;
import shaftwright.suspension.OutlierTest;
import shaftwright.suspension.QuantityFit;
import shaftwright.suspension.TapeSettings;

/**
 * How the rows go with the curve of a quantity, as far as it does not depend on the round: see
 * {@link OutlierTest}. What a round does is in {@link OutlierRoundLines}.
 *
 * @param basis of the curve
 */
record OutlierLines(Basis basis) {
    void declare(LiveLines lines) {
        LineSet<SideReadings> all =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .of((sizing, index) -> sizing.readings(index.side()));
        rows(all);
        LineSet<SideReadings> sides = all.in(Section.PATH_WORK, SIDE);
        sides.whole(of("WORD_freedom"), of("Degrees of freedom, WORD"))
                .is(
                        of("IF({fit_ready}=1,COUNTIF({WEIGHT:all},\">0\")-{DEGREE}-1,0)"),
                        this::freedom);
        for (int round = 1; round <= rounds(); round++) {
            new OutlierRoundLines(this, round).declare(all);
        }
        sums(sides);
        sides.in(Section.PATH_WORK, TERM)
                .number(of("WORD_shift"), of("Shift without suspects, WORD"))
                .is(
                        "0-(" + sum("{WORD_size%d}*{WORD_b%d}", "+") + ")",
                        (side, index) -> of(side, 0, test -> test.shiftShare(index.row())));
        if (basis == Basis.REACH) {
            sides.number("reach_scale", "Doubt grows by, reach")
                    .is(
                            "IF({reach_unplaced}=1,MAX(1,SQRT((SUMSQ({row_reach_off:all})-(%s))/({reach_freedom}-{reach_left_out}))),1)"
                                    .formatted(sum("{reach_size%d}^2", "+")),
                            side -> of(side, 1, OutlierTest::scale));
        }
    }

    /** Part of the names of these lines. */
    String word() {
        return switch (basis.quantity()) {
            case DISTANCE -> "reach";
            case FORE_AFT -> "fore_aft";
            case CAMBER -> "camber";
            case TOE -> "toe";
        };
    }

    int rounds() {
        return basis.quantity().mostSuspects();
    }

    /** A name or formula with this curve's word and the lines of its basis. */
    String of(String text) {
        return text.replace("WORD", word())
                .replace("WEIGHT", basis.weight)
                .replace("DEGREE", basis.degree);
    }

    /** The same for each round, {@code %d} its number. */
    String sum(String term, String between) {
        return IntStream.rangeClosed(1, rounds())
                .mapToObj(round -> of(term.replace("%d", String.valueOf(round))))
                .collect(Collectors.joining(between));
    }

    /** The share of each polynomial in the curve. */
    private String shares() {
        return switch (basis.quantity()) {
            case DISTANCE -> "term_reach";
            case FORE_AFT -> "term_fore_aft";
            case CAMBER -> "camber_share";
            case TOE -> "toe_share";
        };
    }

    /** What is fitted at a row. */
    String value() {
        return switch (basis.quantity()) {
            case DISTANCE -> "{row_centred}";
            case FORE_AFT -> "{row_ahead}";
            case CAMBER -> "{row_camber_value}";
            case TOE -> "{row_toe_value}";
        };
    }

    /** What a row's value is divided by, of the reach what it is multiplied with. */
    String deviation() {
        return switch (basis.quantity()) {
            case DISTANCE -> of("SQRT({WEIGHT})");
            case FORE_AFT -> "{fit_fore_aft_deviation}";
            case CAMBER, TOE -> String.valueOf(TapeSettings.ANGLE_DEVIATION);
        };
    }

    /** {@code e} and {@code d} of each row. */
    private void rows(LineSet<SideReadings> rows) {
        String off = "(" + value() + "-(" + basis.sumAtRow(shares()) + "))";
        rows.number(of("row_WORD_off"), of("e of WORD"))
                .is(
                        ifRow(off + (basis == Basis.REACH ? "*" : "/") + deviation()),
                        atRow(OutlierTest::residual));
        rows.number(of("row_WORD_free"), of("d of WORD"))
                .is(
                        ifRow("1-" + (basis == Basis.REACH ? "{row_hat}" : basis.hat())),
                        atRow(OutlierTest::freedom));
    }

    private String ifRow(String formula) {
        return of("IF({WEIGHT}*{fit_ready}>0,") + formula + ",0)";
    }

    private void sums(LineSet<SideReadings> sides) {
        sides.whole(of("WORD_left_out"), of("Suspect rows, WORD"))
                .is(sum("IF({WORD_out%d}>0,1,0)", "+"), side -> of(side, 0, OutlierTest::leftOut));
        String unplaced = "AND({WORD_out%d}=0,{WORD_worst%d}>" + OutlierTest.LIMIT + ")";
        sides.whole(of("WORD_unplaced"), of("Contradict unplaced, WORD"))
                .is(
                        "IF(OR(" + sum(unplaced, ",") + "),1,0)",
                        side -> of(side, 0, test -> test.contradictsUnplaced() ? 1 : 0));
    }

    private double freedom(SideReadings side) {
        return of(side, side.path().isPresent() ? -1 : 0, OutlierTest::freedom);
    }

    private double of(SideReadings side, double none, ToDoubleFunction<OutlierTest> figure) {
        return basis.fit(side)
                .map(QuantityFit::test)
                .map(test -> figure.applyAsDouble(test))
                .orElse(none);
    }

    /** A figure of a row, by its number among those that the curve goes by. */
    private interface AtPoint {
        double of(OutlierTest test, int point);
    }

    private LineSet.Figure<SideReadings> atRow(AtPoint figure) {
        return (side, index) -> {
            int point = basis.point(side, index.row());
            return point < 0 ? 0 : of(side, 0, test -> figure.of(test, point));
        };
    }
}
