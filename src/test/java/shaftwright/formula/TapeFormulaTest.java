package shaftwright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;
import shaftwright.workbook.ReadingSheet;

public class TapeFormulaTest {
    private static final String INCH_CELL = "Units!$A$1";
    private static final String MM_CELL = "Units!$A$2";

    @Test
    void cellAcceptsAndRefusesWhatTheCoreDoes() {
        check(tapeSheet(TapeTexts.all()).evaluated());
    }

    @Test
    void numbersBlanksErrorsAndTruthsAreToldApart() {
        checkOtherThanText(otherThanText().evaluated());
    }

    @Test
    void goodTextsAreReadAndBadOnesAreNot() {
        for (String text : TapeTexts.GOOD) {
            assertThat(core(text, LengthUnit.INCH)).as(text).isInstanceOf(Double.class);
        }
        for (String text : TapeTexts.BAD) {
            assertThat(core(text, LengthUnit.INCH)).as(text).isEqualTo(NumberFormula.UNREADABLE);
        }
    }

    @Test
    void thrownTextsHoldManyOfBothKinds() {
        List<String> texts = TapeTexts.all();
        long good =
                texts.stream()
                        .filter(text -> core(text, LengthUnit.INCH) instanceof Double)
                        .count();
        assertThat(good).isBetween(150L, texts.size() - 150L);
    }

    @Test
    void formulaFitsTheNarrowestProgram() {
        check(
                TapeFormula.of(
                        "INDEX(distance_second_right,$A10)",
                        "-1234.5",
                        "$AB$1234",
                        "unit_mm",
                        "tape_fraction"));
        check(TapeFormula.straightened("INDEX(distance_second_right,$A10)"));
    }

    private static void check(String formula) {
        assertThat(formula.length()).isLessThan(8_000);
        int depth = 0;
        int deepest = 0;
        for (int i = 0; i < formula.length(); i++) {
            char sign = formula.charAt(i);
            depth += sign == '(' ? 1 : sign == ')' ? -1 : 0;
            deepest = Math.max(deepest, depth);
        }
        assertThat(depth).isZero();
        // Excel allows 64 levels of nesting (its published specifications and limits).
        assertThat(deepest).isLessThan(64);
        // Excel allows 255 characters in one text literal (same source).
        assertThat(longestLiteral(formula)).isLessThanOrEqualTo(255);
    }

    private static int longestLiteral(String formula) {
        int longest = 0;
        for (String piece : formula.replace("\"\"", "").split("\"", -1)) {
            longest = Math.max(longest, piece.contains("(") ? 0 : piece.length());
        }
        return longest;
    }

    /** The formula three times: inch and millimetre workbook, and through an INDEX. */
    public static ReadingSheet tapeSheet(List<String> texts) {
        return new ReadingSheet(texts)
                .column(1, cell -> read(cell, beside(cell, "E"), INCH_CELL))
                .column(2, cell -> read(cell, beside(cell, "E"), MM_CELL))
                .column(3, cell -> read(indexed(cell), beside(cell, "F"), INCH_CELL))
                .column(4, TapeFormula::straightened)
                .column(5, cell -> TapeFormula.straightened(indexed(cell)));
    }

    private static String read(String cell, String straightened, String unit) {
        return TapeFormula.of(cell, "\"\"", straightened, unit, "tape_fraction");
    }

    private static String beside(String cell, String column) {
        return cell.replace("A", column);
    }

    private static String indexed(String cell) {
        return "INDEX(texts,ROW(" + cell + "))";
    }

    public static void check(XSSFWorkbook computed) {
        List<String> texts = TapeTexts.all();
        ReadingSheet.check(computed, 1, texts, text -> core(text, LengthUnit.INCH));
        ReadingSheet.check(computed, 2, texts, text -> core(text, LengthUnit.MILLIMETRE));
        ReadingSheet.check(computed, 3, texts, text -> core(text, LengthUnit.INCH));
    }

    /** Blank, empty text, number, TRUE, FALSE and two errors where a text is expected. */
    public static ReadingSheet otherThanText() {
        ReadingSheet sheet = tapeSheet(List.of("a", "b", "c", "d", "e", "f", "g"));
        XSSFSheet cells = sheet.book().getSheetAt(0);
        // In a cell of the format "text" LibreOffice takes a truth for the number 1.
        cells.forEach(row -> row.getCell(0).setCellStyle(null));
        cells.getRow(0).getCell(0).setBlank();
        cells.getRow(1).getCell(0).setCellFormula("\"\"");
        cells.getRow(2).getCell(0).setCellValue(25.375);
        cells.getRow(3).getCell(0).setCellValue(true);
        cells.getRow(4).getCell(0).setCellValue(false);
        cells.getRow(5).getCell(0).setCellFormula("NA()");
        cells.getRow(6).getCell(0).setCellFormula("1/0");
        return sheet;
    }

    public static void checkOtherThanText(XSSFWorkbook computed) {
        String no = NumberFormula.UNREADABLE;
        List<Object> inch = List.of("", "", 25.375 * 25.4, no, no, no, no);
        List<Object> metric = List.of("", "", 25.375, no, no, no, no);
        for (int row = 0; row < inch.size(); row++) {
            assertThat(ReadingSheet.shown(computed, row, 1))
                    .as("row " + row)
                    .isEqualTo(inch.get(row));
            assertThat(ReadingSheet.shown(computed, row, 2))
                    .as("row " + row)
                    .isEqualTo(metric.get(row));
            assertThat(ReadingSheet.shown(computed, row, 3))
                    .as("row " + row)
                    .isEqualTo(inch.get(row));
        }
    }

    private static Object core(String text, LengthUnit bare) {
        try {
            return Length.parse(text, bare).mm();
        } catch (UnreadableLengthException refused) {
            return NumberFormula.UNREADABLE;
        }
    }
}
