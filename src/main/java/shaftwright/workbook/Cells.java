package shaftwright.workbook;

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
