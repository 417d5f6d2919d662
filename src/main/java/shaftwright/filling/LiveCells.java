package shaftwright.filling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.MissingNames;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.reading.Sizing;

/**
 * The cells in which a workbook's live and engine quantities stand. They are found by defined name;
 * inside a name that has grown, because rows or columns were inserted, the cells that hold
 * something count.
 */
public final class LiveCells {
    /** One live cell. */
    public record Cell(LiveLine line, Index index, CellPlace place, CellContent content) {}

    /** Values written in one go. */
    private static final int AT_ONCE = 8192;

    private final List<Cell> cells = new ArrayList<>();

    private LiveCells() {}

    /** Areas of all live quantities that the workbook has. */
    public static Collection<Area> areas(Map<String, Area> names) {
        List<Area> areas = new ArrayList<>();
        for (LiveLine line : LiveLines.all().lines()) {
            for (Side side : sides(line)) {
                Area area = names.get(line.definedName(side));
                if (area != null) {
                    areas.add(area);
                }
            }
        }
        return areas;
    }

    /**
     * Finds the cells.
     *
     * @param names defined names of the workbook
     * @param contents what its cells hold
     * @param scenarios number of scenario columns
     * @param version contract version by which the workbook was made: what came later may lack
     * @param problems where to say what is missing
     */
    public static LiveCells find(
            Map<String, Area> names,
            Cells contents,
            int scenarios,
            int version,
            List<Problem> problems) {
        LiveCells found = new LiveCells();
        MissingNames missing = new MissingNames();
        for (LiveLine line : LiveLines.all().lines()) {
            for (Side side : sides(line)) {
                String name = line.definedName(side);
                Area area = names.get(name);
                if (area == null && line.since() <= version) {
                    missing.add(name, line.label());
                } else if (area != null) {
                    found.add(line, side, area, contents, scenarios, problems);
                }
            }
        }
        missing.sayTo(problems);
        return found;
    }

    private static Problem missing(String subject, String found, String expected) {
        return new Problem(
                Problem.Severity.ERROR,
                java.util.Optional.empty(),
                subject,
                found,
                expected + "; bring them back, or start from a new workbook");
    }

    private static Side[] sides(LiveLine line) {
        return line.grid().sided() ? Side.values() : new Side[] {Side.LEFT};
    }

    private void add(
            LiveLine line,
            Side side,
            Area area,
            Cells contents,
            int scenarios,
            List<Problem> problems) {
        if (line.grid() == Grid.READING) {
            besideReadings(line, side, area, contents);
            return;
        }
        int wanted = line.grid().cells(scenarios);
        List<CellPlace> places = contents.counting(area, wanted);
        if (places.size() != wanted) {
            problems.add(
                    missing(
                            "the cells of the name " + line.definedName(side),
                            area.size() + " cells on sheet \"" + area.sheet() + "\"",
                            wanted + " cells for \"" + line.label() + "\""));
            return;
        }
        for (int i = 0; i < wanted; i++) {
            CellPlace place = places.get(i);
            Index index = Index.at(line.grid(), side, i, scenarios);
            cells.add(new Cell(line, index, place, contents.at(place)));
        }
    }

    /**
     * Cells beside the typed rows count their rows themselves, so that one below an inserted row is
     * still the cell of the row that it stands in; and rows may have been deleted.
     */
    private void besideReadings(LiveLine line, Side side, Area area, Cells contents) {
        for (int offset = 0; offset < area.size(); offset++) {
            CellPlace place = area.place(offset);
            CellContent content = contents.at(place);
            if (!content.isEmpty()) {
                cells.add(new Cell(line, new Index(side, 0, offset), place, content));
            }
        }
    }

    /** All of them. */
    public List<Cell> all() {
        return cells;
    }

    /** What the cells in some areas should show that now show something else, by their places. */
    public Map<CellPlace, CellValue> changes(Sizing sizing, Collection<Area> within) {
        Map<CellPlace, CellValue> changes = new HashMap<>();
        for (Cell cell : cells) {
            if (isWritten(cell) && isWithin(cell.place(), within)) {
                CellValue value = cell.line().core().at(sizing, cell.index());
                if (!CellValue.near(value, cell.content().value())) {
                    changes.put(cell.place(), value);
                }
            }
        }
        return changes;
    }

    private static boolean isWithin(CellPlace place, Collection<Area> areas) {
        for (Area area : areas) {
            if (area.contains(place)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWritten(Cell cell) {
        return cell.content().hasFormula() || cell.line().isEngine();
    }

    /**
     * Writes what each cell should show; constants and overwritten cells are left alone, engine
     * cells are always written.
     *
     * @param book which may see to some values while others are computed
     * @return how many were written
     */
    public int write(Sizing sizing, OpenBook book) {
        int count = 0;
        List<CellWrite> values = new ArrayList<>(AT_ONCE);
        for (Cell cell : cells) {
            if (isWritten(cell)) {
                CellValue value = cell.line().core().at(sizing, cell.index());
                values.add(new CellWrite(cell.place(), value));
                if (values.size() == AT_ONCE) {
                    count += values.size();
                    book.write(values);
                    values.clear();
                }
            }
        }
        book.write(values);
        return count + values.size();
    }
}
