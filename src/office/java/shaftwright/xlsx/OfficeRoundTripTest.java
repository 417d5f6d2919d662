package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/** Workbooks as POI writes them, and as LibreOffice and Gnumeric save them again. */
class OfficeRoundTripTest {
    private static final int ROWS = 30;

    /** LibreOffice's user profile, made once as that takes most of its start. */
    @TempDir static Path profile;

    @TempDir Path folder;

    private boolean chartChanged;
    private String sheetName = "Plunge & 'ang' deg";

    private Path fresh() throws IOException {
        Path file = folder.resolve("fresh.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = workbook.createSheet(sheetName);
            for (int i = 0; i < ROWS; i++) {
                XSSFRow row = sheet.createRow(i);
                row.createCell(0).setCellValue(i / 3.0);
                row.createCell(1).setCellFormula("A" + (i + 1) + "*2");
                row.createCell(2).setCellFormula("IF(A" + (i + 1) + ">5,\"too <much>\",\"\")");
                row.createCell(3).setCellValue("25 3/8\"");
                row.createCell(5).setCellFormula("1/0");
                row.createCell(6).setCellValue(i % 2 == 0);
            }
            XSSFName name = workbook.createName();
            name.setNameName("plunge_left");
            name.setRefersToFormula("'" + sheetName.replace("'", "''") + "'!$B$1:$B$" + ROWS);
            addChart(sheet);
            workbook.createSheet("Mine").createRow(3).createCell(3).setCellValue("note");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            workbook.write(out);
        }
        return file;
    }

    private void addChart(XSSFSheet sheet) {
        XSSFChart chart =
                sheet.createDrawingPatriarch()
                        .createChart(
                                sheet.getDrawingPatriarch().createAnchor(0, 0, 0, 0, 9, 0, 18, 15));
        Double[] numbers = new Double[ROWS];
        for (int i = 0; i < ROWS; i++) {
            numbers[i] = i * 2 / 3.0;
        }
        String reference = "'" + sheetName.replace("'", "''") + "'!$B$1:$B$" + ROWS;
        XDDFChartData data =
                chart.createData(
                        ChartTypes.LINE,
                        chart.createCategoryAxis(
                                org.apache.poi.xddf.usermodel.chart.AxisPosition.BOTTOM),
                        chart.createValueAxis(
                                org.apache.poi.xddf.usermodel.chart.AxisPosition.LEFT));
        data.addSeries(
                XDDFDataSourcesFactory.fromArray(numbers, reference),
                XDDFDataSourcesFactory.fromArray(numbers, reference));
        chart.plot(data);
    }

    private void run(String... command) throws Exception {
        Path output = folder.resolve("output.txt");
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(output.toFile())
                        .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(Files.readString(output)).isZero();
    }

    private Path throughLibreOffice(Path file, String folderName) throws Exception {
        Path target = Files.createDirectories(folder.resolve(folderName));
        run(
                "soffice",
                "-env:UserInstallation=" + profile.toUri(),
                "--headless",
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                target.toString(),
                file.toString());
        return target.resolve(file.getFileName());
    }

    private Path throughGnumeric(Path file, String name) throws Exception {
        Path target = folder.resolve(name);
        run("ssconvert", "-T", "Gnumeric_Excel:xlsx2", file.toString(), target.toString());
        return target;
    }

    /** Writes into cells of every kind and checks with POI that these changed and nothing else. */
    private Path filled(Path file) throws IOException {
        Path before =
                Files.copy(
                        file,
                        folder.resolve("before.xlsx"),
                        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get("plunge_left");
        assertThat(area).isEqualTo(new Area(sheetName, 0, 1, ROWS - 1, 1));
        Map<CellPlace, CellContent> read =
                book.read(List.of(area, new Area(area.sheet(), 0, 0, ROWS, 8))).filled();
        assertThat(read.get(area.place(4)).formula()).isNotEmpty();
        assertThat(read.get(new CellPlace(area.sheet(), 2, 3)).value())
                .isEqualTo(CellValue.of("25 3/8\""));
        assertThat(read.get(new CellPlace(area.sheet(), 20, 2)).value())
                .isEqualTo(CellValue.of("too <much>"));
        assertThat(read.get(new CellPlace(area.sheet(), 2, 5)).value())
                .isEqualTo(new CellValue.Fault("#DIV/0!"));
        Map<CellPlace, CellValue> values = new HashMap<>();
        for (int i = 0; i < ROWS; i++) {
            values.put(area.place(i), CellValue.of(i / 7.0));
            values.put(new CellPlace(area.sheet(), i, 2), CellValue.of("row " + i));
            values.put(new CellPlace(area.sheet(), i, 3), CellValue.of("1 1/2\" <&>"));
            values.put(new CellPlace(area.sheet(), i, 4), CellValue.of("missing before"));
        }
        values.put(new CellPlace("Mine", 40, 2), CellValue.of(4.25));
        book.write(values);
        book.save(file);
        Map<String, String> changed = PackageDifference.changedParts(before, file);
        assertThat(changed.keySet())
                .filteredOn(part -> !part.contains("/charts/"))
                .containsExactlyInAnyOrder("xl/worksheets/sheet1.xml", "xl/worksheets/sheet2.xml");
        chartChanged = changed.size() == 3;
        assertSameExcept(before, file, values);
        return file;
    }

    private static void assertSameExcept(Path before, Path after, Map<CellPlace, CellValue> values)
            throws IOException {
        Map<CellPlace, String> old = everything(before);
        Map<CellPlace, String> now = everything(after);
        for (Map.Entry<CellPlace, CellValue> cell : values.entrySet()) {
            String formula = formula(old.getOrDefault(cell.getKey(), "|"));
            old.put(cell.getKey(), formula + "|" + shown(cell.getValue()));
        }
        assertThat(now).isEqualTo(old);
    }

    private static String formula(String cell) {
        return cell.substring(0, cell.lastIndexOf('|'));
    }

    private static String shown(CellValue value) {
        return value instanceof CellValue.Numeric number
                ? Double.toString(number.value())
                : ((CellValue.Text) value).value();
    }

    private static Map<CellPlace, String> everything(Path file) throws IOException {
        Map<CellPlace, String> cells = new HashMap<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        boolean formula = cell.getCellType() == CellType.FORMULA;
                        CellType type =
                                formula ? cell.getCachedFormulaResultType() : cell.getCellType();
                        String value =
                                switch (type) {
                                    case NUMERIC -> Double.toString(cell.getNumericCellValue());
                                    case STRING -> cell.getStringCellValue();
                                    case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
                                    case ERROR -> Byte.toString(cell.getErrorCellValue());
                                    default -> "";
                                };
                        String text = formula ? cell.getCellFormula() : "";
                        if (!value.isEmpty() || formula) {
                            cells.put(
                                    new CellPlace(
                                            sheet.getSheetName(),
                                            cell.getRowIndex(),
                                            cell.getColumnIndex()),
                                    text + "|" + value);
                        }
                    }
                }
            }
        }
        return cells;
    }

    @Test
    void workbookWrittenByPoi() throws IOException {
        filled(fresh());
        assertThat(chartChanged).isTrue();
    }

    @Test
    void workbookSavedByLibreOfficeOpensThereAgain() throws Exception {
        Path file = filled(throughLibreOffice(fresh(), "once"));
        assertThat(chartChanged).isTrue();
        Map<CellPlace, String> reopened = everything(throughLibreOffice(file, "twice"));
        assertThat(reopened.get(new CellPlace(sheetName, 3, 4))).isEqualTo("|missing before");
        assertThat(reopened.get(new CellPlace(sheetName, 3, 3))).isEqualTo("|1 1/2\" <&>");
        assertThat(reopened.get(new CellPlace(sheetName, 3, 2))).endsWith("|row 3");
        assertThat(reopened.get(new CellPlace("Mine", 40, 2))).isEqualTo("|4.25");
    }

    @Test
    void workbookSavedByGnumericOpensThereAgain() throws Exception {
        // Gnumeric 1.12.55 cannot read names of a sheet with an apostrophe.
        sheetName = "Plunge & deg";
        Path file = filled(throughGnumeric(fresh(), "once.xlsx"));
        // Gnumeric writes charts without cached points.
        assertThat(chartChanged).isFalse();
        Map<CellPlace, String> reopened = everything(throughGnumeric(file, "twice.xlsx"));
        assertThat(reopened.get(new CellPlace(sheetName, 3, 4))).isEqualTo("|missing before");
        assertThat(reopened.get(new CellPlace("Mine", 40, 2))).isEqualTo("|4.25");
    }

    /** A cell whose cached value was dropped is computed by LibreOffice when it opens the file. */
    @Test
    void droppedValueIsComputedByLibreOffice() throws Exception {
        Path file = throughLibreOffice(fresh(), "drop");
        XlsxBook book = XlsxBook.open(file);
        CellPlace dropped = new CellPlace(sheetName, 9, 1);
        book.write(
                Map.of(new CellPlace(sheetName, 9, 0), CellValue.of(50), dropped, CellValue.BLANK));
        book.save(file);
        assertThat(everything(throughLibreOffice(file, "computed")).get(dropped))
                .isEqualTo("A10*2|100.0");
    }
}
