package shaftwright.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntBiFunction;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.units.LengthUnit;

/**
 * Every row of a comparison, taken from the declarations of a sizing workbook: what stands over its
 * columns, its results, and the inputs that may differ.
 */
public final class ComparedLines {
    /** Inputs that tell workbooks apart without a difference in what is sized. */
    private static final List<String> OF_NO_MATTER =
            List.of("vehicle_name", "scenario_name", "shop_scenario", "try_scenario");

    /** Name of the row that says which columns are in use. */
    public static final String USED = Comparison.PREFIX + "used";

    private static final ComparedLines ALL = new ComparedLines();

    private final List<ComparedLine> heads = new ArrayList<>();
    private final List<ComparedLine> results = new ArrayList<>();
    private final List<ComparedLine> inputs = new ArrayList<>();

    private ComparedLines() {
        heads();
        results();
        settings();
        for (Side side : Side.values()) {
            measured(side);
        }
        scenarios();
        part("joint", ShaftEnd.INNER, "Inner joint", Grid.JOINT, ScenarioOutcome::jointRow);
        part("joint", ShaftEnd.OUTER, "Outer joint", Grid.JOINT, ScenarioOutcome::jointRow);
        part("boot", ShaftEnd.INNER, "Inner boot", Grid.BOOT, ScenarioOutcome::bootRow);
        part("boot", ShaftEnd.OUTER, "Outer boot", Grid.BOOT, ScenarioOutcome::bootRow);
    }

    /** The one list. */
    public static ComparedLines all() {
        return ALL;
    }

    /** Those that a comparison has which this contract version made. */
    static ComparedLines upTo(int version) {
        return version == Contract.VERSION ? ALL : new ComparedLines(ALL, version);
    }

    private ComparedLines(ComparedLines all, int version) {
        keep(all.heads, heads, version);
        keep(all.results, results, version);
        keep(all.inputs, inputs, version);
    }

    private static void keep(List<ComparedLine> from, List<ComparedLine> into, int version) {
        for (ComparedLine line : from) {
            if (line.since() <= version) {
                into.add(line);
            }
        }
    }

    /** Whether the column is in use, vehicle, name of the scenario. */
    public List<ComparedLine> headLines() {
        return List.copyOf(heads);
    }

    /** Verdict, each side's results, wheel, width and cost. */
    public List<ComparedLine> resultLines() {
        return List.copyOf(results);
    }

    /** Settings, readings in short, scenario inputs, sizes of the joints and boots picked. */
    public List<ComparedLine> inputLines() {
        return List.copyOf(inputs);
    }

    private void heads() {
        heads.add(line("used", "", "In use", "{used}", LiveLines.all().line("used"), Side.LEFT));
        heads.add(text("vehicle", "", "Vehicle", "vehicle_name", "vehicle_name"));
        heads.add(text("name", "", "Scenario", "{scenario_name}", "scenario_name"));
    }

    private void results() {
        LiveLine verdict = LiveLines.all().line("verdict");
        results.add(live("", verdict, Side.LEFT));
        for (Side side : Side.values()) {
            String group = "Results, " + side.word() + " side";
            for (LiveLine line : LiveLines.all().in(Section.SCENARIO_RESULTS)) {
                if (line.grid() == Grid.SCENARIO_SIDE) {
                    results.add(live(group, line, side));
                }
            }
            String travel = "Travel this shaft allows, " + side.word() + " side";
            for (LiveLine line : LiveLines.all().in(Section.TRAVEL_BLOCK)) {
                results.add(live(travel, line, side));
            }
            String longest = "Longest travel from any blank, " + side.word() + " side";
            for (LiveLine line : LiveLines.all().in(Section.LONGEST_BLOCK)) {
                results.add(live(longest, line, side));
            }
        }
        for (LiveLine line : LiveLines.all().in(Section.SCENARIO_RESULTS)) {
            if (line.grid() == Grid.SCENARIO && !line.equals(verdict)) {
                results.add(live("Wheel, width and cost", line, Side.LEFT));
            }
        }
    }

    private void settings() {
        for (Input input : Contract.inputs(Grid.BOOK)) {
            if (!OF_NO_MATTER.contains(input.name()) && !input.name().startsWith("sweep_")) {
                input("Settings", input);
            }
        }
    }

    /** One side's sizes, and what its readings come to. */
    private void measured(Side side) {
        String group = "Measured, " + side.word() + " side";
        LiveLines lines = LiveLines.all();
        for (Input input : Contract.inputs(Grid.SIDE)) {
            if (input.kind().numeric()) {
                inputs.add(beside(group, side, input.label(), lines.line(input.name() + "_used")));
            } else {
                String name = input.definedName(side);
                String label = input.label() + ", " + side.word();
                inputs.add(text(name, group, label, name, input.name(), side));
            }
        }
        inputs.add(beside(group, side, "Heights measured", lines.line("path_rows")));
        inputs.add(beside(group, side, "Lowest height, from ride", lines.line("path_low")));
        inputs.add(beside(group, side, "Highest height, from ride", lines.line("path_high")));
        inputs.add(reach(group, side));
    }

    /** One number that moves with every distance and height that was read. */
    private static ComparedLine reach(String group, Side side) {
        LiveLine squared = LiveLines.all().line("mean_squared");
        String place = "{" + squared.name() + "@" + side.word() + "}";
        return new ComparedLine(
                Comparison.PREFIX + "mean_reach" + Contract.suffix(side),
                group,
                "Mean reach of the readings, " + side.word(),
                Quantity.SHOWN_LENGTH,
                "IF(ISNUMBER(" + place + "),SQRT(" + place + ")/" + Comparison.UNIT_MM + ",\"\")",
                (sizing, scenario, unit) ->
                        squared.core().at(sizing, new Index(side, 0, 0))
                                        instanceof CellValue.Numeric number
                                ? CellValue.of(Math.sqrt(number.value()) / unit.mm())
                                : CellValue.of(""),
                squared.since());
    }

    private static ComparedLine beside(String group, Side side, String label, LiveLine line) {
        String place = "{" + line.name() + "@" + side.word() + "}";
        return line(line.definedName(side), group, label + ", " + side.word(), place, line, side);
    }

    private void scenarios() {
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            if (!OF_NO_MATTER.contains(input.name())) {
                input("Scenario", input);
            }
        }
    }

    private void input(String group, Input input) {
        boolean one = input.grid() == Grid.BOOK;
        if (input.kind().numeric()) {
            LiveLine read = LiveLines.all().line(input.name() + "_read");
            String place = one ? read.name() : "{" + read.name() + "}";
            inputs.add(line(input.name(), group, label(input), place, read, Side.LEFT));
        } else {
            String place = one ? input.name() : "{" + input.name() + "}";
            inputs.add(text(input.name(), group, input.label(), place, input.name()));
        }
    }

    /** Torques, weights and the like are compared in the units of the core, whatever is typed. */
    private static String label(Input input) {
        return input.kind().inchFactor() == 1
                ? input.label()
                : input.label() + ", " + input.kind().unit();
    }

    /** All sizes of the part that a scenario picks at an end, but its name. */
    private void part(
            String word,
            ShaftEnd at,
            String group,
            Grid table,
            ToIntBiFunction<ScenarioOutcome, ShaftEnd> row) {
        String end = at.shortWord();
        String picked = "{" + word + "_row_" + end + "}";
        for (Input input : Contract.inputs(table)) {
            if (input.kind() == InputKind.TEXT) {
                continue;
            }
            String column = input.kind().numeric() ? input.name() + "_read" : input.name();
            Quantity read =
                    input.kind().numeric()
                            ? LiveLines.all().line(column).quantity()
                            : Quantity.TEXT;
            String cell = "INDEX(" + column + "," + picked + ")";
            inputs.add(
                    new ComparedLine(
                            Comparison.PREFIX + input.name() + "_" + end,
                            group,
                            group + ": " + input.label(),
                            shown(read),
                            "IF(" + picked + "=0,\"\"," + formula(read, cell) + ")",
                            (sizing, scenario, unit) ->
                                    size(
                                            sizing,
                                            input,
                                            row.applyAsInt(sizing.scenario(scenario), at),
                                            unit),
                            input.since()));
        }
    }

    private static CellValue size(Sizing sizing, Input input, int row, LengthUnit unit) {
        if (row == 0) {
            return CellValue.of("");
        }
        Index index = new Index(Side.LEFT, 0, row - 1);
        if (!input.kind().numeric()) {
            return CellValue.of(sizing.inputs().text(input.name(), index));
        }
        double number = sizing.inputs().number(input.name(), index);
        return Double.isNaN(number)
                ? CellValue.of("")
                : switch (input.kind()) {
                    case LENGTH -> CellValue.of(number / unit.mm());
                    case ANGLE -> CellValue.of(Math.toDegrees(number));
                    default -> CellValue.of(number);
                };
    }

    private static ComparedLine live(String group, LiveLine line, Side side) {
        String place = "{" + line.name() + (line.grid().sided() ? "@" + side.word() : "") + "}";
        return line(line.definedName(side), group, line.label(), place, line, side);
    }

    /** A row that follows a live line of the sizing workbook. */
    private static ComparedLine line(
            String name, String group, String label, String place, LiveLine line, Side side) {
        return new ComparedLine(
                Comparison.PREFIX + name,
                group,
                label,
                shown(line.quantity()),
                formula(line.quantity(), place),
                (sizing, scenario, unit) ->
                        converted(
                                line.core().at(sizing, new Index(side, scenario, 0)),
                                line.quantity(),
                                sizing.unit(),
                                unit),
                line.since());
    }

    /** A row that follows a typed cell that holds a text. */
    private static ComparedLine text(
            String name, String group, String label, String place, String input) {
        return text(name, group, label, place, input, Side.LEFT);
    }

    private static ComparedLine text(
            String name, String group, String label, String place, String input, Side side) {
        return new ComparedLine(
                Comparison.PREFIX + name,
                group,
                label,
                Quantity.TEXT,
                formula(Quantity.TEXT, place),
                (sizing, scenario, unit) ->
                        CellValue.of(sizing.inputs().text(input, new Index(side, scenario, 0))),
                Contract.input(input).since());
    }

    /** Working figures come out as a builder reads them. */
    private static Quantity shown(Quantity quantity) {
        return switch (quantity) {
            case MILLIMETRE -> Quantity.SHOWN_LENGTH;
            case RADIAN -> Quantity.DEGREE;
            default -> quantity;
        };
    }

    private static String formula(Quantity quantity, String cell) {
        String number =
                switch (quantity) {
                    case MILLIMETRE -> cell + "/" + Comparison.UNIT_MM;
                    case SHOWN_LENGTH -> cell + "*tape_mm/" + Comparison.UNIT_MM;
                    case RADIAN -> "DEGREES(" + cell + ")";
                    default -> cell;
                };
        // An empty typed cell, referred to alone, would be shown as 0.
        return quantity == Quantity.TEXT
                ? "IFERROR(" + cell + "&\"\",\"\")"
                : "IF(ISNUMBER(" + cell + ")," + number + ",\"\")";
    }

    private static CellValue converted(
            CellValue value, Quantity quantity, LengthUnit from, LengthUnit to) {
        if (value instanceof CellValue.Numeric number) {
            return CellValue.of(
                    switch (quantity) {
                        case MILLIMETRE -> number.value() / to.mm();
                        case SHOWN_LENGTH -> number.value() * from.mm() / to.mm();
                        case RADIAN -> Math.toDegrees(number.value());
                        default -> number.value();
                    });
        }
        return quantity == Quantity.TEXT && value instanceof CellValue.Text
                ? value
                : CellValue.of("");
    }
}
