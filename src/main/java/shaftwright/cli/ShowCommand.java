package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.book.OpenBook;
import shaftwright.build.Side;
import shaftwright.comparison.Comparison;
import shaftwright.filling.Filling;
import shaftwright.jobs.FurtherReading;
import shaftwright.jobs.Journal;
import shaftwright.jobs.OpenedWorkbook;
import shaftwright.jobs.ProblemList;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Cautions;
import shaftwright.study.Derivation;
import shaftwright.xlsx.XlsxBook;

/** Shows results in the terminal or as JSON. */
@Command(
        name = "show",
        description = {
            "Shows the results of every scenario and side.",
            "First what matters most: verdict, findings, lengths, slack, angles, weakest part and"
                    + " cost. Changes nothing."
        },
        footer = {
            "  shaftwright show shafts.xlsx",
            "  shaftwright show --side left --scenario A shafts.xlsx",
            "  shaftwright show --all shafts.xlsx",
            "  shaftwright show --explain --side left shafts.xlsx",
            "  shaftwright show --json shafts.xlsx"
        })
final class ShowCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Option(
            names = "--all",
            description =
                    "All results: cuts, joints, travel and what stops it, boots, chances, every"
                            + " part's strength, where the hub paths come from.")
    private boolean all;

    @Option(
            names = "--explain",
            description =
                    "How each length came about, step by step from the tape, for the scenario on the"
                            + " shop cards or that of --scenario: the sheets \"How it came about\".")
    private boolean explain;

    @Option(
            names = "--json",
            description =
                    "As JSON for other programs. Every key of a number names its unit:"
                            + " _mm, _rad. Its \"inputs\" can be fed to --inputs.")
    private boolean json;

    @Option(names = "--side", paramLabel = "left|right", description = "One side only.")
    private Optional<Side> side;

    @Option(names = "--scenario", paramLabel = "LETTER", description = "One scenario only.")
    private Optional<ScenarioLetter> scenario;

    private final Terminal terminal;
    private final Journal journal;

    ShowCommand(Terminal terminal, Journal journal) {
        this.terminal = terminal;
        this.journal = journal;
    }

    @Override
    public Integer call() throws IOException {
        List<Side> sides = side.map(List::of).orElse(List.of(Side.values()));
        XlsxBook book = OpenedWorkbook.of(file, journal);
        journal.step("Computing it");
        List<OpenBook> books = Comparison.books(book);
        List<Filling.Report> reports = new ArrayList<>();
        boolean failed = false;
        for (OpenBook each : books) {
            Filling.Report report = Filling.compute(each);
            reports.add(report);
            if (report.hasErrors()) {
                problems(report).sayTo(journal::complain);
                failed = true;
            }
        }
        if (failed) {
            return ExitCode.PROBLEMS;
        }
        book.refuseDamaged();
        if (json) {
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
        List<JsonReport> parts = new ArrayList<>();
        for (int i = 0; i < books.size(); i++) {
            Sizing sizing = reports.get(i).sizing().orElseThrow();
            JsonReport part =
                    new JsonReport(
                            books.get(i).title(),
                            reports.get(i),
                            sides,
                            ScenarioChoice.of(scenario, sizing));
            parts.add(explain ? part.withDerivations() : part);
        }
        if (Comparison.is(book)) {
            JsonReport.printBooks(terminal.out(), book.title(), parts);
        } else {
            parts.get(0).print(terminal.out());
        }
    }

    private void table(Filling.Report report, List<Side> sides) {
        Sizing sizing = report.sizing().orElseThrow();
        if (explain) {
            explain(sizing, sides);
            problems(report).sayTo(journal::say);
            return;
        }
        List<ScenarioOutcome> scenarios = ScenarioChoice.of(scenario, sizing);
        if (scenarios.isEmpty()) {
            terminal.out().println("No scenario has a name yet, so there is nothing to show.");
        }
        ResultPage page = new ResultPage(terminal.out(), sizing.unit());
        if (all) {
            ResultTable table = new ResultTable(page, sizing);
            scenarios.forEach(each -> table.print(each, sides));
            table.printPaths(sides);
        } else {
            ResultSummary summary = new ResultSummary(page, sizing);
            scenarios.forEach(each -> summary.print(each, sides));
        }
        List<FurtherReading> further = FurtherReading.of(sizing, sides);
        if (!further.isEmpty()) {
            page.title("Go on measuring?");
            further.forEach(each -> page.row(each.side().word(), each.words()));
            page.gap();
        }
        MockUpReport.print(page, sizing, sides);
        ReturningLoads.cautions(scenarios, sides, all).forEach(page::sentence);
        page.sentence(Cautions.LINE);
        page.gap();
        problems(report).sayTo(journal::say);
    }

    private void explain(Sizing sizing, List<Side> sides) {
        ResultPage page = new ResultPage(terminal.out(), sizing.unit());
        Optional<ScenarioOutcome> explained =
                scenario.isPresent()
                        ? Optional.of(ScenarioChoice.one(scenario, sizing))
                        : sizing.ofShop(shop -> Optional.of(sizing.scenario(shop)));
        explained.ifPresentOrElse(
                each -> new DerivationPage(page, sizing).print(each, sides),
                () -> page.sentence(Derivation.NO_SCENARIO));
        page.sentence(Cautions.LINE);
        page.gap();
    }

    private ProblemList problems(Filling.Report report) {
        return new ProblemList(file, report.problems());
    }
}
