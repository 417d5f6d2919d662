package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.book.NoRoomException;
import shaftwright.filling.Filling;
import shaftwright.filling.Taking;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Copies a scenario out of one workbook into another. */
@Command(
        name = "take",
        description = {
            "Copies a scenario of a friend's workbook, with the joints, bench readings, boots and blanks that it names, into an empty scenario column of yours, and fills yours.",
            "Lengths keep their meaning when the units differ. Tape readings and settings are not"
                    + " taken; settings that differ are listed, and what you must see to."
        },
        footer = {
            "  shaftwright take friend.xlsx B shafts.xlsx",
            "  shaftwright take friend.xlsx B --preview shafts.xlsx",
            "  shaftwright take friend.xlsx B --as D --out tried.xlsx shafts.xlsx"
        })
final class TakeCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "FROM",
            description = "the friend's workbook, which is left alone")
    private Path from;

    @Parameters(index = "1", paramLabel = "SCENARIO", description = "letter of the scenario there")
    private ScenarioLetter taken;

    @Parameters(index = "2", paramLabel = "INTO", description = "your workbook")
    private Path into;

    @Option(
            names = "--as",
            paramLabel = "LETTER",
            description =
                    "Put it into this column, whatever stands there. Default: the first"
                            + " empty one.")
    private Optional<ScenarioLetter> as;

    @Option(
            names = "--preview",
            description = "Say what would come along, be replaced and differ; write nothing.")
    private boolean preview;

    @Option(names = "--yes", description = "Replace what stands in the column without asking.")
    private boolean yes;

    @Mixin private OutOption out;

    private final Terminal terminal;
    private final Progress progress;

    TakeCommand(Terminal terminal, Progress progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() {
        Path target = out.target(into);
        Sizing source = computed(OpenedWorkbook.of(from, progress), from);
        XlsxBook book = OpenedWorkbook.of(into, progress);
        Sizing before = source == null ? null : computed(book, into);
        if (source == null || before == null) {
            return ExitCode.PROBLEMS;
        }
        int scenario = used(source);
        int column;
        Taking.Plan plan;
        try {
            column = column(before);
            plan = Taking.plan(source, scenario, before, column);
        } catch (NoRoomException e) {
            terminal.err().println("error: " + into.getFileName() + ": " + e.getMessage() + ".");
            terminal.err().println(into.getFileName() + ": nothing was taken.");
            return ExitCode.PROBLEMS;
        }
        progress.step("Computing " + into.getFileName());
        Filling.Report report = Filling.fill(book, plan.columns());
        ProblemList problems = new ProblemList(into, report.problems());
        if (report.hasErrors()) {
            problems.print(terminal.err());
            terminal.err().println(into.getFileName() + ": nothing was taken.");
            return ExitCode.PROBLEMS;
        }
        if (preview) {
            say(report, scenario, column, plan, " would be ");
            problems.print(terminal.out());
            terminal.out().println(into + ": nothing was written.");
            return ExitCode.SUCCESS;
        }
        if (plan.replaced().isPresent() && !yes && !agreed(column, plan.replaced().get())) {
            terminal.err().println(into.getFileName() + ": nothing was taken.");
            return ExitCode.SUCCESS;
        }
        SaveReport saved = book.save(target);
        say(report, scenario, column, plan, " is now ");
        problems.print(terminal.out());
        terminal.out().print(target + ": " + report.written() + " cells filled");
        OwnFormulas.say(terminal.out(), saved);
        FillSummary.previous(terminal.out(), saved.replaced());
        return ExitCode.SUCCESS;
    }

    private boolean agreed(int column, String standing) {
        return terminal.agreesTo(
                "Scenario "
                        + ScenarioOutcome.letter(column)
                        + " of "
                        + into.getFileName()
                        + " is "
                        + standing
                        + ". Replace it?");
    }

    /** The workbook's results, or null when it has errors, which are said. */
    private Sizing computed(XlsxBook book, Path file) {
        Sizing sizing = Results.orNull(file, book, terminal, progress);
        if (sizing == null) {
            terminal.err().println(file.getFileName() + ": nothing was taken.");
        }
        return sizing;
    }

    private int used(Sizing source) {
        int scenario = taken.number();
        boolean known = scenario < source.scenarios().size();
        if (!known || !source.scenario(scenario).used()) {
            StringBuilder named = new StringBuilder();
            for (ScenarioOutcome each : source.scenarios()) {
                if (each.used()) {
                    named.append(named.length() == 0 ? "" : ", ").append(each.letter());
                }
            }
            throw new UsageException(
                    from.getFileName()
                            + ": found no scenario \""
                            + taken
                            + "\"; expected the letter of a scenario that has a name: "
                            + (named.length() == 0 ? "it has none" : named));
        }
        return scenario;
    }

    private int column(Sizing target) {
        if (as.isEmpty()) {
            return Taking.freeColumn(target);
        }
        int column = as.get().number();
        if (column >= target.scenarios().size()) {
            throw new UsageException(
                    "--as: found \""
                            + as.get()
                            + "\"; expected a letter from A to "
                            + ScenarioOutcome.letter(target.scenarios().size() - 1)
                            + ", which are the scenario columns of "
                            + into.getFileName());
        }
        return column;
    }

    private void say(Filling.Report report, int scenario, int column, Taking.Plan plan, String is) {
        PrintStream print = terminal.out();
        Sizing sizing = report.sizing().orElseThrow();
        ScenarioTexts texts = new ScenarioTexts(sizing, sizing.scenario(column));
        print.println(
                "Scenario "
                        + ScenarioOutcome.letter(scenario)
                        + " of "
                        + from.getFileName()
                        + is
                        + "scenario "
                        + ScenarioOutcome.letter(column)
                        + " of "
                        + into.getFileName()
                        + plan.replaced().map(standing -> ", in place of " + standing).orElse("")
                        + ", on your tape readings.");
        texts.list(print);
        list(print, "Parts added: ", plan.added());
        list(print, "Settings that differ and were not taken: ", plan.different());
        plan.remarks().forEach(print::println);
    }

    private static void list(PrintStream out, String heading, List<String> items) {
        if (!items.isEmpty()) {
            out.println(heading + String.join("; ", items) + ".");
        }
    }
}
