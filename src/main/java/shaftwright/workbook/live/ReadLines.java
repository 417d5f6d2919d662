package shaftwright.workbook.live;

import shaftwright.workbook.CellValue;
import shaftwright.workbook.Grid;
import shaftwright.workbook.Index;
import shaftwright.workbook.Input;
import shaftwright.workbook.InputKind;
import shaftwright.workbook.Side;
import shaftwright.workbook.Sizing;
import shaftwright.workbook.TapeFormula;

/**
 * Typed cells as numbers: lengths in mm, angles in rad, everything else as it is. An empty cell
 * gives its declared value or an empty text, and what can't be read gives {@link #UNREADABLE}, so
 * that no error value spreads from a slip of the keyboard.
 */
final class ReadLines {
    /** What a reading cell shows for a text that is no length, angle or number. */
    static final String UNREADABLE = "unreadable";

    private ReadLines() {}

    /** Name of the line that reads this input. */
    static String name(Input input) {
        return name(input.name());
    }

    static String name(String input) {
        return input + "_read";
    }

    /**
     * The line that reads one typed input.
     *
     * @param grid of the reading cells: the input's own
     * @param cell place of the typed cell, as a formula
     */
    static LiveLine of(Input input, Section section, Grid grid, String cell) {
        Typed typed = new Typed(input, cell, "");
        return new LiveLine(
                name(input), section, grid, input.label(), quantity(input.kind()), typed, typed);
    }

    /** A slot's typed cell: the row of that ordinal in the typed block, however it was moved. */
    static LiveLine slot(Input input, Section section, Grid slots, String ordinal) {
        String block = input.definedName(Side.LEFT);
        String place = "{" + ordinal + "}";
        Typed typed =
                new Typed(
                        input,
                        "INDEX(" + block + "," + place + ")",
                        "IF(" + place + ">ROWS(" + block + "),\"\",");
        return new LiveLine(
                name(input), section, slots, input.label(), quantity(input.kind()), typed, typed);
    }

    /**
     * A typed cell as a number. Its text is long and the same in every row: it is put together
     * once, when it is first asked for; filling never asks, checking asks for every cell.
     */
    private static final class Typed implements LiveLine.Formula, LiveLine.Core {
        private final Input input;
        private final String cell;
        private final String guard;
        private String text;

        /**
         * A typed cell.
         *
         * @param guard start of a function around the formula, or an empty text
         */
        Typed(Input input, String cell, String guard) {
            this.input = input;
            this.cell = cell;
            this.guard = guard;
        }

        @Override
        public int since() {
            return input.since();
        }

        @Override
        public String at(Index index) {
            if (text == null) {
                text = guard + formula(input, cell) + (guard.isEmpty() ? "" : ")");
            }
            return text;
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return shown(sizing.inputs().number(input.name(), index));
        }
    }

    /** The right side's cell falls back on the left's while the right is not measured. */
    static String ownOrLeft(Side side, String own, String left) {
        return side == Side.LEFT ? own : "IF(right_side=\"measured\"," + own + "," + left + ")";
    }

    /** A number, or an empty text for NaN. */
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

    /** The reading formula for a typed cell. */
    static String formula(Input input, String cell) {
        if (input.kind() == InputKind.LENGTH) {
            String tape = TapeFormula.of(cell, "tape_mm", "tape_fraction");
            return input.hasWhenEmpty()
                    ? "IF(ISBLANK(" + cell + ")," + input.whenEmpty() + "," + tape + ")"
                    : tape;
        }
        String empty = "\"\"";
        if (input.hasWhenEmpty()) {
            empty =
                    input.kind() == InputKind.ANGLE
                            ? "RADIANS(" + input.whenEmpty() + ")"
                            : String.valueOf(input.whenEmpty());
        }
        String number = "0+" + cell;
        if (input.kind() == InputKind.ANGLE) {
            number = "RADIANS(" + cell + ")";
        } else if (input.kind().inchFactor() != 1) {
            number = cell + "*IF(unit=\"inch\"," + input.kind().inchFactor() + ",1)";
        }
        return "IFERROR(IF("
                + cell
                + "=\"\","
                + empty
                + ",IF(ISNUMBER("
                + cell
                + "),"
                + number
                + ",\""
                + UNREADABLE
                + "\")),\""
                + UNREADABLE
                + "\")";
    }
}
