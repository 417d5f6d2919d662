package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import shaftwright.book.NoRoomException;
import shaftwright.filling.Filling;
import shaftwright.filling.Taking;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.SaveReport;
import shaftwright.xlsx.XlsxBook;

/** Copies a scenario out of one workbook into another. */
final class TakeCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    TakeCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() {
        Path from = request.file();
        Path into = Inputs.path(request.words().get(2));
        Path target = request.target(into);
        OwnFormulas formulas = new OwnFormulas(progress);
        Sizing source = computed(XlsxBook.open(from, formulas), from);
        XlsxBook book = XlsxBook.open(into, formulas);
        Sizing before = source == null ? null : computed(book, into);
        if (source == null || before == null) {
            return ExitCode.PROBLEMS;
        }
        int scenario = used(source, from, request.words().get(1));
        int column;
        Taking.Plan plan;
        try {
            column = column(before, into);
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
        SaveReport saved = book.save(target);
        say(report, scenario, column, plan, from, target);
        problems.print(terminal.out());
        terminal.out().print(target + ": " + report.written() + " cells filled");
        OwnFormulas.say(terminal.out(), saved);
        FillSummary.previous(terminal.out(), saved.replaced());
        return ExitCode.SUCCESS;
    }

    /** The workbook's results, or null when it has errors, which are said. */
    private Sizing computed(XlsxBook book, Path file) {
        Sizing sizing = Results.orNull(file, book, terminal, progress);
        if (sizing == null) {
            terminal.err().println(file.getFileName() + ": nothing was taken.");
        }
        return sizing;
    }

    private static int used(Sizing source, Path from, String letter) {
        int scenario = ScenarioOutcome.number(letter);
        boolean known = scenario >= 0 && scenario < source.scenarios().size();
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
                            + letter
                            + "\"; expected the letter of a scenario that has a name: "
                            + (named.length() == 0 ? "it has none" : named));
        }
        return scenario;
    }

    private int column(Sizing target, Path into) {
        String letter = request.value("--as", "");
        if (letter.isEmpty()) {
            return Taking.freeColumn(target);
        }
        int column = ScenarioOutcome.number(letter);
        if (column < 0 || column >= target.scenarios().size()) {
            throw new UsageException(
                    "--as: found \""
                            + letter
                            + "\"; expected a letter from A to "
                            + ScenarioOutcome.letter(target.scenarios().size() - 1)
                            + ", which are the scenario columns of "
                            + into.getFileName());
        }
        return column;
    }

    private void say(
            Filling.Report report,
            int scenario,
            int column,
            Taking.Plan plan,
            Path from,
            Path target) {
        PrintStream out = terminal.out();
        Sizing sizing = report.sizing().orElseThrow();
        ScenarioTexts texts = new ScenarioTexts(sizing, sizing.scenario(column));
        out.println(
                "Scenario "
                        + ScenarioOutcome.letter(scenario)
                        + " of "
                        + from.getFileName()
                        + " is scenario "
                        + ScenarioOutcome.letter(column)
                        + " of "
                        + target.getFileName()
                        + " now, on the tape readings there.");
        texts.list(out);
        list(out, "Parts added: ", plan.added());
        list(out, "Settings that differ and were not taken: ", plan.different());
    }

    private static void list(PrintStream out, String heading, List<String> items) {
        if (!items.isEmpty()) {
            out.println(heading + String.join("; ", items) + ".");
        }
    }
}
