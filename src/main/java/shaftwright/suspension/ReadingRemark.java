package shaftwright.suspension;

/**
 * Something a builder should know about their readings: a reason why they can't be used, or a
 * warning.
 *
 * @param kind what it is about
 * @param row number of the row it is about, 0 when it is about the side as a whole
 * @param found what is so, a clause without place and value
 * @param rest what comes of it or what to do, a clause; empty when there is nothing to add
 */
public record ReadingRemark(Kind kind, int row, String found, String rest) {
    /** What a remark is about. */
    public enum Kind {
        TOO_FEW_ROWS,
        NO_DISTANCE,
        TOO_MANY_READINGS,
        BAD_DISTANCE,
        BAD_HEIGHT,
        BAD_FORE_AFT,
        BAD_ANGLE,
        SAME_HEIGHT,
        IMPOSSIBLE_TRIANGLE,
        RIDE_OUTSIDE_ROWS,
        TOO_FEW_ROWS_FOR_DEGREE,
        CURVE_THROUGH_AXIS,
        REPEATS_DIFFER,
        NO_CAMBER,
        NO_TOE,
        CAMBER_BEYOND_ROWS,
        TOE_BEYOND_ROWS,
        NO_VERDICT,
        NO_CROSS_CHECK,
        ENDS_NOT_CHECKED
    }

    /** Both clauses as one sentence, without a full stop. */
    public String text() {
        return rest.isEmpty() ? found : found + "; " + rest;
    }
}
