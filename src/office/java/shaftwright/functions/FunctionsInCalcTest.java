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
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import shaftwright.office.CalcWithExtension;

/** The functions as cells of LibreOffice Calc show them, with the extension installed. */
class FunctionsInCalcTest {
    /** Arguments stand in columns from here, each in two. */
    private static final int FIRST_ARGUMENT = 10;

    private static final int COLUMNS_AN_ARGUMENT = 2;
    private static final int WIDEST_RESULT = 5;
    private static final int TALLEST_RESULT = 6;
    private static final int RANDOM_CALLS = 3;

    /** What a cell may hold in place of one good argument; NaN and infinity show as #NUM!. */
    private static final List<Value> SPOILT =
            List.of(
                    Value.BLANK,
                    Value.of(""),
                    Value.of("no number"),
                    Value.of("25 3/0"),
                    new Value.Fault("#N/A"),
                    new Value.Fault("#DIV/0!"),
                    Value.IMPOSSIBLE,
                    Value.of(0),
                    Value.of(-7),
                    Value.of(-1e300),
                    Value.of(1e300),
                    Value.of(1e-190),
                    Value.of(-1e-190));

    @TempDir private static Path folder;

    private static final List<Value> IN_BLOCKS =
            List.of(Value.BLANK, Value.of("x"), Value.of(-1e300), Value.NO_ANSWER);

    /** One formula, and what the core answers. */
    private record Use(CellFunction function, List<Value> given, Value answer) {
        static Use of(CellFunction function, List<Value> given) {
            return of(function, given, WorkbookUnit.NONE);
        }

        /** A single empty cell counts as 0. */
        static Use of(CellFunction function, List<Value> given, WorkbookUnit unit) {
            List<Value> counting = new ArrayList<>(given);
            counting.replaceAll(value -> value.equals(Value.BLANK) ? Value.EMPTY_CELL : value);
            return new Use(function, given, function.evaluate(counting, unit));
        }

        boolean isArray() {
            return function.isBlock() || answer instanceof Value.Block;
        }

        List<List<Value>> shown() {
            return answer instanceof Value.Block block
                    ? block.rows().subList(0, Math.min(TALLEST_RESULT, block.rows().size()))
                    : List.of(List.of(answer));
        }

        int height() {
            int height = shown().size();
            for (Value value : given) {
                if (value instanceof Value.Block block) {
                    height = Math.max(height, block.rows().size());
                }
            }
            return height;
        }
    }

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
            int row = 0;
            for (Use use : uses) {
                compare(use, saved.getSheetAt(0), row, wrong);
                row += use.height();
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
                    Use use = Use.of(function, arguments(function, unit), unit);
                    compare(use, workbook.getSheetAt(0), row++, wrong);
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
            uses.add(Use.of(function, function.example().arguments()));
            for (int place = 0; place < function.example().arguments().size(); place++) {
                addSpoilt(function, place, uses);
            }
            RandomArguments random = new RandomArguments(function.name().hashCode());
            int wanted = uses.size() + RANDOM_CALLS;
            while (uses.size() < wanted) {
                List<Value> given = random.nasty(function.parameters());
                if (canBeTyped(given) && given.size() <= function.parameters().size()) {
                    uses.add(Use.of(function, given));
                }
            }
        }
        return uses;
    }

    /** The worked example with everything else that a cell or an area may hold at one place. */
    private static void addSpoilt(CellFunction function, int place, List<Use> uses) {
        List<Value> good = function.example().arguments();
        for (Value spoilt : SPOILT) {
            uses.add(Use.of(function, with(good, place, spoilt)));
        }
        Value one = good.get(place);
        if (one instanceof Value.Block block) {
            List<List<Value>> rows = block.rows();
            uses.add(Use.of(function, with(good, place, rows.get(0).get(0))));
            if (rows.size() > 1) {
                uses.add(block(function, place, rows.subList(0, rows.size() - 1)));
            }
            for (Value spoilt : IN_BLOCKS) {
                List<List<Value>> changed = new ArrayList<>(rows);
                changed.set(rows.size() - 1, List.of(spoilt));
                uses.add(block(function, place, changed));
            }
        } else {
            for (Value spoilt : IN_BLOCKS) {
                uses.add(block(function, place, List.of(List.of(one), List.of(spoilt))));
            }
            uses.add(block(function, place, List.of(List.of(one, one))));
            uses.add(block(function, place, List.of(List.of(one, one), List.of(one, one))));
        }
    }

    private static Use block(CellFunction function, int place, List<List<Value>> rows) {
        List<Value> good = function.example().arguments();
        return Use.of(function, with(good, place, new Value.Block(rows)));
    }

    private static List<Value> with(List<Value> good, int place, Value value) {
        List<Value> given = new ArrayList<>(good);
        given.set(place, value);
        return given;
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
        if (block.cells() == 0 || block.rows().get(0).size() > COLUMNS_AN_ARGUMENT) {
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
            int row = 0;
            for (Use use : uses) {
                write(use, sheet, row);
                row += use.height();
            }
            workbook.write(out);
        }
    }

    private static void write(Use use, XSSFSheet sheet, int first) {
        for (int row = first; row < first + use.height(); row++) {
            sheet.createRow(row);
        }
        StringBuilder formula = new StringBuilder(use.function.name()).append('(');
        for (int i = 0; i < use.given.size(); i++) {
            formula.append(i == 0 ? "" : ",").append(typed(use.given.get(i), sheet, first, i));
        }
        XSSFCell cell = sheet.getRow(first).createCell(0);
        var text = cell.getCTCell().addNewF();
        text.setStringValue(formula.append(')').toString());
        if (use.isArray()) {
            CellReference last =
                    new CellReference(
                            first + use.shown().size() - 1,
                            use.answer instanceof Value.Block
                                    ? use.shown().get(0).size() - 1
                                    : WIDEST_RESULT - 1);
            text.setT(STCellFormulaType.ARRAY);
            text.setRef("A" + (first + 1) + ":" + last.formatAsString());
        }
    }

    /** Types an argument into cells and returns the reference to them. */
    private static String typed(Value value, XSSFSheet sheet, int first, int place) {
        int column = FIRST_ARGUMENT + place * COLUMNS_AN_ARGUMENT;
        String reference = new CellReference(first, column, true, true).formatAsString();
        if (!(value instanceof Value.Block block)) {
            put(value, sheet.getRow(first).createCell(column));
            return reference;
        }
        int width = block.rows().get(0).size();
        int height = block.rows().size();
        for (int row = 0; row < height; row++) {
            for (int beside = 0; beside < width; beside++) {
                put(
                        block.rows().get(row).get(beside),
                        sheet.getRow(first + row).createCell(column + beside));
            }
        }
        CellReference last = new CellReference(first + height - 1, column + width - 1, true, true);
        return reference + ":" + last.formatAsString();
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

    private static void compare(Use use, XSSFSheet sheet, int first, List<String> wrong) {
        List<List<Value>> expected = use.shown();
        for (int row = 0; row < expected.size(); row++) {
            for (int column = 0; column < expected.get(row).size(); column++) {
                XSSFCell cell = sheet.getRow(first + row).getCell(column);
                String shown = shown(cell);
                // Which of several errors comes first is Calc's choice.
                boolean oneOfThem = use.given.contains(new Value.Fault(shown));
                Value wanted = expected.get(row).get(column);
                if (!oneOfThem && !agree(wanted, cell, shown)) {
                    wrong.add(
                            String.format(
                                    Locale.ROOT,
                                    "%s of %s shows %s, not %s",
                                    use.function.name(),
                                    use.given,
                                    shown,
                                    wanted));
                }
            }
        }
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
