package shaftwright.template;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.CellPlace;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.template.Run.Direction;

/**
 * Turns a live line's formula with places into the formula texts of its cells. References that move
 * with the cell are relative, all others absolute, so that equal cells give equal shared formulas.
 */
final class FormulaExpansion {
    /**
     * What a formula consists of: words as they stand, or a place, whose reference depends on the
     * cell.
     *
     * @param words of words only
     * @param run what a place names
     * @param last where a span ends, else the same
     * @param row of a row: how far from the cell's own, or counted from the first
     */
    private record Part(Kind kind, String words, Run run, Run last, int row) {
        private static Part of(Kind kind, Run run, int row) {
            return new Part(kind, "", run, run, row);
        }

        private static Part words(String words) {
            return new Part(Kind.WORDS, words, null, null, 0);
        }
    }

    private enum Kind {
        WORDS,
        ORDINAL,
        ROW,
        FIXED_ROW,
        SPAN,
        ALL,
        EACH,
        ACROSS
    }

    private final String template;
    private final Side side;
    private final Run own;
    private final List<Part> parts = new ArrayList<>();

    /**
     * A formula with places.
     *
     * @param side of the cells whose formula it is
     * @param own where these cells stand
     */
    FormulaExpansion(Places places, String template, Side side, Run own) {
        this.template = template;
        this.side = side;
        this.own = own;
        parse(places);
    }

    /** Whether it is this formula of these cells. */
    boolean isOf(String formula, Run cells) {
        return own.equals(cells) && template.equals(formula);
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

    /** The formula as it stands in one of the cells. */
    Text at(Index index) {
        return new Writing(index).all();
    }

    private void parse(Places places) {
        int plain = 0;
        for (int at = 0; at < template.length(); at++) {
            char c = template.charAt(at);
            if (c == '~') {
                words(plain, at);
                parts.add(Part.words(Contract.suffix(side)));
                plain = at + 1;
            } else if (c == '{' && isPlace(template.charAt(at + 1))) {
                words(plain, at);
                int end = template.indexOf('}', at);
                parts.add(place(places, template.substring(at + 1, end)));
                at = end;
                plain = end + 1;
            }
        }
        words(plain, template.length());
    }

    private void words(int from, int to) {
        if (from < to) {
            parts.add(Part.words(template.substring(from, to)));
        }
    }

    /** An array constant begins with a digit or a quotation mark. */
    private static boolean isPlace(char first) {
        return first == ':' || (first >= 'a' && first <= 'z');
    }

    /**
     * One place: name, then {@code @side}, then one of {@code +1 -1 #row :all :each :across
     * >other}.
     */
    private Part place(Places places, String inside) {
        if (inside.equals(":ordinal")) {
            return Part.of(Kind.ORDINAL, own, 0);
        }
        int end = 0;
        while (end < inside.length() && isNamePart(inside.charAt(end))) {
            end++;
        }
        String name = inside.substring(0, end);
        String rest = inside.substring(end);
        Side named = side;
        for (Side each : Side.values()) {
            if (rest.startsWith("@" + each.word())) {
                named = each;
                rest = rest.substring(1 + each.word().length());
            }
        }
        Run run = places.run(name, named);
        if (rest.isEmpty()) {
            return Part.of(Kind.ROW, run, 0);
        }
        return switch (rest.charAt(0)) {
            case ':' ->
                    Part.of(
                            switch (rest) {
                                case ":across" -> Kind.ACROSS;
                                case ":each" -> Kind.EACH;
                                default -> Kind.ALL;
                            },
                            run,
                            0);
            case '>' -> new Part(Kind.SPAN, "", run, places.run(rest.substring(1), named), 0);
            case '#' -> Part.of(Kind.FIXED_ROW, run, Integer.parseInt(rest.substring(1)));
            default -> Part.of(Kind.ROW, run, Integer.parseInt(rest));
        };
    }

    private static boolean isNamePart(char c) {
        return c == '_' || Character.isLetterOrDigit(c);
    }

    /** One cell's formula being written. */
    private final class Writing {
        private final Index index;
        private final CellPlace here;
        private final StringBuilder text = new StringBuilder(template.length());
        private final StringBuilder shape = new StringBuilder(template.length());

        Writing(Index index) {
            this.index = index;
            here = own.place(index.offset(own.grid(), own.columns()));
        }

        Text all() {
            for (Part part : parts) {
                Run run = part.run();
                switch (part.kind()) {
                    case WORDS -> both(part.words());
                    case ORDINAL -> ordinal();
                    case ROW -> single(run, index.row() + part.row(), false);
                    case FIXED_ROW -> single(run, part.row(), true);
                    case SPAN -> span(run, part.last());
                    case ALL -> range(run, false);
                    case EACH -> range(run, true);
                    case ACROSS -> across(run);
                }
            }
            return new Text(text.toString(), shape.toString());
        }

        private void both(String words) {
            text.append(words);
            shape.append(words);
        }

        private int offset(Run run, int row) {
            Index target =
                    new Index(index.side(), index.scenario(), run.grid().rows() == 1 ? 0 : row);
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

        private void span(Run run, Run last) {
            sheet(run);
            cell(run, offset(run, index.row()), false);
            both(":");
            cell(last, offset(last, index.row()), false);
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
                    .append(
                            column
                                    ? "c" + (target.column() - here.column())
                                    : "C" + target.column())
                    .append(row ? "r" + (target.row() - here.row()) : "R" + target.row())
                    .append(']');
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

    private boolean movesAcross(Run run) {
        return own.direction() == Direction.ACROSS
                && run.direction() == Direction.ACROSS
                && own.grid().perScenario()
                && run.grid().perScenario();
    }

    private boolean movesDown(Run run) {
        return own.direction() != Direction.ACROSS
                && run.direction() != Direction.ACROSS
                && own.grid().rows() > 1
                && run.grid().rows() > 1;
    }
}
