package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;

/** Nonsense after {@code --inputs} and {@code --set}. */
class TypedFromOutsideTest {
    @TempDir private Path folder;

    private Run inputs(int code, byte[] json) throws IOException {
        Path file = Files.write(folder.resolve("in.json"), json);
        return unchanged(code, "--inputs", file.toString());
    }

    private Run inputs(int code, String json) throws IOException {
        return inputs(code, json.getBytes(StandardCharsets.UTF_8));
    }

    private Run unchanged(int code, String option, String value) {
        SmallBook book = SmallBook.in(folder);
        byte[] before = book.bytes();
        Run run = Run.of("fill", option, value, book.file());
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(code);
        assertThat(run.err()).doesNotContain("Exception", "unexpected fault");
        assertThat(book.file()).hasBinaryContent(before);
        assertThat(folder.resolve("shafts.backup.xlsx")).doesNotExist();
        return run;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "\"hub_shift\"",
                "{\"hub_shift\": [1, 2}",
                "{\"hub_shift\": [1, 2]",
                "{\"hub_shift\": [1, 2]} {}",
                "{\"hub_shift\": [1, 2],, }",
                "{\"hub_shift\": [[1], 2]}",
                "{\"hub_shift\": {\"A\": 1}}",
                "{\"hub_shift\": true}",
                "{\"hub_shift\": [1, false]}",
                "{\"hub_shift\": NaN}",
                "{\"hub_shift\": [1], \"hub_shift\": [2]}",
                "{\"inputs\": {\"hub_shift\": [1]",
                "{\"inputs\": 5}",
                "hub_shift = 1"
            })
    void brokenJsonIsUnreadable(String json) throws IOException {
        int code = json.contains("\"inputs\": 5") ? 2 : 3;
        assertThat(inputs(code, json).err()).startsWith("shaftwright: ");
    }

    @Test
    void brokenJsonNamesFileAndLine() throws IOException {
        assertThat(inputs(3, "{\n\"hub_shift\": [1,\n2}").err()).contains("in.json, line 3: ");
    }

    @Test
    void jsonInSomeOtherEncoding() throws IOException {
        byte[] latin = "{\"vehicle_name\": \"Käfer\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(inputs(3, latin).err()).contains("in.json");
    }

    @Test
    void folderInsteadOfJson() {
        assertThat(unchanged(3, "--inputs", folder.toString()).err())
                .contains(folder.getFileName().toString(), "a folder");
    }

    @Test
    void jsonThatIsMissing() {
        assertThat(unchanged(3, "--inputs", "none.json").err())
                .contains("none.json: file not found.");
    }

    @Test
    void unknownNamesAreAllSaidAtOnce() throws IOException {
        assertThat(inputs(2, "{\"hubshift\": [1], \"ride_hight_left\": \"18\"}").err())
                .contains("no input is called \"hubshift\"; near it: hub_shift")
                .contains("no input is called \"ride_hight_left\"; near it: ride_height_left")
                .contains("--lenient leaves out what no input of this version is called");
    }

    @Test
    void unknownNamesOfAFileAreLeftOutWhenThatIsAskedFor() throws IOException {
        Path json = folder.resolve("in.json");
        Files.writeString(json, "{\"hubshift\": [1], \"wheel_spacer\": [\"1/4\", null]}");
        SmallBook book = SmallBook.in(folder);

        Run fill = Run.of("fill", "--lenient", "--inputs", json, book.file());
        Path made = folder.resolve("made.xlsx");
        Run make = Run.of("new", "--lenient", "--scenarios", 2, "--inputs", json, made);

        assertThat(fill.code()).as(fill.err()).isZero();
        assertThat(make.code()).as(make.err()).isZero();
        String said = "warning: left out: no input is called \"hubshift\"; near it: hub_shift.";
        assertThat(fill.out()).containsOnlyOnce(said);
        assertThat(make.out()).containsOnlyOnce(said);
        assertThat(book.value("wheel_spacer", 0)).isEqualTo(CellValue.of("1/4"));
    }

    @Test
    void unknownNameThatIsAssignedIsRefusedAllTheSame() {
        SmallBook book = SmallBook.in(folder);

        Run run = Run.of("fill", "--lenient", "--set", "hubshift=1", book.file());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("no input is called \"hubshift\"")
                .doesNotContain("--lenient leaves out");
    }

    @Test
    void listForWhatIsTypedOnce() throws IOException {
        assertThat(inputs(2, "{\"tape_graduation\": [\"1/16\", \"1/8\"]}").err())
                .contains("tape_graduation: found a list; expected one value.");
    }

    @Test
    void oneValueForARowOfThem() throws IOException {
        assertThat(inputs(2, "{\"hub_shift\": \"1/2\"}").err())
                .contains("hub_shift: found one value; expected a list", "per scenario");
        assertThat(inputs(2, "{\"boot_name\": null}").err())
                .contains("boot_name: found one value; expected a list", "per row");
    }

    @Test
    void textLongerThanACellHolds() throws IOException {
        String text = "x".repeat(32_768);
        assertThat(inputs(1, "{\"vehicle_name\": \"" + text + "\"}").err())
                .contains(
                        "error: shafts.xlsx: sheet \"", "cell ", "(vehicle_name): found a text of")
                .contains("32768 characters to be typed; expected at most 32767");
        assertThat(unchanged(1, "--set", "scenario_name[B]=" + text).err())
                .contains("(scenario_name): found a text of 32768 characters");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1e0",
                "1E+0",
                "1.0000000000000000000001",
                "10e-1",
                "100000000000000000e-17"
            })
    void lengthIsWhateverNumberTheFileWrites(String number) throws IOException {
        SmallBook book = SmallBook.in(folder);
        Path file =
                Files.writeString(folder.resolve("in.json"), "{\"hub_shift\": [" + number + "]}");
        Run run = Run.of("fill", "--inputs", file, book.file());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(book.value("hub_shift", 0)).isEqualTo(CellValue.of("1"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999999999", "123456789012345678901234567890", "1e300"})
    void lengthBeyondAllMeasureNamesTheCell(String number) throws IOException {
        assertThat(inputs(1, "{\"hub_shift\": [" + number + "]}").err())
                .contains("error: shafts.xlsx: sheet \"Scenarios\", cell ", number);
    }

    @Test
    void fileLargerThanAnyInputs() throws IOException {
        assertThat(inputs(3, "{\"vehicle_name\": \"" + "x".repeat(17 << 20) + "\"}").err())
                .isEqualTo(
                        "shaftwright: in.json: found more than 16 MB; expected an object of names"
                                + " and values: {\"name\": value, \"name\": [value, value]}.\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"hub_shift\": [1, 2}",
                "{\"hub_shift\": [1, 2],, }",
                "{\"hub_shift\": tru}",
                "{\"hub_shift\": [1",
                "{\"\u0001\": 1}",
                "hub_shift = 1",
            })
    void brokenJsonIsSaidWithoutAParsersWords(String json) throws IOException {
        assertThat(inputs(3, json).err())
                .startsWith("shaftwright: in.json, line 1: found ")
                .contains("; expected ")
                .doesNotContain(
                        "token", "Token", "Source", "code ", "CTRL", "close marker", "field");
    }

    @Test
    void nameThatIsGivenTwiceIsNamed() throws IOException {
        assertThat(inputs(3, "{\"hub_shift\": [1], \"hub_shift\": [2]}").err())
                .contains("found \"hub_shift\" twice; expected each name once");
    }

    @Test
    void nameLongerThanAnyName() throws IOException {
        assertThat(inputs(3, "{\"" + "a".repeat(60_000) + "\": 1}").err())
                .contains("a name, a number or a nesting of brackets that is too long");
    }

    @Test
    void thousandsOfUnknownNamesAreCountedNotListed() throws IOException {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < 300_000; i++) {
            json.append(i == 0 ? "" : ",").append("\"nam").append(i).append("\": 1");
        }
        assertThat(inputs(2, json.append('}').toString()).err())
                .hasLineCount(22)
                .contains("and 299980 more names that no input has");
    }

    @Test
    void moreRowsThanTheTableHas() throws IOException {
        assertThat(inputs(2, "{\"boot_name\": [1,2,3,4,5,6,7,8,9]}").err())
                .contains("boot_name: found row 9; expected 1 to 8.");
    }

    @Test
    void valueOfTheWrongKindNamesTheCell() throws IOException {
        assertThat(inputs(1, "{\"joint_angle_max\": [\"steep\", 25, 19, 23]}").err())
                .contains("error: shafts.xlsx: sheet \"Parts\", cell ")
                .contains("found \"steep\"; expected a number of degrees.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "=",
                "=3",
                "hub_shift",
                "hub_shift=1",
                "hub_shift[]=1",
                "hub_shift[1]=1",
                "hub_shift[AA]=1",
                "hub_shift[C]=1",
                "hub_shift[A=1",
                "hub_shiftA]=1",
                "height_left[0]=20",
                "height_left[-1]=20",
                "height_left[99999999999]=20",
                "height_left[2147483647]=20",
                "height_left[1][2]=20",
                "unit[1]=mm",
                "e_final_left=640",
                "=hub_shift"
            })
    void nonsenseInSetIsAUsageError(String set) {
        assertThat(unchanged(2, "--set", set).err()).startsWith("shaftwright: ");
    }

    @Test
    void setValueThatCannotBeReadNamesTheCell() {
        assertThat(unchanged(1, "--set", "hub_shift[B]=wide").err())
                .contains("found \"wide\" (", "); expected a length such as");
    }

    @Test
    void resultsCannotBeTyped() {
        assertThat(unchanged(2, "--set", "e_final_left[A]=640").err())
                .contains("no input is called \"e_final_left\"");
    }
}
