package shaftwright.xlsx;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;

/** Which formula cells read which cells. */
final class FormulaGraph {
    /** Areas are found by blocks of so many rows; those that lie in many are looked at always. */
    private static final int BLOCK_ROWS = 64;

    private static final int MOST_BLOCKS = 8;
    private static final int EVERYWHERE = -1;

    private record Block(String sheet, int number) {}

    private record Reading(Area area, CellPlace reader) {}

    private final Map<CellPlace, List<CellPlace>> readersOfCell = new HashMap<>();
    private final Map<Block, List<Reading>> readersOfAreas = new HashMap<>();
    private final List<CellPlace> readersOfAnything = new ArrayList<>();

    /** Notes that a formula cell reads this area. */
    void addReading(CellPlace reader, Area area) {
        if (area.firstRow() == area.lastRow() && area.firstColumn() == area.lastColumn()) {
            readersOfCell.computeIfAbsent(area.place(0), p -> new ArrayList<>()).add(reader);
            return;
        }
        Reading reading = new Reading(area, reader);
        int first = area.firstRow() / BLOCK_ROWS;
        int last = area.lastRow() / BLOCK_ROWS;
        if (last - first >= MOST_BLOCKS) {
            add(new Block(area.sheet(), EVERYWHERE), reading);
            return;
        }
        for (int block = first; block <= last; block++) {
            add(new Block(area.sheet(), block), reading);
        }
    }

    private void add(Block block, Reading reading) {
        readersOfAreas.computeIfAbsent(block, b -> new ArrayList<>()).add(reading);
    }

    /** Notes that what a formula cell reads cannot be told from its text. */
    void addReadingAnything(CellPlace reader) {
        readersOfAnything.add(reader);
    }

    /** All formula cells that read one of these cells, directly or through others. */
    Set<CellPlace> readersOf(Collection<CellPlace> seeds) {
        Set<CellPlace> reached = new LinkedHashSet<>();
        if (seeds.isEmpty()) {
            return reached;
        }
        Map<Block, List<Reading>> open = new HashMap<>();
        for (Map.Entry<Block, List<Reading>> block : readersOfAreas.entrySet()) {
            open.put(block.getKey(), new ArrayList<>(block.getValue()));
        }
        ArrayDeque<CellPlace> next = new ArrayDeque<>();
        add(readersOfAnything, reached, next);
        for (CellPlace seed : seeds) {
            addReaders(seed, open, reached, next);
        }
        while (!next.isEmpty()) {
            addReaders(next.remove(), open, reached, next);
        }
        return reached;
    }

    private void addReaders(
            CellPlace place,
            Map<Block, List<Reading>> open,
            Set<CellPlace> reached,
            ArrayDeque<CellPlace> next) {
        add(readersOfCell.getOrDefault(place, List.of()), reached, next);
        if (!open.isEmpty()) {
            Block near = new Block(place.sheet(), place.row() / BLOCK_ROWS);
            addAreaReaders(open.get(near), place, reached, next);
            Block everywhere = new Block(place.sheet(), EVERYWHERE);
            addAreaReaders(open.get(everywhere), place, reached, next);
        }
    }

    private static void addAreaReaders(
            List<Reading> readingsOrNull,
            CellPlace place,
            Set<CellPlace> reached,
            ArrayDeque<CellPlace> next) {
        if (readingsOrNull != null) {
            readingsOrNull.removeIf(
                    reading -> {
                        boolean reads = reading.area().contains(place);
                        if (reads) {
                            add(List.of(reading.reader()), reached, next);
                        }
                        return reads;
                    });
        }
    }

    private static void add(
            List<CellPlace> readers, Set<CellPlace> reached, ArrayDeque<CellPlace> next) {
        for (CellPlace reader : readers) {
            if (reached.add(reader)) {
                next.add(reader);
            }
        }
    }
}
