package shaftwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.FillJob;
import shaftwright.jobs.Journal;

/** Fills a workbook, in place or into another file. */
@Command(
        name = "fill",
        description = {
            "Computes a workbook and writes every result into it.",
            "Formulas, formats, notes and your own sheets stay as they are; the"
                    + " previous file is kept as NAME.backup.xlsx."
        },
        footer = {
            "  shaftwright fill shafts.xlsx",
            "  shaftwright fill --out wider.xlsx --set hub_shift[A]=1 shafts.xlsx",
            "  shaftwright fill --inputs readings.json shafts.xlsx"
        })
final class FillCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Mixin private OutOption out;

    @Mixin private InputOptions typed;

    private final Journal journal;

    FillCommand(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Integer call() {
        TypedInputs inputs = typed.start();
        typed.gather(inputs);
        FillJob job = new FillJob(file, out.target(file), inputs.forFilling(), inputs.leftOut());
        return job.run(journal).isPresent() ? ExitCode.SUCCESS : ExitCode.PROBLEMS;
    }
}
