package shaftwright.filling;

import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.Cells;
import shaftwright.book.Problem;
import shaftwright.reading.InputReader;
import shaftwright.reading.ScenarioOutcome;

/** Whether a workbook still has the scenario columns that it was made with. */
public final class ScenarioCheck {
    /** Name of the letters on the working sheet, one for each column that was made. */
    private static final String MADE = "work_letter";

    private ScenarioCheck() {}

    /**
     * Says it in one line when some are gone or new, which every result would say else.
     *
     * @param cells the typed ones
     * @param live those of live quantities
     */
    static boolean complete(
            Map<String, Area> names, Cells cells, Cells live, List<Problem> problems) {
        Area typed = names.get(InputReader.LETTERS);
        Area working = names.get(MADE);
        if (typed == null || working == null) {
            return true;
        }
        int letters = InputReader.letters(names, cells).size();
        int made = filled(working, live);
        if (letters == made) {
            return true;
        }
        if (letters < made && typed.size() >= made) {
            CellPlace place = emptied(typed, cells);
            problems.add(
                    Problem.error(
                            place,
                            "scenario letters",
                            "no letter",
                            "the letter "
                                    + ScenarioOutcome.letter(place.column() - typed.firstColumn())
                                    + "; to leave a scenario out, clear its name instead"));
        } else {
            problems.add(
                    Problem.error(
                            typed.place(0),
                            "scenario letters",
                            counted(letters),
                            counted(made)
                                    + ", as the workbook was made with; undo that change, or make"
                                    + " a new workbook with as many as you need"));
        }
        return false;
    }

    private static String counted(int scenarios) {
        return scenarios + (scenarios == 1 ? " scenario column" : " scenario columns");
    }

    private static int filled(Area area, Cells cells) {
        int filled = 0;
        for (int offset = 0; offset < area.size(); offset++) {
            CellContent content = cells.at(area.place(offset));
            filled += content.isEmpty() ? 0 : 1;
        }
        return filled;
    }

    private static CellPlace emptied(Area typed, Cells cells) {
        List<CellPlace> letters = InputReader.letters(Map.of(InputReader.LETTERS, typed), cells);
        int offset = 0;
        while (offset < typed.size() - 1 && letters.contains(typed.place(offset))) {
            offset++;
        }
        return typed.place(offset);
    }
}
