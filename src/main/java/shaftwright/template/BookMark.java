package shaftwright.template;

import java.util.Map;
import java.util.Set;

/**
 * What tells the names and sheets of one sizing workbook from those of others in the same file.
 *
 * @param names put before every defined name; empty in a file that holds one sizing workbook
 * @param sheets put before every sheet's name
 * @param titles put before what stands on top of every sheet
 * @param renamed sheets that are called otherwise, by the name that they would have
 */
record BookMark(String names, String sheets, String titles, Map<String, String> renamed) {
    /** Of a file that holds one sizing workbook. */
    static final BookMark NONE = renamed(Map.of());

    BookMark {
        renamed = Map.copyOf(renamed);
    }

    /** Of a file that holds one sizing workbook, some of whose sheets are called otherwise. */
    static BookMark renamed(Map<String, String> sheets) {
        return new BookMark("", "", "", sheets);
    }

    /** Whether no other sizing workbook is in the file. */
    boolean isAlone() {
        return names.isEmpty();
    }

    /** What a sheet is called. */
    String sheet(String name) {
        return renamed.getOrDefault(name, sheets + name);
    }

    /** What stands on top of a sheet. */
    String title(String title) {
        return titles + title;
    }

    /** A formula written for a file of its own, with its defined names marked. */
    String on(String formula, Set<String> defined) {
        if (isAlone()) {
            return formula;
        }
        StringBuilder marked = new StringBuilder(formula.length() + 40);
        int at = 0;
        while (at < formula.length()) {
            int end = end(formula, at);
            if (defined.contains(formula.substring(at, end))) {
                marked.append(names);
            }
            marked.append(formula, at, end);
            at = end;
        }
        return marked.toString();
    }

    /** End of the quoted text, the word or the single character that begins here. */
    private static int end(String formula, int start) {
        char first = formula.charAt(start);
        int at = start + 1;
        if (first == '"' || first == '\'') {
            // A doubled mark inside only begins the next quoted text at once.
            while (at < formula.length() && formula.charAt(at) != first) {
                at++;
            }
            return Math.min(formula.length(), at + 1);
        }
        if (isWord(first)) {
            while (at < formula.length() && isWord(formula.charAt(at))) {
                at++;
            }
        }
        return at;
    }

    private static boolean isWord(char c) {
        return c == '_' || c == '.' || Character.isLetterOrDigit(c);
    }
}
