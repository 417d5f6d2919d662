package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.office.SpreadsheetPrograms;
import shaftwright.xlsx.XlsxBook;

/** Stamps in spreadsheet programs, which compute fingerprints anew and save fewer digits. */
class FreshnessInProgramsTest {
    private static final String STALE = "out of date: fill again";

    @TempDir private Path folder;

    @Test
    void staysCurrentWhenLibreOfficeSavesAndSavesAgain() {
        List<Path> books =
                List.of(FreshnessTest.filledDemo(folder.resolve("demo.xlsx")), changed());
        List<Path> once = SpreadsheetPrograms.recalculatedByLibreOffice(folder, books);
        List<Path> twice = SpreadsheetPrograms.recalculatedByLibreOffice(folder, once);

        assertThat(stamps(once.get(0))).containsOnly("current", "");
        assertThat(stamps(twice.get(0))).containsOnly("current", "");
        assertThat(stamps(twice.get(1))).containsExactly(expectedOfChanged());
    }

    @Test
    void staysCurrentInGnumeric() {
        Path demo = FreshnessTest.filledDemo(folder.resolve("demo.xlsx"));

        assertThat(stamps(SpreadsheetPrograms.recalculatedByGnumeric(folder, demo)))
                .containsOnly("current", "");
        assertThat(stamps(SpreadsheetPrograms.recalculatedByGnumeric(folder, changed())))
                .containsExactly(expectedOfChanged());
    }

    /** A counterbore in scenario C. */
    private Path changed() {
        Path file = FreshnessTest.filledDemo(folder.resolve("changed.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(book.names().get("counterbore_inner").place(2), CellValue.of("1/8")));
        book.save(file);
        return file;
    }

    private static String[] expectedOfChanged() {
        return new String[] {"current", "current", STALE, "current", "current", ""};
    }

    private static List<String> stamps(Path file) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get("travel_stamp_left");
        Cells cells = book.read(List.of(area));
        List<String> stamps = new ArrayList<>();
        for (int scenario = 0; scenario < area.size(); scenario++) {
            CellContent content = cells.at(area.place(scenario));
            stamps.add(content.value() instanceof CellValue.Text text ? text.value() : "");
        }
        return stamps;
    }
}
