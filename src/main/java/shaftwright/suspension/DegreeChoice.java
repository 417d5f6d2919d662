package shaftwright.suspension;

/** Which degree of curve the builder wants through the readings. */
public enum DegreeChoice {
    /** As many rows deserve: a line through two, a parabola from three, a cubic from five on. */
    AUTO(0),
    /** Degree 4, from nine rows on. */
    QUARTIC(4),
    /** Degree 5, from nine rows on. */
    QUINTIC(5);

    /** Fewer rows than this do not hold a curve of degree 4 or 5. */
    public static final int LEAST_ROWS_ON_REQUEST = 9;

    private final int requested;

    DegreeChoice(int requested) {
        this.requested = requested;
    }

    /** Whether so many rows are enough for this choice. */
    public boolean allows(int rows) {
        return requested == 0 || rows >= LEAST_ROWS_ON_REQUEST;
    }

    /** The degree for so many rows; a request that they do not allow counts as {@link #AUTO}. */
    public int degree(int rows) {
        if (requested > 0 && allows(rows)) {
            return requested;
        }
        if (rows >= 5) {
            return 3;
        }
        return rows >= 3 ? 2 : Math.max(0, rows - 1);
    }
}
