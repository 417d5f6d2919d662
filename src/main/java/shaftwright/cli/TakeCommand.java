package shaftwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.jobs.Journal;
import shaftwright.jobs.TakeJob;
import shaftwright.jobs.TakenFile;

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
    private final Journal journal;

    TakeCommand(Terminal terminal, Journal journal) {
        this.terminal = terminal;
        this.journal = journal;
    }

    @Override
    public Integer call() {
        TakeJob job = new TakeJob(from, taken.number(), into, as.map(ScenarioLetter::number));
        Optional<TakenFile> outcome = job.run(journal);
        if (outcome.isEmpty()) {
            return ExitCode.PROBLEMS;
        }
        if (preview) {
            outcome.get().preview(journal);
        } else if (yes || outcome.get().question().stream().allMatch(terminal::agreesTo)) {
            outcome.get().save(out.target(into), journal);
        } else {
            TakeJob.sayNothingTaken(into, journal);
        }
        return ExitCode.SUCCESS;
    }
}
