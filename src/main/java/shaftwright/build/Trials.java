package shaftwright.build;

/**
 * Trials of vehicles that are a little different each time.
 *
 * @param count how many, 1 or more
 * @param seed where the random numbers start; the same one gives the same chances again
 */
public record Trials(int count, long seed) {
    public Trials {
        if (count < 1) {
            throw new IllegalArgumentException("trials must be 1 or more; have " + count);
        }
    }
}
