package shaftwright.filling;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import shaftwright.book.NoRoomException;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.InputValues;

/**
 * Parts of one workbook that another needs. One that the other has under the same name with the
 * same sizes is used as it is; one of that name with other sizes is left alone, and the newcomer
 * gets a number behind its name. What a part names, such as a blank its material, and what belongs
 * to it, such as bench readings to a joint, comes along.
 */
final class CarriedParts {
    private final InputValues from;
    private final InputValues into;
    private final CarriedCells cells;
    private final Map<PartTable, Set<Integer>> taken = new EnumMap<>(PartTable.class);
    private final List<String> added = new ArrayList<>();
    private final List<String> joints = new ArrayList<>();

    /**
     * @param cells where to type what has to be typed
     */
    CarriedParts(InputValues from, InputValues into, CarriedCells cells) {
        this.from = from;
        this.into = into;
        this.cells = cells;
    }

    /** Parts that the other workbook did not have, as they are called there. */
    List<String> added() {
        return added;
    }

    /** The joints among them. */
    List<String> joints() {
        return joints;
    }

    /**
     * Name under which the other workbook knows a part from now on, empty when there is none.
     *
     * @throws NoRoomException if its table has too few empty rows
     */
    String carry(PartTable table, String name) {
        OptionalInt row = row(from, table, name);
        if (row.isEmpty()) {
            return "";
        }
        String other = name;
        for (int number = 2; ; number++) {
            OptionalInt there = row(into, table, other);
            if (there.isEmpty()) {
                break;
            }
            if (samePart(table, row.getAsInt(), there.getAsInt(), name, other)) {
                return into.text(table.key(), new Index(Side.LEFT, 0, there.getAsInt()));
            }
            other = name + " (" + number + ")";
        }
        String said = table.word() + " \"" + other + "\"";
        if (added.contains(said)) {
            return other;
        }
        copy(table, row.getAsInt(), other);
        for (PartTable belonging : table.belonging()) {
            for (int each : rows(from, belonging, name)) {
                copy(belonging, each, other);
            }
        }
        added.add(said);
        if (table == PartTable.JOINTS) {
            joints.add(other);
        }
        return other;
    }

    private void copy(PartTable table, int row, String name) {
        int place = emptyRow(table);
        for (Input column : table.columns()) {
            String text = column.name().equals(table.key()) ? name : carried(table, column, row);
            if (!text.isEmpty()) {
                cells.type(column, place, text);
            }
        }
    }

    /** What a cell of a part's row is to hold, with what it names brought along. */
    private String carried(PartTable table, Input column, int row) {
        Optional<PartTable> named = PartTable.namedBy(column);
        String typed = cells.text(column, row);
        if (named.isEmpty() || column.name().equals(table.key())) {
            return typed;
        }
        String known = carry(named.get(), typed);
        return known.isEmpty() ? typed : known;
    }

    private int emptyRow(PartTable table) {
        Set<Integer> used = taken.computeIfAbsent(table, t -> new HashSet<>());
        int rows = into.rows(table.key(), Side.LEFT);
        for (int row = 0; row < rows; row++) {
            if (!used.contains(row) && CarriedCells.isEmpty(into, table.columns(), row)) {
                used.add(row);
                return row;
            }
        }
        throw new NoRoomException(
                "the table has no empty row for another "
                        + table.word()
                        + "; expected one: empty a row that no scenario needs");
    }

    private boolean samePart(PartTable table, int here, int there, String name, String other) {
        return sameRow(table, here, there)
                && table.belonging().stream()
                        .allMatch(belonging -> sameRows(belonging, name, other));
    }

    private boolean sameRows(PartTable table, String name, String other) {
        List<Integer> here = rows(from, table, name);
        List<Integer> there = rows(into, table, other);
        boolean same = here.size() == there.size();
        for (int i = 0; same && i < here.size(); i++) {
            same = sameRow(table, here.get(i), there.get(i));
        }
        return same;
    }

    /** Whether two rows say the same, their names aside. */
    private boolean sameRow(PartTable table, int here, int there) {
        for (Input column : table.columns()) {
            if (!column.name().equals(table.key()) && !same(column, here, there)) {
                return false;
            }
        }
        return true;
    }

    /** Whether two cells say the same; what they name must be the same as well. */
    private boolean same(Input column, int here, int there) {
        InputValues.Entry a = from.column(column, Side.LEFT)[here];
        InputValues.Entry b = into.column(column, Side.LEFT)[there];
        if (!CarriedCells.same(column, a, b)) {
            return false;
        }
        Optional<PartTable> named = PartTable.namedBy(column);
        if (named.isEmpty()) {
            return true;
        }
        OptionalInt ours = row(from, named.get(), a.text());
        OptionalInt theirs = row(into, named.get(), b.text());
        return ours.isEmpty()
                || theirs.isEmpty()
                || sameRow(named.get(), ours.getAsInt(), theirs.getAsInt());
    }

    private static OptionalInt row(InputValues values, PartTable table, String name) {
        return rows(values, table, name).stream().mapToInt(Integer::intValue).findFirst();
    }

    private static List<Integer> rows(InputValues values, PartTable table, String name) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 0; row < values.rows(table.key(), Side.LEFT); row++) {
            if (!name.isEmpty()
                    && fold(values.text(table.key(), new Index(Side.LEFT, 0, row)))
                            .equals(fold(name))) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
