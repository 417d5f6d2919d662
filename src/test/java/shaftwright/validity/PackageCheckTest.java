package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.badinput.FileParts;

/** One breach put into a good file is found where it was put. */
class PackageCheckTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final String WORKBOOK = "xl/workbook.xml";
    private static final String CHART = "xl/charts/chart1.xml";

    @TempDir private Path folder;
    private Path file;

    /** A text and numbers in the first rows, a chart of them, a name, a merge. */
    @BeforeEach
    void goodFile() throws IOException {
        file = folder.resolve("book.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = workbook.createSheet("One");
            workbook.createSheet("Two");
            XSSFRow row = sheet.createRow(0);
            row.createCell(0).setCellValue(1);
            row.createCell(1).setCellFormula("SUM(A1:A1)");
            row.createCell(2).setCellValue("text");
            sheet.createRow(1).createCell(0).setCellValue(2);
            sheet.addMergedRegion(CellRangeAddress.valueOf("E1:F2"));
            workbook.createName().setNameName("mine");
            workbook.getName("mine").setRefersToFormula("One!$A$1");
            chart(sheet);
            workbook.write(out);
        }
        assertThat(PackageCheck.of(file)).isEmpty();
        assertThat(SchemaCheck.of(file)).isEmpty();
    }

    private static void chart(XSSFSheet sheet) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, 5, 5, 20));
        XDDFScatterChartData data =
                (XDDFScatterChartData)
                        chart.createData(
                                ChartTypes.SCATTER,
                                chart.createValueAxis(AxisPosition.BOTTOM),
                                chart.createValueAxis(AxisPosition.LEFT));
        data.setStyle(ScatterStyle.LINE);
        Double[] values = {1.0, 2.0};
        data.addSeries(
                XDDFDataSourcesFactory.fromArray(values, "One!$A$1:$A$2"),
                XDDFDataSourcesFactory.fromArray(values, "One!$A$1:$A$2"));
        chart.plot(data);
    }

    private void edit(String part, UnaryOperator<String> change) {
        FileParts parts = FileParts.of(file);
        String before = parts.text(part);
        String after = change.apply(before);
        assertThat(after).isNotEqualTo(before);
        parts.put(part, after).write(file);
    }

    private void replace(String part, String old, String now) {
        FileParts.of(file).replace(part, old, now).write(file);
    }

    private void assertFound(String what) {
        assertThat(PackageCheck.of(file))
                .anySatisfy(each -> assertThat(each.toString()).contains(what));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SUMM(A1) | Excel has no function SUMM",
                "CONCAT(A1) | function CONCAT is stored as _xlfn.CONCAT",
                "_xlfn.CONCAT(A1) | came after Excel 2010",
                "A1+yours | no name yours",
                "Three!A1 | no sheet \"Three\"",
                "SUM(#REF!) | #REF! in a formula",
                "SUM(A1 | a bracket does not close",
            })
    void formulaThatExcelWouldNotRead(String formula, String found) {
        replace(SHEET, "SUM(A1:A1)", formula);
        assertFound("B1: ");
        assertFound(found);
    }

    @Test
    void formulasThatAreTooMuch() {
        assertThat(wrong("1" + "+1".repeat(4100))).contains("8201 characters; at most 8192");
        assertThat(wrong("ABS(".repeat(65) + "1" + ")".repeat(65)))
                .contains("65 levels of functions; at most 64");
        assertThat(wrong("SUM(1" + ",1".repeat(255) + ")"))
                .contains("256 arguments of SUM; at most 255");
        assertThat(wrong("LEN(\"" + "x".repeat(256) + "\")"))
                .contains("256 characters in a text; at most 255");
        String text = "LEN(\"" + "x".repeat(250) + "\")";
        assertThat(wrong(text + ("+" + text).repeat(33)))
                .anySatisfy(each -> assertThat(each).contains("bytes when parsed"));
        assertThat(wrong("ABS(".repeat(64) + "1" + ")".repeat(64))).isEmpty();
    }

    private static List<String> wrong(String formula) {
        return new FormulaRules(Set.of(), Set.of())
                .wrong(formula, ScannedFormula.of(formula), FormulaRules.OLDEST);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "MATCH(A1,{1,2}) | array constant",
                "Two!A1 | another sheet",
                "SUM((A1,A2)) | union",
                "SUM(A1:A2 A1:A1) | union or intersection",
            })
    void formulaThatMayNotBeShared(String formula, String found) {
        replace(SHEET, "<f>SUM(A1:A1)", "<f t=\"shared\" si=\"0\" ref=\"B1:B2\">" + formula);
        assertFound(found);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<c r=\"B2\"><f t=\"shared\" si=\"1\"/></c>",
                "<c r=\"B9\"><v>1</v></c>",
                "<c r=\"A2\"><v>1</v></c>",
                "<c r=\"B2\" s=\"99\"><v>1</v></c>",
                "<c r=\"B2\" t=\"s\"><v>99</v></c>",
                "<c r=\"B2\"><v>NaN</v></c>",
                "<c r=\"B2\" t=\"e\"><v>Err:502</v></c>",
                "<c r=\"XFE2\"><v>1</v></c>",
                "<c r=\"B2\" t=\"inlineStr\"><is><t> x</t></is></c>",
            })
    void cellsThatAreNot(String cell) {
        edit(SHEET, text -> text.replace("</row></sheetData>", cell + "</row></sheetData>"));
        assertFound(SHEET);
    }

    @Test
    void textTooLongForACell() {
        String cell = "<c r=\"B2\" t=\"inlineStr\"><is><t>" + "x".repeat(32768) + "</t></is></c>";
        edit(SHEET, text -> text.replace("</row></sheetData>", cell + "</row></sheetData>"));
        assertFound("32768 characters in a cell");
    }

    @ParameterizedTest
    @CsvSource({
        "'<mergeCell ref=\"E1:F2\"/>', '<mergeCell ref=\"E1:F2\"/><mergeCell ref=\"F2:G3\"/>', overlap",
        "'<mergeCell ref=\"E1:F2\"/>', '<mergeCell ref=\"E1\"/>', one cell merged",
        "'<row r=\"2\">', '<row r=\"1\">', after row 1",
        "'<drawing r:id=\"', '<drawing r:id=\"x', is no relationship",
        "'<dimension ref=\"A1', '<dimension ref=\"B2', outside the sheet",
    })
    void sheetsThatAreNot(String old, String now, String found) {
        replace(SHEET, old, now);
        assertFound(found);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<dataValidation sqref=\"A1\" promptTitle=\"%33\"/> | 33 characters in a title",
                "<dataValidation sqref=\"A1\" prompt=\"%256\"/> | 256 characters in a prompt",
                "<dataValidation sqref=\"A0\"/> | no cells of a sheet",
                "<dataValidation sqref=\"A1\" type=\"list\"><formula1>\"%256\"</formula1></dataValidation>"
                        + " | 256 characters in a list",
                "<dataValidation sqref=\"A1\" type=\"list\"><formula1>yours</formula1></dataValidation>"
                        + " | no name yours",
            })
    void validationsThatAreNot(String validation, String found) {
        String xml = validation.replace("%33", "x".repeat(33)).replace("%256", "x".repeat(256));
        edit(
                SHEET,
                text ->
                        text.replace(
                                "</mergeCells>",
                                "</mergeCells><dataValidations count=\"1\">"
                                        + xml
                                        + "</dataValidations>"));
        assertFound(found);
    }

    @Test
    void conditionsOfOnePriorityAndWithoutTheirFormat() {
        String rule =
                "<conditionalFormatting sqref=\"A1\"><cfRule type=\"expression\" dxfId=\"7\" priority=\"1\">"
                        + "<formula>A1</formula></cfRule></conditionalFormatting>";
        edit(SHEET, text -> text.replace("</mergeCells>", "</mergeCells>" + rule + rule));
        assertFound("priority 1 of a condition");
        assertFound("format 7 of a condition");
    }

    @Test
    void linkToNowhere() {
        String links =
                "<hyperlinks><hyperlink ref=\"A1\"/><hyperlink ref=\"A2\" location=\"Three!A1\"/></hyperlinks>";
        edit(SHEET, text -> text.replace("</mergeCells>", "</mergeCells>" + links));
        assertFound("link to nowhere");
        assertFound("no sheet \"Three\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"A1", "R1C1", "c", "my name", "1st", "XFD1048576"})
    void nameThatExcelDoesNotAllow(String name) {
        replace(WORKBOOK, "name=\"mine\"", "name=\"" + name + "\"");
        assertFound(name + ": is no name that Excel allows");
    }

    @ParameterizedTest
    @CsvSource({
        "</definedNames>, '<definedName name=\"Mine\">1</definedName></definedNames>', two names",
        "</definedNames>, </definedNames><definedNames/>, occurs twice",
        "name=\"Two\", name=\"ONE\", two sheets of one name",
        "name=\"Two\", name=\"a/b\", forbids",
        "name=\"Two\", name=\"Thirty-five characters are too many\", sheet's name of",
        "activeTab=\"0\", activeTab=\"5\", the active sheet is not shown",
    })
    void workbookThatIsNot(String old, String now, String found) {
        replace(WORKBOOK, old, now);
        assertFound(found);
    }

    @ParameterizedTest
    @CsvSource({
        "<c:ptCount val=\"2\"/>, <c:ptCount val=\"3\"/>, keeps 3 points of 2",
        "<c:pt idx=\"1\">, <c:pt idx=\"2\">, point 2 after 0 of 2",
        "One!$A$1:$A$2, Three!$A$1:$A$2, refers to no sheet and no name",
        "<c:v>2.0</c:v>, <c:v/>, is no number",
    })
    void chartThatIsNot(String old, String now, String found) {
        replace(CHART, old, now);
        assertFound(found);
    }

    @Test
    void cellFormatOfFontThatIsNotThere() {
        edit("xl/styles.xml", text -> text.replaceFirst("(<cellXfs.*?fontId=\")0", "$19"));
        assertFound("fontId 9 of 1");
    }

    @Test
    void partsThatDoNotHangTogether() {
        replace("xl/_rels/workbook.xml.rels", "worksheets/sheet2.xml", "worksheets/sheet9.xml");
        edit(
                "[Content_Types].xml",
                text -> text.replaceFirst("<Override [^>]*/xl/styles[^>]*>", ""));
        edit(
                "[Content_Types].xml",
                text -> text.replaceFirst("<Default [^>]*Extension=\"xml\"[^>]*>", ""));
        assertFound("leads to no part: xl/worksheets/sheet9.xml");
        assertFound("xl/styles.xml: has no content type");
    }

    @Test
    void elementOutOfOrderBreaksTheSchema() {
        edit(SHEET, text -> text.replaceFirst("(<dimension[^>]*>)(.*)(<sheetData>)", "$2$3$1"));
        assertThat(SchemaCheck.of(file)).isNotEmpty();
    }
}
