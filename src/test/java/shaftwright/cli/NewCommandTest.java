package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;

class NewCommandTest {
    @TempDir private Path folder;

    @Test
    void madeWorkbookHasNothingWrongWithIt() {
        Path file = Demo.inches(folder);

        Run check = Run.of("check", file);

        assertThat(check.code()).isZero();
        assertThat(check.out())
                .contains(
                        "forest.xlsx: no errors, no warnings, no overwritten or edited formulas.");
    }

    @Test
    void emptyWorkbookIsMadeAndSaysThatNoScenarioIsNamed() {
        Path file = folder.resolve("own.xlsx");

        Run run = Run.of("new", "--unit", "mm", "--scenarios=2", file);

        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("No scenario has a name yet").contains("own.xlsx: made, ");
        assertThat(Demo.cell(file, "unit", 0).value()).isEqualTo(CellValue.of("mm"));
        assertThat(Run.of("show", "--scenario", "C", file).err())
                .contains("--scenario: found \"C\"; expected a letter from A to B.");
    }

    @Test
    void doesNotReplaceAFileUnlessForced() throws IOException {
        Path file = Files.writeString(folder.resolve("own.xlsx"), "mine");

        Run refused = Run.of("new", file);

        assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
        assertThat(refused.err()).contains("own.xlsx: exists already; --force");
        assertThat(file).hasContent("mine");

        Run forced = Run.of("new", "--force", "--scenarios", "1", file);

        assertThat(forced.code()).isZero();
        assertThat(forced.out()).contains("the previous file is own.backup.xlsx.");
        assertThat(folder.resolve("own.backup.xlsx")).hasContent("mine");
    }

    @Test
    void leavesNothingBehindWhenInputsCannotBeRead() throws IOException {
        Run run =
                Run.of(
                        "new",
                        "--demo",
                        "--set",
                        "ride_height_left=18 5/17",
                        folder.resolve("a.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err())
                .contains("found \"18 5/17\" (the bottom of a fraction is 2, 3, 4, 8, 16, 32 or 64")
                .contains("a.xlsx: not made.");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void setOverridesDemoInOneCellOnly() {
        Path file = folder.resolve("a.xlsx");

        Run run =
                Run.of(
                        "new",
                        "--demo",
                        "--set",
                        "height_left[2]=14 3/4",
                        "--set",
                        "hub_shift[B]=1/2",
                        "--set=vehicle_name=Ours = mine",
                        file);

        assertThat(run.code()).isZero();
        assertThat(Demo.cell(file, "height_left", 1).value()).isEqualTo(CellValue.of("14 3/4"));
        assertThat(Demo.cell(file, "height_left", 2).value()).isEqualTo(CellValue.of("15 15/16"));
        assertThat(Demo.cell(file, "hub_shift", 1).value()).isEqualTo(CellValue.of("1/2"));
        assertThat(Demo.cell(file, "hub_shift", 2).value()).isEqualTo(CellValue.of("1"));
        assertThat(Demo.cell(file, "vehicle_name", 0).value())
                .isEqualTo(CellValue.of("Ours = mine"));
    }

    @Test
    void metricDemoIsTypedAsAMetricBuilderWould() {
        Path file = Demo.millimetres(folder);

        assertThat(Demo.cell(file, "unit", 0).value()).isEqualTo(CellValue.of("mm"));
        // 13 7/16 in is 341.3125 mm: readings go to half a millimetre.
        assertThat(Demo.cell(file, "height_left", 0).value()).isEqualTo(CellValue.of("341.5"));
        // 20 1/2 in is 520.7 mm: other lengths go to a tenth.
        assertThat(Demo.cell(file, "inner_height_left", 0).value())
                .isEqualTo(CellValue.of("520.7"));
        assertThat(Demo.cell(file, "tape_graduation", 0).value()).isEqualTo(CellValue.of("1"));
        assertThat(Demo.cell(file, "joint_cup_bottom", 0).value()).isEqualTo(CellValue.of("47"));
        assertThat(Run.of("check", file).code()).isZero();
    }

    @Test
    void metricDemoTellsTheSameStory() {
        String inch = Run.of("show", Demo.inches(folder)).out();
        String metric = Run.of("show", Demo.millimetres(folder)).out();

        assertThat(findings(metric)).isEqualTo(findings(inch)).isNotEmpty();
    }

    private static String findings(String shown) {
        StringBuilder found = new StringBuilder();
        for (String line : shown.lines().toList()) {
            if (line.startsWith("  Fits") || line.startsWith("  DO NOT CUT")) {
                found.append(line, 0, 7).append('\n');
            }
        }
        return found.toString();
    }

    @Test
    void refusesScenariosOutOfRange() {
        Run run = Run.of("new", "--scenarios", "25", folder.resolve("a.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("found \"25\"; expected a whole number from 1 to 24.");
    }

    @Test
    void refusesADemoThatHasMoreScenariosThanTheWorkbook() {
        Run run = Run.of("new", "--demo", "--scenarios", "4", folder.resolve("a.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err())
                .contains("found a value for scenario E; expected A to D, or more --scenarios.");
    }

    @Test
    void refusesInputsInAnotherUnitThanAskedFor() throws IOException {
        Path inputs = Files.writeString(folder.resolve("in.json"), "{\"unit\": \"mm\"}");

        Run run = Run.of("new", "--unit", "inch", "--inputs", inputs, folder.resolve("a.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("the inputs are in mm, but --unit inch was asked for");
    }

    @Test
    void saysThatAFolderIsMissing() {
        Run run = Run.of("new", folder.resolve("nowhere").resolve("a.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(run.err()).contains("nowhere: folder not found.");
    }
}
