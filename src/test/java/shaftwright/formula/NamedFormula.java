package shaftwright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;

/**
 * A cell's formula with names instead of addresses: {@code spacing_in(3,0)} is the fourth row of
 * the first column of that name, whatever sheet and row it stands in. Two workbooks in which blocks
 * stand elsewhere give equal texts where they compute the same.
 */
public final class NamedFormula {
    private static final Pattern TOKEN =
            Pattern.compile(
                    "\"(?:[^\"]|\"\")*\""
                            + "|(?:(?:'((?:[^']|'')*)'|([A-Za-z_][\\w.]*))!)?"
                            + "\\$?([A-Z]{1,3})\\$?([0-9]+)(?::\\$?([A-Z]{1,3})\\$?([0-9]+))?"
                            + "(?![\\w(])"
                            + "|[A-Za-z_][\\w.]*"
                            + "|[0-9][0-9.]*(?:E[+-]?[0-9]+)?");

    private final Map<String, List<Map.Entry<String, Area>>> bySheet = new TreeMap<>();

    /**
     * Formulas of a book.
     *
     * @param names names that may stand for addresses
     */
    public NamedFormula(Map<String, Area> names) {
        for (Map.Entry<String, Area> name : new TreeMap<>(names).entrySet()) {
            bySheet.computeIfAbsent(name.getValue().sheet(), sheet -> new ArrayList<>()).add(name);
        }
    }

    /** The text of a formula in a cell of that sheet. */
    public String of(String formula, String sheet) {
        Matcher matcher = TOKEN.matcher(formula);
        return matcher.replaceAll(match -> Matcher.quoteReplacement(named(match, sheet)));
    }

    private String named(MatchResult match, String own) {
        if (match.group(3) == null) {
            return match.group();
        }
        String sheet = own;
        if (match.group(1) != null) {
            sheet = match.group(1).replace("''", "'");
        } else if (match.group(2) != null) {
            sheet = match.group(2);
        }
        CellPlace first = place(sheet, match.group(3), match.group(4));
        if (match.group(5) == null) {
            return named(first);
        }
        CellPlace last = place(sheet, match.group(5), match.group(6));
        for (Map.Entry<String, Area> name : bySheet.getOrDefault(sheet, List.of())) {
            Area area = name.getValue();
            if (area.place(0).equals(first) && area.place(area.size() - 1).equals(last)) {
                return name.getKey();
            }
        }
        return named(first) + ":" + named(last);
    }

    private String named(CellPlace place) {
        for (Map.Entry<String, Area> name : bySheet.getOrDefault(place.sheet(), List.of())) {
            Area area = name.getValue();
            if (area.contains(place)) {
                return area.size() == 1
                        ? name.getKey()
                        : String.format(
                                Locale.ROOT,
                                "%s(%d,%d)",
                                name.getKey(),
                                place.row() - area.firstRow(),
                                place.column() - area.firstColumn());
            }
        }
        return place.toString();
    }

    private static CellPlace place(String sheet, String letters, String row) {
        int column = 0;
        for (int i = 0; i < letters.length(); i++) {
            column = column * 26 + letters.charAt(i) - 'A' + 1;
        }
        return new CellPlace(sheet, Integer.parseInt(row) - 1, column - 1);
    }
}
