package shaftwright.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.functions.LambdaText;
import shaftwright.xlsx.XlsxBook;

/** Builders' own formulas with functions of the pack follow a fill. */
class PackFunctionsTest {
    private static final CellPlace CHANGED = new CellPlace("Own", 0, 0);
    private static final CellPlace FORMULA = new CellPlace("Own", 0, 3);

    @TempDir Path folder;

    /** 2² + 3² + 6² = 7²; the changed cell goes from 3 to 6, the distance was √(3² + 3² + 2²). */
    @Test
    void formulaWithAFunctionIsComputedAnew() throws IOException {
        assertThat(recomputed("1+SHAFT.DISTANCE(A1,B1,C1)", 1 + Math.sqrt(22), false))
                .isEqualTo(Optional.of(CellValue.of(8)));
    }

    /** The same where the functions travel in the workbook as named formulas. */
    @Test
    void formulaWithANamedFormulaIsComputedAnew() throws IOException {
        assertThat(recomputed("1+SHAFT.DISTANCE(A1,B1,C1)", 1 + Math.sqrt(22), true))
                .isEqualTo(Optional.of(CellValue.of(8)));
    }

    @Test
    void errorOfAFunctionIsTheCells() throws IOException {
        assertThat(recomputed("SHAFT.REACH(B1,A1)", 0, false))
                .isEqualTo(Optional.of(new CellValue.Fault("#NUM!")));
    }

    /** 1.5 in are 38.1 mm; the cell named unit went from inch to mm, and no formula names it. */
    @Test
    void lengthsFollowTheWorkbooksUnit() throws IOException {
        Path file = folder.resolve("own.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFRow row = workbook.createSheet("Own").createRow(0);
            row.createCell(0).setCellValue("inch");
            XSSFCell cell = row.createCell(3);
            cell.getCTCell().addNewF().setStringValue("SHAFT.MILLIMETRES(1.5)");
            cell.getCTCell().setV("38.1");
            var name = workbook.createName();
            name.setNameName("unit");
            name.setRefersToFormula("Own!$A$1");
            workbook.write(out);
        }
        assertThat(shownAfter(file, CellValue.of("mm"))).isEqualTo(Optional.of(CellValue.of(1.5)));
    }

    /** Blank counts as 0, whether the argument may be left out or not; E1 is empty. */
    @Test
    void emptyCellCountsAsZeroAndNothingGivenAsLeftOut() throws IOException {
        assertThat(recomputed("ROUND(SHAFT.DISTANCE(A1,E1,E1),9)", 3, false))
                .isEqualTo(Optional.of(CellValue.of(6)));
        assertThat(recomputed("SHAFT.CHOOSELENGTH(1,A1+1,E1)", 1, false))
                .isEqualTo(Optional.of(CellValue.of(1)));
        assertThat(recomputed("SHAFT.CHOOSELENGTH(1,A1+1,,)", 1.75, false))
                .isEqualTo(Optional.of(CellValue.of(2.5)));
    }

    /** A stored value that POI does not get either is not trusted. */
    @Test
    void valueOfUnknownFunctionIsDropped() throws IOException {
        assertThat(recomputed("SHAFT.UNHEARDOF(A1)", 5, false)).isEmpty();
        assertThat(recomputed("SHAFT.DISTANCE(A1,B1,C1)", 5, false)).isEmpty();
    }

    private Optional<CellValue> recomputed(String formula, double stored, boolean packed)
            throws IOException {
        Path file = folder.resolve("own.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFRow row = workbook.createSheet("Own").createRow(0);
            row.createCell(0).setCellValue(3);
            row.createCell(1).setCellValue(3);
            row.createCell(2).setCellValue(2);
            XSSFCell cell = row.createCell(3);
            cell.getCTCell().addNewF().setStringValue(formula);
            cell.getCTCell().setV(Double.toString(stored));
            if (packed) {
                for (Map.Entry<String, String> each : LambdaText.all().entrySet()) {
                    var name =
                            workbook.getCTWorkbook().isSetDefinedNames()
                                    ? workbook.getCTWorkbook().getDefinedNames().addNewDefinedName()
                                    : workbook.getCTWorkbook()
                                            .addNewDefinedNames()
                                            .addNewDefinedName();
                    name.setName(each.getKey());
                    name.setStringValue(each.getValue());
                }
            }
            workbook.write(out);
        }
        return shownAfter(file, CellValue.of(6));
    }

    /** What the formula shows after the changed cell got a value; empty where it shows nothing. */
    private static Optional<CellValue> shownAfter(Path file, CellValue changed) {
        XlsxBook book = XlsxBook.open(file, new PoiDependentFormulas());
        book.write(Map.of(CHANGED, changed));
        book.save(file);
        CellValue shown =
                XlsxBook.open(file).read(List.of(new Area("Own", 0, 3, 0, 3))).at(FORMULA).value();
        return Optional.of(shown).filter(value -> !(value instanceof CellValue.Blank));
    }
}
