package shaftwright.badinput;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.DOUBLE;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.xlsx.XlsxBook;

/** A workbook with much of the builder's own in it, filled through the command. */
class NothingLostTest {
    private static final String OWN = "Own sheet";
    private static final String SET = "hub_shift[A]=1/2";

    @TempDir private static Path folder;

    private static Path before;
    private static Path after;
    private static Run run;

    /** Made and filled once: the tests look at different parts of the same two files. */
    @BeforeAll
    static void fillOnce() {
        SmallBook book = SmallBook.in(folder);
        before = book.file();
        EditedByBuilder.edit(before, NothingLostTest::addOwnThings);
        addUnknownParts();
        after = folder.resolve("filled.xlsx");
        run = Run.of("fill", "--out", after, "--set", SET, before);
        assertThat(run.code()).as(run.err()).isZero();
    }

    private static void addOwnThings(XSSFWorkbook workbook) {
        XSSFSheet sheet = workbook.createSheet(OWN);
        XSSFRow row = sheet.createRow(0);
        row.createCell(0).setCellFormula("INDEX(e_final_left,1,1)");
        row.createCell(1).setCellFormula("A1/25.4*2");
        row.createCell(2).setCellFormula("A1*RAND()");
        row.createCell(3).setCellFormula("1+2");
        row.createCell(5).setCellValue("my own words");
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (int column = 0; column < 4; column++) {
            evaluator.evaluateFormulaCell(row.getCell(column));
        }
        // A function that the library can't compute, with the value that a program had stored.
        var unknown = row.createCell(4).getCTCell();
        unknown.addNewF().setStringValue("SUM(_xlfn.FILTER(e_final_left,e_final_left>0))");
        unknown.setV("777.5");

        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        ClientAnchor anchor = drawing.createAnchor(0, 0, 0, 0, 1, 3, 4, 8);
        drawing.createCellComment(anchor).setString("ask about this");
        drawing.createPicture(
                drawing.createAnchor(0, 0, 0, 0, 1, 10, 3, 14),
                workbook.addPicture(
                        new byte[] {(byte) 0x89, 'P', 'N', 'G'}, Workbook.PICTURE_TYPE_PNG));
        var rule =
                sheet.getSheetConditionalFormatting().createConditionalFormattingRule("$A$1>600");
        sheet.getSheetConditionalFormatting()
                .addConditionalFormatting(
                        new CellRangeAddress[] {CellRangeAddress.valueOf("A1:B1")}, rule);
        var helper = sheet.getDataValidationHelper();
        sheet.addValidationData(
                helper.createValidation(
                        helper.createExplicitListConstraint(new String[] {"yes", "no"}),
                        new CellRangeAddressList(5, 9, 1, 1)));
        addChart(workbook, drawing);
    }

    /** A line over the left side's joint distances in the tables of scenario A. */
    private static void addChart(XSSFWorkbook workbook, XSSFDrawing drawing) {
        CellPlace first = SmallBook.area("table_distance_left").place(0);
        XSSFSheet table = workbook.getSheet(first.sheet());
        var column =
                new CellRangeAddress(first.row(), first.row() + 24, first.column(), first.column());
        XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 5, 3, 12, 20));
        var data =
                chart.createData(
                        ChartTypes.LINE,
                        chart.createCategoryAxis(AxisPosition.BOTTOM),
                        chart.createValueAxis(AxisPosition.LEFT));
        var values = XDDFDataSourcesFactory.fromNumericCellRange(table, column);
        data.addSeries(values, values);
        chart.plot(data);
    }

    private static void addUnknownParts() {
        FileParts.of(before)
                .put("customXml/item1.xml", "<shop xmlns=\"urn:own\"><order n=\"7\"/></shop>")
                .replace(
                        "_rels/.rels",
                        "</Relationships>",
                        "<Relationship Id=\"own\" Target=\"customXml/item1.xml\""
                                + " Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml\"/>"
                                + "<Relationship Id=\"odd\" Target=\"odd/thing.bin\" Type=\"urn:odd\"/>"
                                + "</Relationships>")
                .replace(
                        "[Content_Types].xml",
                        "</Types>",
                        "<Override PartName=\"/odd/thing.bin\" ContentType=\"application/x-odd\"/>"
                                + "</Types>")
                .put("odd/thing.bin", new byte[] {0, 1, 2, (byte) 0xFF, 'P', 'K', 3, 4})
                .write(before);
    }

    private static CellValue own(Path file, int column) {
        Area area = new Area(OWN, 0, column, 0, column);
        var content = XlsxBook.open(file).read(java.util.List.of(area)).at(area.place(0));
        return content == null ? CellValue.BLANK : content.value();
    }

    private static double number(Path file, String name) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get(name);
        return ((CellValue.Numeric) book.read(java.util.List.of(area)).at(area.place(0)).value())
                .value();
    }

    @Test
    void partsWithoutCellsOfOursAreTheSameBytes() {
        Map<String, byte[]> old = FileParts.of(before).parts();
        Map<String, byte[]> now = FileParts.of(after).parts();

        assertThat(now.keySet()).containsExactlyElementsOf(old.keySet());
        TreeSet<String> changed = new TreeSet<>();
        for (String part : old.keySet()) {
            if (!Arrays.equals(old.get(part), now.get(part))) {
                changed.add(part.replaceAll("[0-9]+", "N"));
            }
        }
        // The workbook part: dropped values ask the program to compute when it opens the file.
        assertThat(changed)
                .contains("xl/worksheets/sheetN.xml", "xl/charts/chartN.xml")
                .isSubsetOf("xl/worksheets/sheetN.xml", "xl/charts/chartN.xml", "xl/workbook.xml");
    }

    @Test
    void formulasOfOursAreTheSame() {
        XlsxBook old = XlsxBook.open(before);
        XlsxBook now = XlsxBook.open(after);
        var contents = now.read(now.names().values()).filled();
        var missing =
                old.read(old.names().values()).filled().entrySet().stream()
                        .filter(
                                cell ->
                                        !contents.getOrDefault(cell.getKey(), cell.getValue())
                                                .formula()
                                                .equals(cell.getValue().formula()))
                        .toList();
        assertThat(missing).isEmpty();
    }

    @Test
    void ownFormulaShowsTheNewResult() {
        assertThat(own(after, 0)).isEqualTo(CellValue.of(number(after, "e_final_left")));
        assertThat(own(after, 0)).isNotEqualTo(own(before, 0));
    }

    @Test
    void ownFormulaOnAnOwnFormulaFollows() {
        double inches = number(after, "e_final_left") / 25.4 * 2;
        assertThat(own(after, 1)).isEqualTo(CellValue.of(inches));
    }

    @Test
    void volatileFormulaLosesItsValueRatherThanShowAnOldOne() {
        assertThat(own(before, 2)).isNotEqualTo(CellValue.BLANK);
        assertThat(own(after, 2)).isEqualTo(CellValue.BLANK);
    }

    @Test
    void formulaThatNobodyHereComputesLosesItsValueRatherThanShowAnOldOne() {
        assertThat(own(before, 4)).isEqualTo(CellValue.of(777.5));
        assertThat(own(after, 4)).isEqualTo(CellValue.BLANK);
    }

    @Test
    void formulaThatDependsOnNothingOfOursStays() {
        assertThat(own(after, 3)).isEqualTo(CellValue.of(3));
    }

    @Test
    void summarySaysWhatWasComputedAndWhatWasLeft() {
        assertThat(run.out())
                .contains("2 of your own formulas computed anew")
                .contains("2 of your own formulas are left for your spreadsheet program");
    }

    @Test
    void ownTextsFormatsAndValidationsStay() {
        assertThat(own(after, 5)).isEqualTo(CellValue.of("my own words"));
        String sheet = ownSheet(after);
        assertThat(sheet)
                .contains("<conditionalFormatting sqref=\"A1:B1\">")
                .contains("sqref=\"B6:B10\"")
                .contains("_xlfn.FILTER");
    }

    @Test
    void ownChartOnATableHasTheNewPoints() {
        CellPlace place = SmallBook.area("table_distance_left").place(0);
        CellValue was = at(before, place);
        CellValue is = at(after, place);
        assertThat(is).isNotEqualTo(was);

        // The library computed the old points itself, so the last digits may differ.
        assertThat(points(ownChart(before)))
                .hasSize(50)
                .first(as(DOUBLE))
                .isCloseTo(((CellValue.Numeric) was).value(), within(1e-9));
        assertThat(points(ownChart(after)))
                .hasSize(50)
                .startsWith(((CellValue.Numeric) is).value());
    }

    private static CellValue at(Path file, CellPlace place) {
        Area area =
                new Area(place.sheet(), place.row(), place.column(), place.row(), place.column());
        return XlsxBook.open(file).read(java.util.List.of(area)).at(place).value();
    }

    private static java.util.List<Double> points(String chart) {
        var points = new java.util.ArrayList<Double>();
        for (int at = chart.indexOf("<c:v>"); at >= 0; at = chart.indexOf("<c:v>", at + 1)) {
            String text = chart.substring(at + 5, chart.indexOf('<', at + 5));
            try {
                points.add(Double.parseDouble(text));
            } catch (NumberFormatException e) {
                points.add(Double.NaN);
            }
        }
        return points;
    }

    /** The chart drawn last is the builder's. */
    private static String ownChart(Path file) {
        FileParts parts = FileParts.of(file);
        String last = "";
        int most = 0;
        for (String name : parts.parts().keySet()) {
            if (name.matches("xl/charts/chart[0-9]+\\.xml")) {
                int number = Integer.parseInt(name.replaceAll("[^0-9]", ""));
                last = number > most ? name : last;
                most = Math.max(most, number);
            }
        }
        return parts.text(last);
    }

    private static String ownSheet(Path file) {
        for (Map.Entry<String, byte[]> part : FileParts.of(file).parts().entrySet()) {
            String text = new String(part.getValue(), StandardCharsets.UTF_8);
            if (part.getKey().startsWith("xl/worksheets/") && text.contains("_xlfn.FILTER")) {
                return text;
            }
        }
        return "";
    }

    @Test
    void secondFillChangesNothingAndSaysSo() throws java.io.IOException {
        Path once = folder.resolve("once.xlsx");
        java.nio.file.Files.copy(after, once);

        Run again = Run.of("fill", "--set", SET, once);

        assertThat(again.code()).isZero();
        assertThat(again.out()).endsWith("none of them changed.\n");
        assertThat(once).hasSameBinaryContentAs(after);
        assertThat(folder.resolve("once.backup.xlsx")).doesNotExist();
    }

    @Test
    void fillingFromTheSameFileTwiceGivesTheSameBytes() {
        Path other = folder.resolve("other.xlsx");
        Run.of("fill", "--out", other, "--set", SET, before);
        assertThat(other).hasSameBinaryContentAs(after);
    }

    @Test
    void originalStaysWhenAnotherFileIsWritten() {
        assertThat(own(before, 4)).isEqualTo(CellValue.of(777.5));
        assertThat(folder.resolve("shafts.backup.xlsx")).doesNotExist();
    }

    @Test
    void anotherLibraryReadsTheOwnSheetAsBefore() {
        EditedByBuilder.look(
                after,
                workbook -> {
                    XSSFSheet sheet = workbook.getSheet(OWN);
                    assertThat(sheet.getCellComments()).hasSize(1);
                    assertThat(sheet.getDataValidations()).hasSize(1);
                    assertThat(sheet.getDrawingPatriarch().getCharts()).hasSize(1);
                    assertThat(workbook.getAllPictures()).hasSize(1);
                    assertThat(sheet.getRow(0).getCell(2).getCellType())
                            .isEqualTo(CellType.FORMULA);
                });
    }
}
