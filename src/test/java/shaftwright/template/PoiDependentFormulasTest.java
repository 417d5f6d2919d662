package shaftwright.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
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
import shaftwright.xlsx.DependentFormulas;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Builders' own formulas after a save; expected values by arithmetic on the spot. */
class PoiDependentFormulasTest {
    @TempDir Path folder;

    private final Map<String, String> formulas = new HashMap<>();
    private SaveReport report;

    private static CellPlace at(String sheet, String address) {
        CellAddress cell = new CellAddress(address);
        return new CellPlace(sheet, cell.getRow(), cell.getColumn());
    }

    private static XSSFCell cell(XSSFSheet sheet, String address) {
        CellAddress at = new CellAddress(address);
        XSSFRow row = sheet.getRow(at.getRow());
        row = row == null ? sheet.createRow(at.getRow()) : row;
        XSSFCell cell = row.getCell(at.getColumn());
        return cell == null ? row.createCell(at.getColumn()) : cell;
    }

    /** A formula of the builder's with the value that their program stored for it. */
    private Consumer<XSSFWorkbook> mine(String address, String formula, Object stored) {
        return workbook -> {
            XSSFCell cell = cell(workbook.getSheet("Mine"), address);
            cell.getCTCell().addNewF().setStringValue(formula);
            if (stored instanceof Double number) {
                cell.getCTCell().setV(number.toString());
            } else if (stored != null) {
                cell.getCTCell()
                        .setT(org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType.STR);
                cell.getCTCell().setV(stored.toString());
            }
            formulas.put(address, formula);
        };
    }

    /** Sheet "Ours": A1 = 2 becomes 3, A2 = 10 stays; saves and returns what "Mine" then holds. */
    @SafeVarargs
    private Map<CellPlace, CellContent> after(Consumer<XSSFWorkbook>... parts) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet ours = workbook.createSheet("Ours");
            workbook.createSheet("Mine");
            cell(ours, "A1").getCTCell().addNewF().setStringValue("1+1");
            cell(ours, "A1").getCTCell().setV("2");
            cell(ours, "A2").setCellValue(10);
            XSSFName name = workbook.createName();
            name.setNameName("slack");
            name.setRefersToFormula("Ours!$A$1");
            for (Consumer<XSSFWorkbook> part : parts) {
                part.accept(workbook);
            }
            workbook.write(out);
        }
        XlsxBook book = XlsxBook.open(file, new PoiDependentFormulas());
        book.write(Map.of(at("Ours", "A1"), CellValue.of(3), at("Ours", "A2"), CellValue.of(10)));
        report = book.save(file);
        return XlsxBook.open(file).read(List.of(new Area("Mine", 0, 0, 20, 20))).filled();
    }

    private static CellValue value(Map<CellPlace, CellContent> cells, String address) {
        return cells.get(at("Mine", address)).value();
    }

    @Test
    void directChainedAndNamedDependentsGetNewValues() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(
                        mine("A1", "Ours!A1*2", 4.0),
                        mine("A2", "A1+Ours!A2", 14.0),
                        mine("A3", "SUM(Ours!A1:A2)", 12.0),
                        mine("A4", "slack^2", 4.0),
                        mine("A5", "IF(A2>15,\"roomy\",\"tight\")", "tight"),
                        mine("B1", "Ours!A2*100", 1000.0));
        assertThat(value(cells, "A1")).isEqualTo(CellValue.of(6));
        assertThat(value(cells, "A2")).isEqualTo(CellValue.of(16));
        assertThat(value(cells, "A3")).isEqualTo(CellValue.of(13));
        assertThat(value(cells, "A4")).isEqualTo(CellValue.of(9));
        assertThat(value(cells, "A5")).isEqualTo(CellValue.of("roomy"));
        assertThat(value(cells, "B1")).isEqualTo(CellValue.of(1000));
        assertThat(report).isEqualTo(new SaveReport(1, 5, List.of(), report.replaced()));
        formulas.forEach(
                (address, formula) ->
                        assertThat(cells.get(at("Mine", address)).formula()).isEqualTo(formula));
    }

    @Test
    void cellThatTheProgramComputedOtherwiseIsDroppedWithItsReaders() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(mine("A1", "Ours!A1*2", 4.5), mine("A2", "A1*0+1", 1.0));
        assertThat(value(cells, "A1")).isEqualTo(CellValue.BLANK);
        assertThat(value(cells, "A2")).isEqualTo(CellValue.BLANK);
        assertThat(report.dropped()).containsExactly(at("Mine", "A1"), at("Mine", "A2"));
    }

    @Test
    void fifteenStoredDigitsAreEnoughForTrust() throws IOException {
        assertThat(value(after(mine("A1", "Ours!A1/3", 0.666666666666667)), "A1"))
                .isEqualTo(CellValue.of(1));
    }

    @Test
    void formulaWithoutStoredValueOnTheWayIsNotTrusted() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(mine("B1", "7+1", null), mine("A1", "B1+Ours!A1", 2.0));
        assertThat(value(cells, "A1")).isEqualTo(CellValue.BLANK);
    }

    @Test
    void formulasThatProgramsReadDifferentlyAreDropped() throws IOException {
        // POI computes -9 for the first, spreadsheet programs 9; at zero both agree.
        Map<CellPlace, CellContent> cells =
                after(
                        mine("A1", "-Ours!A1^2", -4.0),
                        mine("A2", "INDIRECT(\"Ours!A1\")", 2.0),
                        mine("A3", "TEXT(Ours!A1,\"0.0\")", "2.0"),
                        mine("A4", "OFFSET(Ours!A2,-1,0)", 2.0),
                        mine("A5", "UNKNOWNFUNCTION(Ours!A1)", 2.0),
                        mine("A6", "[9]Other!A1+Ours!A1", 2.0));
        for (String address : new String[] {"A1", "A2", "A3", "A4", "A5", "A6"}) {
            assertThat(value(cells, address)).as(address).isEqualTo(CellValue.BLANK);
        }
    }

    @Test
    void droppedValuesMakeProgramsComputeOnOpening() throws IOException {
        after(mine("A1", "Ours!A1*2", 4.5));
        try (XSSFWorkbook workbook =
                new XSSFWorkbook(Files.newInputStream(folder.resolve("book.xlsx")))) {
            assertThat(workbook.getForceFormulaRecalculation()).isTrue();
        }
    }

    @Test
    void arrayFormulasAndWhatIfTablesAreDroppedWhole() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(
                        workbook -> {
                            XSSFSheet mine = workbook.getSheet("Mine");
                            mine.setArrayFormula("Ours!A1:A2*2", CellRangeAddress.valueOf("A1:A2"));
                            cell(mine, "A1").getCTCell().setV("4");
                            cell(mine, "A2").getCTCell().setV("20");
                            cell(mine, "C4").getCTCell().addNewF().setStringValue("Ours!A1");
                            cell(mine, "C4").getCTCell().setV("2");
                            var table = cell(mine, "C5").getCTCell();
                            table.addNewF()
                                    .setT(
                                            org.openxmlformats.schemas.spreadsheetml.x2006.main
                                                    .STCellFormulaType.DATA_TABLE);
                            table.getF().setRef("C5:C6");
                            table.getF().setR1("E1");
                            table.setV("5");
                            cell(mine, "C6").setCellValue(6);
                        });
        assertThat(value(cells, "A1")).isEqualTo(CellValue.BLANK);
        assertThat(cells).doesNotContainKeys(at("Mine", "A2"), at("Mine", "C6"));
        assertThat(value(cells, "C5")).isEqualTo(CellValue.BLANK);
    }

    @Test
    void manyDependentsAreComputed() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(
                        workbook -> {
                            XSSFSheet mine = workbook.getSheet("Mine");
                            for (int i = 0; i < 5_001; i++) {
                                XSSFCell cell = mine.createRow(i).createCell(0);
                                cell.getCTCell().addNewF().setStringValue("Ours!A1*2");
                                cell.getCTCell().setV("4");
                            }
                        });
        assertThat(value(cells, "A1")).isEqualTo(CellValue.of(6));
        assertThat(report.recomputed()).isEqualTo(5_001);
    }

    @Test
    void formulasThatDependOnNothingChangedStay() throws IOException {
        Map<CellPlace, CellContent> cells =
                after(mine("A1", "NOSUCHTHING", null), mine("A2", "Ours!A2+5", 99.0));
        assertThat(value(cells, "A2")).isEqualTo(CellValue.of(99));
    }

    @Test
    void evaluatorIsAskedOnlyWhenFormulasDependOnWhatChanged() throws IOException {
        Path file = folder.resolve("plain.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet ours = workbook.createSheet("Ours");
            cell(ours, "A1").setCellFormula("1+1");
            cell(ours, "A2").setCellFormula("Mine!A1");
            cell(workbook.createSheet("Mine"), "A1").setCellValue("<f>text</f>");
            workbook.write(out);
        }
        boolean[] asked = {false};
        DependentFormulas asking =
                (book, cells, changes, unvalued) -> {
                    asked[0] = true;
                    assertThat(cells).containsExactly(at("Ours", "A2"));
                    assertThat(changes).containsOnly(Map.entry(at("Mine", "A1"), CellValue.of(3)));
                    return Map.of(at("Ours", "A2"), Optional.of(CellValue.of(4)));
                };
        XlsxBook book = XlsxBook.open(file, asking);
        book.write(Map.of(at("Ours", "A1"), CellValue.of(3)));
        SaveReport saved = book.save(file);
        assertThat(saved.changed()).isEqualTo(1);
        assertThat(asked[0]).isFalse();
        book = XlsxBook.open(file, asking);
        book.write(Map.of(at("Mine", "A1"), CellValue.of(3)));
        book.save(file);
        assertThat(asked[0]).isTrue();
        assertThat(XlsxBook.open(file).read(List.of(new Area("Ours", 1, 0, 1, 0))).filled())
                .containsOnly(
                        Map.entry(at("Ours", "A2"), CellContent.of(CellValue.of(4), "Mine!A1")));
    }
}
