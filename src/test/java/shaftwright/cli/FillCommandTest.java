package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;
import shaftwright.build.Side;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.xlsx.XlsxBook;

class FillCommandTest {
    @TempDir private Path folder;

    @Test
    void verdictsComeFirstEachWithItsFindingsBelow() {
        Run run = Run.of("fill", Demo.inches(folder));

        assertThat(run.code()).isZero();
        List<String> lines = run.out().lines().toList();
        assertThat(lines.subList(0, 9))
                .satisfiesExactly(
                        line -> assertThat(line).startsWith("A As measured, 29 in tyre: Fits: "),
                        line ->
                                assertThat(line)
                                        .isEqualTo("B Small joints from the shelf: Does not fit:"),
                        line -> assertThat(line).startsWith("  Left: No length works, short by "),
                        line -> assertThat(line).startsWith("  Right: No length works, short by "),
                        line -> assertThat(line).startsWith("  Both sides: The weakest part ("),
                        line -> assertThat(line).startsWith("C ").contains(": Fits: "),
                        line -> assertThat(line).startsWith("D ").endsWith(": Does not fit:"),
                        line -> assertThat(line).startsWith("  Left: The inner joint reaches "),
                        line -> assertThat(line).startsWith("  Right: The inner joint reaches "));
        assertThat(lines.get(lines.size() - 2)).startsWith("Caution: a sizing aid, not approval.");
        assertThat(lines.get(lines.size() - 1)).endsWith("none of them changed.");
    }

    @Test
    void wrongReadingIsSaidOfEveryScenarioThatRestsOnIt() {
        Run run = Run.of("fill", "--set", "distance_first_left[5]=26 9/16", Demo.inches(folder));

        assertThat(run.out())
                .contains("A As measured, 29 in tyre: Measure again before cutting:")
                .contains("C 31 in tyre, hubs 1 in wider: Measure again before cutting:");
        assertThat(run.out().lines())
                .filteredOn(
                        line ->
                                line.equals(
                                        "  Left: The readings contradict each other. Measure again:"
                                                + " row 5, distance or height (about 26 3/16 in"
                                                + " expected)."))
                .hasSize(5);
    }

    @Test
    void checkSaysWhatSpeaksAgainstScenarios() {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "distance_first_left[5]=26 9/16", file);

        Run run = Run.of("check", file);

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains(
                        "finding: forest.xlsx: scenario B, left: Does not fit: no length works,"
                                + " short by ")
                .contains(
                        "finding: forest.xlsx: scenarios A, B, C, D, E, left: Measure again before"
                                + " cutting: the readings contradict each other.")
                .contains("finding: forest.xlsx: scenario B, both sides: The weakest part (")
                .endsWith(
                        " warning, no overwritten or edited formulas. 9 findings on its scenarios.\n");
    }

    @Test
    void checkFindsNothingAgainstAHealthyVariant() throws IOException {
        Path file = Demo.inches(folder);
        Path inputs =
                Files.writeString(
                        folder.resolve("in.json"),
                        "{\"stick_height_left\": [], \"stick_holes_in_left\": [],"
                                + " \"stick_holes_out_left\": []}");
        // Scenario B is the one varied; the mock-up of E contradicts.
        Run.of(
                "fill",
                "--inputs",
                inputs,
                "--set",
                "scenario_name[B]=",
                "--set",
                "scenario_name[D]=",
                "--set",
                "try_scenario=",
                file);

        Run run = Run.of("check", file);

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .doesNotContain("finding")
                .endsWith("no errors, no warnings, no overwritten or edited formulas.\n");
    }

    @Test
    void typedValueIsComputedWithAndKept() {
        Path file = Demo.inches(folder);
        Path other = folder.resolve("wider.xlsx");

        Run run = Run.of("fill", "--out", other, "--set", "hub_shift[A]=1", file);

        assertThat(run.code()).isZero();
        assertThat(Demo.cell(other, "hub_shift", 0).value()).isEqualTo(CellValue.of("1"));
        assertThat(number(other, "e_final_left") - number(file, "e_final_left")).isGreaterThan(20);
        assertThat(number(other, "hub_shift_read")).isEqualTo(25.4);
        assertThat(Demo.cell(file, "hub_shift", 0).value()).isEqualTo(CellValue.of("0"));
    }

    @Test
    void fillingInPlaceKeepsThePreviousFile() throws IOException {
        Path file = Demo.inches(folder);
        byte[] before = Files.readAllBytes(file);

        Run run = Run.of("fill", "--set", "hub_shift[A]=1", file);

        assertThat(run.out()).contains("the previous file is forest.backup.xlsx.");
        assertThat(folder.resolve("forest.backup.xlsx")).hasBinaryContent(before);
    }

    @Test
    void fillingTwiceChangesNothing() throws IOException {
        Path file = Demo.inches(folder);
        Run.of("fill", "--set", "hub_shift[A]=1", file);
        byte[] once = Files.readAllBytes(file);

        Run again = Run.of("fill", "--set", "hub_shift[A]=1", file);

        assertThat(again.out()).endsWith("none of them changed.\n");
        assertThat(file).hasBinaryContent(once);
    }

    @Test
    void emptyValueEmptiesTheCell() {
        Path file = Demo.inches(folder);

        Run run = Run.of("fill", "--set", "scenario_name[E]=", file);

        assertThat(run.code()).isZero();
        assertThat(run.out()).doesNotContain("E Wide");
        assertThat(Demo.cell(file, "scenario_name", 4).value()).isEqualTo(CellValue.BLANK);
    }

    @Test
    void numbersAreTypedAsNumbers() {
        Path file = Demo.inches(folder);

        Run run = Run.of("fill", "--set", "joint_angle_max[1]=23.5", file);

        assertThat(run.code()).isZero();
        assertThat(Demo.cell(file, "joint_angle_max", 0).value()).isEqualTo(CellValue.of(23.5));
    }

    @Test
    void decimalCommaMayBeSet() throws IOException {
        Path file = Demo.inches(folder);

        Run run = Run.of("fill", "--set", "hub_shift[A]=0,5", "--set", "steer_angle[A]=-2,5", file);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(number(file, "hub_shift_read")).isEqualTo(12.7);
        assertThat(number(file, "steer_angle_read")).isEqualTo(Math.toRadians(-2.5));
    }

    @Test
    void decimalCommaMayStandInInputs() throws IOException {
        Path file = Demo.inches(folder);
        Path inputs =
                Files.writeString(
                        folder.resolve("in.json"),
                        "{\"hub_shift\": [\"0,5\", 0], \"factor_wanted\": \"1,25\"}");

        Run run = Run.of("fill", "--inputs", inputs, file);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(number(file, "hub_shift_read")).isEqualTo(12.7);
        assertThat(number(file, "factor_wanted_read")).isEqualTo(1.25);
    }

    @Test
    void commaThatMayMeanThousandsIsRefusedByCell() {
        Run run = Run.of("fill", "--set", "factor_wanted=1,250", Demo.inches(folder));

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("found \"1,250\" (a comma with three digits after it");
    }

    @Test
    void listIsAllThatARowHas() throws IOException {
        Path file = Demo.inches(folder);
        Path inputs =
                Files.writeString(
                        folder.resolve("in.json"),
                        "{\"camber_left\": [1, \"\", -2.5], \"vehicle_name\": \"Other\"}");

        Run run = Run.of("fill", "--inputs", inputs, file);

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Demo.cell(file, "camber_left", 2).value()).isEqualTo(CellValue.of(-2.5));
        assertThat(Demo.cell(file, "camber_left", 4).value()).isEqualTo(CellValue.BLANK);
        assertThat(Demo.cell(file, "camber_left", 8).value()).isEqualTo(CellValue.BLANK);
    }

    @Test
    void setComesAfterInputs() throws IOException {
        Path file = Demo.inches(folder);
        Path inputs = Files.writeString(folder.resolve("in.json"), "{\"hub_shift\": [1, 2]}");

        Run.of("fill", "--set", "hub_shift[B]=3", "--inputs", inputs, file);

        assertThat(Demo.cell(file, "hub_shift", 0).value()).isEqualTo(CellValue.of("1"));
        assertThat(Demo.cell(file, "hub_shift", 1).value()).isEqualTo(CellValue.of("3"));
        assertThat(Demo.cell(file, "hub_shift", 2).value()).isEqualTo(CellValue.BLANK);
    }

    @Test
    void unknownNamesAreRefusedTogetherWithNearOnes() {
        Run run =
                Run.of(
                        "fill",
                        "--set",
                        "hubshift[A]=1",
                        "--set",
                        "height[3]=4",
                        "--set",
                        "hub_shift=4",
                        "--set",
                        "unit[2]=mm",
                        "--set",
                        "height_left=4",
                        Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err())
                .contains("no input is called \"hubshift\"; near it: hub_shift")
                .contains("no input is called \"height\"; near it: ")
                .contains("height_left, height_right")
                .contains("--set hub_shift: expected hub_shift[B]=VALUE with a scenario's letter")
                .contains("--set unit[2]: expected unit=VALUE, since it is typed once.")
                .contains("--set height_left: expected height_left[3]=VALUE with a row from 1 on.");
    }

    @Test
    void rowsAndScenariosThatAreNotThereAreRefused() {
        Path file = Demo.inches(folder);

        Run row = Run.of("fill", "--set", "height_left[16]=20", file);
        Run scenario = Run.of("fill", "--set", "hub_shift[I]=1", file);

        assertThat(row.code()).isEqualTo(ExitCode.USAGE);
        assertThat(row.err()).contains("height_left: found row 16; expected 1 to 15.");
        assertThat(scenario.code()).isEqualTo(ExitCode.USAGE);
        assertThat(scenario.err()).contains("hub_shift: found scenario I; expected A to H.");
    }

    @Test
    void theUnitStaysAsTheWorkbookWasMade() {
        Path file = Demo.inches(folder);

        assertThat(Run.of("fill", "--set", "unit=inch", file).code()).isZero();
        Run run = Run.of("fill", "--set", "unit=mm", file);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.err()).contains("the unit that the workbook was made with");
    }

    @Test
    void errorsNameFileSheetCellAndWhatWasFound() throws IOException {
        Path file = Demo.inches(folder);
        CellPlace place = Demo.type(file, "distance_first_left", 2, CellValue.of("25 3/0"));
        byte[] before = Files.readAllBytes(file);

        Run run = Run.of("fill", file);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("error: forest.xlsx: " + place + " (")
                .contains("found \"25 3/0\"")
                .contains("forest.xlsx: not filled, nothing was written.");
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void overwrittenFormulaIsLeftAloneAndSaid() {
        Path file = Demo.inches(folder);
        Demo.type(file, "unit_word", 0, CellValue.of("x"));
        Path plain = withoutFormula(file, "result_e_left");

        Run run = Run.of("check", plain);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.out())
                .contains("in place of a formula")
                .contains(" 1 overwritten or edited formula.");
    }

    /** The first cell of a name as a value, its formula gone. */
    private Path withoutFormula(Path file, String name) {
        return EditedBook.replace(file, folder.resolve("edited.xlsx"), name, 0, null);
    }

    @Test
    void editedFormulaIsSaidByCheck() {
        Path file = Demo.inches(folder);
        String formula = Demo.cell(file, "result_e_left", 0).formula();
        Path edited =
                EditedBook.replace(
                        file, folder.resolve("edited.xlsx"), "result_e_left", 0, formula + "+1");

        Run run = Run.of("check", edited);

        assertThat(run.code()).isEqualTo(ExitCode.PROBLEMS);
        assertThat(run.out())
                .contains("another formula than a new workbook has")
                .contains(" 1 overwritten or edited formula.");
    }

    @Test
    void figuresOfAnEarlierFillAreSaidByCheck() {
        Path file = Demo.inches(folder);
        Demo.type(file, "counterbore_inner", 2, CellValue.of("1/8"));

        Run run = Run.of("check", file);

        assertThat(run.code()).isEqualTo(ExitCode.SUCCESS);
        assertThat(run.out())
                .contains("that do not follow from the inputs")
                .contains("fill the workbook again")
                .contains("no errors");
        assertThat(Run.of("fill", file).code()).isEqualTo(ExitCode.SUCCESS);
        assertThat(Run.of("check", file).out()).doesNotContain("fill the workbook again");
    }

    @Test
    void aWorkbookThatWasNeverFilledIsSaidToBeInOneLine() {
        Path file = Demo.inches(folder);
        XlsxBook book = XlsxBook.open(file);
        List<CellWrite> emptied = new ArrayList<>();
        for (LiveLine line : LiveLines.all().lines()) {
            for (Side side : Side.values()) {
                Area area = book.names().get(line.definedName(side));
                if (line.isEngine() && area != null) {
                    for (int i = 0; i < area.size(); i++) {
                        emptied.add(new CellWrite(area.place(i), CellValue.BLANK));
                    }
                }
            }
        }
        book.write(emptied);
        book.save(file);

        String out = Run.of("check", file).out();

        assertThat(out)
                .containsOnlyOnce("not filled yet")
                .doesNotContain("fill the workbook again")
                .doesNotContain("last fill");
    }

    @Test
    void checkChangesNothing() throws IOException {
        Path file = Demo.inches(folder);
        byte[] before = Files.readAllBytes(file);

        Run.of("check", file);

        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void computedCellsAreWhatTheFileHolds() {
        Path file = Demo.inches(folder);
        Path other = folder.resolve("other.xlsx");
        Map<CellPlace, CellContent> before = new HashMap<>(Demo.all(file));

        Run.of("fill", "--out", other, file);

        assertThat(Demo.all(other)).isEqualTo(before);
    }

    private static double number(Path file, String name) {
        return ((CellValue.Numeric) Demo.cell(file, name, 0).value()).value();
    }
}
