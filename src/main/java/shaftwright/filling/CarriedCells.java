package shaftwright.filling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;

/** Typed cells of one workbook on their way into another. */
final class CarriedCells {
    private static final double SAME = 1e-9;

    private final InputValues from;
    private final InputValues into;
    private final Map<String, SortedMap<Integer, String>> typed = new LinkedHashMap<>();
    private final List<String> lacking = new ArrayList<>();

    CarriedCells(InputValues from, InputValues into) {
        this.from = from;
        this.into = into;
    }

    /** What a cell of the one holds, as it has to be typed in the other. */
    String text(Input input, int place) {
        return CarriedText.of(input, raw(from, input, place), from.unit(), into.unit());
    }

    /** Types into the other; where that is older than the input it has no cell for it. */
    void type(Input input, int place, String text) {
        if (into.place(input.name(), new Index(Side.LEFT, place, place)).isEmpty()) {
            String said = input.label() + ": " + text + " in theirs, no cell for it in yours";
            if (!text.isEmpty() && !lacking.contains(said)) {
                lacking.add(said);
            }
            return;
        }
        typed.computeIfAbsent(input.name(), name -> new TreeMap<>()).put(place, text);
    }

    /** All that was typed so far. */
    List<TypedColumn> columns() {
        return typed.entrySet().stream()
                .map(column -> new TypedColumn(column.getKey(), column.getValue(), false))
                .toList();
    }

    /** What the other has no cells for. */
    List<String> lacking() {
        return lacking;
    }

    /** Whether a row or column holds nothing, or what a new workbook starts with. */
    static boolean isEmpty(InputValues values, List<Input> columns, int place) {
        return columns.stream()
                .allMatch(
                        column ->
                                InputReader.isEmpty(raw(values, column, place))
                                        || isAtStart(values, column, place));
    }

    /** Whether a cell holds what a new workbook of its unit starts with. */
    static boolean isAtStart(InputValues values, Input column, int place) {
        return InputValues.asTyped(raw(values, column, place))
                .equals(column.initial(values.unit()));
    }

    /** Whether two cells of an input say the same. */
    static boolean same(Input input, InputValues.Entry a, InputValues.Entry b) {
        if (!input.kind().numeric()) {
            return a.text()
                    .strip()
                    .toLowerCase(Locale.ROOT)
                    .equals(b.text().strip().toLowerCase(Locale.ROOT));
        }
        return (Double.isNaN(a.number()) && Double.isNaN(b.number()))
                || Math.abs(a.number() - b.number()) <= SAME * Math.max(1, Math.abs(a.number()));
    }

    private static CellValue raw(InputValues values, Input input, int place) {
        InputValues.Entry[] column = values.column(input, Side.LEFT);
        return place < column.length ? column[place].raw() : CellValue.BLANK;
    }
}
