package shaftwright.suspension;

/** What the other readings say about one row. */
public enum Suspicion {
    /** It goes with the others, or they are too few to say. */
    NONE,
    /** One of the rows marked so is doubtful, which one can't be told. */
    ONE_OF_THESE,
    /** It does not go with the others: measure it again. */
    MEASURE_AGAIN
}
