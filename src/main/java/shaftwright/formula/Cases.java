package shaftwright.formula;

/** Formula text for the first of several cases whose condition holds: one IF inside the other. */
public final class Cases {
    private final StringBuilder text = new StringBuilder();
    private int open;

    /** A further case. */
    public Cases when(String condition, String then) {
        text.append("IF(").append(condition).append(',').append(then).append(',');
        open++;
        return this;
    }

    /** The same with a whole number. */
    public Cases when(String condition, int then) {
        return when(condition, String.valueOf(then));
    }

    /** The same with a text. */
    public Cases say(String condition, String words) {
        return when(condition, FormulaText.quoted(words));
    }

    /** The formula, with what it gives where none of them holds. */
    public String otherwise(String other) {
        return text + other + ")".repeat(open);
    }
}
