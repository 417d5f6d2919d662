package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets shown and hidden in place, looked at with Apache POI. */
class SheetTabsTest {
    @TempDir private Path folder;

    @Test
    void hidesAndShowsByName() throws IOException {
        Path file = written(0);

        XlsxBook.open(file).saveSeenSheets(file, List.of("LATHE"), List.of("bench", "My notes"));

        try (XSSFWorkbook poi = opened(file)) {
            assertThat(poi.getSheetVisibility(poi.getSheetIndex("Bench")))
                    .isEqualTo(SheetVisibility.HIDDEN);
            assertThat(poi.getSheetVisibility(poi.getSheetIndex("Lathe")))
                    .isEqualTo(SheetVisibility.VISIBLE);
            assertThat(poi.getSheetVisibility(poi.getSheetIndex("My notes")))
                    .isEqualTo(SheetVisibility.HIDDEN);
        }
        assertThat(XlsxBook.open(file).seenSheets())
                .containsExactly(
                        Map.entry("First", true),
                        Map.entry("Bench", false),
                        Map.entry("Lathe", true),
                        Map.entry("My notes", false));
    }

    @Test
    void aHiddenSheetThatWasInFrontGivesTheFrontToTheNext() throws IOException {
        Path file = written(1);

        XlsxBook.open(file).saveSeenSheets(file, List.of(), List.of("Bench"));

        try (XSSFWorkbook poi = opened(file)) {
            assertThat(poi.getActiveSheetIndex()).isEqualTo(3);
            assertThat(poi.getSheet("Bench").isSelected()).isFalse();
            assertThat(poi.getSheet("My notes").isSelected()).isTrue();
            assertThat(poi.getFirstVisibleTab()).isEqualTo(3);
        }
    }

    @Test
    void theLastOneInFrontGivesTheFrontToItsLeft() throws IOException {
        Path file = written(3);

        XlsxBook.open(file).saveSeenSheets(file, List.of(), List.of("My notes"));

        try (XSSFWorkbook poi = opened(file)) {
            assertThat(poi.getActiveSheetIndex()).isEqualTo(1);
            assertThat(poi.getSheet("Bench").isSelected()).isTrue();
        }
    }

    @Test
    void whatIsSoAlreadyIsNotWritten() throws IOException {
        Path file = written(0);
        byte[] before = Files.readAllBytes(file);

        Replaced replaced =
                XlsxBook.open(file).saveSeenSheets(file, List.of("Bench"), List.of("Lathe"));

        assertThat(replaced.backup()).isEmpty();
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void refusesToHideTheLastOneToSee() throws IOException {
        Path file = written(0);
        byte[] before = Files.readAllBytes(file);
        XlsxBook book = XlsxBook.open(file);

        assertThatExceptionOfType(BookNotWritableException.class)
                .isThrownBy(
                        () ->
                                book.saveSeenSheets(
                                        file, List.of(), List.of("First", "Bench", "My notes")))
                .withMessageContaining("no sheet would be left to see");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void refusesWhereTheStructureIsProtected() throws IOException {
        Path file = written(0);
        try (XSSFWorkbook poi = opened(file)) {
            poi.lockStructure();
            write(poi, file);
        }
        XlsxBook book = XlsxBook.open(file);

        assertThatExceptionOfType(BookNotWritableException.class)
                .isThrownBy(() -> book.saveSeenSheets(file, List.of("Lathe"), List.of()))
                .withMessageContaining("structure of the workbook is protected");
    }

    @Test
    void saysWhichSheetThereIsNot() throws IOException {
        Path file = written(0);
        XlsxBook book = XlsxBook.open(file);

        assertThatExceptionOfType(NoSuchSheetException.class)
                .isThrownBy(() -> book.saveSeenSheets(file, List.of("Lath"), List.of()))
                .satisfies(
                        e -> {
                            assertThat(e.name()).isEqualTo("Lath");
                            assertThat(e.sheets())
                                    .containsExactly("First", "Bench", "Lathe", "My notes");
                        });
    }

    /** Four sheets, of which the third is hidden. */
    private Path written(int front) throws IOException {
        Path file = folder.resolve("tabs.xlsx");
        try (XSSFWorkbook poi = new XSSFWorkbook()) {
            for (String name : Arrays.asList("First", "Bench", "Lathe", "My notes")) {
                poi.createSheet(name).createRow(0).createCell(0).setCellValue(1);
            }
            poi.setSheetHidden(2, true);
            for (int i = 0; i < poi.getNumberOfSheets(); i++) {
                poi.getSheetAt(i).setSelected(i == front);
            }
            poi.setActiveSheet(front);
            poi.setFirstVisibleTab(front);
            write(poi, file);
        }
        return file;
    }

    private static void write(XSSFWorkbook poi, Path file) throws IOException {
        Path made = file.resolveSibling("made.xlsx");
        try (OutputStream out = Files.newOutputStream(made)) {
            poi.write(out);
        }
        Files.move(made, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static XSSFWorkbook opened(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }
}
