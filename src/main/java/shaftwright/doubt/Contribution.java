package shaftwright.doubt;

import shaftwright.units.Require;

/**
 * One thing that may move a length, and how it is stated.
 *
 * @param name as the table shows it
 * @param kind how the amount is to be read
 * @param amount mm, not negative
 */
public record Contribution(String name, Kind kind, double amount) {
    private static final double ROOT3 = Math.sqrt(3);

    /** A normal spread's far end in standard deviations, where a worst case is asked of it. */
    static final double NORMAL_WORST = 2;

    /** How an amount is stated. JCGM 100:2008, 4.2 and 4.3. */
    public enum Kind {
        /** One graduation of a tape: any value within half of it, {@code (a/2)/√3}. */
        GRADUATION,
        /** Anywhere within plus or minus the amount: {@code a/√3}. */
        PLUS_MINUS,
        /** A standard deviation, as of a mean of repeats: {@code s} itself. */
        SCATTER,
        /** A known error of unknown sign, such as a tape hook's: always there in full. */
        BIAS
    }

    public Contribution {
        Require.named("contribution", name);
        Require.notNegative("amount of " + name, amount);
    }

    /**
     * A mean of repeats: {@code s/√n}. JCGM 100:2008, 4.2.3.
     *
     * @param scatter standard deviation of single readings, mm
     * @param repeats that the mean was taken of
     */
    public static Contribution ofRepeats(String name, double scatter, int repeats) {
        if (repeats < 1) {
            throw new IllegalArgumentException("repeats must be 1 or more; have " + repeats);
        }
        return new Contribution(
                name, Kind.SCATTER, Require.notNegative("scatter", scatter) / Math.sqrt(repeats));
    }

    /** Standard uncertainty, mm; zero for a bias, which does not scatter. */
    public double standard() {
        return switch (kind) {
            case GRADUATION -> amount / 2 / ROOT3;
            case PLUS_MINUS -> amount / ROOT3;
            case SCATTER -> amount;
            case BIAS -> 0;
        };
    }

    /** What it can do at worst, mm; of a scatter, two standard deviations. */
    public double worst() {
        return switch (kind) {
            case GRADUATION -> amount / 2;
            case PLUS_MINUS, BIAS -> amount;
            case SCATTER -> NORMAL_WORST * amount;
        };
    }

    /** What is always there, mm. */
    public double bias() {
        return kind == Kind.BIAS ? amount : 0;
    }
}
