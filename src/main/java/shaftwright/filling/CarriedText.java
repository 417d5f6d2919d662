package shaftwright.filling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.reading.InputValues;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.PlainNumber;
import shaftwright.units.UnreadableLengthException;
import shaftwright.units.UnreadableNumberException;

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
        OptionalDouble number = carried(input, raw, from, to);
        if (number.isPresent()) {
            return new BigDecimal(number.getAsDouble())
                    .round(SHOWN)
                    .stripTrailingZeros()
                    .toPlainString();
        }
        return length(input, raw, from, to).orElseGet(() -> InputValues.asTyped(raw));
    }

    /** What the other workbook's cell has to hold for the very same, no digit rounded away. */
    public static CellValue exactly(Input input, CellValue raw, LengthUnit from, LengthUnit to) {
        OptionalDouble number = carried(input, raw, from, to);
        return number.isPresent()
                ? CellValue.of(number.getAsDouble())
                : length(input, raw, from, to).map(CellValue::of).orElse(raw);
    }

    /** The bare number of the other workbook, where bare numbers are of another unit there. */
    private static OptionalDouble carried(
            Input input, CellValue raw, LengthUnit from, LengthUnit to) {
        if (input.kind().factor(from) == input.kind().factor(to)) {
            return OptionalDouble.empty();
        }
        try {
            double typed =
                    raw instanceof CellValue.Numeric number
                            ? number.value()
                            : PlainNumber.parse(InputValues.asTyped(raw));
            return OptionalDouble.of(typed * input.kind().factor(from) / input.kind().factor(to));
        } catch (UnreadableNumberException e) {
            // Empty, or refused already by reading the workbook that it comes from.
            return OptionalDouble.empty();
        }
    }

    /** A length with a mark, where it needs one. */
    private static Optional<String> length(
            Input input, CellValue raw, LengthUnit from, LengthUnit to) {
        String text = InputValues.asTyped(raw);
        if (input.kind() != InputKind.LENGTH || text.isEmpty() || from == to) {
            return Optional.empty();
        }
        String marked = text + " " + from.symbol();
        if (raw instanceof CellValue.Numeric) {
            return Optional.of(marked);
        }
        try {
            return Length.parse(text, from).equals(Length.parse(text, to))
                    ? Optional.empty()
                    : Optional.of(marked);
        } catch (UnreadableLengthException e) {
            // Reading the other workbook has refused it already; it says the same there.
            return Optional.empty();
        }
    }
}
