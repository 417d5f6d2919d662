package shaftwright.xlsx;

import shaftwright.book.Area;

/** Reads references to one plain area as formulas write them: {@code 'Bench ''B'''!$A$1:$C$9}. */
final class AreaReference {
    private static final int LAST_ROW = 1 << 20;
    private static final int LAST_COLUMN = 1 << 14;

    private final String text;
    private int at;

    private AreaReference(String text, int at) {
        this.text = text;
        this.at = at;
    }

    /**
     * The area, or null if the text is anything else.
     *
     * @param book that knows the sheets
     */
    static Area parse(String reference, WorkbookPart book) {
        String text = reference.trim();
        int mark = text.lastIndexOf('!');
        if (mark <= 0) {
            return null;
        }
        return book.sheet(text.substring(0, mark))
                .map(sheet -> new AreaReference(text, mark + 1).area(sheet))
                .orElse(null);
    }

    /** The area of a reference without a sheet, or null if the text is anything else. */
    static Area on(String sheet, String text) {
        return new AreaReference(text, 0).area(sheet);
    }

    /** A sheet's name without its quotes. */
    static String sheetName(String quoted) {
        int last = quoted.length() - 1;
        if (last < 1 || quoted.charAt(0) != '\'' || quoted.charAt(last) != '\'') {
            return quoted;
        }
        return quoted.substring(1, last).replace("''", "'");
    }

    private Area area(String sheet) {
        int column = column();
        int row = row();
        int lastColumn = column;
        int lastRow = row;
        if (at < text.length() && text.charAt(at) == ':') {
            at++;
            lastColumn = column();
            lastRow = row();
        }
        if (at != text.length() || column < 0 || row < 0 || lastColumn < 0 || lastRow < 0) {
            return null;
        }
        return new Area(
                sheet,
                Math.min(row, lastRow),
                Math.min(column, lastColumn),
                Math.max(row, lastRow),
                Math.max(column, lastColumn));
    }

    private int column() {
        passDollar();
        int column = 0;
        int from = at;
        while (at < text.length() && at < from + 4 && isLetter(text.charAt(at))) {
            column = column * 26 + (text.charAt(at) & 31);
            at++;
        }
        return at == from || column > LAST_COLUMN ? -1 : column - 1;
    }

    private int row() {
        passDollar();
        int row = 0;
        int from = at;
        while (at < text.length() && at < from + 7 && isDigit(text.charAt(at))) {
            row = row * 10 + text.charAt(at) - '0';
            at++;
        }
        return at == from || row > LAST_ROW ? -1 : row - 1;
    }

    private void passDollar() {
        if (at < text.length() && text.charAt(at) == '$') {
            at++;
        }
    }

    /** Zero-based column of an address such as {@code AB12}, or -1. */
    static int columnOf(String address) {
        return new AreaReference(address, 0).column();
    }

    /** Zero-based row of an address such as {@code AB12}, or -1. */
    static int rowOf(String address) {
        AreaReference reference = new AreaReference(address, 0);
        reference.column();
        int row = reference.row();
        return reference.at == address.length() ? row : -1;
    }

    private static boolean isLetter(char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
