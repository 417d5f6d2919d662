package shaftwright.shaft;

/** Where the ring of one end goes. */
public enum GrooveUse {
    /** Into the groove that the blank already has. */
    EXISTING,
    /** Into a groove to be cut. */
    NEW
}
