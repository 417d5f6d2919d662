package shaftwright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import shaftwright.units.PlainNumber;
import shaftwright.units.UnreadableNumberException;
import shaftwright.workbook.ReadingSheet;

public class NumberFormulaTest {
    @Test
    void cellAcceptsAndRefusesWhatTheCoreDoes() {
        check(numberSheet(NumberTexts.all()).evaluated());
    }

    @Test
    void numbersBlanksErrorsAndTruthsAreToldApart() {
        checkOtherThanText(otherThanText().evaluated());
    }

    @Test
    void goodTextsAreReadAndBadOnesAreNot() {
        for (String text : NumberTexts.GOOD) {
            assertThat(core(text)).as(text).isInstanceOf(Double.class);
        }
        for (String text : NumberTexts.BAD) {
            assertThat(core(text)).as(text).isEqualTo(NumberFormula.UNREADABLE);
        }
    }

    @Test
    void commaAndPointAreTheSameDecimalSign() {
        assertThat(PlainNumber.parse("-12,25")).isEqualTo(-12.25);
        assertThat(PlainNumber.parse("\u221212.25")).isEqualTo(-12.25);
        assertThat(PlainNumber.parse(" ,5000 ")).isEqualTo(0.5);
    }

    @Test
    void thrownTextsHoldManyOfBothKinds() {
        List<String> texts = NumberTexts.all();
        long good = texts.stream().filter(text -> core(text) instanceof Double).count();
        assertThat(good).isBetween(100L, texts.size() - 100L);
    }

    /** What becomes of a text must not hang on what the cell is called. */
    public static ReadingSheet numberSheet(List<String> texts) {
        return new ReadingSheet(texts)
                .column(1, cell -> NumberFormula.of(cell, "\"\""))
                .column(2, cell -> NumberFormula.of("INDEX(texts,ROW(" + cell + "))", "\"\""));
    }

    public static void check(XSSFWorkbook computed) {
        List<String> texts = NumberTexts.all();
        ReadingSheet.check(computed, 1, texts, NumberFormulaTest::core);
        ReadingSheet.check(computed, 2, texts, NumberFormulaTest::core);
    }

    /** Blank, empty text, number, TRUE, FALSE and two errors where a number is expected. */
    public static ReadingSheet otherThanText() {
        ReadingSheet sheet = numberSheet(List.of("a", "b", "c", "d", "e", "f", "g"));
        XSSFSheet cells = sheet.book().getSheetAt(0);
        // In a cell of the format "text" LibreOffice takes a truth for the number 1.
        cells.forEach(row -> row.getCell(0).setCellStyle(null));
        cells.getRow(0).getCell(0).setBlank();
        cells.getRow(1).getCell(0).setCellFormula("\"\"");
        cells.getRow(2).getCell(0).setCellValue(-12.25);
        cells.getRow(3).getCell(0).setCellValue(true);
        cells.getRow(4).getCell(0).setCellValue(false);
        cells.getRow(5).getCell(0).setCellFormula("NA()");
        cells.getRow(6).getCell(0).setCellFormula("1/0");
        return sheet;
    }

    public static void checkOtherThanText(XSSFWorkbook computed) {
        String no = NumberFormula.UNREADABLE;
        List<Object> expected = List.of("", "", -12.25, no, no, no, no);
        for (int row = 0; row < expected.size(); row++) {
            for (int column = 1; column <= 2; column++) {
                assertThat(ReadingSheet.shown(computed, row, column))
                        .as("row " + row + ", column " + column)
                        .isEqualTo(expected.get(row));
            }
        }
    }

    private static Object core(String text) {
        try {
            return PlainNumber.parse(text);
        } catch (UnreadableNumberException refused) {
            return NumberFormula.UNREADABLE;
        }
    }
}
