package shaftwright.mockup;

/** The two ends of the length window. */
public enum WindowEnd {
    /** Both races fully in: a longer shaft bottoms. */
    IN("in"),
    /** Both races fully out: a shorter shaft pulls out. */
    OUT("out");

    private final String word;

    WindowEnd(String word) {
        this.word = word;
    }

    /** Which way the races are: in, out. */
    public String word() {
        return word;
    }

    /** What belongs to this end, of what both have. */
    public <T> T either(T in, T out) {
        return this == IN ? in : out;
    }
}
