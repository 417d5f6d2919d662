package shaftwright.shaft;

/** An end of a shaft. */
public enum ShaftEnd {
    /** At the transaxle. */
    INNER("inner"),
    /** At the hub. */
    OUTER("outer");

    private final String word;

    ShaftEnd(String word) {
        this.word = word;
    }

    /** As builders say it: inner, outer. */
    public String word() {
        return word;
    }
}
