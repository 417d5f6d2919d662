package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import shaftwright.office.CalcWithExtension;

/** The functions as cells of LibreOffice Calc show them, with the extension installed. */
class FunctionsInCalcTest {
    /** Arguments stand in columns from here, each block in a column of its own. */
    private static final int FIRST_ARGUMENT = 10;

    private static final int ROWS_A_CALL = 8;
    private static final int WIDEST_RESULT = 5;
    private static final int NASTY_CALLS = 12;

    @TempDir private static Path folder;

    /** One cell formula and what it must show. */
    private record Use(CellFunction function, List<Value> given) {}

    private static List<Use> uses;
    private static Path usesSaved;
    private static Path inchesSaved;
    private static Path metricSaved;

    /** One start of the program for all; each takes long. */
    @BeforeAll
    static void recalculate() throws IOException {
        uses = uses();
        Path book = folder.resolve("uses.xlsx");
        write(uses, book);
        Path inches = folder.resolve("inches.ods");
        writeOpenDocument(inches, WorkbookUnit.NONE);
        Path metric = folder.resolve("metric.ods");
        writeOpenDocument(metric, METRIC);
        try (CalcWithExtension calc = CalcWithExtension.installed()) {
            List<Path> saved = calc.recalculated(List.of(book, inches, metric));
            usesSaved = Files.copy(saved.get(0), folder.resolve("uses-saved.xlsx"));
            inchesSaved = Files.copy(saved.get(1), folder.resolve("inches-saved.xlsx"));
            metricSaved = Files.copy(saved.get(2), folder.resolve("metric-saved.xlsx"));
        }
    }

    @Test
    void everyFunctionGivesInCalcWhatItGivesHere() throws IOException {
        try (XSSFWorkbook saved = new XSSFWorkbook(Files.newInputStream(usesSaved))) {
            List<String> wrong = new ArrayList<>();
            for (int i = 0; i < uses.size(); i++) {
                compare(
                        uses.get(i),
                        WorkbookUnit.NONE,
                        saved.getSheetAt(0).getRow(i * ROWS_A_CALL),
                        wrong);
            }
            assertThat(wrong).isEmpty();
        }
    }

    @Test
    void workedExamplesComeOutOfAnOpenDocumentFile() throws IOException {
        assertThat(wrongExamples(inchesSaved, WorkbookUnit.NONE)).isEmpty();
    }

    /** Its cell named unit says mm. */
    @Test
    void lengthsAreInTheDocumentsUnit() throws IOException {
        assertThat(wrongExamples(metricSaved, METRIC)).isEmpty();
    }

    private static List<String> wrongExamples(Path saved, WorkbookUnit unit) throws IOException {
        List<String> wrong = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(saved))) {
            int row = 1;
            for (CellFunction function : Catalogue.all()) {
                if (!function.isBlock()) {
                    Use use = new Use(function, arguments(function, unit));
                    compare(use, unit, workbook.getSheetAt(0).getRow(row++), wrong);
                }
            }
        }
        return wrong;
    }

    /** A worked example's arguments; in a metric document without the unit, if it gives one. */
    private static List<Value> arguments(CellFunction function, WorkbookUnit unit) {
        List<Value> given = function.example().arguments();
        boolean givesUnit = function.hasUnit() && given.size() == function.parameters().size();
        return unit == METRIC && givesUnit ? given.subList(0, given.size() - 1) : given;
    }

    /** The first row holds a unit, the others the worked examples. */
    private static void writeOpenDocument(Path book, WorkbookUnit unit) throws IOException {
        StringBuilder rows = new StringBuilder(UNIT_ROW);
        for (CellFunction function : Catalogue.all()) {
            if (!function.isBlock()) {
                Example example = new Example(arguments(function, unit), List.of(), 0, "");
                String formula = example.formula(function.name());
                rows.append("<table:table-row><table:table-cell table:formula=\"of:=");
                rows.append(openDocument(formula)).append("\"/></table:table-row>\n");
            }
        }
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(book))) {
            put(zip, "mimetype", MIME_TYPE);
            put(zip, "META-INF/manifest.xml", MANIFEST);
            put(
                    zip,
                    "content.xml",
                    HEAD + rows + TABLE_END + (unit == METRIC ? METRIC_NAME : "") + END);
        }
    }

    private static void put(ZipOutputStream zip, String part, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        ZipEntry entry = new ZipEntry(part);
        if (part.equals("mimetype")) {
            // The format wants it uncompressed.
            CRC32 sum = new CRC32();
            sum.update(bytes);
            entry.setMethod(ZipEntry.STORED);
            entry.setSize(bytes.length);
            entry.setCrc(sum.getValue());
        }
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }

    private static final WorkbookUnit METRIC = () -> Value.of("mm");
    private static final String MIME_TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    private static final String MANIFEST =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3">
            <manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/>
            <manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>
            </manifest:manifest>
            """;
    private static final String HEAD =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3">
            <office:body><office:spreadsheet><table:table table:name="Examples">
            """;
    private static final String UNIT_ROW =
            "<table:table-row><table:table-cell office:value-type=\"string\"><text:p>mm</text:p>"
                    + "</table:table-cell></table:table-row>\n";
    private static final String TABLE_END = "</table:table>";
    private static final String METRIC_NAME =
            "<table:named-expressions><table:named-range table:name=\"unit\""
                    + " table:base-cell-address=\"$Examples.$A$1\""
                    + " table:cell-range-address=\"$Examples.$A$1\"/></table:named-expressions>";
    private static final String END =
            "</office:spreadsheet></office:body></office:document-content>\n";

    /** Semicolons between arguments, bars between an array's rows. */
    private static String openDocument(String formula) {
        return formula.replace(';', '|').replace(',', ';').replace("\"", "&quot;");
    }

    private static List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (CellFunction function : Catalogue.all()) {
            uses.add(new Use(function, function.example().arguments()));
            RandomArguments random = new RandomArguments(function.name().hashCode());
            while (uses.size() % (NASTY_CALLS + 1) != 0) {
                List<Value> given = random.nasty(function.parameters());
                if (canBeTyped(given) && given.size() <= function.parameters().size()) {
                    uses.add(new Use(function, given));
                }
            }
        }
        return uses;
    }

    private static boolean canBeTyped(List<Value> given) {
        for (Value value : given) {
            if ((value instanceof Value.Numeric number && !isCellNumber(number.number()))
                    || (value instanceof Value.Block block && !blockCanBeTyped(block))
                    || (value instanceof Value.Text text && text.text().indexOf('\u0000') >= 0)) {
                return false;
            }
        }
        return true;
    }

    private static boolean blockCanBeTyped(Value.Block block) {
        if (block.cells() == 0 || block.rows().get(0).size() > 1) {
            return false;
        }
        for (List<Value> row : block.rows()) {
            if (!canBeTyped(row)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isCellNumber(double number) {
        return Double.isFinite(number) && (number == 0 || Math.abs(number) > 1e-200);
    }

    private static void write(List<Use> uses, Path book) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(book)) {
            XSSFSheet sheet = workbook.createSheet();
            for (int i = 0; i < uses.size(); i++) {
                write(uses.get(i), sheet, i * ROWS_A_CALL);
            }
            workbook.write(out);
        }
    }

    private static void write(Use use, XSSFSheet sheet, int first) {
        for (int row = first; row < first + ROWS_A_CALL; row++) {
            sheet.createRow(row);
        }
        StringBuilder formula = new StringBuilder(use.function.name()).append('(');
        for (int i = 0; i < use.given.size(); i++) {
            formula.append(i == 0 ? "" : ",").append(typed(use.given.get(i), sheet, first, i));
        }
        XSSFCell cell = sheet.getRow(first).createCell(0);
        var text = cell.getCTCell().addNewF();
        text.setStringValue(formula.append(')').toString());
        if (use.function.isBlock()) {
            text.setT(STCellFormulaType.ARRAY);
            text.setRef("A" + (first + 1) + ":" + (char) ('A' + WIDEST_RESULT - 1) + (first + 1));
        }
    }

    /** Types an argument into cells and returns the reference to them. */
    private static String typed(Value value, XSSFSheet sheet, int first, int place) {
        int column = FIRST_ARGUMENT + place;
        String reference = "$" + CellReference.convertNumToColString(column) + "$" + (first + 1);
        if (!(value instanceof Value.Block block)) {
            put(value, sheet.getRow(first).createCell(column));
            return reference;
        }
        for (int row = 0; row < block.rows().size(); row++) {
            put(block.rows().get(row).get(0), sheet.getRow(first + row).createCell(column));
        }
        return reference
                + ":$"
                + CellReference.convertNumToColString(column)
                + "$"
                + (first + block.rows().size());
    }

    private static void put(Value value, XSSFCell cell) {
        if (value instanceof Value.Numeric number) {
            cell.setCellValue(number.number());
        } else if (value instanceof Value.Text text && text.text().isEmpty()) {
            // Calc would read a stored text without characters as an empty cell.
            cell.getCTCell().addNewF().setStringValue("\"\"");
        } else if (value instanceof Value.Text text) {
            cell.setCellValue(text.text());
        } else if (value instanceof Value.Fault fault) {
            cell.setCellErrorValue(FormulaError.forString(fault.code()));
        }
    }

    private static void compare(Use use, WorkbookUnit unit, XSSFRow row, List<String> wrong) {
        Value result = use.function.evaluate(asProgramsGiveThem(use), unit);
        List<Value> expected =
                result instanceof Value.Block block ? block.rows().get(0) : List.of(result);
        for (int i = 0; i < expected.size(); i++) {
            String shown = shown(row.getCell(i));
            // Which of several errors comes first is Calc's choice.
            boolean oneOfThem = use.given.contains(new Value.Fault(shown));
            if (!oneOfThem && !agree(expected.get(i), row.getCell(i), shown)) {
                wrong.add(
                        String.format(
                                Locale.ROOT,
                                "%s of %s shows %s, not %s",
                                use.function.name(),
                                use.given,
                                shown,
                                expected.get(i)));
            }
        }
    }

    /** A single empty cell counts as 0. */
    private static List<Value> asProgramsGiveThem(Use use) {
        List<Value> given = new ArrayList<>(use.given);
        given.replaceAll(value -> value.equals(Value.BLANK) ? Value.EMPTY_CELL : value);
        return given;
    }

    private static boolean agree(Value expected, XSSFCell cell, String shown) {
        if (expected instanceof Value.Numeric number) {
            return type(cell) == CellType.NUMERIC
                    && Math.abs(cell.getNumericCellValue() - number.number())
                            <= 1e-12 * Math.abs(number.number()) + 1e-12;
        }
        return expected instanceof Value.Text text
                ? text.text().equals(shown)
                : expected instanceof Value.Fault fault && fault.code().equals(shown);
    }

    private static CellType type(XSSFCell cell) {
        return cell.getCellType() == CellType.FORMULA
                ? cell.getCachedFormulaResultType()
                : cell.getCellType();
    }

    private static String shown(XSSFCell cell) {
        if (cell == null) {
            return "nothing";
        }
        return switch (type(cell)) {
            case NUMERIC -> String.valueOf(cell.getNumericCellValue());
            case STRING -> cell.getStringCellValue();
            case ERROR -> cell.getErrorCellString();
            default -> type(cell).toString();
        };
    }
}
