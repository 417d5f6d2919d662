package shaftwright.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;
import shaftwright.office.SpreadsheetPrograms;

/** A fill of what another program saved adds no finding to those that the program's file had. */
class SavedByOthersTest {
    @TempDir private Path folder;

    @Test
    void fillAddsNothingToLibreOfficesFile() throws Exception {
        Path demo = MadeWorkbook.DEMO_INCH.in(folder);
        fillAddsNothing(
                SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(demo)).get(0));
    }

    @Test
    void fillAddsNothingToGnumericsFile() throws Exception {
        Path demo = MadeWorkbook.DEMO_INCH.in(folder);
        fillAddsNothing(SpreadsheetPrograms.recalculatedByGnumeric(folder, demo));
    }

    @Test
    void fillAddsNothingToOpenpyxlsFile() throws Exception {
        Path demo = MadeWorkbook.DEMO_INCH.in(folder);
        Path saved = folder.resolve("openpyxl.xlsx");
        String said =
                SpreadsheetPrograms.run(
                        folder,
                        List.of(
                                "/usr/bin/python3",
                                "-c",
                                "import sys, openpyxl;"
                                        + " openpyxl.load_workbook(sys.argv[1]).save(sys.argv[2])",
                                demo.toString(),
                                saved.toString()));
        assertThat(saved).as(said).exists();
        fillAddsNothing(saved);
    }

    private void fillAddsNothing(Path saved) throws Exception {
        Path filled = folder.resolve("filled.xlsx");
        Files.copy(saved, filled);
        Run run = Run.of("fill", "--set", "height_left[2]=13 5/8", filled);
        assertThat(run.code()).as(run.err()).isZero();

        List<Finding> found = all(filled);
        if (!found.isEmpty()) {
            all(saved).forEach(found::remove);
        }
        assertThat(found).isEmpty();
    }

    private List<Finding> all(Path file) {
        List<Finding> findings = new ArrayList<>(OpenXmlSdk.findings(folder, file));
        findings.addAll(SchemaCheck.of(file));
        findings.addAll(PackageCheck.of(file));
        return findings;
    }
}
