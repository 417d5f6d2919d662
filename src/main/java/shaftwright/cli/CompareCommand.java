package shaftwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.CompareJob;
import shaftwright.jobs.Journal;
import shaftwright.units.LengthUnit;

/** Lays several workbooks side by side in a new one. */
@Command(
        name = "compare",
        description = {
            "Lays the scenarios of several workbooks side by side in a new one, with the inputs that differ.",
            "It holds every workbook whole, all in one unit, so that it follows"
                    + " what is changed in it, and is linked to none of the files. At most 24"
                    + " scenarios in all."
        },
        footer = {
            "  shaftwright compare mine.xlsx friend.xlsx --out both.xlsx",
            "  shaftwright compare mine.xlsx yours.xlsx theirs.xlsx --unit mm --out all.xlsx --force"
        })
final class CompareCommand implements Callable<Integer> {
    @Parameters(
            arity = "2..*",
            paramLabel = "FILE",
            description = "the workbooks, which are left alone")
    private List<Path> files;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The comparison to be made.")
    private Path target;

    @Option(
            names = "--unit",
            paramLabel = "inch|mm",
            description = "Unit of the comparison. Default: that of the first file.")
    private Optional<LengthUnit> unit;

    @Option(
            names = "--anonymous",
            description = "Leave out the files' names and the vehicles' names.")
    private boolean anonymous;

    @Mixin private ForceOption force;

    private final Journal journal;

    CompareCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() throws IOException {
        CompareJob job = new CompareJob(files, target, unit, anonymous, force::refuseToReplace);
        return job.run(journal).isPresent() ? ExitCode.SUCCESS : ExitCode.PROBLEMS;
    }
}
