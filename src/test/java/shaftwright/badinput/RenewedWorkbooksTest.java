package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.workbook.FirstVersion;
import shaftwright.xlsx.XlsxBook;

/** A workbook that its builder made much of, and what is left of that when it is made anew. */
class RenewedWorkbooksTest {
    private static final String OWN = "Budget";
    private static final int FAR = 40;

    @TempDir private static Path folder;

    private static SmallBook old;
    private static Path renewed;
    private static Run run;

    @BeforeAll
    static void renewAnEditedWorkbook() {
        old = SmallBook.in(folder);
        EditedByBuilder.edit(old.file(), RenewedWorkbooksTest::edit);
        assertThat(Run.of("pack", old.file()).code()).isZero();
        renewed = folder.resolve("renewed.xlsx");
        run = Run.of("renew", "--out", renewed, old.file());
        assertThat(run.code()).as(run.err()).isZero();
    }

    /** Moves, hides, renames, adds; each thing is looked for by one of the tests. */
    private static void edit(XSSFWorkbook workbook) {
        CellPlace height = old.place("height_left", 3);
        XSSFSheet measure = workbook.getSheet(height.sheet());
        measure.shiftRows(height.row(), measure.getLastRowNum(), 1);
        XSSFSheet scenarios = workbook.getSheet(old.place("hub_shift", 0).sheet());
        scenarios.shiftRows(0, scenarios.getLastRowNum(), 2);
        workbook.setSheetName(
                workbook.getSheetIndex(old.place("boot_name", 0).sheet()), "Bob's bits");
        workbook.setSheetOrder("Bob's bits", 0);
        workbook.setSheetName(workbook.getSheetIndex("Levers"), "What if");
        workbook.setSheetVisibility(workbook.getSheetIndex("Strength"), SheetVisibility.HIDDEN);
        own(workbook);

        CellPlace spacer = old.place("wheel_spacer", 0);
        XSSFCell typed = scenarios.getRow(spacer.row() + 2).getCell(spacer.column());
        typed.setCellFormula(OWN + "!A5/2");
        typed.setCellValue(0.25);
        CellPlace shift = old.place("hub_shift", 1);
        note(scenarios, shift.row() + 2, shift.column(), "as Joe measured it");
        scenarios.getRow(shift.row() + 2).createCell(FAR).setCellValue("ask Joe");
        XSSFCell beside = scenarios.getRow(shift.row() + 2).createCell(FAR + 1);
        beside.setCellFormula(typed.getAddress() + "*4");
        beside.setCellValue(1);
    }

    private static void own(XSSFWorkbook workbook) {
        XSSFSheet sheet = workbook.createSheet(OWN);
        sheet.setColumnWidth(0, 7_000);
        sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 2));
        XSSFFont bold = workbook.createFont();
        bold.setBold(true);
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFont(bold);
        sheet.createRow(0).createCell(0).setCellValue("What it will cost");
        sheet.getRow(0).getCell(0).setCellStyle(style);
        sheet.createRow(4).createCell(0).setCellValue(0.5);
        CellPlace cost = old.place("cost_total", 0);
        XSSFCell twice = sheet.createRow(5).createCell(0);
        twice.setCellFormula("2*'" + cost.sheet() + "'!" + shifted(cost) + "+SUM(cost_total)*0");
        CellValue was = old.value("cost_total", 0);
        twice.setCellValue(2 * ((CellValue.Numeric) was).value());
        XSSFCell tried = sheet.createRow(6).createCell(0);
        tried.setCellFormula("COUNTA('What if'!A:A)+LEN('What if'!A1)");
        tried.setCellValue(1);
        note(sheet, 5, 0, "both shafts");
        sheet.createDrawingPatriarch().createChart(new XSSFClientAnchor(0, 0, 0, 0, 4, 4, 9, 14));
        var name = workbook.createName();
        name.setNameName("my_budget");
        name.setRefersToFormula(OWN + "!$A$6");
    }

    /** Results stand on the scenarios' sheet, which was moved down. */
    private static String shifted(CellPlace place) {
        int rows = place.sheet().equals(old.place("hub_shift", 0).sheet()) ? 2 : 0;
        return new CellPlace(place.sheet(), place.row() + rows, place.column()).address();
    }

    private static void note(XSSFSheet sheet, int row, int column, String words) {
        XSSFComment note =
                sheet.createDrawingPatriarch()
                        .createCellComment(
                                new XSSFClientAnchor(
                                        0, 0, 0, 0, column + 1, row, column + 3, row + 3));
        note.setString(words);
        note.setAuthor("Bob");
        note.setAddress(row, column);
    }

    private static Area area(String name) {
        return XlsxBook.open(renewed).names().get(name);
    }

    private static XSSFCell cell(XSSFWorkbook workbook, CellPlace place) {
        return workbook.getSheet(place.sheet()).getRow(place.row()).getCell(place.column());
    }

    @Test
    void resultsAreThoseOfTheOldWorkbook() {
        assertThat(json(renewed)).isEqualTo(json(old.file()));
    }

    private static String json(Path file) {
        Run run = Run.of("show", "--json", file);
        assertThat(run.code()).as(run.err()).isZero();
        String out = run.out();
        return out.substring(out.indexOf("\"unit\""));
    }

    @Test
    void insertedRowIsStillThere() {
        assertThat(area("height_left").size()).isEqualTo(16);
    }

    @Test
    void sheetsKeepTheirNamesOrderAndHiding() {
        List<String> before = new ArrayList<>(XlsxBook.open(old.file()).sheetNames());
        before.replaceAll(name -> name.equals("What if") ? "Levers" : name);

        assertThat(XlsxBook.open(renewed).sheetNames()).isEqualTo(before);
        assertThat(before).startsWith("Bob's bits").endsWith(OWN);
        EditedByBuilder.look(
                renewed,
                workbook ->
                        assertThat(workbook.getSheetVisibility(workbook.getSheetIndex("Strength")))
                                .isEqualTo(SheetVisibility.HIDDEN));
    }

    @Test
    void formulaInATypedCellIsStillThereAndIsComputedWith() {
        EditedByBuilder.look(
                renewed,
                workbook -> {
                    XSSFCell typed = cell(workbook, area("wheel_spacer").place(0));
                    assertThat(typed.getCellFormula()).isEqualTo(OWN + "!A5/2");
                    assertThat(typed.getNumericCellValue()).isEqualTo(0.25);
                });
    }

    @Test
    void notesStayOnTheirCells() {
        EditedByBuilder.look(
                renewed,
                workbook -> {
                    CellPlace shift = area("hub_shift").place(1);
                    XSSFComment note =
                            workbook.getSheet(shift.sheet())
                                    .getCellComment(new CellAddress(shift.row(), shift.column()));
                    assertThat(note.getString().getString()).isEqualTo("as Joe measured it");
                    assertThat(note.getAuthor()).isEqualTo("Bob");
                    assertThat(
                                    workbook.getSheet(OWN)
                                            .getCellComment(new CellAddress(5, 0))
                                            .getString()
                                            .getString())
                            .isEqualTo("both shafts");
                });
    }

    /** The old sheet had two rows more at its top. */
    @Test
    void cellsBesideTheToolsMoveWithThem() {
        EditedByBuilder.look(
                renewed,
                workbook -> {
                    CellPlace shift = area("hub_shift").place(1);
                    var row = workbook.getSheet(shift.sheet()).getRow(shift.row());
                    assertThat(row.getCell(FAR).getStringCellValue()).isEqualTo("ask Joe");
                    assertThat(row.getCell(FAR + 1).getCellFormula())
                            .isEqualTo(area("wheel_spacer").place(0).address() + "*4");
                    assertThat(row.getCell(FAR + 1).getNumericCellValue()).isEqualTo(1);
                });
    }

    @Test
    void ownSheetReadsTheSameCells() {
        CellPlace cost = area("cost_total").place(0);
        EditedByBuilder.look(
                renewed,
                workbook -> {
                    XSSFSheet sheet = workbook.getSheet(OWN);
                    assertThat(sheet.getRow(5).getCell(0).getCellFormula().replace("'", ""))
                            .isEqualTo(
                                    "2*"
                                            + cost.sheet()
                                            + "!"
                                            + cost.address()
                                            + "+SUM(cost_total)*0");
                    assertThat(sheet.getRow(5).getCell(0).getNumericCellValue())
                            .isEqualTo(2 * cell(workbook, cost).getNumericCellValue());
                });
    }

    /** It had another usual name once, which a builder did not choose. */
    @Test
    void ownFormulasReadTheSheetOfLeversUnderItsPresentName() {
        EditedByBuilder.look(
                renewed,
                workbook ->
                        assertThat(
                                        workbook.getSheet(OWN)
                                                .getRow(6)
                                                .getCell(0)
                                                .getCellFormula()
                                                .replace("'", ""))
                                .isEqualTo("COUNTA(Levers!A:A)+LEN(Levers!A1)"));
    }

    @Test
    void functionsOfThePackAreStillThere() {
        assertThat(Run.of("pack", "--out", folder.resolve("packed.xlsx"), renewed).code()).isZero();
        assertThat(FileParts.of(folder.resolve("packed.xlsx")).text("xl/workbook.xml"))
                .isEqualTo(FileParts.of(renewed).text("xl/workbook.xml"))
                .contains("_xlfn.LAMBDA(");
    }

    @Test
    void ownSheetLooksAsItDid() {
        EditedByBuilder.look(
                renewed,
                workbook -> {
                    XSSFSheet sheet = workbook.getSheet(OWN);
                    XSSFCell title = sheet.getRow(0).getCell(0);
                    assertThat(title.getStringCellValue()).isEqualTo("What it will cost");
                    assertThat(title.getCellStyle().getFont().getBold()).isTrue();
                    assertThat(sheet.getColumnWidth(0)).isEqualTo(7_000);
                    assertThat(sheet.getMergedRegions())
                            .containsExactly(new CellRangeAddress(0, 0, 0, 2));
                    assertThat(workbook.getName("my_budget").getRefersToFormula())
                            .isEqualTo(OWN + "!$A$6");
                });
    }

    @Test
    void whatCannotComeAlongIsNamed() {
        assertThat(run.out().lines().filter(line -> line.contains("left behind")))
                .containsExactly("warning: left behind: 1 chart on sheet \"Budget\".");
    }

    @Test
    void renewingOnceMoreChangesNothing() throws java.io.IOException {
        Path again = folder.resolve("again.xlsx");

        assertThat(Run.of("renew", "--out", again, renewed).code()).isZero();

        FileParts first = FileParts.of(renewed);
        FileParts second = FileParts.of(again);
        assertThat(second.parts()).containsOnlyKeys(first.parts().keySet());
        assertThat(first.parts().keySet())
                .allSatisfy(part -> assertThat(second.text(part)).isEqualTo(first.text(part)));
    }

    /** It is refused by the library that the other sheets are copied with. */
    @Test
    void bitmapThatCompressesWellKeepsNothingElseFromComingAlong() {
        Path file = plain("bitmap.xlsx");
        EditedByBuilder.edit(
                file,
                workbook -> {
                    XSSFSheet sheet = workbook.createSheet("Photo");
                    sheet.createRow(0).createCell(0).setCellValue("of the old shaft");
                    sheet.createDrawingPatriarch()
                            .createPicture(
                                    new XSSFClientAnchor(0, 0, 0, 0, 2, 2, 5, 9),
                                    workbook.addPicture(
                                            new byte[8 << 20], XSSFWorkbook.PICTURE_TYPE_BMP));
                });

        Run renewal = Run.of("renew", file);

        assertThat(renewal.code()).as(renewal.err()).isZero();
        assertThat(renewal.out())
                .containsOnlyOnce("left behind")
                .contains("left behind: 1 picture or shape on sheet \"Photo\".");
        EditedByBuilder.look(
                file,
                workbook ->
                        assertThat(workbook.getSheet("Photo").getRow(0).getCell(0).toString())
                                .isEqualTo("of the old shaft"));
    }

    @Test
    void drawingThatCannotBeReadStaysBehindAlone() {
        Path file = folder.resolve("torn.xlsx");
        Path made = folder.resolve("untorn.xlsx");
        FileParts parts = FileParts.of(old.file());
        String sheet = parts.sheet(OWN);
        String links = parts.text(sheet.replace("sheets/", "sheets/_rels/") + ".rels");
        String drawing = links.replaceAll("(?s).*(drawings/drawing[0-9]+\\.xml).*", "xl/$1");
        parts.put(drawing, "<xdr:wsDr").write(file);

        Run renewal = Run.of("renew", "--out", made, file);

        assertThat(renewal.code()).as(renewal.err()).isZero();
        assertThat(renewal.out())
                .containsOnlyOnce("left behind")
                .contains("left behind: 1 drawing on sheet \"" + OWN + "\".");
        assertThat(json(made)).isEqualTo(json(file));
        EditedByBuilder.look(
                made,
                workbook ->
                        assertThat(
                                        workbook.getSheet(OWN)
                                                .getCellComment(new CellAddress(5, 0))
                                                .getString()
                                                .getString())
                                .isEqualTo("both shafts"));
    }

    @Test
    void whatIsTypedComesAlongFromAFileThatIsReadInPartOnly() {
        Path file = folder.resolve("styles.xlsx");
        Path made = folder.resolve("without.xlsx");
        FileParts.of(old.file())
                .put("xl/styles.xml", "<styleSheet><fonts></styleSheet>")
                .write(file);

        Run renewal = Run.of("renew", "--out", made, file);

        assertThat(renewal.code()).as(renewal.err()).isZero();
        assertThat(renewal.out())
                .containsOnlyOnce("left behind")
                .contains("left behind: the sheet \"" + OWN + "\", your notes, names and cells")
                .contains("a part of the file can't be read.");
        assertThat(json(made)).isEqualTo(json(file));
        assertThat(XlsxBook.open(made).sheetNames()).startsWith("Bob's bits").doesNotContain(OWN);
    }

    private static Path plain(String name) {
        return SmallBook.at(folder.resolve(name)).file();
    }

    @Test
    void headingsOfAnEarlierVersionThatLostTheirLooksAreNotTakenForTheBuildersOwn() {
        Path file = FirstVersion.copyTo(folder.resolve("plain.xlsx"));
        FileParts parts = FileParts.of(file);
        String sheet = parts.sheet("What if");
        parts.put(sheet, parts.text(sheet).replaceAll("(<c [^>]*?) s=\"[0-9]+\"", "$1"))
                .write(file);

        Run renewal = Run.of("renew", "--out", folder.resolve("looks.xlsx"), file);

        assertThat(renewal.code()).as(renewal.err()).isZero();
        assertThat(renewal.out()).doesNotContain("left behind");
    }

    @Test
    void workbookOfTheFirstVersionShowsTheSameWhenItIsRenewed() {
        Path first = FirstVersion.copyTo(folder.resolve("first.xlsx"));
        String before = withoutWarnings(json(first));

        Run renewal = Run.of("renew", first);

        assertThat(renewal.code()).as(renewal.err()).isZero();
        assertThat(renewal.out())
                .contains("renewed from contract version 1 to ")
                .contains("the previous file is first.backup.xlsx")
                .doesNotContain("left behind");
        assertThat(withoutWarnings(json(first))).isEqualTo(before);
        assertThat(Run.of("check", first).out()).contains("no errors", "no overwritten");
        assertThat(XlsxBook.open(first).sheetNames()).contains("Levers").doesNotContain("What if");
    }

    private static String withoutWarnings(String json) {
        return json.substring(0, json.indexOf("\"warnings\""));
    }

    @Test
    void nameThatIsGoneKeepsAWorkbookFromBeingRenewed() {
        Path file = FirstVersion.copyTo(folder.resolve("gone.xlsx"));
        FileParts parts = FileParts.of(file);
        String text = parts.text("xl/workbook.xml");
        parts.put(
                        "xl/workbook.xml",
                        text.replace("name=\"boot_name\"", "name=\"boot_name_of_old\""))
                .write(file);

        Run refused = Run.of("renew", file);

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("the defined name boot_name", "nothing was written");
    }
}
