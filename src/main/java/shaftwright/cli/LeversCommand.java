package shaftwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.Journal;
import shaftwright.jobs.LeversJob;
import shaftwright.jobs.OpenedWorkbook;
import shaftwright.jobs.Results;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.xlsx.XlsxBook;

/** Says what would give a scenario more room. */
@Command(
        name = "levers",
        description = {
            "Shows what would give a scenario more room, one change at a time: joints, boots, ring seats, spacers, limit strap, bump stop, where transaxle and hubs stand.",
            "What makes it fit comes first, cheapest first; pairs where no single"
                    + " change does. Costs are your own prices; what has none is not priced."
                    + " Changes nothing."
        },
        footer = {
            "  shaftwright levers shafts.xlsx",
            "  shaftwright levers --scenario B shafts.xlsx"
        })
final class LeversCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Option(names = "--scenario", paramLabel = "LETTER", description = "One scenario only.")
    private Optional<ScenarioLetter> scenario;

    private final Journal journal;

    LeversCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() {
        XlsxBook book = OpenedWorkbook.of(file, journal);
        Optional<Sizing> results = Results.of(file, book, journal);
        if (results.isEmpty()) {
            return ExitCode.PROBLEMS;
        }
        Sizing sizing = results.get();
        List<ScenarioOutcome> scenarios =
                scenario.isPresent()
                        ? List.of(ScenarioChoice.one(scenario, sizing))
                        : ScenarioChoice.of(scenario, sizing);
        new LeversJob(sizing, scenarios).run(journal);
        return ExitCode.SUCCESS;
    }
}
