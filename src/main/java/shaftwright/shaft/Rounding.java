package shaftwright.shaft;

/** Rounding as spreadsheets do it: halves away from zero. */
final class Rounding {
    private Rounding() {}

    /** To a whole number. */
    static double whole(double value) {
        return Math.copySign(Math.floor(Math.abs(value) + 0.5), value);
    }

    /** To six decimals, which takes out the noise of a division. */
    static double sixth(double value) {
        return whole(value * 1e6) / 1e6;
    }

    /**
     * To hundredths. The noise is taken out of the number of hundredths, not of the value: only
     * there is a half exact, and goes the same way everywhere.
     */
    static double hundredth(double value) {
        return whole(sixth(value * 100)) / 100;
    }
}
