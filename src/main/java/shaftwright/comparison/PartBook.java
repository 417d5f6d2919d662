package shaftwright.comparison;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.Followed;
import shaftwright.book.OpenBook;

/**
 * One of the sizing workbooks in a comparison, as an open book of its own: its names without their
 * prefix, its cells where they stand.
 */
public final class PartBook implements OpenBook {
    private final OpenBook whole;
    private final int number;
    private final Map<String, Area> names;

    PartBook(OpenBook whole, int number) {
        this.whole = whole;
        this.number = number;
        String prefix = prefix(number);
        names = new HashMap<>();
        for (Map.Entry<String, Area> name : whole.names().entrySet()) {
            if (name.getKey().startsWith(prefix)) {
                names.put(name.getKey().substring(prefix.length()), name.getValue());
            }
        }
    }

    /** What a book's defined names begin with in a comparison. */
    public static String prefix(int number) {
        return "book" + number + "_";
    }

    /** What a book's sheets begin with in a comparison. */
    public static String sheetPrefix(int number) {
        return number + " ";
    }

    /** Its number in the comparison, from 1. */
    public int number() {
        return number;
    }

    @Override
    public String title() {
        return whole.title() + ", book " + number;
    }

    @Override
    public Map<String, Area> names() {
        return names;
    }

    @Override
    public Cells read(Collection<Area> areas) {
        return whole.read(areas);
    }

    /** A comparison takes over none of the builders' own sheets. */
    @Override
    public Map<CellPlace, String> formulasCalling(String prefix) {
        return Map.of();
    }

    @Override
    public Followed follow(
            Collection<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Collection<Area> results) {
        return whole.follow(cells, changes, results);
    }

    @Override
    public void write(List<CellWrite> writes) {
        whole.write(writes);
    }
}
