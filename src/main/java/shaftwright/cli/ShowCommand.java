package shaftwright.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import shaftwright.workbook.Filling;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Side;
import shaftwright.workbook.Sizing;
import shaftwright.workbook.xlsx.XlsxBook;

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
        XlsxBook book = XlsxBook.open(request.file());
        progress.step("Computing it");
        Filling.Report report = Filling.compute(book);
        ProblemList problems = new ProblemList(request.file(), report.problems());
        if (report.hasErrors()) {
            problems.print(terminal.err());
            return ExitCode.PROBLEMS;
        }
        Sizing sizing = report.sizing().orElseThrow();
        List<ScenarioOutcome> scenarios = ScenarioChoice.of(request, sizing);
        if (scenarios.isEmpty() && !request.has("--json")) {
            terminal.out().println("No scenario has a name yet, so there is nothing to show.");
        }
        if (request.has("--json")) {
            new JsonReport(terminal.out(), sizing, sides).print(book.title(), scenarios);
        } else {
            ResultTable table = new ResultTable(terminal.out(), sizing);
            for (ScenarioOutcome scenario : scenarios) {
                table.print(scenario, sides);
            }
            table.printPaths(sides);
            problems.print(terminal.out());
        }
        return ExitCode.SUCCESS;
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
