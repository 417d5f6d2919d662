package shaftwright.filling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.formula.FormulaSkeleton;
import shaftwright.live.Fingerprint;
import shaftwright.live.LiveLine;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.reading.InputReader;
import shaftwright.reading.Sizing;

/** A book's live cells, and those among them that no longer compute what they are declared to. */
public final class LiveCheck {
    private final LiveCells live;
    private final List<Problem> found;
    private final List<Problem> overwritten;
    private final int version;

    private final List<Problem> edited;

    /** By side and row; of each line there is one object. */
    private final IdentityHashMap<LiveLine, FormulaSkeleton[][]> declared = new IdentityHashMap<>();

    private final Map<String, FormulaSkeleton> skeletons = new HashMap<>();

    private LiveCheck(LiveCells live, List<Problem> found, int version, boolean compared) {
        this.live = live;
        this.found = found;
        this.version = version;
        overwritten = overwrittenCells();
        edited = compared ? editedCells() : List.of();
    }

    /**
     * Finds the cells and looks at them.
     *
     * @param names defined names of the workbook
     * @param contents what its cells hold
     * @param scenarios number of scenario columns
     * @param version contract version by which the workbook was made
     * @param compared whether formulas are compared with the declared ones
     */
    static LiveCheck of(
            Map<String, Area> names, Cells contents, int scenarios, int version, boolean compared) {
        List<Problem> problems = new ArrayList<>();
        LiveCells live = LiveCells.find(names, contents, scenarios, version, problems);
        return new LiveCheck(live, problems, version, compared);
    }

    /** The cells. */
    LiveCells live() {
        return live;
    }

    /** What is missing. */
    List<Problem> found() {
        return found;
    }

    /** Which cells hold a value in place of their formula. */
    List<Problem> overwritten() {
        return overwritten;
    }

    /** Where formulas were compared, which cells hold another one than declared. */
    List<Problem> edited() {
        return edited;
    }

    private List<Problem> overwrittenCells() {
        List<Problem> problems = new ArrayList<>();
        for (LiveCells.Cell cell : live.all()) {
            if (cell.line().isEngine() || cell.line().quantity() == Quantity.ORDINAL) {
                continue;
            }
            if (!cell.content().hasFormula()) {
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
        return problems;
    }

    private List<Problem> editedCells() {
        List<Problem> problems = new ArrayList<>();
        for (LiveCells.Cell cell : live.all()) {
            if (cell.line().revised() > version) {
                // It has the formula of its own version, of which the workbook's age says so.
                continue;
            }
            String formula = cell.content().formula();
            if (!formula.isEmpty() && cell.line().isEngine()) {
                problems.add(
                        Problem.warning(
                                cell.place(),
                                cell.line().label(),
                                "a formula in place of a figure",
                                "no formula; a fill writes the figure, and a recalculation replaces"
                                        + " it by the formula's"));
            } else if (!formula.isEmpty() && !isRevised(cell) && !sameShape(cell, formula)) {
                problems.add(
                        Problem.warning(
                                cell.place(),
                                cell.line().label(),
                                "another formula than a new workbook has",
                                "the declared one; a fill writes the value by the declared one, and"
                                        + " a recalculation replaces it by the other"));
            }
        }
        return problems;
    }

    /** Whether an older workbook rightly has another formula there than a new one. */
    private boolean isRevised(LiveCells.Cell cell) {
        return cell.line().revised() > version;
    }

    /**
     * Which blocks hold figures that don't follow from the inputs, one warning a block; one in all
     * for a workbook that was never filled.
     */
    List<Problem> outdated(Sizing sizing) {
        List<LiveCells.Cell> figures =
                live.all().stream()
                        .filter(cell -> cell.line().isEngine() && !cell.content().hasFormula())
                        .toList();
        Map<Section, List<LiveCells.Cell>> old = new EnumMap<>(Section.class);
        for (LiveCells.Cell cell : figures) {
            if (!shows(cell.content().value(), cell.line().core().at(sizing, cell.index()))) {
                old.computeIfAbsent(cell.line().section(), section -> new ArrayList<>()).add(cell);
            }
        }
        if (old.isEmpty()) {
            return List.of();
        }
        if (figures.stream().allMatch(LiveCheck::isUnfilled)) {
            return List.of(
                    Problem.warning(
                            "the workbook",
                            "not filled yet",
                            "a fill: figures that no formula can give, such as the longest travel,"
                                    + " are empty until then; all else is current"));
        }
        // Of fingerprints a builder reads on their stamps; here they count where nothing else does.
        old.keySet().removeIf(Section::isWorking);
        if (old.isEmpty()) {
            return List.of(
                    Problem.warning(
                            "the workbook",
                            "figures of the last fill that still hold, under a stamp that calls"
                                    + " them out of date",
                            "a fill, which renews the stamp"));
        }
        return old.values().stream().map(cells -> outdated(sizing, cells)).toList();
    }

    /** Programs keep no empty text in a cell without a formula. */
    private static boolean shows(CellValue shown, CellValue figure) {
        return CellValue.near(shown, figure)
                || (shown instanceof CellValue.Blank && figure.equals(CellValue.of("")));
    }

    /**
     * Whether a figure is as a workbook has it before its first fill, or where nothing is typed.
     */
    private static boolean isUnfilled(LiveCells.Cell cell) {
        CellValue value = cell.content().value();
        return value instanceof CellValue.Blank || value.equals(CellValue.of(Fingerprint.NOTHING));
    }

    private static Problem outdated(Sizing sizing, List<LiveCells.Cell> cells) {
        LiveCells.Cell first = cells.get(0);
        return Problem.warning(
                first.place(),
                first.line().label(),
                InputReader.shown(first.content().value())
                        + (cells.size() == 1
                                ? ""
                                : " there and "
                                        + (cells.size() - 1)
                                        + " more of its kind that do not follow from the inputs"),
                InputReader.shown(first.line().core().at(sizing, first.index()))
                        + "; fill the workbook again");
    }

    private boolean sameShape(LiveCells.Cell cell, String formula) {
        return declared(cell.line(), cell.index()).equals(skeleton(formula));
    }

    /** Rows and scenarios share most texts. */
    private FormulaSkeleton skeleton(String formula) {
        return skeletons.computeIfAbsent(formula, FormulaSkeleton::of);
    }

    /**
     * What a cell should look like. Putting a declared formula together is most of the work here,
     * and scenarios differ in places only, which a skeleton leaves out: one serves them all.
     */
    private FormulaSkeleton declared(LiveLine line, Index index) {
        FormulaSkeleton[][] shapes = declared.get(line);
        if (shapes == null) {
            shapes = new FormulaSkeleton[Side.values().length][line.grid().rows()];
            declared.put(line, shapes);
        }
        int side = index.side() == Side.LEFT ? 0 : 1;
        FormulaSkeleton[] rows = shapes[side];
        if (index.row() >= rows.length) {
            // Rows were inserted among the typed ones.
            rows = Arrays.copyOf(rows, index.row() + 1);
            shapes[side] = rows;
        }
        if (rows[index.row()] == null) {
            rows[index.row()] = skeleton(line.formula().at(index));
        }
        return rows[index.row()];
    }
}
