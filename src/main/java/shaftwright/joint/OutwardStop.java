package shaftwright.joint;

/** What ends a race's outward travel. */
public enum OutwardStop {
    /** Metal: the race cannot be pulled further by a floating shaft. */
    HARD,
    /** The boot alone: a floating shaft may pull the race past its limit. */
    SOFT
}
