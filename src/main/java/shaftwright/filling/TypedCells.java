package shaftwright.filling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.NoSuchCellException;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.ScenarioOutcome;

/**
 * Typed columns laid over an open book: what its input cells are to hold instead. Reading sees the
 * cells through this, and writing takes its values along, so that results and inputs always belong
 * together.
 */
public final class TypedCells {
    private final Cells cells;
    private final Map<CellPlace, CellValue> values = new HashMap<>();
    private final List<Problem> problems;

    /** What was to be typed over a formula of the builder's. */
    private final Map<CellPlace, OverFormula> overFormulas = new LinkedHashMap<>();

    private record OverFormula(String definedName, String text, CellValue value) {}

    private TypedCells(Cells cells, List<Problem> problems) {
        this.cells = cells;
        this.problems = problems;
    }

    /**
     * Finds the cells.
     *
     * @param names defined names of the workbook
     * @param cells what its cells hold now
     * @param version contract version by which it was made: it may lack cells for later inputs
     * @throws NoSuchCellException if a column has a text for a row or scenario that is not there
     */
    static TypedCells of(
            Collection<TypedColumn> columns,
            Map<String, Area> names,
            Cells cells,
            List<Problem> problems,
            int version) {
        TypedCells typed = new TypedCells(cells, problems);
        for (TypedColumn column : columns) {
            Area area = names.get(column.definedName());
            if (area != null) {
                typed.lay(column, typed.places(column, area, names));
            } else if (column.last() >= 0
                    && Contract.named(column.definedName()).since() > version) {
                typed.lacking(column, version);
            }
        }
        return typed;
    }

    private void lacking(TypedColumn column, int version) {
        problems.add(
                Problem.error(
                        column.definedName(),
                        "no cell for it in a workbook of contract version " + version,
                        "version "
                                + Contract.named(column.definedName()).since()
                                + "; the command renew makes a current workbook of it"));
    }

    /** What the input cells are to hold. */
    Map<CellPlace, CellValue> values() {
        return values;
    }

    /** Those that the cells do not hold already. */
    Map<CellPlace, CellValue> changes() {
        Map<CellPlace, CellValue> changes = new HashMap<>(values);
        changes.entrySet()
                .removeIf(cell -> cells.at(cell.getKey()).value().equals(cell.getValue()));
        return changes;
    }

    /**
     * Says what cannot be typed, because a formula stands there that shows something else.
     *
     * @param shown what formulas show, of those that no longer show what they hold
     */
    void refuseOver(Map<CellPlace, CellValue> shown, List<Problem> found) {
        overFormulas.forEach(
                (place, over) -> {
                    CellValue now = shown.getOrDefault(place, cells.at(place).value());
                    if (!now.equals(over.value())
                            && !InputValues.asTyped(now).equals(over.text())) {
                        found.add(
                                Problem.error(
                                        place,
                                        over.definedName(),
                                        "your own formula",
                                        "a typed cell; it would compute over \""
                                                + over.text()
                                                + "\""));
                    }
                });
    }

    /** The book's cells as they will be. */
    Cells over() {
        return values.isEmpty() ? cells : new Laid();
    }

    private final class Laid implements Cells {
        @Override
        public CellContent at(CellPlace place) {
            CellValue value = values.get(place);
            return value == null ? cells.at(place) : CellContent.of(value, "");
        }

        @Override
        public Map<CellPlace, CellContent> filled() {
            Map<CellPlace, CellContent> filled = new HashMap<>(cells.filled());
            for (CellPlace place : values.keySet()) {
                filled.put(place, at(place));
            }
            return filled;
        }
    }

    private List<CellPlace> places(TypedColumn column, Area area, Map<String, Area> names) {
        List<CellPlace> places = new ArrayList<>();
        if (Contract.named(column.definedName()).grid().perScenario()) {
            for (CellPlace letter : InputReader.letters(names, cells)) {
                places.add(new CellPlace(area.sheet(), area.firstRow(), letter.column()));
            }
        } else {
            for (int offset = 0; offset < area.size(); offset++) {
                places.add(area.place(offset));
            }
        }
        return places;
    }

    private void lay(TypedColumn column, List<CellPlace> places) {
        Input input = Contract.named(column.definedName());
        int last = column.texts().isEmpty() ? -1 : column.texts().lastKey();
        if (last >= places.size() && (!column.whole() || column.last() >= places.size())) {
            boolean scenarios = input.grid().perScenario();
            throw new NoSuchCellException(
                    column.definedName(),
                    scenarios ? "scenario " + ScenarioOutcome.letter(last) : "row " + (last + 1),
                    scenarios
                            ? "A to " + ScenarioOutcome.letter(places.size() - 1)
                            : "1 to " + places.size());
        }
        for (int offset = 0; offset < places.size(); offset++) {
            String text = column.texts().get(offset);
            if (text != null || column.whole()) {
                type(column, input, places.get(offset), text == null ? "" : text);
            }
        }
    }

    private void type(TypedColumn column, Input input, CellPlace place, String text) {
        CellContent now = cells.at(place);
        CellValue value = input.typed(text);
        if (text.length() > CellValue.LONGEST_TEXT) {
            problems.add(
                    Problem.error(
                            place,
                            column.definedName(),
                            "a text of " + text.length() + " characters to be typed",
                            "at most "
                                    + CellValue.LONGEST_TEXT
                                    + ", which is all that a cell holds"));
        } else if (now.hasFormula()) {
            overFormulas.put(place, new OverFormula(column.definedName(), text, value));
        } else if (column.definedName().equals("unit")
                && !(now.value() instanceof CellValue.Text unit && unit.value().equals(text))) {
            problems.add(
                    Problem.error(
                            place,
                            column.definedName(),
                            "\"" + text + "\" to be typed",
                            "the unit that the workbook was made with; make a new one for"
                                    + " another"));
        } else {
            values.put(place, value);
        }
    }
}
