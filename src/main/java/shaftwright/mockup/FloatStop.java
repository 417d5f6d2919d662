package shaftwright.mockup;

/** What a fixed stick meets at one end of its float. */
public enum FloatStop {
    /** The joint that it is pushed into bottoms. */
    BOTTOM("bottom"),
    /** The joint that it is pulled from is fully out. */
    PULL("pull");

    private final String word;

    FloatStop(String word) {
        this.word = word;
    }

    /** As it is typed. */
    public String word() {
        return word;
    }
}
