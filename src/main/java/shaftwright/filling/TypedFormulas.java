package shaftwright.filling;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.Followed;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;

/**
 * Typed cells that hold formulas of the builder's. What is computed with is what they will show
 * after the fill: what is typed meanwhile and the fill's own results may change it. Where formulas
 * read results, results and formulas are computed in turn until neither changes.
 */
public final class TypedFormulas {
    private static final String WHERE = "in your spreadsheet program";

    private final OpenBook book;
    private final Cells cells;
    private final TypedCells typed;

    /** What each cell is, in a builder's words. */
    private Map<CellPlace, String> subjects = Map.of();

    private Followed followed = Followed.UNCHANGED;
    private int rounds;

    /** Cells whose values did not settle. */
    private Map<CellPlace, CellValue> unsettled = Map.of();

    /**
     * Formulas of one book.
     *
     * @param cells what its typed cells hold
     * @param typed what is typed into them now
     */
    TypedFormulas(OpenBook book, Cells cells, TypedCells typed) {
        this.book = book;
        this.cells = cells;
        this.typed = typed;
    }

    /** Reads all typed cells; says what is wrong with them. */
    InputValues read(int version, List<Problem> problems) {
        if (rounds == 0) {
            InputReader first = new InputReader(book.names(), typed.over(), problems, version);
            int before = problems.size();
            InputValues inputs = first.read();
            subjects = first.formulas();
            rounds++;
            if (!subjects.isEmpty()) {
                followed = follow(typed.changes());
            }
            if (followed.values().isEmpty() && followed.unknown().isEmpty()) {
                typed.refuseOver(Map.of(), problems);
                return inputs;
            }
            problems.subList(before, problems.size()).clear();
        }
        InputValues inputs = new InputReader(book.names(), over(), problems, version).read();
        typed.refuseOver(shown(), problems);
        if (followed.results().isEmpty()) {
            sayUnknown(problems);
        }
        return inputs;
    }

    /**
     * Whether the formulas show something else now that there are results, so that all is to be
     * read and computed again.
     */
    boolean changeWith(LiveCells live, Sizing sizing) {
        if (followed.results().isEmpty()) {
            return false;
        }
        Map<CellPlace, CellValue> changes = new HashMap<>(typed.changes());
        changes.putAll(live.changes(sizing, followed.results()));
        Map<CellPlace, CellValue> before = shown();
        followed = follow(changes);
        Map<CellPlace, CellValue> now = shown();
        if (now.equals(before)) {
            return false;
        }
        // Each formula may read a result of one more.
        if (rounds++ <= subjects.size()) {
            return true;
        }
        now.entrySet().removeAll(before.entrySet());
        unsettled = now;
        return false;
    }

    private Followed follow(Map<CellPlace, CellValue> changes) {
        return book.follow(subjects.keySet(), changes, LiveCells.areas(book.names()));
    }

    /** Whether results are read, which must all be computed then. */
    boolean readResults() {
        return !followed.results().isEmpty();
    }

    /** Says which formulas nobody here can compute, or whose values did not settle. */
    void refuse(List<Problem> problems) {
        if (readResults()) {
            sayUnknown(problems);
        }
        for (CellPlace place : unsettled.keySet()) {
            problems.add(
                    Problem.error(
                            place,
                            subjects.get(place),
                            "a formula that reads results which change with it, without an end",
                            "a typed value, or a formula of other cells"));
        }
    }

    private void sayUnknown(List<Problem> problems) {
        boolean typing = !typed.changes().isEmpty();
        for (CellPlace place : followed.unknown()) {
            boolean blank = cells.at(place).value() instanceof CellValue.Blank;
            problems.add(
                    Problem.error(
                            place,
                            subjects.get(place),
                            blank
                                    ? "a formula without a value"
                                    : "a formula whose value changes with this, and which only a"
                                            + " spreadsheet program can compute",
                            typing && !blank
                                    ? "a typed value; or make the change "
                                            + WHERE
                                            + " and save it there"
                                    : "its value; open the workbook once "
                                            + WHERE
                                            + " and save it there, or type the value"));
        }
    }

    /** What the cells show that do not show what the file holds; they are to be written. */
    Map<CellPlace, CellValue> values() {
        return followed.values();
    }

    /** What all formulas show; those that nobody can compute show nothing. */
    private Map<CellPlace, CellValue> shown() {
        Map<CellPlace, CellValue> shown = stored();
        shown.putAll(followed.values());
        for (CellPlace place : followed.unknown()) {
            shown.put(place, CellValue.BLANK);
        }
        return shown;
    }

    private Map<CellPlace, CellValue> stored() {
        Map<CellPlace, CellValue> stored = new LinkedHashMap<>();
        for (CellPlace place : subjects.keySet()) {
            stored.put(place, cells.at(place).value());
        }
        return stored;
    }

    private Cells over() {
        Map<CellPlace, CellValue> shown = shown();
        Cells over = typed.over();
        return new Cells() {
            @Override
            public CellContent at(CellPlace place) {
                CellValue value = shown.get(place);
                return value == null ? over.at(place) : CellContent.of(value, "");
            }

            @Override
            public Map<CellPlace, CellContent> filled() {
                return over.filled();
            }
        };
    }
}
