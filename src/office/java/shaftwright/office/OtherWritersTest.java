package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/**
 * The demo with another tyre and a corrected reading, typed by libraries that write workbooks and
 * compute nothing: the commands work on what they saved, and say what they lost.
 */
class OtherWritersTest {
    private static final List<String> EDITS =
            List.of("tyre_size", "0", "31x10.50R15", "distance_first_left", "2", "24 1/4");

    private static final String MODULES = "target/node/node_modules";

    @TempDir static Path folder;

    private static Path demo;

    /** What {@code show --json} says of the same edits made by the tool itself. */
    private static String expected;

    @BeforeAll
    static void editByTheTool() {
        demo = folder.resolve("demo.xlsx");
        succeeds("new", "--demo", demo);
        Path edited = folder.resolve("edited.xlsx");
        List<Object> fill = new ArrayList<>(List.of("fill", "--out", edited));
        for (int edit = 0; edit < EDITS.size(); edit += 3) {
            boolean scenario = EDITS.get(edit).equals("tyre_size");
            fill.add("--set");
            fill.add(EDITS.get(edit) + (scenario ? "[A]=" : "[3]=") + EDITS.get(edit + 2));
        }
        fill.add(demo);
        succeeds(fill.toArray());
        expected = shown(edited);
        assertThat(expected).isNotEqualTo(shown(demo));
    }

    private static String succeeds(Object... command) {
        Run run = Run.of(command);
        assertThat(run.code()).as(run.out() + run.err()).isZero();
        return run.out();
    }

    private static String shown(Path file) {
        String json = succeeds("show", "--json", file);
        return json.replace("\"" + file.getFileName() + "\"", "the file");
    }

    @Test
    void exceljsLosesChartsAndPictures() throws IOException {
        Path saved = folder.resolve("exceljs.xlsx");
        runs("node", "src/office/node/edit.mjs", modules(), "exceljs", saved);

        expectFigures(saved, "found no charts or pictures;");
    }

    @Test
    void sheetJsLosesAllButCells() throws IOException {
        Path saved = folder.resolve("sheetjs.xlsx");
        runs("node", "src/office/node/edit.mjs", modules(), "xlsx", saved);

        expectFigures(
                saved, "found no charts, pictures, drop-down lists, highlights or page layouts;");
    }

    @Test
    void openpyxlLosesPictures() throws IOException {
        Path saved = folder.resolve("openpyxl.xlsx");
        // The distribution's own Python is the one that has the package.
        runs("/usr/bin/python3", "src/office/python/edit_in_openpyxl.py", "", "", saved);

        expectFigures(saved, "found no pictures;");
    }

    @Test
    void gnumericLosesPictures() {
        Path saved = SpreadsheetPrograms.recalculatedByGnumeric(folder, demo);

        assertThat(succeeds("check", saved)).containsOnlyOnce("found no pictures;");
    }

    @Test
    void libreOfficeLosesNothing() {
        Path saved = SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(demo)).get(0);

        assertThat(succeeds("check", saved)).doesNotContain("found no ");
    }

    @Test
    void workbookSavedByLibreOfficeIsRenewedWhole() {
        Path saved = SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(demo)).get(0);
        Path renewed = folder.resolve("renewed.xlsx");

        assertThat(succeeds("renew", "--out", renewed, saved)).doesNotContain("left behind");

        assertThat(shown(renewed)).isEqualTo(shown(saved));
    }

    @Test
    void nothingIsLostInWhatTheToolWrites() {
        Path small = folder.resolve("small.xlsx");
        succeeds("new", "--scenarios", "1", "--unit", "mm", "--set", "scenario_name[A]=One", small);
        Path compared = folder.resolve("compared.xlsx");
        succeeds("compare", small, demo, "--out", compared);

        for (Path file : List.of(small, demo, compared)) {
            assertThat(succeeds("check", file)).doesNotContain("found no ");
        }
    }

    private static String modules() {
        return Path.of(MODULES).toAbsolutePath().toString();
    }

    /** Empty parts of the command are left out; source, target and edits come last. */
    private static void runs(
            String program, String script, String modules, String library, Path target)
            throws IOException {
        List<String> command = new ArrayList<>(List.of(program, script, modules, library));
        command.removeIf(String::isEmpty);
        command.add(demo.toString());
        command.add(target.toString());
        command.addAll(EDITS);
        String said = SpreadsheetPrograms.run(folder, command);
        assertThat(Files.isRegularFile(target)).as(said).isTrue();
    }

    private static void expectFigures(Path saved, String lost) {
        assertThat(succeeds("check", saved)).containsOnlyOnce(lost);
        assertThat(succeeds("fill", saved)).containsOnlyOnce(lost);
        assertThat(succeeds("check", saved)).contains("no errors, ").containsOnlyOnce(lost);
        assertThat(shown(saved)).isEqualTo(expected);
    }
}
