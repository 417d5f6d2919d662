package shaftwright.mockup;

/** The two ends of the length window. */
public enum WindowEnd {
    /** Both races fully in: a longer shaft bottoms. */
    IN,
    /** Both races fully out: a shorter shaft pulls out. */
    OUT
}
