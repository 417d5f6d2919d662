package shaftwright.formula;

import java.util.List;

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

    /** One for each of these words in a cell, which gives its number from 1. */
    public Cases words(String cell, List<String> words) {
        for (int word = 0; word < words.size(); word++) {
            when(cell + "=" + FormulaText.quoted(words.get(word)), word + 1);
        }
        return this;
    }

    /** The formula, with what it gives where none of them holds. */
    public String otherwise(String other) {
        return text + other + ")".repeat(open);
    }
}
