package shaftwright.comparison;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.MissingNames;
import shaftwright.book.Problem;
import shaftwright.formula.FormulaSkeleton;

/**
 * Where the formula cells of a comparison's own pages stand, and what they should show. Inside a
 * name that has grown, because rows or columns were inserted, the cells that hold something count.
 */
final class ComparisonCells {
    private record Cell(String name, CellPlace place, CellContent content, CellValue wanted) {}

    private final List<Cell> cells = new ArrayList<>();

    private ComparisonCells() {}

    /**
     * Finds them.
     *
     * @param wanted what they should show, by defined name
     * @param problems where to say what is missing
     */
    static ComparisonCells find(
            Map<String, Area> names,
            Cells contents,
            Map<String, List<CellValue>> wanted,
            List<Problem> problems) {
        ComparisonCells found = new ComparisonCells();
        MissingNames missing = new MissingNames();
        for (Map.Entry<String, List<CellValue>> name : wanted.entrySet()) {
            Area area = names.get(name.getKey());
            if (area == null) {
                missing.add(name.getKey(), "a row of the comparison");
            } else {
                found.add(name.getKey(), area, contents, name.getValue(), problems);
            }
        }
        missing.sayTo(problems);
        return found;
    }

    private void add(
            String name,
            Area area,
            Cells contents,
            List<CellValue> wanted,
            List<Problem> problems) {
        List<CellPlace> places = contents.counting(area, wanted.size());
        int count = places.size();
        for (int i = 0; i < Math.min(count, wanted.size()); i++) {
            CellPlace place = places.get(i);
            cells.add(new Cell(name, place, contents.at(place), wanted.get(i)));
        }
        if (count != wanted.size()) {
            problems.add(
                    new Problem(
                            Problem.Severity.ERROR,
                            Optional.of(area.place(0)),
                            "the cells of the name " + name,
                            count + " cells that hold something",
                            wanted.size() + "; bring them back, or compare the workbooks anew"));
        }
    }

    /** Values for all cells that have their formula. */
    Map<CellPlace, CellValue> values() {
        Map<CellPlace, CellValue> values = new HashMap<>();
        for (Cell cell : cells) {
            if (cell.content().hasFormula()) {
                values.put(cell.place(), cell.wanted());
            }
        }
        return values;
    }

    /** Says which cells hold a value in place of their formula, and returns how many. */
    int overwritten(List<Problem> problems) {
        int count = 0;
        for (Cell cell : cells) {
            if (!cell.content().hasFormula()) {
                count++;
                problems.add(
                        warning(
                                cell,
                                "a value in place of a formula",
                                "the formula; it is left as it is and follows nothing"));
            }
        }
        return count;
    }

    /** Says which cells hold another formula than declared, and returns how many. */
    int edited(List<Problem> problems) {
        Map<String, Set<FormulaSkeleton>> declared = declared();
        int count = 0;
        for (Cell cell : cells) {
            String formula = cell.content().formula();
            if (!formula.isEmpty()
                    && !declared.get(cell.name()).contains(FormulaSkeleton.of(formula))) {
                count++;
                problems.add(
                        warning(
                                cell,
                                "another formula than a new comparison has",
                                "the declared one; a fill writes the value by the declared one, and"
                                        + " a recalculation replaces it by the other"));
            }
        }
        return count;
    }

    private static Map<String, Set<FormulaSkeleton>> declared() {
        Map<String, Set<FormulaSkeleton>> declared = new HashMap<>();
        declare(declared, Comparison.UNIT_MM, Comparison.UNIT_FORMULA);
        List<ComparedLine> lines = new ArrayList<>(ComparedLines.all().headLines());
        lines.addAll(ComparedLines.all().resultLines());
        lines.addAll(ComparedLines.all().inputLines());
        for (ComparedLine line : lines) {
            declare(declared, line.name(), line.formula());
        }
        for (ComparedLine line : ComparedLines.all().inputLines()) {
            String flag = Difference.flag(line.quantity());
            declare(declared, Difference.FLAG.definedName(), flag);
        }
        for (Difference difference : Difference.values()) {
            declare(declared, difference.definedName(), difference.formula());
        }
        return declared;
    }

    private static void declare(
            Map<String, Set<FormulaSkeleton>> declared, String name, String formula) {
        Set<FormulaSkeleton> shapes = declared.get(name);
        if (shapes == null) {
            shapes = new HashSet<>();
            declared.put(name, shapes);
        }
        shapes.add(FormulaSkeleton.of(formula));
    }

    private static Problem warning(Cell cell, String found, String expected) {
        return new Problem(
                Problem.Severity.WARNING,
                Optional.of(cell.place()),
                "a row of the comparison",
                found,
                expected);
    }
}
