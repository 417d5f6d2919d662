package shaftwright.template;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import shaftwright.book.CellPlace;

/**
 * Where the cells of an earlier workbook stand in its renewal. Cells of a defined name are found by
 * it; any other moves along with the nearest row above and the nearest column before that has some.
 * Sheets that have none are the builder's own, and nothing moves there.
 */
final class CellMoves {
    private final Map<CellPlace, CellPlace> exact = new HashMap<>();
    private final Set<CellPlace> taken = new HashSet<>();
    private final Map<String, String> sheets;
    private final Map<String, NavigableMap<Integer, Integer>> rows = new HashMap<>();
    private final Map<String, NavigableMap<Integer, Integer>> columns = new HashMap<>();

    /**
     * Between two workbooks.
     *
     * @param before cells of each defined name by their offset
     * @param after the same in the renewal
     * @param sheets what those sheets are called in the renewal that are called otherwise
     */
    CellMoves(
            Map<String, Map<Integer, CellPlace>> before,
            Map<String, Map<Integer, CellPlace>> after,
            Map<String, String> sheets) {
        this.sheets = sheets;
        for (Map.Entry<String, Map<Integer, CellPlace>> name : after.entrySet()) {
            Map<Integer, CellPlace> old = before.getOrDefault(name.getKey(), Map.of());
            for (Map.Entry<Integer, CellPlace> cell : name.getValue().entrySet()) {
                taken.add(cell.getValue());
                CellPlace from = old.get(cell.getKey());
                if (from != null) {
                    add(from, cell.getValue());
                }
            }
        }
    }

    private void add(CellPlace from, CellPlace to) {
        exact.put(from, to);
        if (sheet(from.sheet()).equals(to.sheet())) {
            rows.computeIfAbsent(from.sheet(), sheet -> new TreeMap<>())
                    .putIfAbsent(from.row(), to.row());
            columns.computeIfAbsent(from.sheet(), sheet -> new TreeMap<>())
                    .putIfAbsent(from.column(), to.column());
        }
    }

    /** What a sheet of the earlier workbook is called in the renewal. */
    String sheet(String name) {
        return sheets.getOrDefault(name, name);
    }

    /** Whether a sheet of the earlier workbook has cells of defined names. */
    boolean knows(String sheet) {
        return rows.containsKey(sheet);
    }

    /** The place of a cell of a defined name; empty for every other. */
    Optional<CellPlace> named(CellPlace place) {
        return Optional.ofNullable(exact.get(place));
    }

    /** Whether a cell of the renewal belongs to a defined name. */
    boolean isNamed(CellPlace renewed) {
        return taken.contains(renewed);
    }

    /** The place of any cell. */
    CellPlace of(CellPlace place) {
        CellPlace named = exact.get(place);
        if (named != null || !knows(place.sheet())) {
            return named == null ? place : named;
        }
        return new CellPlace(
                sheet(place.sheet()),
                moved(rows.get(place.sheet()), place.row()),
                moved(columns.get(place.sheet()), place.column()));
    }

    private static int moved(NavigableMap<Integer, Integer> anchors, int at) {
        Map.Entry<Integer, Integer> near = anchors.floorEntry(at);
        near = near == null ? anchors.firstEntry() : near;
        return Math.max(0, at + near.getValue() - near.getKey());
    }
}
