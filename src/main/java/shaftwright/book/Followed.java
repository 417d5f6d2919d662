package shaftwright.book;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What formula cells show once other cells hold new values, see {@link OpenBook#follow}.
 *
 * @param values by cell, of those that no longer show what they did, or did not show anything
 * @param unknown cells of which nobody here can say what they will show
 * @param results those of our own areas that the formulas read
 */
public record Followed(
        Map<CellPlace, CellValue> values, Set<CellPlace> unknown, Collection<Area> results) {
    /** Cells that show what they should, and read nothing of ours. */
    public static final Followed UNCHANGED = new Followed(Map.of(), Set.of(), List.of());
}
