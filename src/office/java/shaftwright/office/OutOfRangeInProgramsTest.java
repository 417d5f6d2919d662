package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.OutOfRangeWorkbooks;
import shaftwright.workbook.ReadingSheet;
import shaftwright.xlsx.XlsxBook;

/**
 * A forgotten mm in a workbook in inches, typed and left to a spreadsheet program: the verdict
 * names the cell in the core's words, and no error value stands where a builder looks.
 */
class OutOfRangeInProgramsTest {
    private static final List<String> LOOKED_AT =
            List.of("Start", "Scenarios", "Card left", "Card right");

    @TempDir static Path folder;

    private static List<Path> files;

    @BeforeAll
    static void write() {
        files = OutOfRangeWorkbooks.forgottenMillimetres(folder);
    }

    @Test
    void libreOfficeSaysWhichCell() {
        check(SpreadsheetPrograms.recalculatedByLibreOffice(folder, files));
    }

    @Test
    void gnumericSaysWhichCell() {
        check(
                files.stream()
                        .map(file -> SpreadsheetPrograms.recalculatedByGnumeric(folder, file))
                        .toList());
    }

    private static void check(List<Path> saved) {
        List<String> complaints = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            complaints.addAll(
                    OutOfRangeWorkbooks.complaintsOfSaved(
                            files.get(i), XlsxBook.open(saved.get(i))));
            complaints.addAll(errors(saved.get(i)));
        }
        assertThat(complaints).isEmpty();
    }

    private static List<String> errors(Path saved) {
        List<String> errors = new ArrayList<>();
        XSSFWorkbook book = ReadingSheet.open(saved);
        for (String name : LOOKED_AT) {
            XSSFSheet sheet = book.getSheet(name);
            assertThat(sheet).as(name).isNotNull();
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (isError(cell)) {
                        errors.add(saved.getFileName() + ": " + name + "!" + cell.getAddress());
                    }
                }
            }
        }
        return errors;
    }

    /** Not of #N/A, which cells beside a chart show so that it draws nothing. */
    private static boolean isError(Cell cell) {
        CellType type = cell.getCellType();
        if (type == CellType.FORMULA) {
            type = cell.getCachedFormulaResultType();
        }
        return type == CellType.ERROR && cell.getErrorCellValue() != FormulaError.NA.getCode();
    }
}
