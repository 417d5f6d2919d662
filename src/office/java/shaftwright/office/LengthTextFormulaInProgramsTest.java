package shaftwright.office;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.LengthTextFormulaTest;
import shaftwright.workbook.ReadingSheet;

class LengthTextFormulaInProgramsTest {
    @TempDir Path folder;

    @Test
    void libreOfficeShowsWhatTheCoreShows() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(saved())).get(0));
    }

    @Test
    void libreOfficeWithDecimalCommaShowsWhatTheCoreShows() {
        check(
                SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(saved()), "de-DE")
                        .get(0));
    }

    @Test
    void gnumericShowsWhatTheCoreShows() {
        check(SpreadsheetPrograms.recalculatedByGnumeric(folder, saved()));
    }

    private Path saved() {
        return LengthTextFormulaTest.sheet().save(folder.resolve("lengths.xlsx"));
    }

    private static void check(Path computed) {
        LengthTextFormulaTest.check(ReadingSheet.open(computed));
    }
}
