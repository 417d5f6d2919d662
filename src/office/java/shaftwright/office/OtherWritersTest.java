package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

    /** And of the demo as it was. */
    private static String unedited;

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
        unedited = shown(demo);
        assertThat(expected).isNotEqualTo(unedited);
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
        expectFigures(Writer.EXCELJS, "found no charts or pictures;");
    }

    @Test
    void sheetJsLosesAllButCells() throws IOException {
        expectFigures(
                Writer.SHEETJS,
                "found no charts, pictures, drop-down lists, highlights or page layouts;");
    }

    @Test
    void openpyxlLosesPictures() throws IOException {
        expectFigures(Writer.OPENPYXL, "found no pictures;");
    }

    @Test
    void gnumericLosesPictures() throws IOException {
        assertThat(succeeds("check", Writer.GNUMERIC.saved()))
                .containsOnlyOnce("found no pictures;");
    }

    @Test
    void libreOfficeLosesNothing() throws IOException {
        assertThat(succeeds("check", Writer.LIBREOFFICE.saved())).doesNotContain("found no ");
    }

    @ParameterizedTest
    @EnumSource
    void workbookSavedByAnotherProgramIsRenewedWhole(Writer writer) throws IOException {
        Path renewed = folder.resolve("renewed-" + writer + ".xlsx");

        assertThat(succeeds("renew", "--out", renewed, writer.saved()))
                .doesNotContain("left behind");

        assertThat(shown(renewed)).isEqualTo(writer.edits ? expected : unedited);
        assertThat(succeeds("check", renewed)).doesNotContain("found no ");
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

    /** A program that saves the demo; one start of it serves all tests. */
    private enum Writer {
        EXCELJS(true) {
            @Override
            Path save() throws IOException {
                return edited("exceljs", "node", "src/office/node/edit.mjs", modules(), "exceljs");
            }
        },
        SHEETJS(true) {
            @Override
            Path save() throws IOException {
                return edited("sheetjs", "node", "src/office/node/edit.mjs", modules(), "xlsx");
            }
        },
        OPENPYXL(true) {
            @Override
            Path save() throws IOException {
                // The distribution's own Python is the one that has the package.
                return edited(
                        "openpyxl", "/usr/bin/python3", "src/office/python/edit_in_openpyxl.py");
            }
        },
        GNUMERIC(false) {
            @Override
            Path save() {
                return SpreadsheetPrograms.recalculatedByGnumeric(folder, demo);
            }
        },
        LIBREOFFICE(false) {
            @Override
            Path save() {
                return SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(demo)).get(0);
            }
        };

        private static final Map<Writer, Path> SAVED = new EnumMap<>(Writer.class);

        /** Whether it types the edits too. */
        private final boolean edits;

        Writer(boolean edits) {
            this.edits = edits;
        }

        abstract Path save() throws IOException;

        /** What it saved, not to be changed. */
        Path saved() throws IOException {
            Path file = SAVED.get(this);
            if (file == null) {
                file = save();
                SAVED.put(this, file);
            }
            return file;
        }

        private static String modules() {
            return Path.of(MODULES).toAbsolutePath().toString();
        }

        /** Source, target and edits come last. */
        private static Path edited(String name, String... program) throws IOException {
            Path target = folder.resolve(name + ".xlsx");
            List<String> command = new ArrayList<>(List.of(program));
            command.add(demo.toString());
            command.add(target.toString());
            command.addAll(EDITS);
            String said = SpreadsheetPrograms.run(folder, command);
            assertThat(Files.isRegularFile(target)).as(said).isTrue();
            return target;
        }
    }

    private static void expectFigures(Writer writer, String lost) throws IOException {
        Path filled = folder.resolve("filled-" + writer + ".xlsx");

        assertThat(succeeds("check", writer.saved())).containsOnlyOnce(lost);
        assertThat(succeeds("fill", "--out", filled, writer.saved())).containsOnlyOnce(lost);
        assertThat(succeeds("check", filled)).contains("no errors, ").containsOnlyOnce(lost);
        assertThat(shown(filled)).isEqualTo(expected);
    }
}
