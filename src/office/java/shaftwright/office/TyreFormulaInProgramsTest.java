package shaftwright.office;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.ReadingSheet;
import shaftwright.workbook.TyreFormulaTest;
import shaftwright.workbook.TyreTexts;

class TyreFormulaInProgramsTest {
    @TempDir Path folder;

    @Test
    void libreOfficeReadsSizesAsTheCoreDoes() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, saved()));
    }

    @Test
    void libreOfficeWithDecimalCommaReadsSizesAsTheCoreDoes() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, saved(), "de-DE"));
    }

    @Test
    void gnumericReadsSizesAsTheCoreDoes() {
        check(
                saved().stream()
                        .map(book -> SpreadsheetPrograms.recalculatedByGnumeric(folder, book))
                        .toList());
    }

    private List<Path> saved() {
        return List.of(
                TyreFormulaTest.tyreSheet(TyreTexts.all()).save(folder.resolve("tyres.xlsx")),
                TyreFormulaTest.otherThanText().save(folder.resolve("other.xlsx")));
    }

    private static void check(List<Path> computed) {
        TyreFormulaTest.check(ReadingSheet.open(computed.get(0)));
        TyreFormulaTest.checkOtherThanText(ReadingSheet.open(computed.get(1)));
    }
}
