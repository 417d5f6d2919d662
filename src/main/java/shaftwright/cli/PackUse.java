package shaftwright.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.xlsx.XlsxBook;

/** Cells of a workbook that use functions of the pack and need it where the workbook goes. */
final class PackUse {
    /** More places than these are counted, not named. */
    private static final int MOST_NAMED = 10;

    private final XlsxBook book;

    PackUse(XlsxBook book) {
        this.book = book;
    }

    /** Says nothing when there are none. */
    void print(PrintStream out) {
        List<CellPlace> places = places();
        if (places.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder("note: ");
        text.append(places.size() == 1 ? "1 cell uses" : places.size() + " cells use");
        text.append(" functions of the pack and can't be computed where it is missing: ");
        for (int i = 0; i < places.size() && i < MOST_NAMED; i++) {
            text.append(i == 0 ? "" : "; ").append(places.get(i));
        }
        if (places.size() > MOST_NAMED) {
            text.append("; and ").append(places.size() - MOST_NAMED).append(" more");
        }
        out.println(text.append('.'));
    }

    private List<CellPlace> places() {
        List<CellPlace> places = new ArrayList<>();
        for (Map.Entry<CellPlace, String> cell :
                book.formulasWith(CellFunction.PREFIX).entrySet()) {
            if (uses(cell.getValue())) {
                places.add(cell.getKey());
            }
        }
        places.sort(
                Comparator.comparing(CellPlace::sheet)
                        .thenComparing(CellPlace::row)
                        .thenComparing(CellPlace::column));
        return places;
    }

    /** Whether a function's name with its bracket stands in a formula, not inside quotes. */
    private static boolean uses(String formula) {
        boolean quoted = false;
        for (int i = 0; i < formula.length(); i++) {
            char sign = formula.charAt(i);
            quoted ^= sign == '"';
            if (!quoted && sign == '(' && Catalogue.find(wordBefore(formula, i)).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** The dotted word that ends here, empty when it is not of the pack. */
    private static String wordBefore(String formula, int end) {
        int start = end;
        while (start > 0
                && (Character.isLetter(formula.charAt(start - 1))
                        || formula.charAt(start - 1) == '.')) {
            start--;
        }
        String word = formula.substring(start, end);
        int length = CellFunction.PREFIX.length();
        return word.regionMatches(true, 0, CellFunction.PREFIX, 0, length) ? word : "";
    }
}
