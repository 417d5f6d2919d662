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
import shaftwright.jobs.Journal;
import shaftwright.jobs.OpenedWorkbook;
import shaftwright.jobs.Results;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Price;
import shaftwright.study.ScenarioVariants;
import shaftwright.study.TradeOff;
import shaftwright.study.TradeOffSearch;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Lists the variants of a scenario that no other beats. */
@Command(
        name = "trade-offs",
        description = {
            "Tries every pairing of your joints at several hub shifts and amounts of travel, each with the best of your blanks, and lists those that fit and that no other beats in cost, travel and least slack.",
            "Changes nothing."
        },
        footer = {"  shaftwright trade-offs --scenario B shafts.xlsx"})
final class TradeOffsCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Option(
            names = "--scenario",
            paramLabel = "LETTER",
            description = "The scenario to vary. Default: A.")
    private Optional<ScenarioLetter> scenario;

    private final Terminal terminal;
    private final Journal journal;

    TradeOffsCommand(Terminal terminal, Journal journal) {
        this.terminal = terminal;
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
        ScenarioOutcome varied = ScenarioChoice.one(scenario, sizing);
        journal.step("Trying variants");
        PrintStream out = terminal.out();
        out.println(
                new ScenarioTexts(sizing, varied).title()
                        + ": variants that fit and that none beats in cost, travel and slack (slack"
                        + " above "
                        + Wording.length(TradeOffSearch.AMPLE_SLACK, sizing.unit())
                        + " counts as that much)");
        List<TradeOff> front =
                sizing.variants(varied.number()).map(ScenarioVariants::tradeOffs).orElse(List.of());
        if (front.isEmpty()) {
            out.println("  none fits");
        } else {
            String unit = sizing.unit().symbol();
            out.printf(
                    "%10s %9s %9s %9s %9s  %s%n",
                    "cost",
                    "bump " + unit,
                    "droop " + unit,
                    "slack " + unit,
                    "hubs " + unit,
                    "joints, blanks");
        }
        for (TradeOff one : front) {
            out.println(line(one, sizing.unit()));
        }
        return ExitCode.SUCCESS;
    }

    private static String line(TradeOff one, LengthUnit unit) {
        String number = unit == LengthUnit.INCH ? "%9.3f" : "%9.1f";
        String inner = one.scenario().inner().joint().name();
        String outer = one.scenario().outer().joint().name();
        String joints =
                inner.equals(outer)
                        ? inner + ", both ends"
                        : inner + " inside, " + outer + " outside";
        String left = one.left().name();
        String right = one.right().name();
        return String.format(
                Locale.ROOT,
                "%10s " + number + " " + number + " " + number + " " + number + "  %s; %s",
                one.cost().isKnown() ? one.cost().words() : Price.NOT_PRICED,
                one.bump() / unit.mm(),
                one.droop() / unit.mm(),
                one.leastSlack() / unit.mm(),
                one.scenario().hubShift() / unit.mm(),
                joints,
                left.equals(right) ? left : left + ", " + right);
    }
}
