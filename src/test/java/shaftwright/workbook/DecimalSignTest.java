package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.formula.FormulaText;
import shaftwright.formula.NumberFormula;
import shaftwright.formula.NumberFormulaTest;
import shaftwright.formula.NumberTexts;
import shaftwright.formula.TapeFormulaTest;
import shaftwright.formula.TapeTexts;
import shaftwright.formula.TyreFormulaTest;
import shaftwright.formula.TyreTexts;

/**
 * Where a program's VALUE does not take the sign that it shows in numbers for the decimal sign,
 * cells say that they can't read; they never show another number.
 */
class DecimalSignTest {
    private static final String NO = NumberFormula.UNREADABLE;

    @ParameterizedTest
    @ValueSource(strings = {";", ",", "", " ", "-", "0"})
    void anotherSignLeavesEveryNumberUnread(String sign) {
        ReadingSheet numbers = NumberFormulaTest.numberSheet(NumberTexts.GOOD);
        ReadingSheet.check(broken(numbers, sign), 1, NumberTexts.GOOD, text -> NO);
    }

    @ParameterizedTest
    @ValueSource(strings = {";", ",", "", " ", "-", "0"})
    void anotherSignLeavesEveryLengthUnread(String sign) {
        ReadingSheet lengths = TapeFormulaTest.tapeSheet(TapeTexts.GOOD);
        ReadingSheet.check(broken(lengths, sign), 1, TapeTexts.GOOD, text -> NO);
    }

    @ParameterizedTest
    @ValueSource(strings = {";", ",", "", " ", "-", "0"})
    void anotherSignReadsNoTyreAsAnother(String sign) {
        List<String> sizes = TyreTexts.GOOD;
        XSSFWorkbook right = TyreFormulaTest.tyreSheet(sizes).evaluated();
        XSSFWorkbook wrong = broken(TyreFormulaTest.tyreSheet(sizes), sign);
        for (int row = 0; row < sizes.size(); row++) {
            for (int column = 2; column <= 3; column++) {
                assertThat(ReadingSheet.shown(wrong, row, column))
                        .as(sizes.get(row))
                        .isIn(NO, ReadingSheet.shown(right, row, column));
            }
        }
    }

    private static XSSFWorkbook broken(ReadingSheet sheet, String sign) {
        for (Row row : sheet.book().getSheetAt(0)) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA) {
                    cell.setCellFormula(broken(cell.getCellFormula(), sign));
                }
            }
        }
        return sheet.evaluated();
    }

    private static String broken(String formula, String sign) {
        return formula.replace(FormulaText.DECIMAL_SIGN, FormulaText.quoted(sign));
    }
}
