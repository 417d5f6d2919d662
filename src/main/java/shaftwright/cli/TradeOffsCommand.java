package shaftwright.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.TradeOff;
import shaftwright.reading.TradeOffSearch;
import shaftwright.study.Price;
import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Lists the variants of a scenario that no other beats. */
final class TradeOffsCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    TradeOffsCommand(Request request, Terminal terminal, Progress progress) {
        this.request = request;
        this.terminal = terminal;
        this.progress = progress;
    }

    int run() {
        XlsxBook book = XlsxBook.open(request.file(), new OwnFormulas(progress));
        Sizing sizing = Results.orNull(request.file(), book, terminal, progress);
        if (sizing == null) {
            return ExitCode.PROBLEMS;
        }
        ScenarioOutcome scenario = ScenarioChoice.one(request, sizing);
        progress.step("Trying variants");
        PrintStream out = terminal.out();
        out.println(
                new ScenarioTexts(sizing, scenario).title()
                        + ": variants that fit and that none beats in cost, travel and slack (slack"
                        + " above "
                        + Wording.length(TradeOffSearch.AMPLE_SLACK, sizing.unit())
                        + " counts as that much)");
        List<TradeOff> front = TradeOffSearch.of(sizing, scenario.number());
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
        String joints =
                one.innerJoint().equals(one.outerJoint())
                        ? one.innerJoint() + ", both ends"
                        : one.innerJoint() + " inside, " + one.outerJoint() + " outside";
        return String.format(
                Locale.ROOT,
                "%10s " + number + " " + number + " " + number + " " + number + "  %s; %s",
                one.cost().isKnown() ? one.cost().words() : Price.NOT_PRICED,
                one.bump() / unit.mm(),
                one.droop() / unit.mm(),
                one.leastSlack() / unit.mm(),
                one.hubShift() / unit.mm(),
                joints,
                one.blanks());
    }
}
