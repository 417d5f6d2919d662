package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clearing authors from the command line, in a workbook that a builder saved under a name. */
class ClearAuthorsCommandTest {
    @TempDir private Path folder;

    @Test
    void aClearedCopyFillsAndChecksAsBefore() throws IOException {
        Path file = signedDemo();
        byte[] before = Files.readAllBytes(file);
        Path copy = folder.resolve("to-send.xlsx");

        Run run = Run.of("clear-authors", "--out", copy, file);

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("2 names of authors taken out");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(Run.of("check", copy).out()).contains("no errors, no warnings");
        assertThat(Run.of("clear-authors", copy).out()).contains("no authors in it");
    }

    @Test
    void inPlaceTheFileWithNamesIsKeptAndToldOf() throws IOException {
        Path file = signedDemo();
        byte[] before = Files.readAllBytes(file);

        Run run = Run.of("clear-authors", file);

        assertThat(run.out()).contains("The previous file, authors and all, is");
        assertThat(run.out()).contains("signed.backup.xlsx");
        assertThat(Files.readAllBytes(folder.resolve("signed.backup.xlsx"))).isEqualTo(before);
    }

    private Path signedDemo() throws IOException {
        Path file = folder.resolve("signed.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(Demo.inches(folder)))) {
            workbook.getProperties().getCoreProperties().setCreator("Invented Author");
            workbook.getProperties().getExtendedProperties().setManager("Invented Author");
            try (var out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
        }
        return file;
    }
}
