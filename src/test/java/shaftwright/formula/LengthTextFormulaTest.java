package shaftwright.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.workbook.ReadingSheet;

public class LengthTextFormulaTest {
    private static final List<LengthStyle> STYLES =
            List.of(LengthStyle.SIXTY_FOURTHS, LengthStyle.DECIMAL_INCH, LengthStyle.MILLIMETRES);

    @Test
    void cellShowsWhatTheCoreShows() {
        check(sheet().evaluated());
    }

    /** Lengths in millimetres in column A, the three texts beside them. */
    public static ReadingSheet sheet() {
        ReadingSheet sheet = new ReadingSheet(lengths());
        List<Function<String, String>> formulas =
                List.of(
                        LengthTextFormula::sixtyFourths,
                        LengthTextFormula::decimalInch,
                        LengthTextFormula::millimetres);
        for (int i = 0; i < formulas.size(); i++) {
            sheet.column(i + 1, formulas.get(i));
        }
        for (int row = 0; row < lengths().size(); row++) {
            var cell = sheet.book().getSheetAt(0).getRow(row).getCell(0);
            if (isNumber(lengths().get(row))) {
                cell.setCellValue(Double.parseDouble(lengths().get(row)));
            }
        }
        return sheet;
    }

    public static void check(XSSFWorkbook computed) {
        for (int i = 0; i < STYLES.size(); i++) {
            LengthStyle style = STYLES.get(i);
            ReadingSheet.check(
                    computed,
                    i + 1,
                    lengths(),
                    text ->
                            isNumber(text)
                                    ? new Length(Double.parseDouble(text)).format(style)
                                    : text);
        }
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && !text.equals(NumberFormula.UNREADABLE);
    }

    private static List<String> lengths() {
        List<String> texts = new ArrayList<>(List.of("", NumberFormula.UNREADABLE, "0", "-0.0"));
        for (int count = 0; count <= 130; count++) {
            // Every mark of an inch, and the half-way points between them, both signs.
            texts.add(Double.toString(count / 128.0 * 25.4));
            texts.add(Double.toString(-25.4 * 24 - count / 128.0 * 25.4));
            texts.add(Double.toString(count * 0.0127 + 635));
            texts.add(Double.toString(count * 0.05 - 3));
        }
        Random dice = new Random(64);
        for (int i = 0; i < 200; i++) {
            texts.add(Double.toString((dice.nextDouble() - 0.5) * Math.pow(10, dice.nextInt(6))));
        }
        return texts;
    }
}
