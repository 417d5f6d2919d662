package shaftwright.comparison;

import java.util.List;
import shaftwright.live.Quantity;
import shaftwright.units.LengthUnit;

/** How rows follow each other on the page of all inputs: a heading before each group. */
public final class ComparedRows {
    private ComparedRows() {}

    /** Whether a heading stands above this line. */
    public static boolean begins(List<ComparedLine> lines, int at) {
        return at == 0 || !lines.get(at).group().equals(lines.get(at - 1).group());
    }

    /** Ordinal of a line's row in the block of lines and headings, from 1. */
    public static int of(List<ComparedLine> lines, int at) {
        int row = at + 1;
        for (int i = 0; i <= at; i++) {
            row += begins(lines, i) ? 1 : 0;
        }
        return row;
    }

    /** Rows of the whole block. */
    public static int count(List<ComparedLine> lines) {
        return lines.isEmpty() ? 0 : of(lines, lines.size() - 1);
    }

    /** Label with the unit in which its cells are read. */
    public static String label(ComparedLine line, LengthUnit unit) {
        return line.quantity() == Quantity.SHOWN_LENGTH
                ? line.label() + ", " + unit.symbol()
                : line.quantity() == Quantity.DEGREE ? line.label() + ", °" : line.label();
    }
}
