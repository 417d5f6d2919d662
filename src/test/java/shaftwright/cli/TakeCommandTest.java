package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;

/** Copying a scenario from a friend's workbook. */
class TakeCommandTest {
    private static final int FIRST_FREE = 5;

    @TempDir private Path folder;

    @Test
    void aScenarioTakenIntoACopyOfItsWorkbookGivesTheSameShaft() {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");

        Run run = Run.of("take", friend, "C", mine);

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.SUCCESS);
        assertThat(run.out())
                .contains("is now scenario F of mine.xlsx, on your tape readings")
                .doesNotContain("Parts added");
        for (String name :
                new String[] {"result_e_left", "result_k_right", "cost_total", "verdict"}) {
            assertThat(Demo.cell(mine, name, FIRST_FREE).value())
                    .as(name)
                    .isEqualTo(Demo.cell(friend, name, 2).value());
        }
    }

    @Test
    void lengthsKeepTheirMeaningInAWorkbookOfTheOtherUnit() {
        Path friend = Demo.inches(folder);
        Demo.type(friend, "hub_shift", 0, CellValue.of("7/8"));
        Demo.type(friend, "wheel_spacer", 0, CellValue.of(0.5));
        Demo.type(friend, "transaxle_up", 0, CellValue.of("12 mm"));
        Path mine = copy(Demo.millimetres(folder), "mine.xlsx");

        assertThat(Run.of("take", friend, "A", mine).code()).isEqualTo(ExitCode.SUCCESS);

        assertThat(read(mine, "hub_shift_read")).isEqualTo(22.225, within(1e-9));
        assertThat(read(mine, "wheel_spacer_read")).isEqualTo(12.7, within(1e-9));
        assertThat(read(mine, "transaxle_up_read")).isEqualTo(12, within(1e-9));
    }

    @Test
    void aJointOfTheSameNameButOtherSizesComesBesideTheOneThatIsThere() {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");
        String joint = text(friend, "joint_inner", 0);
        int row = row(friend, "joint_name", joint);
        Demo.type(friend, "joint_angle_max", row, CellValue.of(23));
        CellValue before = Demo.cell(mine, "joint_angle_max", row).value();

        Run run = Run.of("take", friend, "A", mine);

        assertThat(run.out()).contains("joint \"" + joint + " (2)\"");
        assertThat(text(mine, "joint_inner", FIRST_FREE)).isEqualTo(joint + " (2)");
        int added = row(mine, "joint_name", joint + " (2)");
        assertThat(Demo.cell(mine, "joint_angle_max", added).value()).isEqualTo(CellValue.of(23));
        assertThat(Demo.cell(mine, "joint_angle_max", row).value()).isEqualTo(before);
    }

    @Test
    void whatTheFriendsFileHoldsStaysAsItIsAndSoDoesTheBackup() throws IOException {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");
        byte[] before = Files.readAllBytes(friend);

        Run.of("take", friend, "B", mine);

        assertThat(friend).hasBinaryContent(before);
        assertThat(folder.resolve("mine.backup.xlsx")).hasBinaryContent(before);
    }

    @Test
    void aNameThatLooksLikeAFormulaStaysAText() {
        Path friend = Demo.inches(folder);
        Demo.type(friend, "scenario_name", 0, CellValue.of("=HYPERLINK(\"http://x\")"));
        Path mine = copy(Demo.millimetres(folder), "mine.xlsx");

        Run.of("take", friend, "A", mine);

        assertThat(Demo.cell(mine, "scenario_name", FIRST_FREE).hasFormula()).isFalse();
        assertThat(text(mine, "scenario_name", FIRST_FREE)).isEqualTo("=HYPERLINK(\"http://x\")");
    }

    @Test
    void withoutAnEmptyColumnNothingIsTaken() throws IOException {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");
        for (int scenario = FIRST_FREE; scenario < 8; scenario++) {
            Demo.type(mine, "scenario_name", scenario, CellValue.of("full"));
        }
        byte[] before = Files.readAllBytes(mine);

        Run run = Run.of("take", friend, "B", mine);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err()).contains("no scenario column is empty").contains("--as");
        assertThat(mine).hasBinaryContent(before);
    }

    @Test
    void aNamedColumnIsReplaced() {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");

        Run run = Run.of("take", friend, "B", "--as", "D", mine);

        assertThat(run.code()).isEqualTo(ExitCode.SUCCESS);
        assertThat(text(mine, "scenario_name", 3)).isEqualTo(text(friend, "scenario_name", 1));
    }

    @Test
    void whatIsReplacedIsNamedAndAskedFor() throws IOException {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");
        byte[] before = Files.readAllBytes(mine);

        Run refused = Run.answering("n", "take", friend, "B", "--as", "D", mine);

        assertThat(refused.err())
                .contains("Scenario D of mine.xlsx is \"As C, ")
                .contains("Replace");
        assertThat(mine).hasBinaryContent(before);
        Run agreed = Run.answering("y", "take", friend, "B", "--as", "D", mine);
        assertThat(agreed.out()).contains("is now scenario D of mine.xlsx, in place of \"As C, ");
        assertThat(text(mine, "scenario_name", 3)).isEqualTo(text(friend, "scenario_name", 1));
    }

    @Test
    void aPreviewSaysTheSameAndWritesNothing() throws IOException {
        Path friend = Demo.inches(folder);
        Path mine = copy(Demo.millimetres(folder), "mine.xlsx");
        byte[] before = Files.readAllBytes(mine);

        Run run = Run.of("take", friend, "A", "--preview", mine);

        assertThat(run.out())
                .contains("would be scenario F of mine.xlsx")
                .contains("nothing was written");
        assertThat(mine).hasBinaryContent(before);
    }

    @Test
    void intoAnEmptyWorkbookAllThatItNeedsComesAlong() {
        Path friend = Demo.inches(folder);
        Path mine = folder.resolve("mine.xlsx");
        assertThat(Run.of("new", "--unit", "mm", mine).code()).isZero();

        Run run = Run.of("take", friend, "A", mine);

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.SUCCESS);
        assertThat(run.out())
                .contains("material \"4340 steel")
                .contains("tells where their tape touched");
        assertThat(text(mine, "blank_material", 0)).isEqualTo(text(friend, "blank_material", 1));
    }

    @Test
    void startsOfTheTwoUnitsAreNoDifference() {
        Path friend = folder.resolve("friend.xlsx");
        Path mine = folder.resolve("mine.xlsx");
        Run.of("new", "--unit", "inch", "--set", "scenario_name[A]=Theirs", friend);
        Run.of("new", "--unit", "mm", "--set", "scenario_name[A]=Mine", mine);

        assertThat(Run.of("take", friend, "A", mine).out()).doesNotContain("Settings that differ");
        Demo.type(friend, "ring_thickness", 0, CellValue.of("3/32"));
        assertThat(Run.of("take", friend, "A", mine).out())
                .containsPattern(
                        "were not taken: Ring thickness: 3/32 in in theirs, [^;]* in yours\\.\\R");
    }

    @Test
    void aScenarioThatIsNotThereIsRefusedWithTheLettersThatAre() {
        Path friend = Demo.inches(folder);

        Run run = Run.of("take", friend, "G", copy(friend, "mine.xlsx"));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("found no scenario \"G\"").contains("A, B, C, D, E");
    }

    @Test
    void aFullTableOfBlanksIsSaid() {
        Path friend = Demo.inches(folder);
        Path mine = copy(friend, "mine.xlsx");
        for (int row = 0; row < 12; row++) {
            if (Demo.cell(mine, "blank_name", row).value() instanceof CellValue.Blank) {
                Demo.type(mine, "blank_name", row, CellValue.of("mine " + row));
            } else {
                Demo.type(friend, "blank_price", row, CellValue.of(1234));
            }
        }

        Run run = Run.of("take", friend, "A", mine);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err()).contains("no empty row for another blank");
    }

    private Path copy(Path file, String name) {
        try {
            return Files.copy(file, folder.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static double read(Path file, String name) {
        return ((CellValue.Numeric) Demo.cell(file, name, FIRST_FREE).value()).value();
    }

    private static String text(Path file, String name, int offset) {
        return ((CellValue.Text) Demo.cell(file, name, offset).value()).value();
    }

    private static int row(Path file, String name, String text) {
        for (int row = 0; row < 12; row++) {
            if (Demo.cell(file, name, row).value().equals(CellValue.of(text))) {
                return row;
            }
        }
        throw new AssertionError(text + " is not in " + name);
    }
}
