package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.office.CalcWithExtension;
import shaftwright.workbook.CellContent;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.xlsx.XlsxBook;

/** The extension's menu, driven in a LibreOffice without windows. */
class MenuInCalcTest {
    private static final String SCRIPT = "menu_in_calc.py";
    private static final String WIDER = "hub_shift[0]=1";

    private static CalcWithExtension calc;

    @TempDir private Path folder;

    @BeforeAll
    static void install() throws IOException {
        calc = CalcWithExtension.installed();
    }

    @AfterAll
    static void remove() throws IOException {
        calc.close();
    }

    @Test
    void fillingInCalcGivesWhatFillingTheFileGives() throws IOException {
        Path file = Demo.inches(folder);
        Path filled = folder.resolve("filled.xlsx");
        assertThat(Run.of("fill", "--set", "hub_shift[A]=1", "--out", filled, file).code()).isZero();

        Path saved = folder.resolve("saved.xlsx");
        String said = commands(file, saved, WIDER, "fill", "check", "fill");

        assertThat(said).contains("fill|SUCCESS|Filled: ").contains("Nothing is saved yet.");
        assertThat(said).contains("check|SUCCESS|Checked: no errors, no warnings, no overwritten");
        assertThat(said).contains("fill|SUCCESS|Filled: no figure changed.");
        assertThat(differences(filled, saved)).isEmpty();
    }

    @Test
    void oneUndoTakesAFillBack() throws IOException {
        Path file = Demo.inches(folder);
        Path before = folder.resolve("before.xlsx");
        Path after = folder.resolve("after.xlsx");
        commands(file, before, WIDER);
        String said = commands(file, after, WIDER, "fill", "undo");

        assertThat(said).doesNotContain("no figure changed");
        assertThat(differences(before, after)).isEmpty();
    }

    @Test
    void spoiltWorkbookIsLeftAsItIs() throws IOException {
        Path file = Demo.inches(folder);
        Path before = folder.resolve("before.xlsx");
        Path after = folder.resolve("after.xlsx");
        String spoilt = "distance_first_left[2]=25 3/0";
        commands(file, before, spoilt);
        String said = commands(file, after, spoilt, "fill");

        assertThat(said).contains("fill|FAILURE|Not filled, nothing was changed.").contains("25 3/0");
        assertThat(differences(before, after)).isEmpty();
    }

    @Test
    void newWorkbookOpensBesideTheOpenOne() throws IOException {
        Path file = Demo.inches(folder);
        byte[] untouched = Files.readAllBytes(file);
        String said = commands(file, folder.resolve("saved.xlsx"), "new-mm", "new-inch");

        assertThat(said).contains("windows|SUCCESS|3").contains("modified|SUCCESS|False");
        assertThat(Files.readAllBytes(file)).isEqualTo(untouched);
    }

    @Test
    void otherSpreadsheetIsRefused() throws IOException {
        Path other = folder.resolve("other.fods");
        Files.writeString(
                other,
                """
                <?xml version="1.0" encoding="UTF-8"?>
                <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
                <office:body><office:spreadsheet><table:table table:name="Other"><table:table-row><table:table-cell/></table:table-row></table:table></office:spreadsheet></office:body></office:document>
                """);
        String said = commands(other, folder.resolve("saved.xlsx"), "fill", "check");

        assertThat(said).contains("fill|FAILURE|Not filled, nothing was changed.");
        assertThat(said).contains("check|FAILURE|").contains("a sizing workbook");
    }

    private String commands(Path file, Path saved, String... commands) throws IOException {
        List<String> arguments = new ArrayList<>(List.of(file.toString(), saved.toString()));
        arguments.addAll(List.of(commands));
        String said = calc.script(SCRIPT, arguments.toArray(String[]::new));
        assertThat(saved).as(said).isRegularFile();
        return said;
    }

    /** All named cells whose values differ, in words. */
    private static List<String> differences(Path expected, Path actual) {
        Map<CellPlace, CellContent> wanted = cells(expected);
        Map<CellPlace, CellContent> found = cells(actual);
        List<String> differences = new ArrayList<>();
        for (Map.Entry<CellPlace, CellContent> cell : wanted.entrySet()) {
            CellValue value = found.getOrDefault(cell.getKey(), CellContent.EMPTY).value();
            if (!agree(cell.getValue().value(), value)) {
                differences.add(
                        cell.getKey() + ": " + value + ", not " + cell.getValue().value());
            }
        }
        assertThat(wanted).hasSizeGreaterThan(10_000);
        return differences;
    }

    private static Map<CellPlace, CellContent> cells(Path file) {
        XlsxBook book = XlsxBook.open(file);
        return book.read(book.names().values());
    }

    private static boolean agree(CellValue a, CellValue b) {
        if (a instanceof CellValue.Numeric x && b instanceof CellValue.Numeric y) {
            double largest = Math.max(Math.abs(x.value()), Math.abs(y.value()));
            return Math.abs(x.value() - y.value()) <= 1e-9 * largest + 1e-9;
        }
        return isNothing(a) && isNothing(b) || a.equals(b);
    }

    private static boolean isNothing(CellValue value) {
        return value instanceof CellValue.Blank
                || value instanceof CellValue.Text text && text.value().isEmpty();
    }
}
