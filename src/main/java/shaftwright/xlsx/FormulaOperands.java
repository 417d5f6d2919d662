package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import shaftwright.functions.CellFunction;
import shaftwright.functions.WorkbookUnit;

/**
 * Finds the operands in a formula's text that stand for cells. It knows no function, so that one
 * which nobody here can compute is followed like any other; where it is in doubt it says that the
 * formula may read anything. Operands of other workbooks are left out.
 */
final class FormulaOperands {
    /** Functions that read cells which their arguments do not show. */
    private static final Set<String> READ_ANYTHING =
            Set.of("INDIRECT", "OFFSET", "CELL", "GETPIVOTDATA", "EVALUATE");

    private static final int LAST_ROW = (1 << 20) - 1;
    private static final int LAST_COLUMN = (1 << 14) - 1;

    private final String text;
    private final List<Operand> found = new ArrayList<>();
    private int at;

    private FormulaOperands(String text) {
        this.text = text;
    }

    /** The operands of a formula without its equals sign, in order. */
    static List<Operand> of(String formula) {
        FormulaOperands operands = new FormulaOperands(formula);
        while (operands.at < formula.length()) {
            operands.next();
        }
        return List.copyOf(operands.found);
    }

    private void next() {
        char c = text.charAt(at);
        if (c == '"') {
            quoted('"');
        } else if (c == '\'') {
            prefixed(quoted('\''));
        } else if (c == '[') {
            bracket();
        } else if (c == '{') {
            constants();
        } else if (c == '#') {
            fault();
        } else if (c == ':') {
            // No plain range: those are read as a whole.
            anything();
            at++;
        } else if (isWordStart(c)) {
            operand("", "");
        } else if (isDigit(c) || c == '.') {
            number();
        } else {
            at++;
        }
    }

    private void anything() {
        found.add(new Operand.Anything());
    }

    /** What stands between this mark and the next single one; goes behind it. */
    private String quoted(char mark) {
        StringBuilder inside = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == mark) {
                if (at >= text.length() || text.charAt(at) != mark) {
                    break;
                }
                at++;
            }
            inside.append(c);
        }
        return inside.toString();
    }

    /** Goes on behind a sheet's name in quotes, or several. */
    private void prefixed(String sheets) {
        if (charAt(at) != '!') {
            anything();
            return;
        }
        at++;
        int colon = sheets.indexOf(':');
        if (sheets.indexOf('[') >= 0) {
            foreign();
        } else if (colon < 0) {
            operand(sheets, "");
        } else {
            operand(sheets.substring(0, colon), sheets.substring(colon + 1));
        }
    }

    /** {@code [1]Sheet1!A1} is of another workbook, anything else a table's column. */
    private void bracket() {
        int end = text.indexOf(']', at);
        int mark = end + 1;
        while (mark > 0 && mark < text.length() && isWordPart(text.charAt(mark))) {
            mark++;
        }
        if (end > 0 && charAt(mark) == '!') {
            at = mark + 1;
            foreign();
        } else {
            anything();
            at++;
        }
    }

    /** Passes over an operand of another workbook. */
    private void foreign() {
        int before = found.size();
        operand("", "");
        while (found.size() > before) {
            found.remove(found.size() - 1);
        }
    }

    private void constants() {
        while (at < text.length() && text.charAt(at) != '}') {
            if (text.charAt(at) == '"') {
                quoted('"');
            } else {
                at++;
            }
        }
        at++;
    }

    /** {@code #N/A}, {@code #REF!} and the like, or the mark of a spilled range. */
    private void fault() {
        at++;
        while (at < text.length() && (isWordPart(text.charAt(at)) || text.charAt(at) == '/')) {
            at++;
        }
        if (charAt(at) == '!' || charAt(at) == '?') {
            at++;
        }
    }

    private void number() {
        int start = at;
        while (isDigit(charAt(at)) || charAt(at) == '.') {
            at++;
        }
        if (charAt(at) == ':' && isRow(text.substring(start, at))) {
            at = start;
            operand("", "");
            return;
        }
        if (charAt(at) == 'e' || charAt(at) == 'E') {
            at += charAt(at + 1) == '+' || charAt(at + 1) == '-' ? 2 : 1;
            while (isDigit(charAt(at))) {
                at++;
            }
        }
    }

    /** A reference, a name or a function's name, behind the sheets that stood before it, if any. */
    private void operand(String sheet, String lastSheet) {
        String word = word();
        char next = charAt(at);
        if (word.isEmpty()) {
            // A reference whose cells were deleted.
            return;
        }
        if (next == '!') {
            at++;
            operand(word, "");
        } else if (next == '(') {
            function(word);
        } else if (next == '[') {
            brackets();
            found.add(new Operand.Table(lowerCase(word)));
        } else if (next == ':' && sheet.isEmpty() && severalSheets(word)) {
            return;
        } else {
            reference(sheet, lastSheet, word);
        }
    }

    private String word() {
        int start = at;
        while (at < text.length() && isWordPart(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at);
    }

    /** {@code First:Last!A1}: cells of all sheets between. */
    private boolean severalSheets(String first) {
        int behind = at;
        at++;
        String last = word();
        if (last.isEmpty() || charAt(at) != '!') {
            at = behind;
            return false;
        }
        at++;
        operand(first, last);
        return true;
    }

    private void function(String word) {
        String name = word.toUpperCase(Locale.ROOT);
        if (READ_ANYTHING.contains(name.substring(name.lastIndexOf('.') + 1))) {
            anything();
        } else if (name.startsWith(CellFunction.PREFIX)) {
            // Lengths are in the workbook's unit where no argument says another.
            found.add(new Operand.Name("", WorkbookUnit.NAME));
            found.add(new Operand.Name("", lowerCase(word)));
        }
    }

    /** Passes over what is in a table's brackets, which may stand in each other. */
    private void brackets() {
        int depth = 0;
        do {
            char c = text.charAt(at++);
            if (c == '\'' && at < text.length()) {
                at++;
            }
            depth += c == '[' ? 1 : c == ']' ? -1 : 0;
        } while (depth > 0 && at < text.length());
    }

    private void reference(String sheet, String lastSheet, String word) {
        Operand.Corner first = cell(word);
        Operand.Corner last = first;
        boolean range = charAt(at) == ':';
        if (range) {
            int behind = at;
            at++;
            String second = word();
            boolean plain = charAt(at) != '(' && charAt(at) != '!' && charAt(at) != '[';
            last = plain ? cell(second) : null;
            if (first == null && plain && isColumn(word) && isColumn(second)) {
                first = new Operand.Corner(0, true, column(word), fixed(word));
                last = new Operand.Corner(LAST_ROW, true, column(second), fixed(second));
            } else if (first == null && plain && isRow(word) && isRow(second)) {
                first = new Operand.Corner(row(word), fixed(word), 0, true);
                last = new Operand.Corner(row(second), fixed(second), LAST_COLUMN, true);
            }
            if (first == null || last == null) {
                at = behind;
            }
        }
        if (first != null && last != null) {
            found.add(new Operand.Range(sheet, lastSheet, first, last));
        } else if (first != null) {
            found.add(new Operand.Range(sheet, lastSheet, first, first));
        } else if (!isTruth(word)) {
            found.add(new Operand.Name(sheet, lowerCase(word)));
        }
    }

    private static boolean isTruth(String word) {
        return word.equalsIgnoreCase("true") || word.equalsIgnoreCase("false");
    }

    /** The cell of an address such as {@code $AB12}, or null. */
    private static Operand.Corner cell(String word) {
        int digits = word.length();
        while (digits > 0 && isDigit(word.charAt(digits - 1))) {
            digits--;
        }
        boolean rowFixed = digits > 1 && word.charAt(digits - 1) == '$';
        String letters = word.substring(0, rowFixed ? digits - 1 : digits);
        String number = word.substring(digits);
        return isColumn(letters) && isRow(number)
                ? new Operand.Corner(row(number), rowFixed, column(letters), fixed(letters))
                : null;
    }

    private static boolean fixed(String word) {
        return word.startsWith("$");
    }

    private static boolean isColumn(String word) {
        int from = fixed(word) ? 1 : 0;
        if (word.length() == from || word.length() > from + 3) {
            return false;
        }
        for (int i = from; i < word.length(); i++) {
            char c = (char) (word.charAt(i) | 32);
            if (c < 'a' || c > 'z') {
                return false;
            }
        }
        return column(word) <= LAST_COLUMN;
    }

    private static int column(String word) {
        int column = 0;
        for (int i = fixed(word) ? 1 : 0; i < word.length(); i++) {
            column = column * 26 + (word.charAt(i) & 31);
        }
        return column - 1;
    }

    private static boolean isRow(String word) {
        int from = fixed(word) ? 1 : 0;
        if (word.length() == from || word.length() > from + 7) {
            return false;
        }
        for (int i = from; i < word.length(); i++) {
            if (!isDigit(word.charAt(i))) {
                return false;
            }
        }
        int row = row(word);
        return row >= 0 && row <= LAST_ROW;
    }

    private static int row(String word) {
        return Integer.parseInt(word.substring(fixed(word) ? 1 : 0)) - 1;
    }

    private char charAt(int place) {
        return place < text.length() ? text.charAt(place) : ' ';
    }

    private static String lowerCase(String name) {
        return XlsxBook.lowerCase(name);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isWordStart(char c) {
        return Character.isLetter(c) || c == '_' || c == '\\' || c == '$';
    }

    private static boolean isWordPart(char c) {
        return isWordStart(c) || Character.isDigit(c) || c == '.' || c == '?';
    }
}
