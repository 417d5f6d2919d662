package shaftwright.validity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cells from one corner to the other, counted from 1, inside a sheet's limits. */
record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    private static final Pattern TEXT =
            Pattern.compile("\\$?([A-Z]{1,3})\\$?(\\d{1,7})(?::\\$?([A-Z]{1,3})\\$?(\\d{1,7}))?");

    /** Nothing when the text is no range, or reaches over a sheet's limits. */
    static Optional<CellRange> parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int row = Integer.parseInt(matcher.group(2));
        int column = column(matcher.group(1));
        boolean area = matcher.group(3) != null;
        CellRange range =
                new CellRange(
                        row,
                        column,
                        area ? Integer.parseInt(matcher.group(4)) : row,
                        area ? column(matcher.group(3)) : column);
        boolean inside =
                row >= 1
                        && range.lastRow >= row
                        && range.lastColumn >= column
                        && range.lastRow <= ExcelLimits.ROWS
                        && range.lastColumn <= ExcelLimits.COLUMNS;
        return inside ? Optional.of(range) : Optional.empty();
    }

    static int column(String letters) {
        int column = 0;
        for (int i = 0; i < letters.length(); i++) {
            column = column * 26 + letters.charAt(i) - 'A' + 1;
        }
        return column;
    }

    boolean holds(CellRange other) {
        return firstRow <= other.firstRow
                && lastRow >= other.lastRow
                && firstColumn <= other.firstColumn
                && lastColumn >= other.lastColumn;
    }

    boolean overlaps(CellRange other) {
        return firstRow <= other.lastRow
                && lastRow >= other.firstRow
                && firstColumn <= other.lastColumn
                && lastColumn >= other.firstColumn;
    }

    int cells() {
        return (lastRow - firstRow + 1) * (lastColumn - firstColumn + 1);
    }
}
