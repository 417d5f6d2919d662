package shaftwright.workbook.template;

import shaftwright.build.Side;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.Contract;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.live.LiveLine;
import shaftwright.workbook.template.Run.Direction;

/**
 * Turns a live line's formula with places into a cell's formula text. References that move with the
 * cell are relative, all others absolute, so that equal cells give equal shared formulas.
 */
final class FormulaExpansion {
    private final Places places;
    private final String template;
    private final Index index;
    private final Run own;
    private final CellPlace here;
    private final StringBuilder text = new StringBuilder();
    private final StringBuilder shape = new StringBuilder();

    private FormulaExpansion(Places places, String template, Index index, Run own) {
        this.places = places;
        this.template = template;
        this.index = index;
        this.own = own;
        here = own.place(index.offset(own.grid(), own.columns()));
    }

    /**
     * A cell's formula.
     *
     * @param text as written into the cell
     * @param shape the same with relative references as distances: equal for cells that may share
     */
    record Text(String text, String shape) {
        /**
         * Formulas that look at other sheets or hold array constants are never shared: tokens that
         * a shared formula must not have (MS-XLS 2.5.198.118, MS-XLSB 2.5.98.98).
         */
        boolean mayBeShared() {
            return text.indexOf('!') < 0 && text.indexOf('{') < 0;
        }
    }

    static Text of(Places places, LiveLine line, Index index, Run own) {
        return of(places, line.formula().at(index), index, own);
    }

    /** A formula with places, as it stands in the cell of an index in a run. */
    static Text of(Places places, String template, Index index, Run own) {
        return new FormulaExpansion(places, template, index, own).expand();
    }

    private Text expand() {
        int plain = 0;
        for (int at = 0; at < template.length(); at++) {
            char c = template.charAt(at);
            if (c == '~') {
                plain(template, plain, at);
                both(Contract.suffix(index.side()));
                plain = at + 1;
            } else if (c == '{' && isPlace(template.charAt(at + 1))) {
                plain(template, plain, at);
                int end = template.indexOf('}', at);
                place(template.substring(at + 1, end));
                at = end;
                plain = end + 1;
            }
        }
        plain(template, plain, template.length());
        return new Text(text.toString(), shape.toString());
    }

    private void plain(String template, int from, int to) {
        text.append(template, from, to);
        shape.append(template, from, to);
    }

    /** An array constant begins with a digit or a quotation mark. */
    private static boolean isPlace(char first) {
        return first == ':' || (first >= 'a' && first <= 'z');
    }

    private void both(String part) {
        text.append(part);
        shape.append(part);
    }

    /**
     * One place: name, then {@code @side}, then one of {@code +1 -1 #row :all :each :across
     * >other}.
     */
    private void place(String inside) {
        if (inside.equals(":ordinal")) {
            ordinal();
            return;
        }
        int end = 0;
        while (end < inside.length() && isNamePart(inside.charAt(end))) {
            end++;
        }
        String name = inside.substring(0, end);
        String rest = inside.substring(end);
        Side side = index.side();
        for (Side named : Side.values()) {
            if (rest.startsWith("@" + named.word())) {
                side = named;
                rest = rest.substring(1 + named.word().length());
            }
        }
        Run run = places.run(name, side);
        if (rest.equals(":across")) {
            across(run);
        } else if (rest.startsWith(":")) {
            range(run, rest.equals(":each"));
        } else if (rest.startsWith(">")) {
            Run last = places.run(rest.substring(1), side);
            sheet(run);
            cell(run, offset(run, index.row()), false);
            both(":");
            cell(last, offset(last, index.row()), false);
        } else {
            boolean fixed = rest.startsWith("#");
            int row = index.row();
            if (!rest.isEmpty()) {
                int number = Integer.parseInt(rest.substring(rest.startsWith("-") ? 0 : 1));
                row = fixed ? number : row + number;
            }
            single(run, row, fixed);
        }
    }

    private static boolean isNamePart(char c) {
        return c == '_' || Character.isLetterOrDigit(c);
    }

    private int offset(Run run, int row) {
        Index target = new Index(index.side(), index.scenario(), run.grid().rows() == 1 ? 0 : row);
        return target.offset(run.grid(), run.columns());
    }

    private void single(Run run, int row, boolean fixed) {
        if (run.cells() == 1 && !run.sheet().equals(own.sheet())) {
            both(run.name());
            return;
        }
        sheet(run);
        cell(run, offset(run, row), fixed);
    }

    /** All rows for this side and scenario, or all scenarios' cells. */
    private void range(Run run, boolean each) {
        boolean whole = each || !run.grid().perScenario();
        if (whole && !run.sheet().equals(own.sheet())) {
            both(run.name());
            return;
        }
        int first = whole ? 0 : offset(run, 0);
        int last = whole ? run.cells() - 1 : offset(run, run.grid().rows() - 1);
        sheet(run);
        cell(run, first, true);
        both(":");
        cell(run, last, true);
    }

    /** This row of a block, all scenarios. */
    private void across(Run run) {
        int first = new Index(index.side(), 0, index.row()).offset(run.grid(), run.columns());
        sheet(run);
        cell(run, first, false);
        both(":");
        cell(run, first + run.columns() - 1, false);
    }

    private void sheet(Run run) {
        if (!run.sheet().equals(own.sheet())) {
            both("'" + run.sheet().replace("'", "''") + "'!");
        }
    }

    private void cell(Run run, int offset, boolean fixed) {
        CellPlace target = run.place(offset);
        boolean column = !fixed && movesAcross(run);
        boolean row = !fixed && movesDown(run);
        text.append(column ? "" : "$").append(CellPlace.columnLetters(target.column()));
        text.append(row ? "" : "$").append(target.row() + 1);
        shape.append('[')
                .append(column ? "c" + (target.column() - here.column()) : "C" + target.column())
                .append(row ? "r" + (target.row() - here.row()) : "R" + target.row())
                .append(']');
    }

    private boolean movesAcross(Run run) {
        return own.direction() == Direction.ACROSS
                && run.direction() == Direction.ACROSS
                && own.grid().perScenario()
                && run.grid().perScenario();
    }

    private boolean movesDown(Run run) {
        return own.direction() != Direction.ACROSS
                && run.direction() != Direction.ACROSS
                && rowsOf(own.grid()) > 1
                && rowsOf(run.grid()) > 1;
    }

    private static int rowsOf(Grid grid) {
        return grid.rows();
    }

    /** How many rows of the block lie from its first one to this: 1 in the first row. */
    private void ordinal() {
        String column = CellPlace.columnLetters(here.column());
        text.append("ROWS(" + column + "$" + (own.row() + 1) + ":" + column)
                .append(here.row() + 1)
                .append(")");
        shape.append("ROWS(own)");
    }
}
