package shaftwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import shaftwright.book.OpenBook;
import shaftwright.build.Side;
import shaftwright.comparison.Comparison;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/** Shows results in the terminal or as JSON. */
final class ShowCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    ShowCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() throws IOException {
        List<Side> sides = sides();
        progress.step("Reading " + request.file().getFileName());
        XlsxBook book = XlsxBook.open(request.file(), new OwnFormulas(progress));
        progress.step("Computing it");
        List<OpenBook> books = Comparison.books(book);
        List<Filling.Report> reports = new ArrayList<>();
        boolean failed = false;
        for (OpenBook each : books) {
            Filling.Report report = Filling.compute(each);
            reports.add(report);
            if (report.hasErrors()) {
                problems(report).print(terminal.err());
                failed = true;
            }
        }
        if (failed) {
            return ExitCode.PROBLEMS;
        }
        book.refuseDamaged();
        if (request.has("--json")) {
            json(book, books, reports, sides);
        } else {
            for (int i = 0; i < books.size(); i++) {
                if (Comparison.is(book)) {
                    terminal.out().println(books.get(i).title() + ":");
                    terminal.out().println();
                }
                table(reports.get(i), sides);
            }
        }
        return ExitCode.SUCCESS;
    }

    private void json(
            XlsxBook book, List<OpenBook> books, List<Filling.Report> reports, List<Side> sides)
            throws IOException {
        List<JsonReport> all = new ArrayList<>();
        for (int i = 0; i < books.size(); i++) {
            Sizing sizing = reports.get(i).sizing().orElseThrow();
            all.add(
                    new JsonReport(
                            books.get(i).title(),
                            reports.get(i),
                            sides,
                            ScenarioChoice.of(request, sizing)));
        }
        if (Comparison.is(book)) {
            JsonReport.printBooks(terminal.out(), book.title(), all);
        } else {
            all.get(0).print(terminal.out());
        }
    }

    private void table(Filling.Report report, List<Side> sides) {
        Sizing sizing = report.sizing().orElseThrow();
        List<ScenarioOutcome> scenarios = ScenarioChoice.of(request, sizing);
        if (scenarios.isEmpty()) {
            terminal.out().println("No scenario has a name yet, so there is nothing to show.");
        }
        ResultTable table = new ResultTable(terminal.out(), sizing);
        for (ScenarioOutcome scenario : scenarios) {
            table.print(scenario, sides);
        }
        table.printPaths(sides);
        table.printCaution();
        problems(report).print(terminal.out());
    }

    private ProblemList problems(Filling.Report report) {
        return new ProblemList(request.file(), report.problems());
    }

    private List<Side> sides() {
        String word = request.value("--side", "");
        List<Side> sides = new ArrayList<>();
        for (Side side : Side.values()) {
            if (word.isEmpty() || side.word().equals(word)) {
                sides.add(side);
            }
        }
        if (sides.isEmpty()) {
            throw new UsageException("--side: found \"" + word + "\"; expected left or right.");
        }
        return sides;
    }
}
