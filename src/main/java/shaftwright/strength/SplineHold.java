package shaftwright.strength;

/** Whether a spline can rock in its seat. */
public enum SplineHold {
    /** Held at its ends, as a race by its ring and shoulder. */
    FIXED,
    /** Free to rock and creep a little. */
    FLEXIBLE
}
