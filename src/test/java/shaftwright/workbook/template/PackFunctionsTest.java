package shaftwright.workbook.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import shaftwright.functions.LambdaText;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/** Builders' own formulas with functions of the pack follow a fill. */
class PackFunctionsTest {
    private static final CellPlace CHANGED = new CellPlace("Own", 0, 0);
    private static final CellPlace FORMULA = new CellPlace("Own", 0, 3);

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
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            XSSFRow row = workbook.createSheet("Own").createRow(0);
            row.createCell(0).setCellValue("mm");
            XSSFCell cell = row.createCell(3);
            cell.getCTCell().addNewF().setStringValue("SHAFT.MILLIMETRES(1.5)");
            cell.getCTCell().setV("38.1");
            var name = workbook.createName();
            name.setNameName("unit");
            name.setRefersToFormula("Own!$A$1");
            workbook.write(out);
            assertThat(
                            new PoiDependentFormulas()
                                    .recompute(
                                            out.toByteArray(),
                                            Map.of(CHANGED, CellValue.of("inch")),
                                            Set.of(CHANGED))
                                    .get(FORMULA))
                    .isEqualTo(Optional.of(CellValue.of(1.5)));
        }
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

    private static Optional<CellValue> recomputed(String formula, double stored, boolean packed)
            throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            XSSFRow row = workbook.createSheet("Own").createRow(0);
            row.createCell(0).setCellValue(6);
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
            Map<CellPlace, CellValue> before = new HashMap<>();
            before.put(CHANGED, CellValue.of(3));
            return new PoiDependentFormulas()
                    .recompute(out.toByteArray(), before, Set.of(CHANGED))
                    .get(FORMULA);
        }
    }
}
