package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.formula.TapeFormula;

/**
 * One text a row in column A, one formula a column from B on: for comparing what the formulas make
 * of the texts with what the core makes of them.
 */
public final class ReadingSheet {

    private static final String SHEET = "Texts";

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final XSSFSheet sheet = book.createSheet(SHEET);
    private final int rows;

    /** Texts go into cells of the format "text", as input cells have it. */
    public ReadingSheet(List<String> texts) {
        rows = texts.size();
        CellStyle plain = book.createCellStyle();
        plain.setDataFormat(book.createDataFormat().getFormat("@"));
        for (int i = 0; i < rows; i++) {
            Cell cell = sheet.createRow(i).createCell(0);
            cell.setCellStyle(plain);
            cell.setCellValue(texts.get(i));
        }
        name("texts", "$A$1:$A$" + rows);
        units();
        fractions();
    }

    private void units() {
        XSSFSheet units = book.createSheet("Units");
        units.createRow(0).createCell(0).setCellValue(25.4);
        units.createRow(1).createCell(0).setCellValue(1);
    }

    private void fractions() {
        XSSFSheet fractions = book.createSheet("Fractions");
        List<TapeFormula.FractionRow> list = TapeFormula.fractionRows();
        for (int i = 0; i < list.size(); i++) {
            Row row = fractions.createRow(i);
            row.createCell(0).setCellValue(list.get(i).text());
            row.createCell(1).setCellValue(list.get(i).value());
        }
        XSSFName name = book.createName();
        name.setNameName("tape_fraction");
        name.setRefersToFormula("Fractions!$A$1:$B$" + list.size());
    }

    private void name(String text, String range) {
        XSSFName name = book.createName();
        name.setNameName(text);
        name.setRefersToFormula(SHEET + "!" + range);
    }

    /** Puts a formula beside every text; the function is given the reference to the text's cell. */
    public ReadingSheet column(int column, Function<String, String> formula) {
        for (int i = 0; i < rows; i++) {
            sheet.getRow(i).createCell(column).setCellFormula(formula.apply("$A" + (i + 1)));
        }
        return this;
    }

    /** The book that may still be changed before it is evaluated or saved. */
    public XSSFWorkbook book() {
        return book;
    }

    /** Values computed by POI. */
    public XSSFWorkbook evaluated() {
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        return book;
    }

    /** Saves without any computed value. */
    public Path save(Path file) {
        try (OutputStream out = Files.newOutputStream(file)) {
            book.write(out);
            return file;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    public static XSSFWorkbook open(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** What a formula cell shows: Double or String, "error" for any error. */
    public static Object shown(XSSFWorkbook computed, int row, int column) {
        Cell cell = computed.getSheet(SHEET).getRow(row).getCell(column);
        CellType type = cell.getCellType();
        if (type == CellType.FORMULA) {
            type = cell.getCachedFormulaResultType();
        }
        return switch (type) {
            case NUMERIC -> cell.getNumericCellValue();
            case STRING -> cell.getStringCellValue();
            case BLANK -> "";
            default -> type.toString();
        };
    }

    /** Every row of a column shows what the core says: a number of mm, or the text given. */
    public static void check(
            XSSFWorkbook computed, int column, List<String> texts, Function<String, Object> core) {
        StringBuilder differences = new StringBuilder();
        for (int i = 0; i < texts.size(); i++) {
            Object expected = core.apply(texts.get(i));
            Object found = shown(computed, i, column);
            boolean same =
                    (expected instanceof Double a && found instanceof Double b)
                            ? Math.abs(a - b) <= 1e-12 * Math.abs(a)
                            : expected.equals(found);
            if (!same) {
                differences
                        .append("\n\"")
                        .append(texts.get(i))
                        .append("\" core ")
                        .append(expected)
                        .append(" cell ")
                        .append(found);
            }
        }
        assertThat(differences.toString()).isEmpty();
    }
}
