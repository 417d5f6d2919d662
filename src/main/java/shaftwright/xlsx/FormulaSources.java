package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;

/** Which cells the formulas of one file read, directly or through names and tables. */
final class FormulaSources {
    private static final int ROWS = 1 << 20;
    private static final int COLUMNS = 1 << 14;

    /** Names may stand for formulas with names; deeper nesting than this is a circle. */
    private static final int DEEPEST = 20;

    /** Where areas go. */
    interface Reads {
        void area(Area area);

        /** What else is read cannot be told. */
        void anything();
    }

    private final List<String> sheets;
    private final Map<String, Integer> sheetNumbers = new HashMap<>();

    /** By sheet, {@code ""} for the whole workbook, and name. */
    private final Map<String, Map<String, String>> names = new HashMap<>();

    private final Map<String, Area> tables;
    private final Map<String, List<Operand>> operands = new HashMap<>();

    /**
     * Sources of formulas in a file.
     *
     * @param sheets all in tab order
     * @param tables areas of tables by lower-case name
     */
    FormulaSources(List<String> sheets, List<DefinedName> names, Map<String, Area> tables) {
        this.sheets = sheets;
        this.tables = new LinkedHashMap<>(tables);
        for (int i = 0; i < sheets.size(); i++) {
            sheetNumbers.put(XlsxBook.lowerCase(sheets.get(i)), i);
        }
        for (DefinedName name : names) {
            this.names
                    .computeIfAbsent(name.sheet(), sheet -> new HashMap<>())
                    .putIfAbsent(name.name(), name.formula());
        }
    }

    /** Tells all that a formula of a cell reads. */
    void tell(CellPlace reader, StoredFormula formula, Reads reads) {
        if (formula.kind() == StoredFormula.Kind.WHAT_IF_TABLE) {
            tellEdges(formula.block(), reads);
        }
        int rows = reader.row() - formula.home().row();
        int columns = reader.column() - formula.home().column();
        if (formula.text().isEmpty() && formula.kind() != StoredFormula.Kind.WHAT_IF_TABLE) {
            reads.anything();
        }
        tell(formula.text(), reader, rows, columns, 0, reads);
    }

    /** A what-if table runs the formulas to its left, above it or in the corner between. */
    private static void tellEdges(Area block, Reads reads) {
        reads.area(
                new Area(
                        block.sheet(),
                        Math.max(0, block.firstRow() - 1),
                        Math.max(0, block.firstColumn() - 1),
                        block.lastRow(),
                        block.lastColumn()));
    }

    private void tell(
            String text, CellPlace reader, int rows, int columns, int depth, Reads reads) {
        if (depth > DEEPEST) {
            reads.anything();
            return;
        }
        for (Operand operand : operands.computeIfAbsent(text, FormulaOperands::of)) {
            if (operand instanceof Operand.Range range) {
                tellRange(range, reader, rows, columns, reads);
            } else if (operand instanceof Operand.Name name) {
                tellName(name, reader, depth, reads);
            } else if (operand instanceof Operand.Table table && tables.containsKey(table.name())) {
                reads.area(tables.get(table.name()));
            } else {
                reads.anything();
            }
        }
    }

    private void tellRange(
            Operand.Range range, CellPlace reader, int rows, int columns, Reads reads) {
        int row = moved(range.first().row(), range.first().rowFixed(), rows, ROWS);
        int column = moved(range.first().column(), range.first().columnFixed(), columns, COLUMNS);
        int lastRow = moved(range.last().row(), range.last().rowFixed(), rows, ROWS);
        int lastColumn = moved(range.last().column(), range.last().columnFixed(), columns, COLUMNS);
        for (String sheet : sheets(range, reader)) {
            reads.area(
                    new Area(
                            sheet,
                            Math.min(row, lastRow),
                            Math.min(column, lastColumn),
                            Math.max(row, lastRow),
                            Math.max(column, lastColumn)));
        }
    }

    /** Relative references go on at the other edge of a sheet. */
    private static int moved(int number, boolean fixed, int by, int size) {
        return fixed ? number : Math.floorMod(number + by, size);
    }

    private List<String> sheets(Operand.Range range, CellPlace reader) {
        if (range.sheet().isEmpty()) {
            return List.of(reader.sheet());
        }
        Integer first = sheetNumbers.get(XlsxBook.lowerCase(range.sheet()));
        Integer last =
                range.lastSheet().isEmpty()
                        ? first
                        : sheetNumbers.get(XlsxBook.lowerCase(range.lastSheet()));
        if (first == null || last == null) {
            return List.of();
        }
        return new ArrayList<>(sheets.subList(Math.min(first, last), Math.max(first, last) + 1));
    }

    private void tellName(Operand.Name name, CellPlace reader, int depth, Reads reads) {
        Integer number = sheetNumbers.get(XlsxBook.lowerCase(name.sheet()));
        String sheet = number == null ? reader.sheet() : sheets.get(number);
        String formula = names.getOrDefault(sheet, Map.of()).get(name.name());
        if (formula == null) {
            formula = names.getOrDefault("", Map.of()).get(name.name());
        }
        if (formula != null) {
            // What is relative in a name is so to a use in A1.
            tell(formula, reader, reader.row(), reader.column(), depth + 1, reads);
        } else if (tables.containsKey(name.name())) {
            reads.area(tables.get(name.name()));
        }
    }
}
