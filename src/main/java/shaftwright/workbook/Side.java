package shaftwright.workbook;

/** Vehicle side. Defined names of sided cells end in {@link #suffix()}. */
public enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String word;
    private final String suffix;

    Side(String word) {
        this.word = word;
        this.suffix = "_" + word;
    }

    /** As builders say it: left, right. */
    public String word() {
        return word;
    }

    /** What a sided defined name ends in: {@code _left}, {@code _right}. */
    public String suffix() {
        return suffix;
    }

    /** Sign of a shift toward the vehicle's left, seen from this side with outward positive. */
    public int leftward() {
        return this == LEFT ? 1 : -1;
    }
}
