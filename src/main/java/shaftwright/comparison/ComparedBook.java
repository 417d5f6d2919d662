package shaftwright.comparison;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.filling.CarriedText;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;

/**
 * All that a comparison takes over from one sizing workbook: what is typed there.
 *
 * @param label what its columns are headed with, usually the file's name
 * @param unit of its bare numbers
 * @param scenarios columns that it needs: up to the last one in use, so that letters stay
 * @param used zero-based scenarios in use
 * @param typed contents of its typed cells by defined name
 * @param inputs by name of a row of inputs: what it says of each scenario in use, lengths in mm
 */
public record ComparedBook(
        String label,
        LengthUnit unit,
        int scenarios,
        List<Integer> used,
        Map<String, List<CellValue>> typed,
        Map<String, List<CellValue>> inputs) {
    public ComparedBook {
        used = List.copyOf(used);
        typed = Map.copyOf(typed);
        inputs = Map.copyOf(inputs);
    }

    /** What a workbook that was computed gives. */
    public static ComparedBook of(String label, Sizing sizing) {
        List<Integer> used = new ArrayList<>();
        for (int scenario = 0; scenario < sizing.scenarios().size(); scenario++) {
            if (sizing.scenario(scenario).used()) {
                used.add(scenario);
            }
        }
        int scenarios = used.isEmpty() ? 0 : used.get(used.size() - 1) + 1;
        Map<String, List<CellValue>> typed = new HashMap<>();
        for (Grid grid : Grid.values()) {
            for (Side side : grid.sided() ? Side.values() : new Side[] {Side.LEFT}) {
                table(sizing, grid, side, scenarios, typed);
            }
        }
        return new ComparedBook(label, sizing.unit(), scenarios, used, typed, inputs(sizing, used));
    }

    private static Map<String, List<CellValue>> inputs(Sizing sizing, List<Integer> used) {
        Map<String, List<CellValue>> inputs = new HashMap<>();
        for (ComparedLine line : ComparedLines.all().inputLines()) {
            List<CellValue> row = new ArrayList<>();
            for (int scenario : used) {
                row.add(line.core().at(sizing, scenario, LengthUnit.MILLIMETRE));
            }
            inputs.put(line.name(), row);
        }
        return inputs;
    }

    /** The same without what names its owner. */
    public ComparedBook anonymous(String otherLabel) {
        Map<String, List<CellValue>> less = new HashMap<>(typed);
        less.put("vehicle_name", List.of());
        return new ComparedBook(otherLabel, unit, scenarios, used, less, inputs);
    }

    /**
     * The same as typed in a workbook of another unit: lengths with a mark, other numbers
     * converted.
     */
    public ComparedBook in(LengthUnit other) {
        if (other == unit) {
            return this;
        }
        Map<String, List<CellValue>> marked = new HashMap<>();
        for (Map.Entry<String, List<CellValue>> column : typed.entrySet()) {
            Input input = Contract.named(column.getKey());
            List<CellValue> cells = new ArrayList<>();
            for (CellValue cell : column.getValue()) {
                cells.add(CarriedText.exactly(input, cell, unit, other));
            }
            marked.put(column.getKey(), cells);
        }
        // A workbook laid out in the other unit says so by itself.
        marked.remove("unit");
        Map<String, List<CellValue>> shown = new HashMap<>(inputs);
        Input word = Contract.input("unit");
        String typedUnit = word.initial(other);
        shown.put(
                Comparison.PREFIX + word.name(),
                Collections.nCopies(used.size(), CellValue.of(typedUnit)));
        return new ComparedBook(label, other, scenarios, used, marked, shown);
    }

    private static void table(
            Sizing sizing,
            Grid grid,
            Side side,
            int scenarios,
            Map<String, List<CellValue>> typed) {
        Map<String, List<CellValue>> columns = new HashMap<>();
        int rows = 0;
        for (Input input : Contract.inputs(grid)) {
            String name = input.definedName(side);
            List<CellValue> column = sizing.inputs().contents(name);
            columns.put(name, column);
            rows = Math.max(rows, column.size());
        }
        int kept = grid.perScenario() ? scenarios : grid.rows();
        boolean grown = !grid.perScenario() && rows > kept;
        for (Map.Entry<String, List<CellValue>> column : columns.entrySet()) {
            List<CellValue> cells = new ArrayList<>();
            for (int row = 0; row < (grown ? rows : kept); row++) {
                if (!grown || !isEmpty(columns, row)) {
                    cells.add(at(column.getValue(), row));
                }
            }
            typed.put(column.getKey(), cells);
        }
    }

    /** Rows that the builder inserted and left empty are not carried along. */
    private static boolean isEmpty(Map<String, List<CellValue>> columns, int row) {
        for (List<CellValue> column : columns.values()) {
            if (!(at(column, row) instanceof CellValue.Blank)) {
                return false;
            }
        }
        return true;
    }

    private static CellValue at(List<CellValue> column, int row) {
        return row < column.size() ? column.get(row) : CellValue.BLANK;
    }
}
