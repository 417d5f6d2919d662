package shaftwright.jobs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import shaftwright.book.CellPlace;

/** Names cells in a sentence, the first few of many. */
final class CellList {
    private static final int MOST = 12;

    private CellList() {}

    /** {@code sheet "Mine": A1, A2; sheet "Costs": C7 and 3 more}. */
    static String of(List<CellPlace> places) {
        Map<String, StringJoiner> sheets = new LinkedHashMap<>();
        int named = Math.min(places.size(), MOST);
        for (CellPlace place : places.subList(0, named)) {
            sheets.computeIfAbsent(place.sheet(), sheet -> new StringJoiner(", "))
                    .add(place.address());
        }
        StringJoiner text = new StringJoiner("; ");
        sheets.forEach((sheet, cells) -> text.add("sheet \"" + sheet + "\": " + cells));
        int more = places.size() - named;
        return more == 0 ? text.toString() : text + " and " + more + " more";
    }
}
