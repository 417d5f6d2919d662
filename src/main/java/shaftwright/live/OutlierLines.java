package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.formula.FormulaText.joined;

import java.util.Optional;
import shaftwright.formula.Pieces;
import shaftwright.reading.SideReadings;
import shaftwright.suspension.OutlierRound;
import shaftwright.suspension.OutlierTest;
import shaftwright.suspension.QuantityFit;
import shaftwright.suspension.TapeSettings;

/**
 * How the rows go with the curve of a quantity, and which of them the others speak against: see
 * {@link OutlierTest}. The test goes by rounds: each takes the standardized residuals without the
 * rows left out so far, and says what leaving out the worst of them changes. All of a round is zero
 * once no row was left out.
 *
 * @param basis of the curve
 */
record OutlierLines(Basis basis) {
    /** A row's place among those that the curve goes by. */
    private record Point(OutlierTest test, int number) {
        double in(int round, LineSet.RowFigure<OutlierRound> figure) {
            return test.round(round).map(done -> figure.of(done, number)).orElse(0.0);
        }
    }

    void declare(LiveLines lines) {
        LineSet<SideReadings> rows =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .of((sizing, index) -> sizing.readings(index.side()))
                        .with(pieces());
        LineSet<Point> points = rows.ofAny((side, index) -> point(side, index.row()), Lacking.ZERO);
        boolean reach = basis == Basis.REACH;
        points.number("row_<curve>_off", "e of <curve>")
                .is(
                        ifRow("(<fitted>-(<curve_at_row>))" + (reach ? "*" : "/") + "<deviation>"),
                        point -> point.test().residual(point.number()));
        points.number("row_<curve>_free", "d of <curve>")
                .is(
                        ifRow("1-" + (reach ? "{row_hat}" : Basis.HAT)),
                        point -> point.test().freedom(point.number()));
        LineSet<SideReadings> sides = rows.in(Section.PATH_WORK, SIDE);
        sides.ofAny((side, index) -> side.path(), Lacking.ZERO)
                .whole("<curve>_freedom", "Degrees of freedom, <curve>")
                .is(
                        "IF({fit_ready}=1,COUNTIF({<weight>:all},\">0\")-{<degree>}-1,0)",
                        path ->
                                path.fit(basis.quantity())
                                        .map(fit -> fit.test().freedom())
                                        .orElse(-1));
        for (int round = 1; round <= rounds(); round++) {
            new Round(this, round).declare(rows, points);
        }
        LineSet<OutlierTest> tests = sides.ofAny((side, index) -> test(side), Lacking.ZERO);
        tests.whole("<curve>_left_out", "Suspect rows, <curve>")
                .is(each("+", "IF({<curve>_out<n>}>0,1,0)"), test -> test.leftOut());
        String unplaced = each(",", "AND({<curve>_out<n>}=0,{<curve>_worst<n>}><limit>)");
        tests.whole("<curve>_unplaced", "Contradict unplaced, <curve>")
                .is("IF(OR(" + unplaced + "),1,0)", test -> test.contradictsUnplaced() ? 1 : 0);
        tests.in(Section.PATH_WORK, TERM)
                .number("<curve>_shift", "Shift without suspects, <curve>")
                .byRow(
                        "0-(" + each("+", "{<curve>_size<n>}*{<curve>_b<n>}") + ")",
                        OutlierTest::shiftShare);
        if (reach) {
            sides.with(Pieces.of("left_out", each("+", "{reach_size<n>}^2")))
                    .number("reach_scale", "Doubt grows by, reach")
                    .is(
                            """
                            IF({reach_unplaced}=1,MAX(1,SQRT((SUMSQ({row_reach_off:all})-(<left_out>))
                            /({reach_freedom}-{reach_left_out}))),1)
                            """,
                            side -> test(side).map(OutlierTest::scale).orElse(1.0));
        }
    }

    /**
     * Those of its basis; {@code <curve>} in names and labels; {@code <fitted>} what is fitted at a
     * row, {@code <curve_at_row>} what comes of it there, {@code <deviation>} what the difference
     * is divided by, of the reach multiplied with; {@code <limit>} of residuals.
     */
    Pieces pieces() {
        return switch (basis.quantity()) {
            case DISTANCE -> pieces("reach", "SQRT({<weight>})");
            case FORE_AFT -> pieces("fore_aft", "{fit_fore_aft_deviation}");
            case CAMBER, TOE -> pieces("<word>", String.valueOf(TapeSettings.ANGLE_DEVIATION));
        };
    }

    private Pieces pieces(String curve, String deviation) {
        return basis.words
                .and("limit", OutlierTest.LIMIT)
                .and("curve", curve)
                .and("fitted", "{<value>}")
                .and("curve_at_row", Basis.sumAtRow("<share>"))
                .and("deviation", deviation);
    }

    private int rounds() {
        return basis.quantity().mostSuspects();
    }

    /** A term for each round, {@code <n>} its number. */
    String each(String between, String term) {
        return joined(between, 1, rounds(), round -> Pieces.of("n", round).in(term));
    }

    private static String ifRow(String formula) {
        return "IF({<weight>}*{fit_ready}>0," + formula + ",0)";
    }

    private Optional<OutlierTest> test(SideReadings side) {
        return basis.fit(side).map(QuantityFit::test);
    }

    private Optional<Point> point(SideReadings side, int slot) {
        int point = basis.point(side, slot);
        return point < 0 ? Optional.empty() : test(side).map(test -> new Point(test, point));
    }

    /**
     * One round.
     *
     * @param number from 1
     */
    private record Round(OutlierLines outliers, int number) {
        void declare(LineSet<SideReadings> readings, LineSet<Point> all) {
            // The first contract version had the distances' residuals under the first name.
            boolean first = outliers.basis() == Basis.REACH && number == 1;
            Pieces pieces =
                    Pieces.of("n", number)
                            .and("z", first ? "row_standard" : "row_<curve>_z<n>")
                            .and("least_freedom", number + OutlierTest.LEAST_FREEDOM_LEFT)
                            .and("least_rows", OutlierTest.SHARE_LEFT_OUT * number);
            LineSet<Point> points = all.with(pieces);
            LineSet<SideReadings> sides = readings.with(pieces).in(Section.PATH_WORK, SIDE);
            LineSet<OutlierRound> rounds = sides.ofAny((side, index) -> round(side), Lacking.ZERO);
            (first ? points.since(1).revised(2) : points)
                    .number("<z>", "z of <curve>, round <n>")
                    .is(standardised(), point -> point.in(number, OutlierRound::standardised));
            rounds.number("<curve>_worst<n>", "Largest z of <curve>, round <n>")
                    .is("MAX({<z>:all})", OutlierRound::largest);
            sides.whole("<curve>_out<n>", "Suspect row of <curve>, round <n>")
                    .is(
                            """
                            IF({<curve>_freedom}<<least_freedom>,0,IF(AND({<curve>_worst<n>}><limit>,
                            {<curve>_freedom}+{<degree>}+1>=<least_rows>),
                            MATCH({<curve>_worst<n>},{<z>:all},0),0))
                            """,
                            side -> round(side).map(done -> suspect(side, done)).orElse(0));
            String influence = out("{row_<curve>_u<k>:all}");
            String d = less(out("{row_<curve>_free:all}"), influence + "^2");
            rounds.number("<curve>_root<n>", "Root of its d of <curve>, round <n>")
                    .is(ifOut("SQRT(" + d + ")"), OutlierRound::root);
            String e = less(out("{row_<curve>_off:all}"), "{<curve>_size<k>}*" + influence);
            rounds.number("<curve>_size<n>", "Its e by root of <curve>, round <n>")
                    .is(ifOut("(" + e + ")/{<curve>_root<n>}"), OutlierRound::size);
            String share =
                    "SQRT(" + out("{<weight>:all}") + ")*" + out("{row_<word>_<row_from_0>:all}");
            String b = less(share + "*{<word>_inverse}", influence + "*{<curve>_b<k>}");
            rounds.in(Section.PATH_WORK, TERM)
                    .number("<curve>_b<n>", "b of <curve>, round <n>")
                    .byRow(ifOut("(" + b + ")/{<curve>_root<n>}"), OutlierRound::direction);
            points.number("row_<curve>_u<n>", "u of <curve>, round <n>")
                    .is(influence(), point -> point.in(number, OutlierRound::influence));
        }

        private Optional<OutlierRound> round(SideReadings side) {
            return outliers.test(side).flatMap(test -> test.round(number));
        }

        private String standardised() {
            String z =
                    Pieces.of("d", less("{row_<curve>_free}", "{row_<curve>_u<k>}^2"))
                            .and(
                                    "e",
                                    less(
                                            "{row_<curve>_off}",
                                            "{<curve>_size<k>}*{row_<curve>_u<k>}"))
                            .in("IF(<d>>0.000001,ROUND(ABS(<e>)/SQRT(<d>),6),0)");
            return number == 1 ? z : "IF({<curve>_out" + (number - 1) + "}>0," + z + ",0)";
        }

        private String influence() {
            String u = "0-SQRT({<weight>})*(" + Basis.sumAtRow("<curve>_b<n>") + ")";
            // Zero in a row that an earlier round has left out.
            String before = earlier(",", "{row_slot}={<curve>_out<k>}");
            String open = number == 1 ? u : "IF(OR(" + before + "),0," + u + ")";
            return ifOut("IF({row_slot}={<curve>_out<n>},{<curve>_root<n>}," + open + ")");
        }

        private static String ifOut(String formula) {
            return "IF({<curve>_out<n>}=0,0," + formula + ")";
        }

        /** A column's value in the row left out. */
        private static String out(String column) {
            return "INDEX(" + column + ",{<curve>_out<n>})";
        }

        /** A value less a term for each earlier round. */
        private String less(String first, String term) {
            return number == 1 ? first : first + "-" + earlier("-", term);
        }

        /** A term for each earlier round, {@code <k>} its number. */
        private String earlier(String between, String term) {
            return joined(between, 1, number - 1, round -> Pieces.of("k", round).in(term));
        }

        /** Number of the row that the round left out, 0 for none. */
        private int suspect(SideReadings side, OutlierRound done) {
            return done.suspect() < 0
                    ? 0
                    : side.slot(outliers.basis().fit(side).orElseThrow().row(done.suspect())) + 1;
        }
    }
}
