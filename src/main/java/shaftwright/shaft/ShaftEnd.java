package shaftwright.shaft;

/** One of a shaft's two ends. */
public enum ShaftEnd {
    /** At the transaxle. */
    INNER("inner", "in"),
    /** At the hub. */
    OUTER("outer", "out");

    private final String word;
    private final String shortWord;

    ShaftEnd(String word, String shortWord) {
        this.word = word;
        this.shortWord = shortWord;
    }

    /** As builders say it: inner, outer. */
    public String word() {
        return word;
    }

    /** The same where there is little room: in, out. */
    public String shortWord() {
        return shortWord;
    }

    public ShaftEnd other() {
        return either(OUTER, INNER);
    }

    /** What belongs to this end, of what the inner and the outer one have. */
    public <T> T either(T inner, T outer) {
        return this == INNER ? inner : outer;
    }

    /** The same of numbers. */
    public double either(double inner, double outer) {
        return this == INNER ? inner : outer;
    }
}
