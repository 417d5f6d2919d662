package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;

import shaftwright.reading.Sizing;

/**
 * Which rows have camber or toe, each with weight one, and the degree of the curve through them.
 */
final class AngleLines {
    private AngleLines() {}

    static void declare(LiveLines lines, Basis basis) {
        String typed = "{row_" + basis.word + "}";
        LineSet<Sizing> all = LineSet.in(lines, Section.PATH_WORK, READING_SLOT);
        LineSet<ReadRow> rows = all.only(Known.FITTED_ROW, Lacking.ZERO);
        rows.whole(basis.weight, "Has " + basis.word)
                .is(
                        "IF(ISNUMBER(" + typed + "),1,0)",
                        row -> basis.angle(row.fitted()).isPresent() ? 1 : 0);
        rows.rad("row_" + basis.word + "_value", "Used " + basis.word)
                .is(
                        "IF(ISNUMBER(" + typed + ")," + typed + ",0)",
                        row -> basis.angle(row.fitted()).orElse(0));
        all.in(Section.PATH_WORK, SIDE)
                .only(Known.FIT, Lacking.NOT_AVAILABLE)
                .whole(basis.degree, "Degree of " + basis.word)
                .is(
                        PathFigureLines.degree("SUM({" + basis.weight + ":all})"),
                        path -> basis.in(path).map(set -> set.degree()).orElse(0));
    }
}
