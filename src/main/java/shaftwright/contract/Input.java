package shaftwright.contract;

import java.util.List;
import java.util.Locale;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.units.LengthUnit;
import shaftwright.units.PlainNumber;
import shaftwright.units.UnreadableNumberException;

/**
 * Declaration of one input: its defined name, where it belongs and what it may hold. Template,
 * reader, messages, data validation, cell notes, documentation and JSON all read this.
 *
 * @param name defined name; sided inputs add {@code _left} or {@code _right}
 * @param grid how often it occurs
 * @param label what the builder reads beside it, without the unit
 * @param kind what is typed
 * @param allowed values outside are refused; mm, degrees or plain numbers
 * @param outside what a value that is refused may come from, a question; empty for nothing more
 *     likely than a wrong unit
 * @param usual values outside are asked about, often a wrong unit
 * @param whenEmpty number that an empty cell stands for, NaN when an empty cell stays empty
 * @param initialInch what a new workbook in inches holds, empty for nothing
 * @param initialMillimetre what a new workbook in millimetres holds
 * @param choices words offered (CHOICE), or the defined name whose cells are offered (PICK)
 * @param meaning one or two sentences for the cell's note
 * @param since contract version that brought it
 */
public record Input(
        String name,
        Grid grid,
        String label,
        InputKind kind,
        Range allowed,
        String outside,
        Range usual,
        double whenEmpty,
        String initialInch,
        String initialMillimetre,
        List<String> choices,
        String meaning,
        int since) {
    private static final int FIRST_VERSION = 1;

    /** A closed range of numbers. */
    public record Range(double least, double most) {
        /** Every finite number. */
        public static final Range ANY =
                new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

        public boolean contains(double value) {
            return value >= least && value <= most;
        }
    }

    /** Defined name on this side. */
    public String definedName(Side side) {
        return grid.sided() ? name + Contract.suffix(side) : name;
    }

    /** Whether an empty cell stands for a number. */
    public boolean hasWhenEmpty() {
        return !Double.isNaN(whenEmpty);
    }

    /** What a cell holds when this text is typed into it: a number where the kind is one. */
    public CellValue typed(String text) {
        if (text.isEmpty()) {
            return CellValue.BLANK;
        }
        return kind.numeric() && kind != InputKind.LENGTH ? number(text) : CellValue.of(text);
    }

    /** What a new workbook of this unit holds, empty for nothing. */
    public String initial(LengthUnit unit) {
        return unit == LengthUnit.INCH ? initialInch : initialMillimetre;
    }

    /**
     * What a cell of a new workbook holds: lengths too as numbers where they are plain ones, since
     * programs complete what is typed by texts of its column, so a 0 by "0.8 mm", not by numbers.
     */
    public CellValue start(LengthUnit unit) {
        String text = initial(unit);
        return !text.isEmpty() && kind.numeric() ? number(text) : typed(text);
    }

    /** Kept as it is when it can't be read; reading says what is wrong with it. */
    private static CellValue number(String text) {
        try {
            double number = hasExponent(text) ? Double.parseDouble(text) : PlainNumber.parse(text);
            return Double.isFinite(number) ? CellValue.of(number) : CellValue.of(text);
        } catch (NumberFormatException | UnreadableNumberException e) {
            return CellValue.of(text);
        }
    }

    /** Java reads {@code NaN}, {@code 0x1p3} and {@code 2d} as numbers, a spreadsheet does not. */
    private static boolean hasExponent(String text) {
        boolean exponent = false;
        for (int i = 0; i < text.length(); i++) {
            exponent |= text.charAt(i) == 'e' || text.charAt(i) == 'E';
            if ("0123456789.+-eE".indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return exponent;
    }

    /** A copy whose empty cell stands for this number. */
    Input orElse(double number) {
        return copy(outside, number, initialInch, initialMillimetre, since);
    }

    /** A copy that a new workbook starts with. */
    Input starting(String inch, String millimetre) {
        return copy(outside, whenEmpty, inch, millimetre, since);
    }

    /** A copy that this contract version brought; without it an input is as old as the first. */
    Input since(int version) {
        return copy(outside, whenEmpty, initialInch, initialMillimetre, version);
    }

    /** A copy that asks this where a value is refused. */
    Input outside(String question) {
        return copy(question, whenEmpty, initialInch, initialMillimetre, since);
    }

    private Input copy(
            String outside, double whenEmpty, String inch, String millimetre, int since) {
        return new Input(
                name,
                grid,
                label,
                kind,
                allowed,
                outside,
                usual,
                whenEmpty,
                inch,
                millimetre,
                choices,
                meaning,
                since);
    }

    /** Place from 1 of a word among those offered, in any case; 0 when it is none of them. */
    public int place(String word) {
        return choices.indexOf(word.toLowerCase(Locale.ROOT)) + 1;
    }

    private static Input optional(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            Range allowed,
            Range usual,
            List<String> choices,
            String meaning) {
        return new Input(
                name,
                grid,
                label,
                kind,
                allowed,
                "",
                usual,
                Double.NaN,
                "",
                "",
                choices,
                meaning,
                FIRST_VERSION);
    }

    static Input length(
            String name, Grid grid, String label, Range allowed, Range usual, String meaning) {
        return number(name, grid, label, InputKind.LENGTH, allowed, usual, meaning);
    }

    static Input number(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            Range allowed,
            Range usual,
            String meaning) {
        return optional(name, grid, label, kind, allowed, usual, List.of(), meaning);
    }

    /** An angle in degrees, one of either sign unless the usual ones are above zero. */
    static Input angle(String name, Grid grid, String label, Range usual, String meaning) {
        Range allowed = usual.least() > 0 ? new Range(0.1, 89) : Ranges.ANY_ANGLE;
        return number(name, grid, label, InputKind.ANGLE, allowed, usual, meaning);
    }

    /** An amount in the builder's currency. */
    static Input money(String name, Grid grid, String label, String meaning) {
        Range amount = new Range(0, 1e6);
        return number(name, grid, label, InputKind.MONEY, amount, amount, meaning);
    }

    /** A count of splines in a row of the table of blanks. */
    static Input splines(String name, String label, String meaning) {
        return number(
                name,
                Grid.BLANK,
                label,
                InputKind.COUNT,
                new Range(1, 100),
                new Range(10, 60),
                meaning);
    }

    /** The name of a part in one of the tables. */
    static Input pick(String name, String label, String source, String meaning) {
        return words(name, Grid.SCENARIO, label, InputKind.PICK, List.of(source), meaning);
    }

    static Input words(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            List<String> choices,
            String meaning) {
        return optional(name, grid, label, kind, Range.ANY, Range.ANY, choices, meaning);
    }
}
