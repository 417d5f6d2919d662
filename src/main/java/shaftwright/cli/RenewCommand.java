package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.Journal;
import shaftwright.jobs.RenewJob;

/** Makes a current workbook of an earlier one, with all that its builder put into it. */
@Command(
        name = "renew",
        description = {
            "Makes a current workbook of one that an earlier version made, or that lost charts or drop-down lists in some program.",
            "All that is typed comes along, as it is typed, with your formulas in"
                    + " typed cells, your notes, cells and sheets, and the names and order of"
                    + " all sheets. What can't come along is listed; the previous file is kept as"
                    + " NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright renew shafts.xlsx",
            "  shaftwright renew --out current.xlsx shafts.xlsx"
        })
final class RenewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Mixin private OutOption out;

    @Mixin private ForceOption force;

    private final Journal journal;

    RenewCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() throws IOException {
        RenewJob job = new RenewJob(file, out.target(file), force::refuseToReplace);
        return job.run(journal).isPresent() ? ExitCode.SUCCESS : ExitCode.PROBLEMS;
    }
}
