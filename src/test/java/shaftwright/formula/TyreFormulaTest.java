package shaftwright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import shaftwright.tyre.TyreSize;
import shaftwright.tyre.UnreadableTyreSizeException;
import shaftwright.workbook.ReadingSheet;

public class TyreFormulaTest {
    @Test
    void cellAcceptsAndRefusesWhatTheCoreDoes() {
        check(tyreSheet(TyreTexts.all()).evaluated());
    }

    @Test
    void goodSizesAreReadAndBadOnesAreNot() {
        for (String text : TyreTexts.GOOD) {
            assertThat(core(text, TyreFormulaTest::width)).as(text).isInstanceOf(Double.class);
        }
        for (String text : TyreTexts.BAD) {
            assertThat(core(text, TyreFormulaTest::width))
                    .as(text)
                    .isEqualTo(NumberFormula.UNREADABLE);
        }
    }

    @Test
    void blankIsEmptyAndEverythingButTextIsUnreadable() {
        checkOtherThanText(otherThanText().evaluated());
    }

    @Test
    void thrownTextsHoldManyOfBothKinds() {
        List<String> texts = TyreTexts.all();
        long good =
                texts.stream()
                        .filter(text -> core(text, TyreFormulaTest::width) instanceof Double)
                        .count();
        assertThat(good).isBetween(150L, texts.size() - 150L);
    }

    @Test
    void formulaFitsTheNarrowestProgram() {
        String cell = "INDEX(tyre_size,1,12)";
        // Excel allows 8,192 characters (its published specifications and limits).
        assertThat(TyreFormula.reduced(cell).length()).isLessThan(8_000);
        assertThat(TyreFormula.diameter(cell).length()).isLessThan(8_000);
        assertThat(TyreFormula.sectionWidth(cell).length()).isLessThan(8_000);
    }

    public static ReadingSheet tyreSheet(List<String> texts) {
        return new ReadingSheet(texts)
                .column(1, TyreFormula::reduced)
                .column(2, cell -> TyreFormula.diameter(cell.replace("$A", "$B")))
                .column(3, cell -> TyreFormula.sectionWidth(cell.replace("$A", "$B")));
    }

    public static void check(XSSFWorkbook computed) {
        List<String> texts = TyreTexts.all();
        ReadingSheet.check(computed, 1, texts, text -> core(text, TyreSize::reduced));
        ReadingSheet.check(computed, 2, texts, text -> core(text, TyreFormulaTest::diameter));
        ReadingSheet.check(computed, 3, texts, text -> core(text, TyreFormulaTest::width));
    }

    /** Blank, empty text, number, truth and error where a size is expected. */
    public static ReadingSheet otherThanText() {
        ReadingSheet sheet = tyreSheet(List.of("a", "b", "c", "d", "e"));
        XSSFSheet cells = sheet.book().getSheetAt(0);
        cells.getRow(0).getCell(0).setBlank();
        cells.getRow(1).getCell(0).setCellFormula("\"\"");
        cells.getRow(2).getCell(0).setCellValue(235.75);
        cells.getRow(3).getCell(0).setCellValue(true);
        cells.getRow(4).getCell(0).setCellFormula("NA()");
        return sheet;
    }

    public static void checkOtherThanText(XSSFWorkbook computed) {
        String no = NumberFormula.UNREADABLE;
        List<String> expected = List.of("", "", no, no, no);
        for (int row = 0; row < expected.size(); row++) {
            for (int column = 1; column <= 3; column++) {
                assertThat(ReadingSheet.shown(computed, row, column))
                        .as("row " + row + ", column " + column)
                        .isEqualTo(expected.get(row));
            }
        }
    }

    private static Object core(String text, Function<String, Object> measure) {
        try {
            return measure.apply(text);
        } catch (UnreadableTyreSizeException refused) {
            return NumberFormula.UNREADABLE;
        }
    }

    private static Object diameter(String text) {
        OptionalDouble stated = TyreSize.parse(text).freeDiameter();
        return stated.isPresent() ? stated.getAsDouble() : "";
    }

    private static Object width(String text) {
        return TyreSize.parse(text).sectionWidth();
    }
}
