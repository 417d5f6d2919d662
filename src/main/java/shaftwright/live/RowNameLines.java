package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;

/**
 * What the rows beside a side's tables are called: by the names typed for them. Tables that show
 * one row more than there is to type, for an inserted one, say so.
 *
 * @param typed input with the names
 * @param treatment input with the heat treatment that is said behind them, empty for none
 */
record RowNameLines(String typed, String treatment) {
    static final RowNameLines OF_RESTRAINTS = new RowNameLines("restraint_name", "");

    private static final String SPARE = "(for an inserted row)";

    /** What the name of such a line ends with, behind that of the table's. */
    private static final String SUFFIX = "_label";

    static void declare(LiveLines lines) {
        RowNameLines blanks = new RowNameLines("blank_name", "blank_treatment");
        blanks.beside(
                "blank_verdict",
                LineSet.in(lines, Section.BLANK_TABLES, Grid.BLANK_NAME).since(5).revised(6));
        LineSet<Sizing> spans = LineSet.in(lines, Section.STOP_TABLE, Grid.RESTRAINT_SIDE).since(5);
        OF_RESTRAINTS.beside("span_longest", spans);
        OF_RESTRAINTS.beside("span_shortest", spans);
    }

    private void beside(String table, LineSet<Sizing> set) {
        is(set.text(table + SUFFIX, "Row"));
    }

    /** Declares a line that says them. */
    void is(LineSet.TextLine<Sizing> line) {
        line.is(formula(), this::name);
    }

    private String formula() {
        return Pieces.of("typed", typed)
                .and("row", "<row_from_1>")
                .and("cell", "INDEX(<typed>,<row>)")
                .and(
                        "treated",
                        treatment.isEmpty()
                                ? ""
                                : "&" + TreatmentText.formula("INDEX(" + treatment + ",<row>)"))
                .and("spare", quoted(SPARE))
                .in(
                        """
                        IF(ROWS(<typed>)<<row>,<spare>,IF(<cell>="","Row "&<row>,<cell>&""<treated>))
                        """);
    }

    private String name(Sizing sizing, Index index) {
        if (sizing.inputs().rows(typed, Side.LEFT) <= index.row()) {
            return SPARE;
        }
        String name = sizing.inputs().text(typed, new Index(Side.LEFT, 0, index.row()));
        return name.isEmpty() ? "Row " + (index.row() + 1) : name + treated(sizing, index);
    }

    private String treated(Sizing sizing, Index index) {
        return treatment.isEmpty() ? "" : TreatmentText.of(sizing.parts().treatment(index.row()));
    }
}
