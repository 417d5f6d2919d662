package shaftwright.functions;

/**
 * The numbers that a parameter takes, in the cell's unit.
 *
 * @param least least number
 * @param most greatest number
 * @param open whether the least number itself is left out
 */
public record Allowed(double least, double most, boolean open) {
    /** Beyond this no figure of a shaft lies, and squares would lose their digits. */
    static final double LARGEST = 1e9;

    /** Nearer to an open end no figure of a shaft lies, and products would vanish. */
    static final double SMALLEST = 1e-9;

    static final Allowed ANY = new Allowed(-LARGEST, LARGEST, false);
    static final Allowed NOT_NEGATIVE = new Allowed(0, LARGEST, false);
    static final Allowed POSITIVE = new Allowed(0, LARGEST, true);

    static Allowed within(double least, double most) {
        return new Allowed(least, most, false);
    }

    boolean has(double number) {
        return number <= most && (open ? number >= least + SMALLEST : number >= least);
    }

    /** In words: {@code above 0}, {@code 0 or more}, {@code -45 to 45}; empty for any number. */
    public String words() {
        if (equals(ANY)) {
            return "";
        }
        if (most == LARGEST) {
            return open ? "above " + plain(least) : plain(least) + " or more";
        }
        return (open ? "above " : "") + plain(least) + " to " + plain(most);
    }

    static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? Long.toString((long) number)
                : Double.toString(number);
    }
}
