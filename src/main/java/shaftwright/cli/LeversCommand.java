package shaftwright.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import shaftwright.reading.Lever;
import shaftwright.reading.LeverSearch;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** Says what would give a scenario more room. */
final class LeversCommand {
    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    LeversCommand(Request request, Terminal terminal, Progress progress) {
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
        List<ScenarioOutcome> scenarios =
                request.has("--scenario")
                        ? List.of(ScenarioChoice.one(request, sizing))
                        : ScenarioChoice.of(request, sizing);
        progress.step("Trying changes");
        for (ScenarioOutcome scenario : scenarios) {
            print(sizing, scenario);
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
        List<Lever> levers = LeverSearch.of(sizing, scenario.number());
        if (!scenario.computed()) {
            out.println("  no change was tried: both sides need a result first");
        } else if (levers.isEmpty()) {
            out.println("  no change that was tried gives more room");
        } else {
            out.println("  window gained        cost  then");
        }
        for (Lever lever : levers) {
            out.println(line(lever, sizing.unit()));
        }
        LeverSearch.marginChoice(sizing, scenario.number())
                .ifPresent(choice -> out.println("  " + choice));
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
                lever.words());
    }
}
