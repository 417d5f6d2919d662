package shaftwright.live;

import java.util.List;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
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
     * @param grid of the reading cells: the inputs' own
     * @param cell place of a typed cell, as a formula
     */
    static void declare(
            LiveLines lines, List<Input> inputs, Section section, Grid grid, Cell cell) {
        for (Input input : inputs) {
            aside(lines, input.name(), input, section, grid, cell);
        }
        for (Input input : inputs) {
            if (input.kind().numeric()) {
                Allowed allowed = new Allowed(input);
                lines.add(
                        new LiveLine(
                                name(input),
                                section,
                                grid,
                                input.label(),
                                quantity(input.kind()),
                                allowed,
                                allowed));
            }
        }
    }

    /**
     * The lines that {@link #allowed} looks at: a numeric input's number, whatever it is, and for a
     * length its straightened text.
     *
     * @param name what their names begin with
     */
    static void aside(
            LiveLines lines, String name, Input input, Section section, Grid grid, Cell cell) {
        if (input.kind() == InputKind.LENGTH) {
            Straightened text = new Straightened(input, cell);
            String label = input.label() + ", straightened";
            lines.add(new LiveLine(tape(name), section, grid, label, Quantity.TEXT, text, text));
        }
        if (input.kind().numeric()) {
            Typed typed = new Typed(name, input, cell);
            String label = input.label() + ", as typed";
            lines.add(
                    new LiveLine(typed(name), section, grid, label, Quantity.NUMBER, typed, typed));
        }
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

        /** A formula that looks at the cell, if need be only where there is one. */
        default String guarded(Input input, Index index, String formula) {
            return formula;
        }
    }

    /** The row of that ordinal in the typed block, however it was moved. */
    record Slot(String ordinal) implements Cell {
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

    /** A typed cell as a number that is allowed. */
    private record Allowed(Input input) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int since() {
            return input.since();
        }

        @Override
        public int revised() {
            return Math.max(RANGES, input.since());
        }

        @Override
        public String at(Index index) {
            return allowed(input, input.name());
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return shown(sizing.inputs().number(input.name(), index));
        }
    }

    /** A typed cell as a number, be it allowed or not: a length in mm, others as typed. */
    private record Typed(String name, Input input, Cell cell)
            implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int since() {
            return Math.max(RANGES, input.since());
        }

        @Override
        public String at(Index index) {
            String place = cell.of(input, index);
            String empty = input.hasWhenEmpty() ? String.valueOf(input.whenEmpty()) : "\"\"";
            String formula =
                    input.kind() == InputKind.LENGTH
                            ? TapeFormula.of(
                                    place,
                                    empty,
                                    "{" + tape(name) + "}",
                                    "tape_mm",
                                    "tape_fraction")
                            : NumberFormula.of(place, empty);
            return cell.guarded(input, index, formula);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return shown(sizing.inputs().typed(input, index));
        }
    }

    /** A typed length's text, straightened. */
    private record Straightened(Input input, Cell cell) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int since() {
            return Math.max(RANGES, input.since());
        }

        @Override
        public String at(Index index) {
            return cell.guarded(input, index, TapeFormula.straightened(cell.of(input, index)));
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            CellValue typed = sizing.inputs().content(input.name(), index);
            return CellValue.of(
                    typed instanceof CellValue.Text text
                            ? TapeText.straightened(text.value())
                            : "");
        }
    }

    /** The right side's cell falls back on the left's while the right is not measured. */
    static String ownOrLeft(Side side, String own, String left) {
        return side == Side.LEFT ? own : "IF(right_side=\"measured\"," + own + "," + left + ")";
    }

    /** A number, or an empty text for NaN. */
    /** The number, or an empty cell while it is not known. */
    static CellValue shown(OptionalDouble number) {
        return shown(number.orElse(Double.NaN));
    }

    static CellValue shown(double number) {
        return Double.isNaN(number) ? CellValue.of("") : CellValue.of(number);
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
