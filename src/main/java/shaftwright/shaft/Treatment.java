package shaftwright.shaft;

/** What heat treatment left of a blank for the shop. */
public enum Treatment {
    /** Not known. */
    UNKNOWN("", ""),
    /** Hard on the surface only, by induction or in a case: a cut end or groove has none of it. */
    CASE_HARDENED("case-hardened", "case-hardened: not to be cut"),
    /** As hard inside as outside. */
    THROUGH_HARDENED("through-hardened", "through-hardened");

    private final String typed;
    private final String words;

    Treatment(String typed, String words) {
        this.typed = typed;
        this.words = words;
    }

    /** As builders type it, empty when it is not known. */
    public String typed() {
        return typed;
    }

    /** As it stands beside the blank's name, empty when it is not known. */
    public String words() {
        return words;
    }

    /** Whether the steel was hardened: its notches then weigh on a mean stress as well. */
    public boolean hardened() {
        return this != UNKNOWN;
    }
}
