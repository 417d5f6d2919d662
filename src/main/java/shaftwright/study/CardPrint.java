package shaftwright.study;

/** What the shop card may print, the least first. */
public enum CardPrint {
    /** No length at all: DO NOT CUT, and why. */
    NOTHING(0),
    /** The ends of the length window, and no length to cut to. */
    WINDOW(1),
    /** End to end and clip to clip, and no cuts. */
    LENGTHS(2),
    /** Everything, with what was found said on top. */
    ALL_WITH_NOTE(3),
    /** Everything. */
    ALL(4);

    private final int level;

    CardPrint(int level) {
        this.level = level;
    }

    /** The more the card may print, the higher; workbooks hold it as a number. */
    public int level() {
        return level;
    }

    /** What two findings together allow: the lesser. */
    public CardPrint and(CardPrint that) {
        return compareTo(that) <= 0 ? this : that;
    }

    /** Whether it allows as much as that, or more. */
    public boolean allows(CardPrint that) {
        return compareTo(that) >= 0;
    }
}
