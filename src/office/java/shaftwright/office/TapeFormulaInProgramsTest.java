package shaftwright.office;

import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.ReadingSheet;
import shaftwright.workbook.TapeFormulaTest;
import shaftwright.workbook.TapeTexts;

class TapeFormulaInProgramsTest {
    @TempDir Path folder;

    @Test
    void libreOfficeReadsTheTapeAsTheCoreDoes() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, saved()));
    }

    @Test
    void libreOfficeWithDecimalCommaReadsTheTapeAsTheCoreDoes() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, saved(), "de-DE"));
    }

    @Test
    void gnumericReadsTheTapeAsTheCoreDoes() {
        check(
                saved().stream()
                        .map(book -> SpreadsheetPrograms.recalculatedByGnumeric(folder, book))
                        .toList());
    }

    private List<Path> saved() {
        return List.of(
                TapeFormulaTest.tapeSheet(TapeTexts.all()).save(folder.resolve("tape.xlsx")),
                TapeFormulaTest.otherThanText().save(folder.resolve("other.xlsx")));
    }

    private static void check(List<Path> computed) {
        TapeFormulaTest.checkOtherThanText(ReadingSheet.open(computed.get(1)));
        XSSFWorkbook book = ReadingSheet.open(computed.get(0));
        List<String> texts = TapeTexts.all();
        ReadingSheet.check(book, 1, texts, text -> TapeFormulaTest.core(text, LengthUnit.INCH));
        ReadingSheet.check(
                book, 2, texts, text -> TapeFormulaTest.core(text, LengthUnit.MILLIMETRE));
        ReadingSheet.check(book, 3, texts, text -> TapeFormulaTest.core(text, LengthUnit.INCH));
    }
}
