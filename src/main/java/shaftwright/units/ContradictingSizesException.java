package shaftwright.units;

/** Two sizes of one part that cannot both be so. */
public final class ContradictingSizesException extends ContradictionException {
    private static final long serialVersionUID = 1;

    private final String size;
    private final double value;
    private final String other;
    private final double otherValue;

    private ContradictingSizesException(
            String size, double value, String relation, String other, double otherValue) {
        super(
                size
                        + " must be "
                        + relation
                        + ' '
                        + other
                        + "; have "
                        + value
                        + " and "
                        + otherValue);
        this.size = size;
        this.value = value;
        this.other = other;
        this.otherValue = otherValue;
    }

    static ContradictingSizesException tooLarge(
            String size, double value, String other, double most) {
        return new ContradictingSizesException(size, value, "no more than", other, most);
    }

    static ContradictingSizesException tooSmall(
            String size, double value, String other, double bound) {
        return new ContradictingSizesException(size, value, "more than", other, bound);
    }

    /** The size that is wrong beside the other, such as "counterbore". */
    public String size() {
        return size;
    }

    /** How large it is, mm or rad. */
    public double value() {
        return value;
    }

    /** What it does not go with, such as "the width of the race". */
    public String other() {
        return other;
    }

    /** How large that is, in the same unit. */
    public double otherValue() {
        return otherValue;
    }
}
