package shaftwright.suspension;

/** How well the readings of a quantity can check each other, by what the curve leaves free. */
public enum CrossCheck {
    /** As many rows as the curve has coefficients: it runs through all of them, right or wrong. */
    NONE,
    /** A contradiction shows, but not which row is wrong; at the ends it may not show at all. */
    SHOWS_A_CONTRADICTION,
    /** A wrong row is named. */
    NAMES_THE_ROW;

    /**
     * By degrees of freedom.
     *
     * @param freedom rows less coefficients of the curve
     */
    static CrossCheck of(int freedom) {
        if (freedom <= 0) {
            return NONE;
        }
        return freedom - 1 >= OutlierTest.LEAST_FREEDOM_LEFT
                ? NAMES_THE_ROW
                : SHOWS_A_CONTRADICTION;
    }
}
