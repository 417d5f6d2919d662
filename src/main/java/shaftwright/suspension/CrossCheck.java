package shaftwright.suspension;

/** How well the rows of a side can check each other. */
public enum CrossCheck {
    /** As many rows as the curve has coefficients: it runs through all of them, right or wrong. */
    NONE,
    /** A wrong row shows, but not which of its neighbours it is (four to six rows). */
    SHOWS_A_GROUP,
    /** A wrong row is named (seven rows or more). */
    NAMES_THE_ROW;

    static CrossCheck of(int rows, int coefficients) {
        if (rows <= coefficients) {
            return NONE;
        }
        return rows >= 7 ? NAMES_THE_ROW : SHOWS_A_GROUP;
    }

    /** What a row is called that is off by more than its readings' doubt explains. */
    Suspicion suspicion() {
        return switch (this) {
            case NONE -> Suspicion.NONE;
            case SHOWS_A_GROUP -> Suspicion.ONE_OF_THESE;
            case NAMES_THE_ROW -> Suspicion.MEASURE_AGAIN;
        };
    }
}
