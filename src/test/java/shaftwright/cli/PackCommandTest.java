package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellValue;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.xlsx.XlsxBook;

/** The pack from the command line. */
class PackCommandTest {
    @TempDir private Path folder;

    @Test
    void everyFunctionIsListedAndTold() {
        String list = Run.of("functions").out();
        for (CellFunction function : Catalogue.all()) {
            assertThat(list).contains(function.signature());
            Run told = Run.of("functions", function.shortName().toLowerCase(java.util.Locale.ROOT));
            assertThat(told.code()).isZero();
            assertThat(told.out()).contains(function.meaning(), function.source(), "Example: =");
        }
    }

    @Test
    void unknownFunctionIsAMistakeOfTheCommandLine() {
        Run run = Run.of("functions", "reaches");

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("no function is called \"reaches\"");
    }

    @Test
    void packedWorkbookIsFilledAsBefore() throws IOException {
        Path file = Demo.inches(folder);
        assertThat(Run.of("pack", file).out()).contains("put in as named formulas");
        assertThat(Run.of("pack", file).out()).contains("they are in already");
        assertThat(Run.of("fill", file).code()).isZero();
        assertThat(Run.of("check", file).out()).contains("no errors, no warnings");
        assertThat(Run.of("pack", "--remove", file).out()).contains("taken out");
        assertThat(Run.of("pack", "--remove", file).out()).contains("there were none");
    }

    @Test
    void newWorkbooksCarryNoNamedFormulas() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(Demo.inches(folder)))) {
            assertThat(workbook.getAllNames())
                    .noneMatch(name -> name.getRefersToFormula().contains("LAMBDA"));
        }
    }

    @Test
    void checkNamesCellsThatNeedThePack() throws IOException {
        Path file = folder.resolve("own.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(Demo.inches(folder)));
                var out = Files.newOutputStream(file)) {
            var row = workbook.createSheet("Own").createRow(4);
            row.createCell(1).getCTCell().addNewF().setStringValue("IF(A1=0,0,SHAFT.REACH(7,3,2))");
            row.createCell(2).getCTCell().addNewF().setStringValue("\"see SHAFT.REACH(7,3)\"&A1");
            workbook.write(out);
        }
        String said = Run.of("check", file).out();

        assertThat(said)
                .contains("1 cell uses functions of the pack")
                .contains("sheet \"Own\", cell B5");
        assertThat(Run.of("fill", file).code()).isZero();
        assertThat(packNote(file))
                .startsWith("1 cell uses SHAFT functions (sheet \"Own\", cell B5)");
        assertThat(Run.of("check", Demo.inches(folder)).out()).doesNotContain("pack");
    }

    /** Once the cells are gone, so is the note. */
    @Test
    void firstSheetSaysNothingWhereNoCellNeedsThePack() throws IOException {
        Path file = folder.resolve("own.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(Demo.inches(folder)));
                var out = Files.newOutputStream(file)) {
            var note = new CellReference(workbook.getName("pack_note").getRefersToFormula());
            workbook.getSheet(note.getSheetName())
                    .getRow(note.getRow())
                    .getCell(note.getCol())
                    .setCellValue("1 cell uses SHAFT functions");
            workbook.write(out);
        }
        assertThat(Run.of("fill", file).code()).isZero();
        assertThat(packNote(file)).isEmpty();
    }

    private static String packNote(Path file) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get("pack_note");
        CellValue value = book.read(List.of(area)).at(area.place(0)).value();
        return value instanceof CellValue.Text text ? text.value() : "";
    }

    @Test
    void namedFormulasAreInTheWorkbooksUnit() throws IOException {
        Path file = Demo.inches(folder);
        assertThat(Run.of("pack", file).code()).isZero();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            assertThat(workbook.getName("SHAFT.MILLIMETRES").getRefersToFormula())
                    .contains("IF(_xlfn.ISOMITTED(_xlpm.lengthunit),unit,");
        }
    }
}
