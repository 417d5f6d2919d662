package shaftwright.cli;

import java.io.PrintStream;
import java.util.Locale;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.Sweep;
import shaftwright.reading.SweepAxis;
import shaftwright.study.Finding;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;
import shaftwright.xlsx.XlsxBook;

/** Varies two inputs of a scenario over ranges. */
final class SweepCommand {
    private static final int USUAL_ACROSS = 7;
    private static final int USUAL_DOWN = 7;

    private final Request request;
    private final Terminal terminal;
    private final Progress progress;

    SweepCommand(Request request, Terminal terminal, Progress progress) {
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
        SweepAxis across = axis("--across", sizing, usualAcross(sizing, scenario));
        SweepAxis down = axis("--down", sizing, usualDown(sizing));
        if (across.input().name().equals(down.input().name())) {
            throw new UsageException("--across and --down both vary " + down.input().name());
        }
        progress.step("Trying " + across.values() * down.values() + " variants");
        Sweep sweep = Sweep.of(sizing, scenario.number(), across, down);
        print(sizing, scenario, sweep);
        return ExitCode.SUCCESS;
    }

    /** From an inch below the present tyre to five above, or a like span in millimetres. */
    private static SweepAxis usualAcross(Sizing sizing, ScenarioOutcome scenario) {
        double step = sizing.unit() == LengthUnit.INCH ? 25.4 : 25;
        double now = scenario.tyreDiameter();
        double middle = Double.isNaN(now) ? 30 * 25.4 : now;
        return new SweepAxis(
                Contract.input("tyre_measured"),
                middle - step,
                middle + (USUAL_ACROSS - 2) * step,
                USUAL_ACROSS);
    }

    private static SweepAxis usualDown(Sizing sizing) {
        double step = sizing.unit() == LengthUnit.INCH ? 12.7 : 12.5;
        return new SweepAxis(Contract.input("hub_shift"), 0, (USUAL_DOWN - 1) * step, USUAL_DOWN);
    }

    private SweepAxis axis(String option, Sizing sizing, SweepAxis usual) {
        String typed = request.value(option, "");
        if (typed.isEmpty()) {
            return usual;
        }
        int equals = typed.indexOf('=');
        int dots = typed.indexOf("..", equals + 1);
        int slash = typed.lastIndexOf('/');
        if (equals < 1 || dots < 0 || slash < dots) {
            throw refused(option, typed, "NAME=FROM..TO/COUNT");
        }
        try {
            Input input = Contract.input(typed.substring(0, equals).trim());
            return new SweepAxis(
                    input,
                    number(input, typed.substring(equals + 1, dots), sizing.unit()),
                    number(input, typed.substring(dots + 2, slash), sizing.unit()),
                    Integer.parseInt(typed.substring(slash + 1).trim()));
        } catch (NumberFormatException e) {
            throw refused(option, typed, "numbers in NAME=FROM..TO/COUNT");
        } catch (UnreadableLengthException e) {
            throw refused(option, typed, UnreadableLengthException.EXPECTED);
        } catch (IllegalArgumentException e) {
            throw new UsageException(option + ": " + e.getMessage());
        }
    }

    private static UsageException refused(String option, String typed, String expected) {
        return new UsageException(option + ": found \"" + typed + "\"; expected " + expected + ".");
    }

    private static double number(Input input, String typed, LengthUnit unit) {
        if (input.kind() == InputKind.LENGTH) {
            return Length.parse(typed, unit).mm();
        }
        double number = Double.parseDouble(typed);
        return input.kind() == InputKind.ANGLE ? Math.toRadians(number) : number;
    }

    private void print(Sizing sizing, ScenarioOutcome scenario, Sweep sweep) {
        PrintStream out = terminal.out();
        LengthUnit unit = sizing.unit();
        out.println(
                new ScenarioTexts(sizing, scenario).title()
                        + ": length window in "
                        + unit.symbol()
                        + " (+ fits, - short by); x: does not fit for another reason, b: no blank,"
                        + " h: beyond the measured heights, .: not computed");
        out.println("across: " + named(sweep.across(), unit));
        out.println("down:   " + named(sweep.down(), unit));
        out.printf("%9s", "");
        for (int column = 0; column < sweep.across().values(); column++) {
            out.printf("%10s", shown(sweep.across(), column, unit));
        }
        out.println();
        for (int row = 0; row < sweep.down().values(); row++) {
            out.printf("%9s", shown(sweep.down(), row, unit));
            for (int column = 0; column < sweep.across().values(); column++) {
                out.printf("%10s", cell(sweep.cell(row, column), unit));
            }
            out.println();
        }
    }

    private static String named(SweepAxis axis, LengthUnit unit) {
        String symbol =
                axis.input().kind() == InputKind.LENGTH
                        ? unit.symbol()
                        : axis.input().kind().unit();
        return axis.input().label() + (symbol.isEmpty() ? "" : ", " + symbol);
    }

    private static String shown(SweepAxis axis, int step, LengthUnit unit) {
        double typed = axis.input().kind().typed(axis.value(step), unit);
        return String.format(Locale.ROOT, unit == LengthUnit.INCH ? "%.3f" : "%.1f", typed);
    }

    private static String cell(Sweep.Cell cell, LengthUnit unit) {
        if (Double.isNaN(cell.width())) {
            return cell.beyondHeights() ? "h" : ".";
        }
        String width =
                String.format(
                        Locale.ROOT,
                        unit == LengthUnit.INCH ? "%+.3f" : "%+.1f",
                        cell.width() / unit.mm());
        if (cell.fits() || cell.obstacle().get() == Finding.NO_WINDOW) {
            return width;
        }
        return width + (cell.obstacle().get() == Finding.NO_BLANK ? "b" : "x");
    }
}
