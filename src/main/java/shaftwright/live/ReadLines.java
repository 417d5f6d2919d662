package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.formula.NumberFormula.UNREADABLE;
import static shaftwright.live.Quantity.MONEY;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.formula.NumberFormula;
import shaftwright.formula.Pieces;
import shaftwright.formula.TapeFormula;
import shaftwright.reading.Sizing;
import shaftwright.units.TapeText;

/**
 * Typed cells as numbers: lengths in mm, angles in rad, everything else as it is. An empty cell
 * gives its declared value or an empty text, what can't be read gives {@link
 * NumberFormula#UNREADABLE} and what the input does not allow {@link NumberFormula#OUT_OF_RANGE},
 * so that no error value spreads from a slip of the keyboard. A length's text is straightened in a
 * cell beside.
 */
final class ReadLines {
    /** Contract version that brought checks of ranges, with the cells that they look at. */
    static final int RANGES = 2;

    /** Contract version that brought copies of scenarios' cells. */
    static final int HELD = 8;

    private ReadLines() {}

    /** Name of the line that reads this input. */
    static String name(Input input) {
        return name(input.name());
    }

    static String name(String input) {
        return input + "_read";
    }

    /**
     * Declares the lines that read typed inputs: those that straighten lengths' texts, those with
     * any number, those with the allowed ones.
     *
     * @param set of the reading cells
     * @param typed where the inputs stand
     * @param cell place of a typed cell, as a formula
     */
    static void declare(LineSet<Sizing> set, Grid typed, Cell cell) {
        List<Input> inputs = Contract.inputs(typed);
        for (Input input : inputs) {
            aside(set, input.name(), input, cell);
        }
        for (Input input : inputs) {
            if (input.kind().numeric()) {
                allowed(set, name(input), input)
                        .is(
                                allowed(input, input.name()),
                                (sizing, index) -> sizing.inputs().number(input.name(), index));
            }
        }
    }

    /**
     * Declares a line that reads a side's typed cells, and those aside from it; the right side's
     * fall back on the left's while the right is not measured.
     */
    static void ofSide(LineSet<Sizing> set, Input input, Cell cell) {
        aside(set, input.name(), input, cell);
        ofSide(set, input.name() + "_used", input.name(), input);
    }

    /**
     * Declares the line alone.
     *
     * @param aside what the names of the lines {@link #aside} begin with
     */
    static void ofSide(LineSet<Sizing> set, String name, String aside, Input input) {
        String left = "{" + name + "@left}";
        allowed(set, name, input)
                .is(
                        index -> ownOrLeft(index.side(), allowed(input, aside), left),
                        (sizing, index) ->
                                sizing.readings(index.side()).typed(input.name(), index.row()));
    }

    /** The one cell of a side. */
    static String cell(Input input, Index index) {
        return input.definedName(index.side());
    }

    /**
     * Declares a line that has what a scenario's cell holds, empty or not. Formulas that name a
     * cell of another sheet are stored and parsed cell by cell; the long ones that read a text look
     * here instead, so that they are stored once for all scenarios.
     */
    static void held(LineSet<Sizing> set, Input input) {
        set.since(HELD)
                .with(
                        Pieces.of("typed", "{" + input.name() + "}")
                                .and("unreadable", quoted(UNREADABLE)))
                .number(held(input), input.label() + ", as it stands")
                .cell(
                        """
                        IFERROR(IF(<typed>="","",IF(ISLOGICAL(<typed>),<unreadable>,<typed>)),<unreadable>)
                        """,
                        (sizing, index) -> held(sizing.inputs().content(input.name(), index)));
    }

    private static CellValue held(CellValue typed) {
        if (typed instanceof CellValue.Blank) {
            return CellValue.of("");
        }
        return typed instanceof CellValue.Text || typed instanceof CellValue.Numeric
                ? typed
                : CellValue.of(UNREADABLE);
    }

    static String held(Input input) {
        return input.name() + "_cell";
    }

    private static LineSet.NumberLine<Sizing> allowed(
            LineSet<Sizing> set, String name, Input input) {
        return set.since(input.since())
                .revised(Math.max(RANGES, input.since()))
                .of(quantity(input.kind()), name, input.label());
    }

    /**
     * The lines that {@link #allowed} looks at: a numeric input's number, whatever it is, and for a
     * length its straightened text.
     *
     * @param name what their names begin with
     */
    static void aside(LineSet<Sizing> set, String name, Input input, Cell cell) {
        LineSet<Sizing> later =
                set.since(Math.max(RANGES, input.since()))
                        .revised(Math.max(cell.since(), input.since()));
        if (input.kind() == InputKind.LENGTH) {
            later.text(tape(name), input.label() + ", straightened")
                    .is(
                            index ->
                                    cell.guarded(
                                            input,
                                            index,
                                            TapeFormula.straightened(cell.of(input, index))),
                            (sizing, index) -> straightened(sizing, input, index));
        }
        if (input.kind().numeric()) {
            later.number(typed(name), input.label() + ", as typed")
                    .is(
                            index -> cell.guarded(input, index, number(name, input, cell, index)),
                            (sizing, index) -> sizing.inputs().typed(input, index));
        }
    }

    private static String straightened(Sizing sizing, Input input, Index index) {
        CellValue typed = sizing.inputs().content(input.name(), index);
        return typed instanceof CellValue.Text text ? TapeText.straightened(text.value()) : "";
    }

    /** A number, be it allowed or not: a length in mm, others as typed. */
    private static String number(String name, Input input, Cell cell, Index index) {
        String place = cell.of(input, index);
        String empty = input.hasWhenEmpty() ? String.valueOf(input.whenEmpty()) : "\"\"";
        return input.kind() == InputKind.LENGTH
                ? TapeFormula.of(place, empty, "{" + tape(name) + "}", "tape_mm", "tape_fraction")
                : NumberFormula.of(place, empty);
    }

    private static String tape(String name) {
        return name + "_tape";
    }

    private static String typed(String name) {
        return name + "_typed";
    }

    /** Where an input is typed. */
    interface Cell {
        /** The cell as a formula, the same for all rows of one side or with the row in it. */
        String of(Input input, Index index);

        /** Contract version since which cells are found in this way. */
        default int since() {
            return RANGES;
        }

        /** A formula that looks at the cell, if need be only where there is one. */
        default String guarded(Input input, Index index, String formula) {
            return formula;
        }
    }

    /**
     * The row of that ordinal in the typed block, however it was moved.
     *
     * @param since contract version since which the ordinal is asked for it
     */
    record Slot(String ordinal, int since) implements Cell {
        Slot(String ordinal) {
            this(ordinal, RANGES);
        }

        @Override
        public String of(Input input, Index index) {
            return "INDEX(" + input.definedName(index.side()) + ",{" + ordinal + "})";
        }

        @Override
        public String guarded(Input input, Index index, String formula) {
            String block = input.definedName(index.side());
            return "IF({" + ordinal + "}>ROWS(" + block + "),\"\"," + formula + ")";
        }
    }

    /** What {@link #held} has of a scenario's cell. */
    record Held() implements Cell {
        @Override
        public String of(Input input, Index index) {
            return "{" + held(input) + "}";
        }

        @Override
        public int since() {
            return HELD;
        }
    }

    /** The right side's cell falls back on the left's while the right is not measured. */
    static String ownOrLeft(Side side, String own, String left) {
        return side == Side.LEFT ? own : "IF(right_side=\"measured\"," + own + "," + left + ")";
    }

    /** The number, or an empty cell while it is not known. */
    static CellValue shown(OptionalDouble number) {
        return shown(number.orElse(Double.NaN));
    }

    /** The same where what is not known is NaN, and what has no bound infinite. */
    static CellValue shown(double number) {
        return Double.isFinite(number) ? CellValue.of(number) : CellValue.of("");
    }

    static Quantity quantity(InputKind kind) {
        return switch (kind) {
            case LENGTH -> Quantity.MILLIMETRE;
            case ANGLE -> Quantity.RADIAN;
            case MONEY -> Quantity.MONEY;
            case COUNT -> Quantity.WHOLE;
            default -> Quantity.NUMBER;
        };
    }

    /**
     * The reading formula: a number that the input allows, in mm, rad or as it is.
     *
     * @param name what the names of the lines {@link #aside} begin with
     */
    static String allowed(Input input, String name) {
        double inches = input.kind().inchFactor();
        String factor = inches == 1 ? "" : "IF(unit=\"inch\"," + inches + ",1)";
        return NumberFormula.allowed("{" + typed(name) + "}", factor, input);
    }
}
