package shaftwright.build;

/** A side of the vehicle. */
public enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** As builders say it: left, right. */
    public String word() {
        return word;
    }

    /** Sign of a shift toward the vehicle's left, seen from this side with outward positive. */
    public int leftward() {
        return this == LEFT ? 1 : -1;
    }
}
