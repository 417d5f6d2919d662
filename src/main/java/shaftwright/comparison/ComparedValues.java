package shaftwright.comparison;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shaftwright.book.CellValue;
import shaftwright.live.Quantity;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;

/** What every formula cell of a comparison's own pages shows, by defined name, in reading order. */
final class ComparedValues {
    /** Places to which the engines' last digits are settled before they are compared. */
    private static final int SETTLED = 6;

    private final List<Column> columns;
    private final Map<Integer, Sizing> books;
    private final LengthUnit unit;
    private final double tolerance;
    private final ComparedLines lines;
    private final Map<String, List<CellValue>> values = new LinkedHashMap<>();

    private ComparedValues(
            ComparedLines lines,
            List<Column> columns,
            Map<Integer, Sizing> books,
            LengthUnit unit,
            double tolerance) {
        this.lines = lines;
        this.columns = columns;
        this.books = books;
        this.unit = unit;
        this.tolerance = tolerance;
    }

    /**
     * Computes them.
     *
     * @param lines rows of the comparison
     * @param columns of the comparison, each a scenario of one of the books
     * @param books results of its sizing workbooks by number
     * @param unit of the comparison's pages
     * @param tolerance up to which lengths count as the same, mm
     */
    static Map<String, List<CellValue>> of(
            ComparedLines lines,
            List<Column> columns,
            Map<Integer, Sizing> books,
            LengthUnit unit,
            double tolerance) {
        ComparedValues compared = new ComparedValues(lines, columns, books, unit, tolerance);
        compared.compute();
        return compared.values;
    }

    private void compute() {
        values.put(Comparison.UNIT_MM, List.of(CellValue.of(unit.mm())));
        lines(lines.headLines());
        lines(lines.resultLines());
        lines(lines.inputLines());
        differences();
    }

    private void lines(List<ComparedLine> lines) {
        for (ComparedLine line : lines) {
            List<CellValue> row = new ArrayList<>();
            for (Column column : columns) {
                row.add(line.core().at(books.get(column.book()), column.scenario(), unit));
            }
            values.put(line.name(), row);
        }
    }

    private void differences() {
        int first = firstUsed();
        put(Difference.FIRST, CellValue.of(first + 1));
        List<ComparedLine> differing = new ArrayList<>();
        List<Integer> rows = new ArrayList<>();
        List<ComparedLine> inputs = lines.inputLines();
        for (int i = 0; i < inputs.size(); i++) {
            ComparedLine line = inputs.get(i);
            List<CellValue> row = values.get(line.name());
            boolean differs = false;
            put(Difference.BASE, row.get(first));
            for (int column = 0; column < row.size(); column++) {
                boolean other =
                        used(column)
                                && differ(
                                        line.quantity(),
                                        row.get(column),
                                        row.get(first),
                                        unit,
                                        tolerance);
                put(Difference.FLAG, CellValue.of(other ? 1 : 0));
                differs |= other;
            }
            if (differs) {
                differing.add(line);
                rows.add(ComparedRows.of(inputs, i));
            }
            put(Difference.MARK, CellValue.of(differs ? Difference.DIFFERS : ""));
            put(Difference.COUNT, CellValue.of(differing.size()));
        }
        list(differing, rows);
    }

    private void list(List<ComparedLine> differing, List<Integer> rows) {
        for (int place = 0; place < Comparison.LISTED; place++) {
            boolean there = place < differing.size();
            ComparedLine line = there ? differing.get(place) : null;
            put(Difference.ROW, CellValue.of(there ? rows.get(place) : 0));
            put(Difference.LISTED_LABEL, CellValue.of(there ? ComparedRows.label(line, unit) : ""));
            for (int column = 0; column < columns.size(); column++) {
                put(
                        Difference.LISTED_VALUE,
                        there ? rounded(values.get(line.name()).get(column)) : CellValue.of(""));
            }
        }
        put(Difference.SUMMARY, CellValue.of(summary(differing.size())));
    }

    private static String summary(int differing) {
        if (differing == 0) {
            return "No input differs.";
        }
        return differing
                + (differing == 1 ? " input differs" : " inputs differ")
                + (differing > Comparison.LISTED
                        ? "; the first "
                                + Comparison.LISTED
                                + " are listed, all are marked on the sheet All inputs."
                        : ".");
    }

    private void put(Difference difference, CellValue value) {
        List<CellValue> cells = values.get(difference.definedName());
        if (cells == null) {
            cells = new ArrayList<>();
            values.put(difference.definedName(), cells);
        }
        cells.add(value);
    }

    private boolean used(int column) {
        Column at = columns.get(column);
        return books.get(at.book()).scenario(at.scenario()).used();
    }

    private int firstUsed() {
        for (int column = 0; column < columns.size(); column++) {
            if (used(column)) {
                return column;
            }
        }
        return 0;
    }

    /** Whether two columns' inputs of one row are not the same. */
    static boolean differ(
            Quantity quantity, CellValue value, CellValue base, LengthUnit unit, double tolerance) {
        if (value instanceof CellValue.Numeric a && base instanceof CellValue.Numeric b) {
            double apart = Math.abs(a.value() - b.value());
            return switch (quantity) {
                case SHOWN_LENGTH -> settled(apart * unit.mm(), SETTLED) > tolerance;
                case DEGREE -> settled(apart, SETTLED) > Difference.SAME_ANGLE;
                default -> settled(apart, SETTLED) > 0;
            };
        }
        if (value instanceof CellValue.Text a && base instanceof CellValue.Text b) {
            return !a.value().toLowerCase(Locale.ROOT).equals(b.value().toLowerCase(Locale.ROOT));
        }
        return true;
    }

    /** The list shows lengths, angles and money alike with up to three decimals. */
    private static CellValue rounded(CellValue value) {
        return value instanceof CellValue.Numeric number
                ? CellValue.of(settled(settled(number.value(), 8), 3))
                : value;
    }

    /** Halves away from zero, as spreadsheets round. */
    private static double settled(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).doubleValue();
    }
}
