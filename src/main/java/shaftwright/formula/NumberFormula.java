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

    /**
     * Of a {@code <cell>}, with what an {@code <empty>} one gives. The formula is long, and a check
     * wants hundreds: put together once. LibreOffice takes a truth for a number.
     */
    private static final String OPEN =
            Pieces.of("text", text("<cell>"))
                    .and("unreadable", FormulaText.quoted(UNREADABLE))
                    .in(
                            """
                            IFERROR(IF(<cell>="",<empty>,IF(ISLOGICAL(<cell>),NA(),
                            IF(ISNUMBER(<cell>),0+<cell>,IF(ISTEXT(<cell>),<text>,NA())))),
                            <unreadable>)
                            """);

    private NumberFormula() {}

    /**
     * Formula text, without the equals sign, for the number that a cell holds, {@link #UNREADABLE}
     * for what is no number.
     *
     * @param cell reference to the cell as typed, or an INDEX that gives one
     * @param empty what to show for an empty cell
     */
    public static String of(String cell, String empty) {
        return Pieces.of("cell", cell).and("empty", empty).in(OPEN);
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
        Pieces pieces =
                Pieces.of("number", number)
                        .and("scaled", factor.isEmpty() ? number : number + "*" + factor)
                        .and(
                                "shown",
                                input.kind() == InputKind.ANGLE ? "RADIANS(<scaled>)" : "<scaled>")
                        .and("within", within(input.allowed()))
                        .and("unreadable", FormulaText.quoted(UNREADABLE));
        return pieces.in(
                input.kind() == InputKind.COUNT
                        ? """
                        IF(ISNUMBER(<number>),IF(ROUND(<number>,0)=<number>,<within>,<unreadable>),
                        <number>)
                        """
                        : "IF(ISNUMBER(<number>),<within>,<number>)");
    }

    private static String within(Input.Range allowed) {
        if (allowed.equals(Input.Range.ANY)) {
            return "<shown>";
        }
        return Pieces.of("least", allowed.least())
                .and("most", allowed.most())
                .and("out_of_range", FormulaText.quoted(OUT_OF_RANGE))
                .in(
                        Double.isInfinite(allowed.most())
                                ? "IF(AND(<scaled>>=<least>),<shown>,<out_of_range>)"
                                : """
                                IF(AND(<scaled>>=<least>,<scaled><=<most>),<shown>,<out_of_range>)
                                """);
    }

    /** Divided by what must be true of the text: an error in its place where it is not. */
    private static String text(String cell) {
        String trimmed = FormulaText.replaceSigns("TRIM(" + cell + ")", "-", TapeText.HYPHENS);
        String digits = FormulaText.unsigned(trimmed);
        String patterns = "X" + String.join("X", FormulaText.DECIMALS) + "X";
        return Pieces.of("sign", FormulaText.sign(trimmed))
                .and("decimal", FormulaText.decimal(digits))
                .and("pattern", FormulaText.numberPattern(digits))
                .and("patterns", FormulaText.quoted(patterns))
                .and("trimmed", FormulaText.onlySpacesTrimmed(cell))
                .and("sign_holds", FormulaText.DECIMAL_SIGN_HOLDS)
                .in(
                        """
                        (<sign>*<decimal>/COUNT(FIND("X"&<pattern>&"X",<patterns>))
                        /<trimmed>/<sign_holds>)
                        """);
    }
}
