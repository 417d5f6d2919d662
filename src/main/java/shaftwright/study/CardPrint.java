package shaftwright.study;

/** What the shop card may print, the least first. */
public enum CardPrint {
    /** No length at all: DO NOT CUT, and why. */
    NOTHING(0, "DO NOT CUT."),
    /** The ends of the length window, and no length to cut to. */
    WINDOW(1, "DO NOT CUT YET."),
    /** End to end and clip to clip, and no cuts. */
    LENGTHS(2, "NO CUTS YET."),
    /** Everything, with what was found said on top. */
    ALL_WITH_NOTE(3, ""),
    /** Everything. */
    ALL(4, "");

    private final int level;
    private final String warning;

    CardPrint(int level, String warning) {
        this.level = level;
        this.warning = warning;
    }

    /** The more the card may print, the higher; workbooks hold it as a number. */
    public int level() {
        return level;
    }

    /** Stands in place of what it does not print, empty when it prints all. */
    public String warning() {
        return warning;
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
