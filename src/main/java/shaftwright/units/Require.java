package shaftwright.units;

/** Argument checks that say what was expected and what came instead. */
public final class Require {
    private Require() {}

    /** Any finite number. */
    public static double finite(String what, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(what + " must be a number; have " + value);
        }
        return value;
    }

    /** A finite number of zero or more. */
    public static double notNegative(String what, double value) {
        if (finite(what, value) < 0) {
            throw new IllegalArgumentException(what + " must not be negative; have " + value);
        }
        return value;
    }

    /** A finite number above zero. */
    public static double positive(String what, double value) {
        if (finite(what, value) <= 0) {
            throw new IllegalArgumentException(what + " must be above zero; have " + value);
        }
        return value;
    }

    /** A finite number from {@code low} to {@code high}, both included. */
    public static double within(String what, double value, double low, double high) {
        if (finite(what, value) < low || value > high) {
            throw new IllegalArgumentException(
                    what + " must lie from " + low + " to " + high + "; have " + value);
        }
        return value;
    }

    /**
     * A finite number of zero or more that is no more than another size of the same part.
     *
     * @throws ContradictingSizesException if it is more
     */
    public static double noMoreThan(String what, double value, String other, double most) {
        if (notNegative(what, value) > most) {
            throw ContradictingSizesException.tooLarge(what, value, other, most);
        }
        return value;
    }

    /**
     * A finite number above another size of the same part.
     *
     * @throws ContradictingSizesException if it is not
     */
    public static double moreThan(String what, double value, String other, double bound) {
        if (finite(what, value) <= bound) {
            throw ContradictingSizesException.tooSmall(what, value, other, bound);
        }
        return value;
    }

    /** A text that is more than blanks. */
    public static String named(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException(what + " must not be blank");
        }
        return name;
    }
}
