package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.TERM;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shaftwright.reading.SideReadings;
import shaftwright.suspension.OutlierRound;
import shaftwright.suspension.OutlierTest;

/**
 * One round of the test for suspect rows: the standardized residuals without the rows left out so
 * far, and what leaving out the worst of them changes. All zero once no row was left out.
 *
 * @param round from 1
 */
record OutlierRoundLines(OutlierLines outliers, int round) {
    void declare(LineSet<SideReadings> rows) {
        LineSet<SideReadings> sides = rows.in(Section.PATH_WORK, SIDE);
        // The first contract version had the distances' residuals under the first name.
        (standard().equals("row_standard") ? rows.since(1).revised(2) : rows)
                .number(standard(), of("z of WORD, round THIS"))
                .is(standardised(), atRow(OutlierRound::standardised));
        sides.number(of("WORD_worstTHIS"), of("Largest z of WORD, round THIS"))
                .is("MAX({" + standard() + ":all})", side -> of(side, OutlierRound::largest));
        sides.whole(of("WORD_outTHIS"), of("Suspect row of WORD, round THIS"))
                .is(out(), side -> of(side, done -> suspect(side, done)));
        sides.number(of("WORD_rootTHIS"), of("Root of its d of WORD, round THIS"))
                .is(
                        ifOut("SQRT(" + less(out("{row_WORD_free:all}"), out(USED) + "^2") + ")"),
                        side ->
                                of(
                                        side,
                                        done ->
                                                done.suspect() < 0
                                                        ? 0
                                                        : done.influence(done.suspect())));
        String e = less(out("{row_WORD_off:all}"), "{WORD_size%d}*" + out(USED));
        sides.number(of("WORD_sizeTHIS"), of("Its e by root of WORD, round THIS"))
                .is(ifOut("(" + e + ")/{WORD_rootTHIS}"), side -> of(side, OutlierRound::size));
        rows.in(Section.PATH_WORK, TERM)
                .number(of("WORD_bTHIS"), of("b of WORD, round THIS"))
                .is(
                        index -> direction(index.row()),
                        (side, index) ->
                                index.row() > degree(side)
                                        ? 0
                                        : of(side, done -> done.direction(index.row())));
        rows.number(of("row_WORD_uTHIS"), of("u of WORD, round THIS"))
                .is(influence(), atRow(OutlierRound::influence));
    }

    /** A column of an earlier round's influences. */
    private static final String USED = "{row_WORD_u%d:all}";

    /** A name or formula with the curve's word and this round's number. */
    private String of(String text) {
        return outliers.of(text.replace("THIS", String.valueOf(round)));
    }

    private String standard() {
        return of(
                outliers.basis() == Basis.REACH && round == 1 ? "row_standard" : "row_WORD_zTHIS");
    }

    private String standardised() {
        String d = less("{row_WORD_free}", "{row_WORD_u%d}^2");
        String e = less("{row_WORD_off}", "{WORD_size%d}*{row_WORD_u%d}");
        String z = "IF(%s>0.000001,ROUND(ABS(%s)/SQRT(%s),6),0)".formatted(d, e, d);
        return of(round == 1 ? z : "IF({WORD_out" + (round - 1) + "}>0," + z + ",0)");
    }

    private String out() {
        return of(
                "IF({WORD_freedom}<%s,0,IF(AND({WORD_worstTHIS}>%s,{WORD_freedom}+{DEGREE}+1>=%s),MATCH({WORD_worstTHIS},{%s:all},0),0))"
                        .formatted(
                                round + OutlierTest.LEAST_FREEDOM_LEFT,
                                OutlierTest.LIMIT,
                                OutlierTest.SHARE_LEFT_OUT * round,
                                standard()));
    }

    private String direction(int term) {
        String first =
                "SQRT(%s)*%s*{%s_inverse}"
                        .formatted(
                                out("{WEIGHT:all}"),
                                out(outliers.basis().values(term)),
                                outliers.basis().word);
        return ifOut("(" + less(first, out(USED) + "*{WORD_b%d}") + ")/{WORD_rootTHIS}");
    }

    private String influence() {
        String u = "0-SQRT({WEIGHT})*(" + outliers.basis().sumAtRow(of("WORD_bTHIS")) + ")";
        return ifOut("IF({row_slot}={WORD_outTHIS},{WORD_rootTHIS}," + unlessOut(u) + ")");
    }

    private String ifOut(String formula) {
        return of("IF({WORD_outTHIS}=0,0," + formula + ")");
    }

    /** Zero in a row that an earlier round has left out. */
    private String unlessOut(String formula) {
        return round == 1
                ? formula
                : "IF(OR(" + earlier("{row_slot}={WORD_out%d}", ",") + "),0," + formula + ")";
    }

    /** A column's value in the row left out. */
    private static String out(String column) {
        return "INDEX(" + column + ",{WORD_outTHIS})";
    }

    /** A value less a term for each earlier round. */
    private String less(String first, String term) {
        return round == 1 ? first : first + "-" + earlier(term, "-");
    }

    /** A term for each earlier round, {@code %d} its number. */
    private String earlier(String term, String between) {
        return IntStream.range(1, round)
                .mapToObj(earlier -> term.replace("%d", String.valueOf(earlier)))
                .collect(Collectors.joining(between));
    }

    /** A figure of a round that took place. */
    private interface Figure {
        double of(OutlierRound done);
    }

    /** The same of a row, by its number among those that the curve goes by. */
    private interface AtPoint {
        double of(OutlierRound done, int point);
    }

    private double of(SideReadings side, Figure figure) {
        return outliers.basis()
                .fit(side)
                .map(fit -> fit.test().rounds())
                .filter(rounds -> rounds.size() >= round)
                .map(rounds -> figure.of(rounds.get(round - 1)))
                .orElse(0.0);
    }

    private LineSet.Figure<SideReadings> atRow(AtPoint figure) {
        return (side, index) -> {
            int point = outliers.basis().point(side, index.row());
            return point < 0 ? 0 : of(side, done -> figure.of(done, point));
        };
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
