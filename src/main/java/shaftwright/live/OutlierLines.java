package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.TERM;
import static shaftwright.formula.FormulaText.joined;

import java.util.function.ToDoubleFunction;
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
    void declare(LiveLines lines) {
        LineSet<SideReadings> all =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(2)
                        .of((sizing, index) -> sizing.readings(index.side()))
                        .with(pieces());
        rows(all);
        LineSet<SideReadings> sides = all.in(Section.PATH_WORK, SIDE);
        sides.whole("<curve>_freedom", "Degrees of freedom, <curve>")
                .is(
                        "IF({fit_ready}=1,COUNTIF({<weight>:all},\">0\")-{<degree>}-1,0)",
                        this::freedom);
        for (int round = 1; round <= rounds(); round++) {
            new Round(this, round).declare(all);
        }
        sums(sides);
        sides.in(Section.PATH_WORK, TERM)
                .number("<curve>_shift", "Shift without suspects, <curve>")
                .is(
                        "0-(" + each("+", "{<curve>_size<n>}*{<curve>_b<n>}") + ")",
                        (side, index) -> of(side, 0, test -> test.shiftShare(index.row())));
        if (basis == Basis.REACH) {
            sides.with(Pieces.of("left_out", each("+", "{reach_size<n>}^2")))
                    .number("reach_scale", "Doubt grows by, reach")
                    .is(
                            """
                            IF({reach_unplaced}=1,MAX(1,SQRT((SUMSQ({row_reach_off:all})-(<left_out>))
                            /({reach_freedom}-{reach_left_out}))),1)
                            """,
                            side -> of(side, 1, OutlierTest::scale));
        }
    }

    /**
     * {@code <curve>} in names and labels; {@code <weight>} and {@code <degree>} of its basis;
     * {@code <fitted>} what is fitted at a row, {@code <deviation>} what that is divided by, of the
     * reach multiplied with; {@code <limit>} of residuals.
     */
    Pieces pieces() {
        Pieces common =
                Pieces.of("weight", basis.weight)
                        .and("degree", basis.degree)
                        .and("limit", OutlierTest.LIMIT);
        return switch (basis.quantity()) {
            case DISTANCE -> of(common, "reach", "{row_centred}", "SQRT({<weight>})");
            case FORE_AFT -> of(common, "fore_aft", "{row_ahead}", "{fit_fore_aft_deviation}");
            case CAMBER -> of(common, "camber", "{row_camber_value}", ANGLE_DEVIATION);
            case TOE -> of(common, "toe", "{row_toe_value}", ANGLE_DEVIATION);
        };
    }

    private static final String ANGLE_DEVIATION = String.valueOf(TapeSettings.ANGLE_DEVIATION);

    private static Pieces of(Pieces common, String curve, String fitted, String deviation) {
        return common.and("curve", curve).and("fitted", fitted).and("deviation", deviation);
    }

    /** A name or formula of this curve. */
    String of(String text) {
        return pieces().in(text);
    }

    private int rounds() {
        return basis.quantity().mostSuspects();
    }

    /** The same for each round, {@code <n>} its number. */
    String each(String between, String term) {
        return joined(between, 1, rounds(), round -> Pieces.of("n", round).in(of(term)));
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

    /** {@code e} and {@code d} of each row. */
    private void rows(LineSet<SideReadings> rows) {
        String off = "(<fitted>-(" + basis.sumAtRow(shares()) + "))";
        boolean reach = basis == Basis.REACH;
        rows.number("row_<curve>_off", "e of <curve>")
                .is(ifRow(off + (reach ? "*" : "/") + "<deviation>"), atRow(OutlierTest::residual));
        rows.number("row_<curve>_free", "d of <curve>")
                .is(ifRow("1-" + (reach ? "{row_hat}" : basis.hat())), atRow(OutlierTest::freedom));
    }

    private static String ifRow(String formula) {
        return "IF({<weight>}*{fit_ready}>0," + formula + ",0)";
    }

    private void sums(LineSet<SideReadings> sides) {
        sides.whole("<curve>_left_out", "Suspect rows, <curve>")
                .is(
                        each("+", "IF({<curve>_out<n>}>0,1,0)"),
                        side -> of(side, 0, OutlierTest::leftOut));
        String unplaced = each(",", "AND({<curve>_out<n>}=0,{<curve>_worst<n>}><limit>)");
        sides.whole("<curve>_unplaced", "Contradict unplaced, <curve>")
                .is(
                        "IF(OR(" + unplaced + "),1,0)",
                        side -> of(side, 0, test -> test.contradictsUnplaced() ? 1 : 0));
    }

    private double freedom(SideReadings side) {
        return of(side, side.path().isPresent() ? -1 : 0, OutlierTest::freedom);
    }

    private double of(SideReadings side, double none, ToDoubleFunction<OutlierTest> figure) {
        return basis.fit(side).stream()
                .map(QuantityFit::test)
                .mapToDouble(figure)
                .findAny()
                .orElse(none);
    }

    /** A figure of a row, by its number among those that the curve goes by. */
    private interface AtPoint<T> {
        double of(T test, int point);
    }

    private LineSet.Figure<SideReadings> atRow(AtPoint<OutlierTest> figure) {
        return (side, index) -> {
            int point = basis.point(side, index.row());
            return point < 0 ? 0 : of(side, 0, test -> figure.of(test, point));
        };
    }

    /**
     * One round.
     *
     * @param number from 1
     */
    private record Round(OutlierLines outliers, int number) {
        void declare(LineSet<SideReadings> open) {
            LineSet<SideReadings> rows = open.with(pieces());
            LineSet<SideReadings> sides = rows.in(Section.PATH_WORK, SIDE);
            // The first contract version had the distances' residuals under the first name.
            boolean first = outliers.basis() == Basis.REACH && number == 1;
            (first ? rows.since(1).revised(2) : rows)
                    .number("<z>", "z of <curve>, round <n>")
                    .is(standardised(), atRow(OutlierRound::standardised));
            sides.number("<curve>_worst<n>", "Largest z of <curve>, round <n>")
                    .is("MAX({<z>:all})", side -> of(side, OutlierRound::largest));
            sides.whole("<curve>_out<n>", "Suspect row of <curve>, round <n>")
                    .is(
                            """
                            IF({<curve>_freedom}<<least_freedom>,0,IF(AND({<curve>_worst<n>}><limit>,
                            {<curve>_freedom}+{<degree>}+1>=<least_rows>),
                            MATCH({<curve>_worst<n>},{<z>:all},0),0))
                            """,
                            side -> of(side, done -> suspect(side, done)));
            String d = less(out("{row_<curve>_free:all}"), out("{row_<curve>_u<k>:all}") + "^2");
            sides.number("<curve>_root<n>", "Root of its d of <curve>, round <n>")
                    .is(ifOut("SQRT(" + d + ")"), side -> of(side, Round::root));
            String e =
                    less(
                            out("{row_<curve>_off:all}"),
                            "{<curve>_size<k>}*" + out("{row_<curve>_u<k>:all}"));
            sides.number("<curve>_size<n>", "Its e by root of <curve>, round <n>")
                    .is(
                            ifOut("(" + e + ")/{<curve>_root<n>}"),
                            side -> of(side, OutlierRound::size));
            rows.in(Section.PATH_WORK, TERM)
                    .number("<curve>_b<n>", "b of <curve>, round <n>")
                    .is(
                            index -> direction(index.row()),
                            (side, index) ->
                                    index.row() > degree(side)
                                            ? 0
                                            : of(side, done -> done.direction(index.row())));
            rows.number("row_<curve>_u<n>", "u of <curve>, round <n>")
                    .is(influence(), atRow(OutlierRound::influence));
        }

        private Pieces pieces() {
            boolean first = outliers.basis() == Basis.REACH && number == 1;
            return Pieces.of("n", number)
                    .and("z", first ? "row_standard" : "row_<curve>_z<n>")
                    .and("least_freedom", number + OutlierTest.LEAST_FREEDOM_LEFT)
                    .and("least_rows", OutlierTest.SHARE_LEFT_OUT * number);
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

        private String direction(int term) {
            Basis basis = outliers.basis();
            String first =
                    ("SQRT(" + out("{<weight>:all}") + ")*" + out(basis.values(term)))
                            + ("*{" + basis.word + "_inverse}");
            String b = less(first, out("{row_<curve>_u<k>:all}") + "*{<curve>_b<k>}");
            return ifOut("(" + b + ")/{<curve>_root<n>}");
        }

        private String influence() {
            String u = "0-SQRT({<weight>})*(" + outliers.basis().sumAtRow("<curve>_b<n>") + ")";
            // Zero in a row that an earlier round has left out.
            String open =
                    number == 1
                            ? u
                            : ("IF(OR(" + earlier(",", "{row_slot}={<curve>_out<k>}"))
                                    + ("),0," + u + ")");
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

        /** A figure of a round that took place. */
        private double of(SideReadings side, ToDoubleFunction<OutlierRound> figure) {
            return outliers.basis().fit(side).stream()
                    .map(fit -> fit.test().rounds())
                    .filter(rounds -> rounds.size() >= number)
                    .mapToDouble(rounds -> figure.applyAsDouble(rounds.get(number - 1)))
                    .findAny()
                    .orElse(0);
        }

        private LineSet.Figure<SideReadings> atRow(AtPoint<OutlierRound> figure) {
            return (side, index) -> {
                int point = outliers.basis().point(side, index.row());
                return point < 0 ? 0 : of(side, done -> figure.of(done, point));
            };
        }

        private static double root(OutlierRound done) {
            return done.suspect() < 0 ? 0 : done.influence(done.suspect());
        }

        /** Number of the row that the round left out, 0 for none. */
        private double suspect(SideReadings side, OutlierRound done) {
            return done.suspect() < 0
                    ? 0
                    : side.slot(outliers.basis().fit(side).orElseThrow().row(done.suspect())) + 1;
        }

        private int degree(SideReadings side) {
            return outliers.basis().fit(side).map(fit -> fit.basis().degree()).orElse(0);
        }
    }
}
