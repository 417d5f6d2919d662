package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
    @TempDir private Path folder;

    @Test
    void helpListsCommandsExamplesAndExitCodes() {
        Run run = Run.of("--help");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Usage: shaftwright")
                .contains("Makes a new workbook.")
                .contains("Exit codes:")
                .contains("   4   a file could not be written")
                .contains("  shaftwright new --demo forest-special.xlsx");
        assertThat(Run.of()).isEqualTo(run);
    }

    @ParameterizedTest
    @EnumSource(Command.class)
    void everyCommandHelpsWithItsOptionsAndExamples(Command command) {
        Run run = Run.of(command.word(), "--help");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Usage: shaftwright " + command.word());
        for (Option option : command.options()) {
            assertThat(run.out()).contains(option.name());
        }
        for (String example : command.examples()) {
            assertThat(run.out()).contains("shaftwright " + example);
        }
    }

    @ParameterizedTest
    @EnumSource(Command.class)
    void everyExampleCanBeRead(Command command) {
        for (String example : command.examples()) {
            assertThat(read(example.split(" ")).command()).as(example).isEqualTo(command);
        }
    }

    @Test
    void valuesStandBehindAnEqualsSignOrASpaceAndMayBeEmpty() {
        Request request = read("fill", "a b.xlsx", "--set=a[1]=2", "--set", "b=", "--out=c.xlsx");

        assertThat(request.words()).containsExactly("a b.xlsx");
        assertThat(request.values("--set")).containsExactly("a[1]=2", "b=");
        assertThat(request.value("--out", "")).isEqualTo("c.xlsx");
    }

    @Test
    void optionsMayStandAnywhere() {
        assertThat(read("new", "--demo", "a.xlsx", "--force", "--unit", "mm"))
                .isEqualTo(read("new", "--force", "--unit=mm", "--demo", "a.xlsx"));
        assertThat(read("fill", "--set", "a= 1 1/2", "a.xlsx").values("--set"))
                .containsExactly("a= 1 1/2");
    }

    private static Request read(String... line) {
        return new CommandReader(Terminal.ofProcess()).read(line).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fil a.xlsx",
                "fill --otu=b.xlsx a.xlsx",
                "fill",
                "fill a b",
                "new --demo",
                "fill --out a.xlsx --out b.xlsx c.xlsx",
                "--force",
                "fill --set",
                "show --json=yes a.xlsx x"
            })
    void mistakesAreUsageErrorsThatPointToTheHelp(String line) {
        Run run = Run.of((Object[]) line.split(" "));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("shaftwright: ").contains("--help");
    }

    @Test
    void misspeltCommandsAreToldTheNearOne() {
        assertThat(Run.of("fil", "a.xlsx").err()).contains("near it: fill");
    }

    @Test
    void versionIsOneLine() {
        assertThat(Run.of("--version").out()).startsWith("shaftwright ").hasLineCount(1);
    }

    @ParameterizedTest
    @EnumSource(
            value = Command.class,
            names = {"NEW", "FUNCTIONS"},
            mode = EnumSource.Mode.EXCLUDE)
    void missingFilesAreUnreadable(Command command) {
        Run run = Run.of(all(command, folder.resolve("none.xlsx")));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("none.xlsx: found no such file");
    }

    @ParameterizedTest
    @EnumSource(
            value = Command.class,
            names = {"NEW", "FUNCTIONS"},
            mode = EnumSource.Mode.EXCLUDE)
    void textFilesAreUnreadable(Command command) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), "1,2\n");

        Run run = Run.of(all(command, file));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("list.csv: found a text file");
    }

    /** The command with this file in every place. */
    private static Object[] all(Command command, Path file) {
        List<Object> words = new ArrayList<>();
        words.add(command.word());
        for (Parameter parameter : command.parameters()) {
            for (int i = 0; i < Math.max(1, parameter.least()); i++) {
                words.add(file);
            }
        }
        if (command == Command.COMPARE) {
            words.add("--out=" + file.resolveSibling("compared.xlsx"));
        }
        return words.toArray();
    }

    @Test
    void traceShowsWhereAnErrorArose() {
        Run run = Run.of("check", "--trace", folder.resolve("none.xlsx"));

        assertThat(run.err()).contains("\tat shaftwright.");
        assertThat(Run.of("check", folder.resolve("none.xlsx")).err()).doesNotContain("\tat ");
    }

    @Test
    void missingTargetFolderIsNotWritten() {
        Run run =
                Run.of(
                        "fill",
                        "--out",
                        folder.resolve("no").resolve("a.xlsx"),
                        Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    }
}
