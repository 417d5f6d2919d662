package shaftwright.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.workbook.live.FormulaSkeleton;
import shaftwright.workbook.live.LiveCells;
import shaftwright.workbook.live.Quantity;

/** Looks for live cells that no longer compute what they are declared to compute. */
final class LiveCheck {
    private final List<Problem> problems;
    private final Map<String, FormulaSkeleton> declared = new HashMap<>();
    private final Map<String, FormulaSkeleton> seen = new HashMap<>();

    LiveCheck(List<Problem> problems) {
        this.problems = problems;
    }

    /** Says which cells hold a value in place of their formula, and returns how many. */
    int overwritten(LiveCells live) {
        int count = 0;
        for (LiveCells.Cell cell : live.all()) {
            if (!cell.content().hasFormula() && cell.line().quantity() != Quantity.ORDINAL) {
                count++;
                CellValue value = cell.content().value();
                problems.add(
                        Problem.warning(
                                cell.place(),
                                cell.line().label(),
                                (value instanceof CellValue.Blank
                                                ? "nothing"
                                                : InputReader.shown(value))
                                        + " in place of a formula",
                                "the formula; it is left as it is, and what depends on it may not"
                                        + " agree with the rest"));
            }
        }
        return count;
    }

    /** Says which cells hold another formula than declared, and returns how many. */
    int edited(LiveCells live) {
        int count = 0;
        for (LiveCells.Cell cell : live.all()) {
            String formula = cell.content().formula();
            if (!formula.isEmpty() && !sameShape(cell, formula)) {
                count++;
                problems.add(
                        Problem.warning(
                                cell.place(),
                                cell.line().label(),
                                "another formula than a new workbook has",
                                "the declared one; a fill writes the value by the declared one, and"
                                        + " a recalculation replaces it by the other"));
            }
        }
        return count;
    }

    private boolean sameShape(LiveCells.Cell cell, String formula) {
        String wanted = cell.line().formula().at(cell.index());
        return skeleton(declared, wanted).equals(skeleton(seen, formula));
    }

    private static FormulaSkeleton skeleton(Map<String, FormulaSkeleton> known, String formula) {
        FormulaSkeleton skeleton = known.get(formula);
        if (skeleton == null) {
            skeleton = FormulaSkeleton.of(formula);
            known.put(formula, skeleton);
        }
        return skeleton;
    }
}
