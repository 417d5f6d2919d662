package shaftwright.office;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.formula.LengthTextFormulaTest;
import shaftwright.formula.NumberFormulaTest;
import shaftwright.formula.NumberTexts;
import shaftwright.formula.TapeFormulaTest;
import shaftwright.formula.TapeTexts;
import shaftwright.formula.TyreFormulaTest;
import shaftwright.formula.TyreTexts;
import shaftwright.workbook.ReadingSheet;

/**
 * Tape texts, plain numbers, tyre sizes and shown lengths: every program agrees with the core on
 * every text.
 */
class ReadingFormulasInProgramsTest {
    @TempDir static Path folder;

    private static List<Path> books;

    @Test
    void libreOfficeAgreesWithTheCore() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, books));
    }

    @Test
    void libreOfficeWithDecimalCommaAgreesWithTheCore() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, books, "de-DE"));
    }

    @Test
    void gnumericAgreesWithTheCore() {
        check(
                books.stream()
                        .map(book -> SpreadsheetPrograms.recalculatedByGnumeric(folder, book))
                        .toList());
    }

    @BeforeAll
    static void save() {
        books =
                List.of(
                        TapeFormulaTest.tapeSheet(TapeTexts.all())
                                .save(folder.resolve("tape.xlsx")),
                        TapeFormulaTest.otherThanText().save(folder.resolve("tape-other.xlsx")),
                        TyreFormulaTest.tyreSheet(TyreTexts.all())
                                .save(folder.resolve("tyre.xlsx")),
                        TyreFormulaTest.otherThanText().save(folder.resolve("tyre-other.xlsx")),
                        LengthTextFormulaTest.sheet().save(folder.resolve("shown.xlsx")),
                        NumberFormulaTest.numberSheet(NumberTexts.all())
                                .save(folder.resolve("number.xlsx")),
                        NumberFormulaTest.otherThanText()
                                .save(folder.resolve("number-other.xlsx")));
    }

    private static void check(List<Path> computed) {
        TapeFormulaTest.check(ReadingSheet.open(computed.get(0)));
        TapeFormulaTest.checkOtherThanText(ReadingSheet.open(computed.get(1)));
        TyreFormulaTest.check(ReadingSheet.open(computed.get(2)));
        TyreFormulaTest.checkOtherThanText(ReadingSheet.open(computed.get(3)));
        LengthTextFormulaTest.check(ReadingSheet.open(computed.get(4)));
        NumberFormulaTest.check(ReadingSheet.open(computed.get(5)));
        NumberFormulaTest.checkOtherThanText(ReadingSheet.open(computed.get(6)));
    }
}
