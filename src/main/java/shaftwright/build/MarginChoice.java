package shaftwright.build;

/** Which margins count. */
public enum MarginChoice {
    /** Each scenario's own. */
    TYPED("typed"),
    /** Twice the combined standard uncertainty and the biases, the same both ways. */
    ROOT_SUM_SQUARE("root-sum-square"),
    /** All contributions at their worst at once, the same both ways. */
    WORST_CASE("worst case");

    private final String word;

    MarginChoice(String word) {
        this.word = word;
    }

    /** What builders call it. */
    public String word() {
        return word;
    }
}
