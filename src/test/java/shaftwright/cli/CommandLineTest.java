package shaftwright.cli;

import static java.io.OutputStream.nullOutputStream;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import shaftwright.units.LengthUnit;

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
    @MethodSource("commands")
    void everyCommandHelpsWithItsOptionsAndExamples(CommandSpec command) {
        Run run = Run.of(command.name(), "--help");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Usage: shaftwright " + command.name())
                .contains("Exit codes:")
                .contains("--trace", "-h, --help");
        assertThat(examples(command)).isNotEmpty();
        for (OptionSpec option : command.options()) {
            assertThat(run.out()).contains(option.longestName());
            assertThat(option.description()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyExampleCanBeRead(CommandSpec command) {
        for (String example : examples(command)) {
            assertThat(read(example.split(" ")).commandSpec().name())
                    .as(example)
                    .isEqualTo(command.name());
        }
    }

    @Test
    void everyExampleOfTheProgramCanBeRead() {
        List<String> examples = examples(line().getCommandSpec());

        assertThat(examples).isNotEmpty();
        for (String example : examples) {
            read(example.split(" "));
        }
    }

    static List<CommandSpec> commands() {
        return line().getSubcommands().values().stream().map(CommandLine::getCommandSpec).toList();
    }

    private static CommandLine line() {
        Terminal terminal = Terminal.over(nullOutputStream(), nullOutputStream());
        return Program.commands(terminal, Progress.start(terminal));
    }

    /** Command lines without the program's name, as the help shows them. */
    private static List<String> examples(CommandSpec command) {
        return Stream.of(command.usageMessage().footer())
                .filter(row -> row.startsWith("  shaftwright "))
                .map(row -> row.substring("  shaftwright ".length()))
                .toList();
    }

    @Test
    void valuesStandBehindAnEqualsSignOrASpaceAndMayBeEmpty() {
        ParseResult line = read("fill", "a b.xlsx", "--set=a[1]=2", "--set", "b=", "--out=c.xlsx");

        assertThat(line.matchedPositionals().get(0).stringValues()).containsExactly("a b.xlsx");
        assertThat(line.matchedOption("--set").stringValues()).containsExactly("a[1]=2", "b=");
        assertThat(line.matchedOptionValue("--out", Optional.empty())).contains(Path.of("c.xlsx"));
    }

    @Test
    void optionsMayStandAnywhere() {
        for (String line :
                List.of(
                        "new --demo a.xlsx --force --unit mm",
                        "new --force --unit=mm --demo a.xlsx")) {
            ParseResult read = read(line.split(" "));

            assertThat(read.hasMatchedOption("--demo")).isTrue();
            assertThat(read.hasMatchedOption("--force")).isTrue();
            assertThat(read.matchedOptionValue("--unit", Optional.empty()))
                    .contains(LengthUnit.MILLIMETRE);
            assertThat(read.matchedPositional(0).<Object>getValue()).isEqualTo(Path.of("a.xlsx"));
        }
        assertThat(
                        read("fill", "--set", "a= 1 1/2", "a.xlsx")
                                .matchedOption("--set")
                                .stringValues())
                .containsExactly("a= 1 1/2");
    }

    private static ParseResult read(String... words) {
        return line().parseArgs(words).subcommand();
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

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    fil a.xlsx                       | unknown command "fil"; near it: fill
                    fill --otu=b.xlsx a.xlsx         | unknown option "--otu=b.xlsx"; near it: --out
                    fill                             | a file is missing: shaftwright fill FILE
                    fill a b                         | one file too many: "b"; expected: shaftwright fill FILE
                    fill a b c                       | 2 files too many, from "b" on; expected: shaftwright fill FILE
                    functions reach b                 | one word too many: "b"; expected: shaftwright functions [NAME]
                    take a.xlsx                      | SCENARIO is missing: shaftwright take FROM SCENARIO INTO
                    compare                          | --out and a second file are missing: shaftwright compare FILE FILE … --out FILE
                    compare a.xlsx                   | a second file is missing: shaftwright compare FILE FILE … --out FILE
                    compare a.xlsx b.xlsx            | --out is missing: shaftwright compare FILE FILE … --out FILE
                    fill --out a --out b c.xlsx      | --out is given twice
                    fill --set                       | --set: found nothing after it; expected NAME=VALUE
                    compare a.xlsx b.xlsx --out      | --out: found nothing after it; expected FILE
                    show --json=yes a.xlsx           | --json: found "yes" after it; expected nothing there
                    new --unit cm a.xlsx             | --unit: found "cm"; expected inch or mm.
                    show --scenario 7 a.xlsx         | --scenario: found "7"; expected a letter from A to X.
                    fill /                           | FILE: found "/"; expected a file name.
                    sweep --down hub_shift a.xlsx    | --down: found "hub_shift"; expected NAME=FROM..TO/COUNT.
                    sweep --down x=0..b/c a.xlsx     | --down: found "x=0..b/c"; expected numbers in NAME=FROM..TO/COUNT.
                    functions nosuch                 | NAME: no function is called "nosuch"; the command functions lists all
                    """)
    void mistakesAreSaidInPlainWords(String line, String message) {
        Run run = Run.of((Object[]) line.split(" "));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).startsWith("shaftwright: " + message + System.lineSeparator());
    }

    @Test
    void emptyWordsAreRefused() {
        assertThat(Run.of("fill", "").err()).startsWith("shaftwright: FILE: found an empty text");
        assertThat(Run.of("functions", "").err())
                .startsWith("shaftwright: NAME: found an empty text");
        assertThat(Run.of("sweep", "--down=", "a.xlsx").err())
                .startsWith("shaftwright: --down: found nothing after it; expected NAME=FROM");
    }

    @Test
    void wordsThatBeginWithAnAtSignAreNoFilesOfArguments() throws IOException {
        Path file = Files.writeString(folder.resolve("line.txt"), "--help");

        assertThat(Run.of("@" + file).err()).contains("unknown command \"@");
    }

    @Test
    void completionKnowsEveryCommandAndItsOptions() {
        Run run = Run.of("completion");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith("#!/usr/bin/env bash")
                .contains("complete -F _complete_shaftwright", "'--across'", "trade-offs");
    }

    /**
     * As man(7) has it: a heading of its own for every command, no line that is a macro by chance.
     */
    @Test
    void manualPageHasEveryCommandAndNothingButKnownMacros() {
        Run run = Run.of("manual");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith(".TH \"SHAFTWRIGHT\" \"1\"")
                .contains("shaftwright \\- Sizes");
        assertThat(run.out().lines().filter(line -> line.startsWith(".SS ")).count())
                .isEqualTo(commands().size());
        assertThat(run.out().lines().filter(line -> line.startsWith(".")))
                .allMatch(line -> line.matches("\\.(TH|SH|SS|TP|PP|nf|fi)( \".*\")*"));
        assertThat(run.out()).contains("\n\\-\\-set=NAME=VALUE\n", "EXIT STATUS", "Caution");
    }

    @Test
    void versionIsOneLine() {
        assertThat(Run.of("--version").out()).startsWith("shaftwright ").hasLineCount(1);
    }

    @ParameterizedTest
    @MethodSource("readers")
    void missingFilesAreUnreadable(CommandSpec command) {
        Run run = Run.of(all(command, folder.resolve("none.xlsx")));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("none.xlsx: file not found");
    }

    @ParameterizedTest
    @MethodSource("readers")
    void textFilesAreUnreadable(CommandSpec command) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), "1,2\n");

        Run run = Run.of(all(command, file));

        assertThat(run.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(run.err()).contains("list.csv: found a text file");
    }

    /** Those that need a workbook. */
    static List<CommandSpec> readers() {
        return commands().stream()
                .filter(command -> !command.name().equals("new"))
                .filter(command -> !command.positionalParameters().isEmpty())
                .filter(command -> command.positionalParameters().get(0).required())
                .toList();
    }

    /** The command with this file in every place where a file is to stand. */
    private static Object[] all(CommandSpec command, Path file) {
        List<Object> words = new ArrayList<>();
        words.add(command.name());
        for (PositionalParamSpec word : command.positionalParameters()) {
            for (int i = 0; i < word.arity().min(); i++) {
                words.add(word.type() == ScenarioLetter.class ? "A" : file);
            }
        }
        for (OptionSpec option : command.options()) {
            if (option.required()) {
                words.add(option.longestName() + "=" + file.resolveSibling("made.xlsx"));
            }
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
