package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.contract.Contract;
import shaftwright.xlsx.XlsxBook;

/** Workbooks that a builder has rearranged, or damaged, in a spreadsheet program. */
class EditedWorkbooksTest {
    private static final String WORKBOOK = "xl/workbook.xml";

    @TempDir private Path folder;

    private SmallBook book() {
        return SmallBook.in(folder);
    }

    private static SmallBook withoutName(SmallBook book, String name) {
        FileParts parts = FileParts.of(book.file());
        String text = parts.text(WORKBOOK);
        int start = text.indexOf("<definedName name=\"" + name + "\"");
        int end = text.indexOf("</definedName>", start) + "</definedName>".length();
        assertThat(start).isPositive();
        parts.put(WORKBOOK, text.substring(0, start) + text.substring(end)).write(book.file());
        return book;
    }

    @Test
    void deletedNameOfAnInputIsNamedWithWhatItIsFor() {
        Refusal.of(withoutName(book(), "ride_height_left"))
                .says(
                        "error: shafts.xlsx: the defined name ride_height_left: found no cells of"
                                + " that name",
                        "\"Outer datum height at ride\"; bring the name back")
                .only(1);
    }

    @Test
    void deletedNameOfAResultIsNamed() {
        Refusal.of(withoutName(book(), "e_final_left"))
                .says("the defined name e_final_left: found no cells of that name")
                .only(1);
    }

    @Test
    void nameWhoseCellsWereDeletedIsNamed() {
        SmallBook book = book();
        FileParts parts = FileParts.of(book.file());
        String text = parts.text(WORKBOOK);
        int start = text.indexOf('>', text.indexOf("<definedName name=\"boot_name\"")) + 1;
        int end = text.indexOf("</definedName>", start);
        parts.put(WORKBOOK, text.substring(0, start) + "#REF!" + text.substring(end))
                .write(book.file());

        Refusal.of(book).says("the defined name boot_name: found no cells of that name");
    }

    @Test
    void workbookOfSomeOtherKind() {
        Refusal.of(withoutName(book(), Contract.VERSION_NAME))
                .says("found no cell named shaftwright_contract; expected a sizing workbook")
                .only(1);
    }

    @Test
    void versionThatNeverWas() {
        Refusal.of(book().put(Contract.VERSION_NAME, 0, 0.0))
                .names(
                        Contract.VERSION_NAME,
                        0,
                        "0",
                        "version " + Contract.VERSION + " or lower, as the workbook was made with")
                .only(1);
    }

    @Test
    void newerWorkbook() {
        Refusal.of(book().put(Contract.VERSION_NAME, 0, Contract.VERSION + 1.0))
                .names(
                        Contract.VERSION_NAME,
                        0,
                        "" + (Contract.VERSION + 1),
                        "version "
                                + Contract.VERSION
                                + " or lower; the workbook was made by a newer program")
                .only(1);
    }

    @Test
    void clearedVersion() {
        Refusal.of(book().clear(Contract.VERSION_NAME, 0))
                .names(Contract.VERSION_NAME, 0, "nothing", "version " + Contract.VERSION)
                .only(1);
    }

    @Test
    void renamedMovedAndHiddenSheetsAreFilled() {
        SmallBook book = book();
        String measure = book.place("height_left", 0).sheet();
        EditedByBuilder.edit(
                book.file(),
                workbook -> {
                    workbook.setSheetName(workbook.getSheetIndex(measure), "Bob's tape & pencil");
                    workbook.setSheetOrder("Bob's tape & pencil", 0);
                    workbook.setSheetHidden(2, true);
                });

        Run run = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).as(run.err()).isZero();
        assertSameResultAs(book, "hub_shift[A]=1/2");
    }

    @Test
    void rowsInsertedAmongTheReadingsAreFilled() {
        insertedRowIsFilled("height_left", 16);
    }

    /** These have no figures: no scenario has points of its own. */
    @Test
    void rowsInsertedAmongFiguresOfAFillAreFilled() {
        insertedRowIsFilled("own_fore_aft_left", 25);
    }

    private void insertedRowIsFilled(String name, int rows) {
        SmallBook book = withRows(name, 1);
        assertThat(XlsxBook.open(book.file()).names().get(name).size()).isEqualTo(rows);

        Run run = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).as(run.err()).isZero();
        assertSameResultAs(book, "hub_shift[A]=1/2");
    }

    /** Finished length of the left shaft of scenario A, beside that of a book nobody has edited. */
    private void assertSameResultAs(SmallBook edited, String set) {
        SmallBook untouched = SmallBook.at(folder.resolve("untouched.xlsx"));
        CellValue old = untouched.value("e_final_left", 0);
        Run.of("fill", "--set", set, untouched.file());
        XlsxBook book = XlsxBook.open(edited.file());
        var area = book.names().get("e_final_left");

        assertThat(book.read(List.of(area)).at(area.place(0)).value())
                .isEqualTo(untouched.value("e_final_left", 0))
                .isNotEqualTo(old);
    }

    @Test
    void overwrittenFormulaStaysAndIsSaid() {
        SmallBook book = book();
        CellPlace place = book.place("e_final_left", 0);
        EditedByBuilder.edit(
                book.file(),
                workbook -> {
                    var cell =
                            workbook.getSheet(place.sheet())
                                    .getRow(place.row())
                                    .getCell(place.column());
                    cell.removeFormula();
                    cell.setCellValue(640);
                });

        Run run = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + place, "found 640 in place of a formula");
        assertThat(book.value("e_final_left", 0)).isEqualTo(CellValue.of(640));
    }

    @Test
    void letterOfAScenarioThatWasClearedIsNamed() {
        Refusal.of(book().clear("scenario_letter", 1))
                .names("scenario_letter", 1, "no letter", "the letter B")
                .only(1);
    }

    @Test
    void deletedScenarioColumnIsSaidOnce() {
        SmallBook book = book();
        CellPlace place = book.place("scenario_letter", 1);
        EditedByBuilder.edit(
                book.file(),
                workbook -> {
                    XSSFSheet sheet = workbook.getSheet(place.sheet());
                    sheet.shiftColumns(place.column() + 1, place.column() + 40, -1);
                });

        Refusal.of(book)
                .names(
                        "scenario_letter",
                        0,
                        "1 scenario column",
                        "2 scenario columns, as the workbook was made with")
                .only(1);
    }

    @Test
    void moreJointsThanCanBeReadAreRefusedAtTheFirstTooMany() {
        SmallBook book = withRows("joint_name", 5);
        typeBelow(book, "joint_name", 20, "one joint too many");
        typeBelow(book, "bench_joint", 5, "one joint too many");

        Refusal.of(book)
                .says("\"one joint too many\", a row more than can be read", "at most 20 rows")
                .says("\"one joint too many\"; expected a name in the joint table");
    }

    @Test
    void eightyJointsTooManyAreOneMessage() {
        SmallBook book = withRows("joint_name", 84);
        for (int row = 20; row < 100; row++) {
            typeBelow(book, "joint_name", row, "joint " + row);
        }

        Refusal.of(book)
                .says("\"joint 20\", with it 80 rows more than can be read", "at most 20 rows")
                .only(1);
    }

    /** Their rows have no names that are read: the third is ride, or the third pick-up point. */
    @Test
    void rowsInsertedWhereEachStandsForSomethingAreRefused() {
        for (String name : List.of("built_play_left", "point_ahead_left")) {
            SmallBook book = withRows(name, 1, 1);

            int rows = Contract.input(name.replace("_left", "")).grid().rows();
            Refusal.of(book)
                    .says(
                            book.place(name, 0).sheet(),
                            rows + 1 + " rows; expected " + rows + " rows, each of which stands")
                    .only(1);
        }
    }

    @Test
    void moreReadingsThanCanBeReadAreRefused() {
        SmallBook book = withRows("height_left", 6);
        typeBelow(book, "height_left", 20, "24");
        typeBelow(book, "distance_first_left", 20, "25");

        Refusal.of(book).says("more rows than can be read", "at most 20 rows").only(1);
    }

    @Test
    void formulasBelowRowsInsertedAmongReadingsAreComparedToo() {
        String before = Run.of("check", book().file()).out();

        Run run = Run.of("check", withRows("height_left", 3).file());

        assertThat(run.err()).isEmpty();
        assertThat(before).doesNotContain("another formula");
        assertThat(run.out()).doesNotContain("another formula");
    }

    @Test
    void shopCardsOfAScenarioThatIsNotThereAreWarnedOf() {
        SmallBook book = book().put("shop_scenario", 0, "Z");

        Run run = Run.of("fill", book.file());

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("warning: shafts.xlsx: " + book.place("shop_scenario", 0))
                .contains("found \"Z\"; expected a letter from A to B; the shop cards stay empty.");
    }

    @Test
    void unitInCapitalsIsTheSameUnit() {
        String small = Run.of("check", book().put("unit", 0, "mm").file()).out();
        String capital = Run.of("check", book().put("unit", 0, "MM").file()).out();

        // Bare inches taken for millimetres draw warnings.
        assertThat(small).contains("found \"84\" (84 mm)");
        assertThat(capital).isEqualTo(small);
    }

    /** Rows inserted behind the third of a table. */
    private SmallBook withRows(String name, int rows) {
        return withRows(name, 3, rows);
    }

    private SmallBook withRows(String name, int behind, int rows) {
        SmallBook book = book();
        CellPlace place = book.place(name, behind);
        EditedByBuilder.edit(
                book.file(),
                workbook -> {
                    XSSFSheet sheet = workbook.getSheet(place.sheet());
                    sheet.shiftRows(place.row(), sheet.getLastRowNum(), rows);
                });
        return book;
    }

    /** Types into a cell by the place that its name has now. */
    private static void typeBelow(SmallBook book, String name, int offset, String text) {
        XlsxBook now = XlsxBook.open(book.file());
        now.write(Map.of(now.names().get(name).place(offset), CellValue.of(text)));
        now.save(book.file());
    }

    @Test
    void deletedSheetIsSaidInOneLine() {
        SmallBook book = book();
        String working = book.place("e_final_left", 0).sheet();
        EditedByBuilder.edit(
                book.file(), workbook -> workbook.removeSheetAt(workbook.getSheetIndex(working)));

        Refusal.of(book)
                .says(
                        "the defined names ",
                        " more: found no cells of these names",
                        "bring back the sheet that was deleted")
                .only(1);
    }

    @Test
    void macrosAreKept() {
        SmallBook book = SmallBook.at(folder.resolve("shafts.xlsm"));
        byte[] macros = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1, 2, 3};
        FileParts.of(book.file())
                .replace(
                        "[Content_Types].xml",
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml")
                .replace(
                        "[Content_Types].xml",
                        "</Types>",
                        "<Override PartName=\"/xl/vbaProject.bin\""
                                + " ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>")
                .replace(
                        "xl/_rels/workbook.xml.rels",
                        "</Relationships>",
                        "<Relationship Id=\"macros\" Target=\"vbaProject.bin\""
                                + " Type=\"http://schemas.microsoft.com/office/2006/relationships/vbaProject\"/>"
                                + "</Relationships>")
                .put("xl/vbaProject.bin", macros)
                .write(book.file());

        Run run = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).as(run.err()).isZero();
        FileParts filled = FileParts.of(book.file());
        assertThat(filled.parts().get("xl/vbaProject.bin")).isEqualTo(macros);
        assertThat(filled.text("[Content_Types].xml")).contains("macroEnabled.main+xml");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("shafts.xlsm", "shafts.backup.xlsm");
    }
}
