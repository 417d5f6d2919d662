package shaftwright.formula;

import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.units.TapeText;

/**
 * The live formula that reads a plain number, typed as a number or as a text; it accepts and
 * refuses what {@link shaftwright.units.PlainNumber#parse} accepts and refuses.
 */
public final class NumberFormula {
    /** What a reading cell shows for what it can't read. */
    public static final String UNREADABLE = "unreadable";

    /** What a reading cell shows for a number that its input does not allow. */
    public static final String OUT_OF_RANGE = "out of range";

    private static final String CELL = "\u0001";
    private static final String EMPTY = "\u0002";

    /** The formula is long, and a check wants hundreds: put together once. */
    private static final String TEXT =
            "IFERROR(IF("
                    + CELL
                    + "=\"\","
                    + EMPTY
                    // LibreOffice takes a truth for a number.
                    + ",IF(ISLOGICAL("
                    + CELL
                    + "),NA(),IF(ISNUMBER("
                    + CELL
                    + "),0+"
                    + CELL
                    + ",IF(ISTEXT("
                    + CELL
                    + "),"
                    + text(CELL)
                    + ",NA())))),"
                    + FormulaText.quoted(UNREADABLE)
                    + ")";

    private NumberFormula() {}

    /**
     * Formula text, without the equals sign, for the number that a cell holds, {@link #UNREADABLE}
     * for what is no number.
     *
     * @param cell reference to the cell as typed, or an INDEX that gives one
     * @param empty what to show for an empty cell
     */
    public static String of(String cell, String empty) {
        return TEXT.replace(EMPTY, empty).replace(CELL, cell);
    }

    /**
     * Formula text for what a cell with {@link #of} or {@link TapeFormula#of} shows, {@link
     * #OUT_OF_RANGE} in place of a number that is not allowed.
     *
     * @param number reference to that cell
     * @param factor what to multiply the number with, empty for nothing
     * @param input says which numbers are allowed after that, and whether whole ones only
     */
    public static String allowed(String number, String factor, Input input) {
        String scaled = factor.isEmpty() ? number : number + "*" + factor;
        String handed = input.kind() == InputKind.ANGLE ? "RADIANS(" + scaled + ")" : scaled;
        String shown = within(input.allowed(), scaled, handed);
        if (input.kind() == InputKind.COUNT) {
            shown =
                    "IF(ROUND("
                            + number
                            + ",0)="
                            + number
                            + ","
                            + shown
                            + ","
                            + FormulaText.quoted(UNREADABLE)
                            + ")";
        }
        return "IF(ISNUMBER(" + number + ")," + shown + "," + number + ")";
    }

    private static String within(Input.Range allowed, String number, String shown) {
        if (allowed.equals(Input.Range.ANY)) {
            return shown;
        }
        return "IF(AND("
                + number
                + ">="
                + FormulaText.number(allowed.least())
                + (Double.isInfinite(allowed.most())
                        ? ""
                        : "," + number + "<=" + FormulaText.number(allowed.most()))
                + "),"
                + shown
                + ","
                + FormulaText.quoted(OUT_OF_RANGE)
                + ")";
    }

    /** Divided by what must be true of the text: an error in its place where it is not. */
    private static String text(String cell) {
        String trimmed = FormulaText.replaceSigns("TRIM(" + cell + ")", "-", TapeText.HYPHENS);
        String digits = FormulaText.unsigned(trimmed);
        String patterns = "X" + String.join("X", FormulaText.DECIMALS) + "X";
        return "("
                + FormulaText.sign(trimmed)
                + "*"
                + FormulaText.decimal(digits)
                + "/COUNT(FIND(\"X\"&"
                + FormulaText.numberPattern(digits)
                + "&\"X\","
                + FormulaText.quoted(patterns)
                + "))/"
                + FormulaText.onlySpacesTrimmed(cell)
                + "/"
                + FormulaText.DECIMAL_SIGN_HOLDS
                + ")";
    }
}
