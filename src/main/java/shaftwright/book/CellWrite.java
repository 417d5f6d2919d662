package shaftwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A value that a cell is to get; a fill has tens of thousands, which no map need find again. */
public record CellWrite(CellPlace place, CellValue value) {
    /** All of a map's. */
    public static List<CellWrite> all(Map<CellPlace, CellValue> values) {
        List<CellWrite> writes = new ArrayList<>(values.size());
        for (Map.Entry<CellPlace, CellValue> value : values.entrySet()) {
            writes.add(new CellWrite(value.getKey(), value.getValue()));
        }
        return writes;
    }
}
