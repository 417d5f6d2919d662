package shaftwright.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;

/**
 * Cells of a book that use functions of the pack and can't be computed where it is missing.
 *
 * @param places by sheet, row and column
 */
public record PackUse(List<CellPlace> places) {
    /** More places than these are counted, not named. */
    private static final int MOST_NAMED = 10;

    private static final int MOST_NAMED_IN_CELL = 3;

    private static final Comparator<CellPlace> BY_PLACE =
            Comparator.comparing(CellPlace::sheet)
                    .thenComparingInt(CellPlace::row)
                    .thenComparingInt(CellPlace::column);

    public PackUse {
        places = List.copyOf(places);
    }

    /** Looks through all formulas. */
    public static PackUse in(OpenBook book) {
        Map<CellPlace, String> formulas = book.formulasCalling(CellFunction.PREFIX);
        List<CellPlace> places = new ArrayList<>();
        for (Map.Entry<CellPlace, String> cell : formulas.entrySet()) {
            if (uses(cell.getValue())) {
                places.add(cell.getKey());
            }
        }
        places.sort(BY_PLACE);
        return new PackUse(places);
    }

    /** Which they are, in a sentence; empty when there are none. */
    public String sentence() {
        return places.isEmpty()
                ? ""
                : counted()
                        + " functions of the pack and can't be computed where it is missing: "
                        + named(MOST_NAMED)
                        + ".";
    }

    /** What the first sheet says to whoever opens the workbook; empty when there are none. */
    public String note() {
        return places.isEmpty()
                ? ""
                : counted()
                        + " SHAFT functions ("
                        + named(MOST_NAMED_IN_CELL)
                        + "). To compute them anew, install the extension shaftwright.oxt in"
                        + " LibreOffice, or have them packed into the workbook for Excel 365.";
    }

    private String counted() {
        return places.size() == 1 ? "1 cell uses" : places.size() + " cells use";
    }

    private String named(int most) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < places.size() && i < most; i++) {
            text.append(i == 0 ? "" : "; ").append(places.get(i));
        }
        if (places.size() > most) {
            text.append("; and ").append(places.size() - most).append(" more");
        }
        return text.toString();
    }

    /** Whether a function's name with its bracket stands in a formula, not inside quotes. */
    private static boolean uses(String formula) {
        boolean quoted = false;
        for (int i = 0; i < formula.length(); i++) {
            char sign = formula.charAt(i);
            quoted ^= sign == '"';
            if (!quoted && sign == '(' && isFunction(wordBefore(formula, i))) {
                return true;
            }
        }
        return false;
    }

    /** The catalogue is loaded only for a word that may be in it. */
    private static boolean isFunction(String word) {
        return !word.isEmpty() && Catalogue.find(word).isPresent();
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
