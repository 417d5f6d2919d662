package shaftwright.xlsx;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;

/**
 * Values written to cells, beside what the file holds there. A fill writes tens of thousands, and
 * most are there already.
 */
final class Written {
    private final Sheets sheets;

    /** By sheet, which of its cells were written. */
    private final Map<String, BitSet> cells = new HashMap<>();

    /** Places where the file has no cell. */
    private final Set<CellPlace> absent = new HashSet<>();

    private final Map<CellPlace, CellValue> changed = new HashMap<>();

    Written(Sheets sheets) {
        this.sheets = sheets;
    }

    /**
     * Adds values; of those written to one cell the last counts.
     *
     * @throws UnreadableBookException if a sheet does not exist
     */
    void add(List<CellWrite> more) {
        String sheet = null;
        SheetPart part = null;
        BitSet done = null;
        for (CellWrite write : more) {
            CellPlace place = write.place();
            if (!place.sheet().equals(sheet)) {
                sheet = place.sheet();
                part = sheets.get(sheet);
                done = marks(sheet);
            }
            int cell = part.find(place.row(), place.column());
            boolean again = cell < 0 ? !absent.add(place) : done.get(cell);
            if (cell >= 0) {
                done.set(cell);
            }
            if (!part.holds(cell, write.value())) {
                changed.put(place, write.value());
            } else if (again) {
                changed.remove(place);
            }
        }
    }

    private BitSet marks(String sheet) {
        return cells.computeIfAbsent(sheet, name -> new BitSet());
    }

    /** Everywhere that was written to. */
    Set<CellPlace> places() {
        Set<CellPlace> places = new HashSet<>(absent);
        cells.forEach(
                (sheet, numbers) ->
                        numbers.stream().mapToObj(sheets.get(sheet)::place).forEach(places::add));
        return places;
    }

    /** The values that the file does not hold. */
    Map<CellPlace, CellValue> changed() {
        return changed;
    }

    /** Which cells of a sheet were written, by their numbers in its part. */
    BitSet cells(String sheet) {
        return cells.getOrDefault(sheet, new BitSet());
    }
}
