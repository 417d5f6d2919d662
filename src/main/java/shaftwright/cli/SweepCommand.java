package shaftwright.cli;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.jobs.Journal;
import shaftwright.jobs.OpenedWorkbook;
import shaftwright.jobs.Results;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.reading.InputAxis;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.study.Sweep;
import shaftwright.study.SweepCell;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;
import shaftwright.xlsx.XlsxBook;

/** Varies two inputs of a scenario over ranges. */
@Command(
        name = "sweep",
        description = {
            "Varies two inputs of a scenario over ranges and shows for each pair whether a shaft fits, and its length window.",
            "Changes nothing."
        },
        footer = {
            "  shaftwright sweep --scenario B shafts.xlsx",
            "  shaftwright sweep --across tyre_measured=28..33/6 --down hub_shift=0..3/7 shafts.xlsx"
        })
final class SweepCommand implements Callable<Integer> {
    private static final int USUAL_ACROSS = 7;
    private static final int USUAL_DOWN = 7;
    private static final String NOT_COMPUTED = ".";

    @Parameters(paramLabel = "FILE", description = "the workbook")
    private Path file;

    @Option(
            names = "--scenario",
            paramLabel = "LETTER",
            description = "The scenario to vary. Default: A.")
    private Optional<ScenarioLetter> scenario;

    @Option(
            names = "--across",
            paramLabel = "NAME=FROM..TO/COUNT",
            description =
                    "The input that changes from column to column, by its defined name, and"
                            + " how many values it takes. Default: the measured tyre"
                            + " diameter around the present one.")
    private Optional<SweepRange> across;

    @Option(
            names = "--down",
            paramLabel = "NAME=FROM..TO/COUNT",
            description =
                    "The input that changes from row to row. Default: the hubs' shift"
                            + " outward, half of what the track gains.")
    private Optional<SweepRange> down;

    private final Terminal terminal;
    private final Journal journal;

    SweepCommand(Terminal terminal, Journal journal) {
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
        InputAxis columns = axis("--across", across, sizing, usualAcross(sizing, varied));
        InputAxis rows = axis("--down", down, sizing, usualDown(sizing));
        if (columns.input().equals(rows.input())) {
            throw new UsageException("--across and --down both vary " + rows.input().name());
        }
        journal.step("Trying " + columns.values() * rows.values() + " variants");
        heading(sizing, varied, columns, rows);
        print(columns, rows, sizing.sweep(varied.number(), columns, rows), sizing.unit());
        return ExitCode.SUCCESS;
    }

    /** From an inch below the present tyre to five above, or a like span in millimetres. */
    private static InputAxis usualAcross(Sizing sizing, ScenarioOutcome scenario) {
        double step = sizing.unit() == LengthUnit.INCH ? 25.4 : 25;
        double now = scenario.tyreDiameter();
        double middle = Double.isNaN(now) ? 30 * 25.4 : now;
        return new InputAxis(
                Contract.input("tyre_measured"),
                middle - step,
                middle + (USUAL_ACROSS - 2) * step,
                USUAL_ACROSS);
    }

    private static InputAxis usualDown(Sizing sizing) {
        double step = sizing.unit() == LengthUnit.INCH ? 12.7 : 12.5;
        return new InputAxis(Contract.input("hub_shift"), 0, (USUAL_DOWN - 1) * step, USUAL_DOWN);
    }

    private static InputAxis axis(
            String option, Optional<SweepRange> asked, Sizing sizing, InputAxis usual) {
        if (asked.isEmpty()) {
            return usual;
        }
        SweepRange range = asked.get();
        Input input = input(option, range.input());
        try {
            return axis(
                    option,
                    input,
                    number(input, range.from(), sizing.unit()),
                    number(input, range.to(), sizing.unit()),
                    range.count());
        } catch (NumberFormatException e) {
            throw refused(option, range, "numbers in NAME=FROM..TO/COUNT");
        } catch (UnreadableLengthException e) {
            throw refused(option, range, UnreadableLengthException.EXPECTED);
        }
    }

    private static Input input(String option, String name) {
        return Contract.inputs().stream()
                .filter(input -> input.name().equals(name))
                .findAny()
                .orElseThrow(
                        () -> new UsageException(option + ": no input is called \"" + name + "\""));
    }

    private static InputAxis axis(String option, Input input, double from, double to, int values) {
        InputAxis.flaw(input, from, to, values)
                .ifPresent(
                        flaw -> {
                            throw new UsageException(option + ": " + flaw);
                        });
        return new InputAxis(input, from, to, values);
    }

    private static UsageException refused(String option, SweepRange range, String expected) {
        return new UsageException(option + ": found \"" + range + "\"; expected " + expected + ".");
    }

    private static double number(Input input, String typed, LengthUnit unit) {
        if (input.kind() == InputKind.LENGTH) {
            return Length.parse(typed, unit).mm();
        }
        double number = Double.parseDouble(typed);
        return input.kind() == InputKind.ANGLE ? Math.toRadians(number) : number;
    }

    private void heading(
            Sizing sizing, ScenarioOutcome scenario, InputAxis across, InputAxis down) {
        PrintStream out = terminal.out();
        LengthUnit unit = sizing.unit();
        out.println(
                new ScenarioTexts(sizing, scenario).title()
                        + ": length window ("
                        + unit.symbol()
                        + "), + fits, - short by; x: does not fit for another reason, b: no blank,"
                        + " h: beyond the measured heights, "
                        + NOT_COMPUTED
                        + ": not computed");
        out.println("across: " + named(across, unit));
        out.println("down:   " + named(down, unit));
        out.printf("%9s", "");
        for (int column = 0; column < across.values(); column++) {
            out.printf("%10s", shown(across, column, unit));
        }
        out.println();
    }

    private void print(InputAxis across, InputAxis down, Optional<Sweep> sweep, LengthUnit unit) {
        PrintStream out = terminal.out();
        for (int row = 0; row < down.values(); row++) {
            out.printf("%9s", shown(down, row, unit));
            for (int column = 0; column < across.values(); column++) {
                out.printf("%10s", cell(sweep, row, column, unit));
            }
            out.println();
        }
    }

    private static String cell(Optional<Sweep> sweep, int row, int column, LengthUnit unit) {
        return sweep.map(grid -> cell(grid.cell(row, column), unit)).orElse(NOT_COMPUTED);
    }

    private static String named(InputAxis axis, LengthUnit unit) {
        String symbol =
                axis.input().kind() == InputKind.LENGTH
                        ? unit.symbol()
                        : axis.input().kind().unit();
        return axis.input().label() + (symbol.isEmpty() ? "" : ", " + symbol);
    }

    private static String shown(InputAxis axis, int step, LengthUnit unit) {
        double typed = axis.input().kind().typed(axis.value(step), unit);
        return String.format(Locale.ROOT, unit == LengthUnit.INCH ? "%.3f" : "%.1f", typed);
    }

    private static String cell(SweepCell cell, LengthUnit unit) {
        if (cell.window().isEmpty()) {
            return cell.beyondHeights() ? "h" : NOT_COMPUTED;
        }
        String width =
                String.format(
                        Locale.ROOT,
                        unit == LengthUnit.INCH ? "%+.3f" : "%+.1f",
                        cell.window().getAsDouble() / unit.mm());
        if (cell.fits() || cell.obstacle().get() == Finding.NO_WINDOW) {
            return width;
        }
        return width + (cell.obstacle().get() == Finding.NO_BLANK ? "b" : "x");
    }
}
