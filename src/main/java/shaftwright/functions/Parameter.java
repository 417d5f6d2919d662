package shaftwright.functions;

import java.util.Optional;

/**
 * One argument of a cell function.
 *
 * @param name small letters, as help and expressions write it
 * @param measure what it is
 * @param isRange whether it is a block of cells rather than one
 * @param allowed which numbers it takes
 * @param otherwise what counts when it is left out, as a cell would hold it, of a unit in a
 *     workbook that does not say it; empty when it must be there
 * @param meaning a few words
 */
public record Parameter(
        String name,
        Measure measure,
        boolean isRange,
        Allowed allowed,
        Optional<String> otherwise,
        String meaning) {

    /** Whether it may be left out. */
    public boolean isOptional() {
        return otherwise.isPresent();
    }

    /** Meaning, unit, range and what counts without it, in one line. */
    public String description() {
        StringBuilder text = new StringBuilder(meaning);
        String gap = "; ";
        if (measure.isNumber() && !measure.unit().isEmpty()) {
            text.append(gap).append(measure.unit());
            gap = ", ";
        }
        if (!allowed.words().isEmpty()) {
            text.append(gap).append(allowed.words());
        }
        if (measure == Measure.UNIT) {
            text.append("; if left out, as the cell named unit says, else ");
            text.append(otherwise.orElseThrow());
        } else if (otherwise.isPresent()) {
            text.append("; ").append(otherwise.get()).append(" if left out");
        }
        return text.toString();
    }
}
