package shaftwright.filling;

import java.math.BigDecimal;
import java.math.MathContext;
import shaftwright.book.CellValue;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.reading.InputValues;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;

/**
 * What is typed in a cell of one workbook, as it has to be typed in another whose bare numbers may
 * be in the other unit.
 */
public final class CarriedText {
    /** Digits of a number in another unit: more than anybody types, few enough to be read. */
    private static final MathContext SHOWN = new MathContext(6);

    private CarriedText() {}

    /**
     * The text to type, empty for an empty cell. A length without a mark gets its workbook's when
     * the other workbook would read it differently.
     *
     * @param raw what the cell holds
     * @param from unit of the workbook that it comes from
     * @param to unit of the workbook that it goes into
     */
    static String of(Input input, CellValue raw, LengthUnit from, LengthUnit to) {
        String text = InputValues.asTyped(raw);
        if (raw instanceof CellValue.Numeric number
                && input.kind().factor(from) != input.kind().factor(to)) {
            double carried = number.value() * input.kind().factor(from) / input.kind().factor(to);
            return new BigDecimal(carried).round(SHOWN).stripTrailingZeros().toPlainString();
        }
        if (input.kind() != InputKind.LENGTH || text.isEmpty() || from == to) {
            return text;
        }
        if (raw instanceof CellValue.Numeric) {
            return text + " " + from.symbol();
        }
        try {
            return Length.parse(text, from).equals(Length.parse(text, to))
                    ? text
                    : text + " " + from.symbol();
        } catch (UnreadableLengthException e) {
            // Reading the other workbook has refused it already; it says the same there.
            return text;
        }
    }
}
