package shaftwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cells of an open book that were read. A book may have a million of them, so each is decoded
 * only when it is asked for.
 */
public interface Cells {
    /** What a cell that was read holds, {@link CellContent#EMPTY} when it is blank. */
    CellContent at(CellPlace place);

    /** All cells that were read and are not blank, or hold a formula. */
    Map<CellPlace, CellContent> filled();

    /**
     * The cells of an area that count: all of them, or, inside a name that has grown because rows
     * or columns were inserted, those that hold something.
     *
     * @param wanted how many there should be
     */
    default List<CellPlace> counting(Area area, int wanted) {
        boolean grown = area.size() != wanted;
        List<CellPlace> counting = new ArrayList<>(wanted);
        for (int offset = 0; offset < area.size(); offset++) {
            CellPlace place = area.place(offset);
            if (!grown || !at(place).isEmpty()) {
                counting.add(place);
            }
        }
        return counting;
    }

    /** Cells that are known already. */
    static Cells of(Map<CellPlace, CellContent> known) {
        return new Cells() {
            @Override
            public CellContent at(CellPlace place) {
                return known.getOrDefault(place, CellContent.EMPTY);
            }

            @Override
            public Map<CellPlace, CellContent> filled() {
                return known;
            }
        };
    }
}
