package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Closed forms, computed by Apache POI's evaluator, give what the functions give. */
class ExpressionTest {
    private static final int SETS = 60;

    static Stream<CellFunction> closedForms() {
        return Catalogue.all().stream().filter(f -> f.expression().isPresent());
    }

    @ParameterizedTest
    @MethodSource("closedForms")
    void closedFormAgreesWithTheFunction(CellFunction function) throws IOException {
        RandomArguments random = new RandomArguments(function.name().hashCode());
        int numbers = 0;
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Row row = workbook.createSheet().createRow(0);
            for (int set = 0; set < SETS; set++) {
                List<Value> given =
                        set % 5 == 4
                                ? random.nasty(function.parameters())
                                : random.plausible(function.parameters());
                if (given.size() != function.parameters().size()
                        || hasWhatFormulasDoNotRead(given)) {
                    continue;
                }
                fill(row, given);
                String formula =
                        function.expression()
                                .get()
                                .with(
                                        p ->
                                                "$"
                                                        + (char)
                                                                ('A'
                                                                        + function.parameters()
                                                                                .indexOf(p))
                                                        + "$1");
                Cell cell = row.createCell(25);
                cell.setCellFormula(formula);
                CellValue computed = new XSSFFormulaEvaluator(workbook).evaluate(cell);
                numbers += compare(function, given, computed);
            }
        }
        assertThat(numbers).isGreaterThan(SETS / 10);
    }

    /** Whoever copies the closed form must get no number where the function gives none. */
    @Test
    void theClosedFormShownHoldsItsCondition() {
        assertThat(Catalogue.find("GROOVEINNERWALL").orElseThrow().expression().orElseThrow())
                .extracting(Expression::guarded)
                .isEqualTo(
                        "IF(AND(stub>=ringthickness,groovewidth>=ringthickness),"
                                + "stub-ringthickness+groovewidth,#NUM!)");
    }

    private static int compare(CellFunction function, List<Value> given, CellValue computed) {
        Value expected = function.evaluate(given);
        String what = function + " of " + given + ": " + computed.formatAsString();
        if (expected instanceof Value.Numeric number) {
            assertThat(computed.getCellType()).as(what).isEqualTo(CellType.NUMERIC);
            double scale = Math.abs(number.number());
            for (Value value : given) {
                if (value instanceof Value.Numeric one) {
                    scale = Math.max(scale, Math.abs(one.number()) * 1e-3);
                }
            }
            assertThat(Math.abs(computed.getNumberValue() - number.number()))
                    .as(what + " against " + number.number())
                    .isLessThanOrEqualTo(1e-9 * scale);
            return 1;
        }
        if (!textLength(function, given)) {
            assertThat(computed.getCellType()).as(what + expected).isEqualTo(CellType.ERROR);
        }
        return 0;
    }

    /**
     * Left-out arguments are for whoever writes the formula; unit texts may hold signs of their
     * own.
     */
    private static boolean textLength(CellFunction function, List<Value> given) {
        for (int i = 0; i < given.size(); i++) {
            if (function.parameters().get(i).measure() == Measure.UNIT) {
                return !(given.get(i) instanceof Value.Text text)
                        || !(text.text().equals("in") || text.text().equals("mm"));
            }
        }
        return false;
    }

    private static boolean hasWhatFormulasDoNotRead(List<Value> given) {
        for (Value value : given) {
            if (value instanceof Value.Block
                    || value.isBlank()
                    || (value instanceof Value.Text text && text.text().matches(".*\\d.*"))
                    || (value instanceof Value.Numeric number && !isOfSomeSize(number.number()))) {
                return true;
            }
        }
        return false;
    }

    /** POI holds -0 to be below 0; and no tyre is a billionth of a millimetre high. */
    private static boolean isOfSomeSize(double number) {
        return Double.compare(number, 0) == 0
                || (Math.abs(number) > 1e-9 && Math.abs(number) < 1e308);
    }

    private static void fill(Row row, List<Value> given) {
        for (int i = 0; i < given.size(); i++) {
            Cell cell = row.createCell(i);
            if (given.get(i) instanceof Value.Numeric number) {
                cell.setCellValue(number.number());
            } else if (given.get(i) instanceof Value.Text text) {
                cell.setCellValue(text.text());
            } else if (given.get(i) instanceof Value.Fault fault) {
                cell.setCellErrorValue(
                        org.apache.poi.ss.usermodel.FormulaError.forString(fault.code()).getCode());
            }
        }
    }
}
