package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Lever;
import shaftwright.study.ScenarioVariants;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Says what would give a scenario more room. */
@Command(
        name = "levers",
        description = {
            "Says what would give a scenario more room, one change at a time: joints, boots, ring seats, spacers, limit strap, bump stop, where transaxle and hubs stand.",
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

    private final Terminal terminal;
    private final Progress progress;

    LeversCommand(Terminal terminal, Progress progress) {
        this.terminal = terminal;
        this.progress = progress;
    }

    @Override
    public Integer call() {
        XlsxBook book = OpenedWorkbook.of(file, progress);
        Sizing sizing = Results.orNull(file, book, terminal, progress);
        if (sizing == null) {
            return ExitCode.PROBLEMS;
        }
        List<ScenarioOutcome> scenarios =
                scenario.isPresent()
                        ? List.of(ScenarioChoice.one(scenario, sizing))
                        : ScenarioChoice.of(scenario, sizing);
        progress.step("Trying changes");
        for (ScenarioOutcome each : scenarios) {
            print(sizing, each);
        }
        if (scenarios.isEmpty()) {
            terminal.out().println("No scenario has a name yet, so there is nothing to try.");
        }
        return ExitCode.SUCCESS;
    }

    private void print(Sizing sizing, ScenarioOutcome scenario) {
        PrintStream out = terminal.out();
        ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
        out.println(texts.title() + ": " + texts.verdict());
        LengthUnit unit = sizing.unit();
        Optional<ScenarioVariants> variants = sizing.variants(scenario.number());
        List<Lever> levers = variants.map(tried -> tried.levers(unit)).orElse(List.of());
        if (!scenario.computed()) {
            out.println("  no change was tried: both sides need a result first");
        } else if (levers.isEmpty()) {
            out.println("  no change that was tried gives more room");
        } else {
            out.println("  window gained        cost  then");
        }
        for (Lever lever : levers) {
            out.println(line(lever, unit));
        }
        variants.flatMap(tried -> tried.smallerMargins(unit))
                .ifPresent(margins -> out.println("  " + margins.words(unit)));
        out.println();
    }

    private static String line(Lever lever, LengthUnit unit) {
        boolean inch = unit == LengthUnit.INCH;
        String cost =
                lever.cost().amount().isPresent()
                        ? String.format(Locale.ROOT, "%+.2f", lever.cost().amount().getAsDouble())
                        : lever.cost().words();
        return String.format(
                Locale.ROOT,
                "  %" + (inch ? "+8.3f in" : "+8.1f mm") + " %13s  %-12s  %s",
                lever.gain() / unit.mm(),
                cost,
                lever.fits() ? "fits" : "does not fit",
                lever.words(unit));
    }
}
