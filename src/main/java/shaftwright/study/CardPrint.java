package shaftwright.study;

/** What the shop card may print, the least first. */
public enum CardPrint {
    /** No length at all: DO NOT CUT, and why. */
    NOTHING,
    /** The ends of the length window, and no length to cut to. */
    WINDOW,
    /** End to end and clip to clip, and no cuts. */
    LENGTHS,
    /** Everything, with what was found said on top. */
    ALL_WITH_NOTE,
    /** Everything. */
    ALL;

    /** What two findings together allow: the lesser. */
    public CardPrint and(CardPrint that) {
        return compareTo(that) <= 0 ? this : that;
    }

    /** Whether it allows as much as that, or more. */
    public boolean allows(CardPrint that) {
        return compareTo(that) >= 0;
    }
}
