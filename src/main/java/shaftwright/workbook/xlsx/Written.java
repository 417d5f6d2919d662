package shaftwright.workbook.xlsx;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.workbook.Ahead;

/**
 * Values written to cells in one go, beside what the file holds there. A fill writes tens of
 * thousands, and most are there already.
 */
final class Written implements Callable<Written> {
    private final List<CellWrite> writes;
    private final Map<String, Ahead<SheetPart>> sheets;

    /** By sheet, which of its cells were written. */
    private final Map<String, BitSet> cells = new HashMap<>();

    /** Places where the file has no cell. */
    private final Set<CellPlace> absent = new HashSet<>();

    private final Map<CellPlace, CellValue> changed = new HashMap<>();

    private Written(List<CellWrite> writes, Map<String, Ahead<SheetPart>> sheets) {
        this.writes = writes;
        this.sheets = sheets;
    }

    /** None so far. */
    static Written nothing() {
        return new Written(List.of(), Map.of());
    }

    /** To be compared by whoever asks for it first; begins to walk the sheets written to. */
    static Ahead<Written> of(List<CellWrite> writes, Sheets sheets) {
        Set<String> names = new LinkedHashSet<>();
        String last = "";
        for (CellWrite write : writes) {
            if (!write.place().sheet().equals(last)) {
                last = write.place().sheet();
                names.add(last);
            }
        }
        return Ahead.of(new Written(List.copyOf(writes), sheets.begin(names)));
    }

    /** Of values written to one cell the last counts. */
    @Override
    public Written call() {
        String sheet = null;
        SheetPart part = null;
        BitSet done = null;
        for (CellWrite write : writes) {
            CellPlace place = write.place();
            if (!place.sheet().equals(sheet)) {
                sheet = place.sheet();
                part = sheets.get(sheet).get();
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
        return this;
    }

    /** Adds these later values: they replace earlier ones of the same cells. */
    void add(Written later) {
        Iterator<CellPlace> places = changed.keySet().iterator();
        while (places.hasNext()) {
            if (later.has(places.next())) {
                places.remove();
            }
        }
        changed.putAll(later.changed);
        absent.addAll(later.absent);
        for (Map.Entry<String, BitSet> sheet : later.cells.entrySet()) {
            marks(sheet.getKey()).or(sheet.getValue());
        }
    }

    private BitSet marks(String sheet) {
        BitSet marks = cells.get(sheet);
        if (marks == null) {
            marks = new BitSet();
            cells.put(sheet, marks);
        }
        return marks;
    }

    private boolean has(CellPlace place) {
        BitSet done = cells.get(place.sheet());
        if (done == null) {
            return false;
        }
        int cell = sheets.get(place.sheet()).get().find(place.row(), place.column());
        return cell < 0 ? absent.contains(place) : done.get(cell);
    }

    /** In turn. */
    List<CellWrite> writes() {
        return writes;
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
