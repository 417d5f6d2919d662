package shaftwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.CheckJob;
import shaftwright.jobs.Journal;

/** Says all that is wrong or doubtful in a workbook. */
@Command(
        name = "check",
        description = {
            "Reports everything that is wrong or doubtful in a workbook: readings, parts, names, formulas that were overwritten or edited.",
            "Changes nothing."
        },
        footer = {"  shaftwright check shafts.xlsx"})
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    private final Journal journal;

    CheckCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() {
        return new CheckJob(file).run(journal) ? ExitCode.SUCCESS : ExitCode.PROBLEMS;
    }
}
