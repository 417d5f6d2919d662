package shaftwright.book;

/**
 * A cell as stored: its (cached) value and the formula it was computed by. Two are equal when both
 * are.
 */
public abstract class CellContent {
    public static final CellContent EMPTY = of(CellValue.BLANK, "");

    /** The value, for a formula cell the cached one. */
    public abstract CellValue value();

    /**
     * The formula's text without the equals sign, or empty when the cell has none. A cell that
     * takes part in a shared formula carries the text of the formula's first cell, unshifted.
     */
    public abstract String formula();

    public abstract boolean hasFormula();

    /** Whether the cell shows nothing and computes nothing. */
    public boolean isEmpty() {
        return !hasFormula() && value() instanceof CellValue.Blank;
    }

    /** A cell whose content is known. */
    public static CellContent of(CellValue value, String formula) {
        return new Known(value, formula);
    }

    private static final class Known extends CellContent {
        private final CellValue value;
        private final String formula;

        Known(CellValue value, String formula) {
            this.value = value;
            this.formula = formula;
        }

        @Override
        public CellValue value() {
            return value;
        }

        @Override
        public String formula() {
            return formula;
        }

        @Override
        public boolean hasFormula() {
            return !formula.isEmpty();
        }
    }

    @Override
    public final boolean equals(Object other) {
        return other instanceof CellContent content
                && content.value().equals(value())
                && content.formula().equals(formula());
    }

    @Override
    public final int hashCode() {
        return value().hashCode() * 31 + formula().hashCode();
    }

    @Override
    public final String toString() {
        return hasFormula() ? value() + " by =" + formula() : value().toString();
    }
}
