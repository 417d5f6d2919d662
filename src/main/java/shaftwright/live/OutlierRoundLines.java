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
import shaftwright.suspension.OutlierRound;
import shaftwright.suspension.OutlierTest;
import shaftwright.suspension.QuantityFit;

/**
 * One round of the test for suspect rows: the standardized residuals without the rows left out so
 * far, and what leaving out the worst of them changes. All zero once no row was left out.
 *
 * @param basis of the curve
 * @param round from 1
 */
record OutlierRoundLines(Basis basis, int round, What what)
        implements LiveLine.Formula, LiveLine.Core {
    private enum What {
        /** z of a row. */
        STANDARD,
        WORST,
        /** Number of the row left out, 0 for none. */
        OUT,
        /** {@code √d} of that row. */
        ROOT,
        /** {@code e/√d} of that row. */
        SIZE,
        DIRECTION,
        /** u of a row. */
        INFLUENCE
    }

    static void declare(LiveLines lines, Basis basis, int round) {
        String word = OutlierLines.word(basis);
        String of = " of " + word + ", round " + round;
        add(lines, basis, round, What.STANDARD, standard(basis, round), READING_SLOT, "z" + of);
        add(lines, basis, round, What.WORST, word + "_worst" + round, SIDE, "Largest z" + of);
        add(lines, basis, round, What.OUT, word + "_out" + round, SIDE, "Suspect row" + of);
        add(lines, basis, round, What.ROOT, word + "_root" + round, SIDE, "Root of its d" + of);
        add(lines, basis, round, What.SIZE, word + "_size" + round, SIDE, "Its e by root" + of);
        add(lines, basis, round, What.DIRECTION, word + "_b" + round, TERM, "b" + of);
        add(
                lines,
                basis,
                round,
                What.INFLUENCE,
                "row_" + word + "_u" + round,
                READING_SLOT,
                "u" + of);
    }

    private static void add(
            LiveLines lines,
            Basis basis,
            int round,
            What what,
            String name,
            Grid grid,
            String label) {
        OutlierRoundLines line = new OutlierRoundLines(basis, round, what);
        Quantity quantity = what == What.OUT ? WHOLE : NUMBER;
        LiveLine added =
                new LiveLine(name, Section.PATH_WORK, grid, label, quantity, line, line).since(2);
        // The first contract version had the distances' residuals under this name.
        lines.add(name.equals("row_standard") ? added.since(1).revised(2) : added);
    }

    private static String standard(Basis basis, int round) {
        return basis == Basis.REACH && round == 1
                ? "row_standard"
                : "row_" + OutlierLines.word(basis) + "_z" + round;
    }

    private String of(String figure) {
        return "{" + OutlierLines.word(basis) + "_" + figure + round + "}";
    }

    private String of(String figure, int earlier) {
        return "{" + OutlierLines.word(basis) + "_" + figure + earlier + "}";
    }

    @Override
    public String at(Index index) {
        String word = OutlierLines.word(basis);
        String free = "{row_" + word + "_free}";
        String freedom = "{" + word + "_freedom}";
        return switch (what) {
            case STANDARD -> {
                String d = minus(free, "{row_" + word + "_u%d}^2");
                String e =
                        minus(
                                "{row_" + word + "_off}",
                                "{" + word + "_size%d}*{row_" + word + "_u%d}");
                String z =
                        "IF("
                                + d
                                + ">"
                                + "0.000001"
                                + ",ROUND(ABS("
                                + e
                                + ")/SQRT("
                                + d
                                + "),6),0)";
                yield round == 1 ? z : "IF(" + of("out", round - 1) + ">0," + z + ",0)";
            }
            case WORST -> "MAX({" + standard(basis, round) + ":all})";
            case OUT ->
                    "IF("
                            + freedom
                            + "<"
                            + (round + OutlierTest.LEAST_FREEDOM_LEFT)
                            + ",0,IF(AND("
                            + of("worst")
                            + ">"
                            + OutlierTest.LIMIT
                            + ","
                            + freedom
                            + "+{"
                            + basis.degree
                            + "}+1>="
                            + OutlierTest.SHARE_LEFT_OUT * round
                            + "),MATCH("
                            + of("worst")
                            + ",{"
                            + standard(basis, round)
                            + ":all},0),0))";
            case ROOT ->
                    ifOut(
                            "SQRT("
                                    + minus(
                                            at("{row_" + word + "_free:all}"),
                                            at("{row_" + word + "_u%d:all}") + "^2")
                                    + ")");
            case SIZE ->
                    ifOut(
                            "("
                                    + minus(
                                            at("{row_" + word + "_off:all}"),
                                            "{"
                                                    + word
                                                    + "_size%d}*"
                                                    + at("{row_" + word + "_u%d:all}"))
                                    + ")/"
                                    + of("root"));
            case DIRECTION ->
                    ifOut(
                            "("
                                    + minus(
                                            "SQRT("
                                                    + at("{" + basis.weight + ":all}")
                                                    + ")*"
                                                    + at(basis.values(index.row()))
                                                    + "*{"
                                                    + basis.word
                                                    + "_inverse}",
                                            at("{row_" + word + "_u%d:all}")
                                                    + "*{"
                                                    + word
                                                    + "_b%d}")
                                    + ")/"
                                    + of("root"));
            case INFLUENCE ->
                    ifOut(
                            "IF({row_slot}="
                                    + of("out")
                                    + ","
                                    + of("root")
                                    + ","
                                    + unlessOut(
                                            "0-SQRT({"
                                                    + basis.weight
                                                    + "})*("
                                                    + basis.sumAtRow(word + "_b" + round)
                                                    + ")")
                                    + ")");
        };
    }

    private String ifOut(String formula) {
        return "IF(" + of("out") + "=0,0," + formula + ")";
    }

    /** Zero in a row that an earlier round has left out. */
    private String unlessOut(String formula) {
        if (round == 1) {
            return formula;
        }
        StringBuilder text = new StringBuilder("IF(OR(");
        for (int earlier = 1; earlier < round; earlier++) {
            text.append(earlier == 1 ? "" : ",").append("{row_slot}=").append(of("out", earlier));
        }
        return text.append("),0,").append(formula).append(')').toString();
    }

    /** A column's value in the row left out. */
    private String at(String column) {
        return "INDEX(" + column + "," + of("out") + ")";
    }

    /** A value less a term for each earlier round, {@code %d} its number. */
    private String minus(String first, String term) {
        StringBuilder text = new StringBuilder(first);
        for (int earlier = 1; earlier < round; earlier++) {
            text.append('-').append(term.replace("%d", String.valueOf(earlier)));
        }
        return text.toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        Optional<QuantityFit> found =
                OutlierLines.fit(sizing, index, basis.quantity())
                        .filter(curve -> curve.test().rounds().size() >= round);
        if (found.isEmpty()) {
            return CellValue.of(0);
        }
        QuantityFit fit = found.get();
        OutlierRound done = fit.test().rounds().get(round - 1);
        SideReadings side = sizing.readings(index.side());
        return CellValue.of(
                switch (what) {
                    case STANDARD -> {
                        int point = basis.point(side, index.row());
                        yield point < 0 ? 0 : done.standardised(point);
                    }
                    case WORST -> done.largest();
                    case OUT -> done.suspect() < 0 ? 0 : side.slot(fit.row(done.suspect())) + 1;
                    case ROOT -> done.suspect() < 0 ? 0 : done.influence(done.suspect());
                    case SIZE -> done.size();
                    case DIRECTION ->
                            index.row() > fit.basis().degree() ? 0 : done.direction(index.row());
                    case INFLUENCE -> {
                        int point = basis.point(side, index.row());
                        yield point < 0 ? 0 : done.influence(point);
                    }
                });
    }
}
