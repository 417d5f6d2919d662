package shaftwright.units;

/** The unit that a bare number stands for. */
public enum LengthUnit {
    INCH(25.4, "in"),
    MILLIMETRE(1, "mm");

    private final double mm;
    private final String symbol;

    LengthUnit(double mm, String symbol) {
        this.mm = mm;
        this.symbol = symbol;
    }

    /** One of this unit in millimetres, exact. */
    public double mm() {
        return mm;
    }

    /** How it is written behind a number. */
    public String symbol() {
        return symbol;
    }
}
