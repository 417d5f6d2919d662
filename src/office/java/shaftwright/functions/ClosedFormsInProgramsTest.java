package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.office.SpreadsheetPrograms;

/** Closed forms, written out as plain formulas, in LibreOffice and Gnumeric. */
class ClosedFormsInProgramsTest {
    private static final int SETS = 12;
    private static final int FORMULA = 20;

    @TempDir private Path folder;

    private final List<CellFunction> functions = new ArrayList<>();
    private final List<List<Value>> given = new ArrayList<>();

    @Test
    void libreOfficeAgrees() throws IOException {
        Path book = write();
        compare(SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(book)).get(0));
    }

    @Test
    void gnumericAgrees() throws IOException {
        compare(SpreadsheetPrograms.recalculatedByGnumeric(folder, write()));
    }

    private Path write() throws IOException {
        Path book = folder.resolve("closed-forms.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(book)) {
            XSSFSheet sheet = workbook.createSheet();
            for (CellFunction function : Catalogue.all()) {
                RandomArguments random = new RandomArguments(function.name().hashCode());
                for (int set = 0; function.expression().isPresent() && set < SETS; set++) {
                    functions.add(function);
                    given.add(random.plausible(function.parameters()));
                    write(sheet, given.size() - 1);
                }
            }
            workbook.write(out);
        }
        return book;
    }

    private void write(XSSFSheet sheet, int place) {
        XSSFRow row = sheet.createRow(place);
        CellFunction function = functions.get(place);
        for (int i = 0; i < given.get(place).size(); i++) {
            if (given.get(place).get(i) instanceof Value.Numeric number) {
                row.createCell(i).setCellValue(number.number());
            } else if (given.get(place).get(i) instanceof Value.Text text) {
                row.createCell(i).setCellValue(text.text());
            }
        }
        String formula =
                function.expression()
                        .get()
                        .with(
                                p ->
                                        "$"
                                                + (char) ('A' + function.parameters().indexOf(p))
                                                + "$"
                                                + (place + 1));
        row.createCell(FORMULA).getCTCell().addNewF().setStringValue(formula);
    }

    private void compare(Path saved) throws IOException {
        int numbers = 0;
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
            for (int place = 0; place < given.size(); place++) {
                XSSFCell cell = workbook.getSheetAt(0).getRow(place).getCell(FORMULA);
                Value expected = functions.get(place).evaluate(given.get(place));
                String what = functions.get(place) + " of " + given.get(place);
                if (expected instanceof Value.Numeric number) {
                    assertThat(cell.getCachedFormulaResultType())
                            .as(what)
                            .isEqualTo(CellType.NUMERIC);
                    assertThat(Math.abs(cell.getNumericCellValue() - number.number()))
                            .as(what + cell.getNumericCellValue())
                            .isLessThanOrEqualTo(1e-9 * scale(number.number(), given.get(place)));
                    numbers++;
                } else {
                    assertThat(cell.getCachedFormulaResultType())
                            .as(what)
                            .isEqualTo(CellType.ERROR);
                }
            }
        }
        assertThat(numbers).isGreaterThan(given.size() / 2);
    }

    /** Differences of long lengths keep fewer digits. */
    private static double scale(double result, List<Value> given) {
        double scale = Math.abs(result);
        for (Value value : given) {
            if (value instanceof Value.Numeric number) {
                scale = Math.max(scale, Math.abs(number.number()) * 1e-3);
            }
        }
        return scale;
    }
}
