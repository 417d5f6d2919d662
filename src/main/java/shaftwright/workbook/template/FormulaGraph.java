package shaftwright.workbook.template;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellPlace;

/** Which formula cells read which cells. */
final class FormulaGraph {
    private final Map<CellPlace, List<CellPlace>> readersOfCell = new HashMap<>();
    private final Map<String, List<Reading>> readersOfAreas = new HashMap<>();
    private final List<CellPlace> readersOfAnything = new ArrayList<>();

    private record Reading(Area area, CellPlace reader) {}

    /** Notes that a formula cell reads this area. */
    void addReading(CellPlace reader, Area area) {
        if (area.firstRow() == area.lastRow() && area.firstColumn() == area.lastColumn()) {
            readersOfCell.computeIfAbsent(area.place(0), p -> new ArrayList<>()).add(reader);
        } else {
            readersOfAreas
                    .computeIfAbsent(area.sheet(), s -> new ArrayList<>())
                    .add(new Reading(area, reader));
        }
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
        Map<String, List<Reading>> open = new HashMap<>();
        for (Map.Entry<String, List<Reading>> sheet : readersOfAreas.entrySet()) {
            open.put(sheet.getKey(), new ArrayList<>(sheet.getValue()));
        }
        ArrayDeque<CellPlace> next = new ArrayDeque<>();
        add(readersOfAnything, reached, next);
        for (CellPlace seed : seeds) {
            add(readersOfCell.getOrDefault(seed, List.of()), reached, next);
        }
        addAreaReaders(seeds, open, reached, next);
        while (!next.isEmpty()) {
            CellPlace place = next.remove();
            add(readersOfCell.getOrDefault(place, List.of()), reached, next);
            Iterator<Reading> readings = open.getOrDefault(place.sheet(), List.of()).iterator();
            while (readings.hasNext()) {
                Reading reading = readings.next();
                if (reading.area().contains(place)) {
                    add(List.of(reading.reader()), reached, next);
                    readings.remove();
                }
            }
        }
        return reached;
    }

    private static void add(
            List<CellPlace> readers, Set<CellPlace> reached, ArrayDeque<CellPlace> next) {
        for (CellPlace reader : readers) {
            if (reached.add(reader)) {
                next.add(reader);
            }
        }
    }

    /** The seeds may be many thousand: they are looked at by rows, not one by one. */
    private static void addAreaReaders(
            Collection<CellPlace> seeds,
            Map<String, List<Reading>> open,
            Set<CellPlace> reached,
            ArrayDeque<CellPlace> next) {
        Map<String, TreeMap<Integer, BitSet>> sheets = new HashMap<>();
        for (CellPlace seed : seeds) {
            sheets.computeIfAbsent(seed.sheet(), s -> new TreeMap<>())
                    .computeIfAbsent(seed.row(), r -> new BitSet())
                    .set(seed.column());
        }
        for (Map.Entry<String, TreeMap<Integer, BitSet>> sheet : sheets.entrySet()) {
            Iterator<Reading> readings = open.getOrDefault(sheet.getKey(), List.of()).iterator();
            while (readings.hasNext()) {
                Reading reading = readings.next();
                if (holdsAny(reading.area(), sheet.getValue())) {
                    add(List.of(reading.reader()), reached, next);
                    readings.remove();
                }
            }
        }
    }

    private static boolean holdsAny(Area area, NavigableMap<Integer, BitSet> rows) {
        for (BitSet columns : rows.subMap(area.firstRow(), area.lastRow() + 1).values()) {
            int column = columns.nextSetBit(area.firstColumn());
            if (column >= 0 && column <= area.lastColumn()) {
                return true;
            }
        }
        return false;
    }
}
