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

    /** To hundredths, noise taken out first so that halves go the same way everywhere. */
    static double hundredth(double value) {
        return whole(sixth(value) * 100) / 100;
    }
}
