package shaftwright.study;

import java.util.OptionalDouble;

/**
 * What something costs by the builder's own prices, or why that is not known. A missing price never
 * counts as 0: a sum or difference with one is not known either.
 *
 * @param amount in the builder's currency, empty when it is not known
 * @param lacking what is lacking, in a word or two; empty when the amount is known
 */
public record Price(OptionalDouble amount, String lacking) {
    /** What stands for a price that nothing more can be said of. */
    public static final String NOT_PRICED = "not priced";

    /** What stands for the price of a part that its table has none for. */
    public static final String NO_PRICE = "no price";

    /** A known price. */
    public static Price of(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("a price is a finite number; have " + amount);
        }
        return new Price(OptionalDouble.of(amount), "");
    }

    /** A price that is not known, and why. */
    public static Price lacking(String what) {
        return new Price(OptionalDouble.empty(), what);
    }

    /** A typed price; lacking when its cell is empty. */
    public static Price typed(OptionalDouble typed) {
        return typed.isPresent() ? of(typed.getAsDouble()) : lacking(NO_PRICE);
    }

    public boolean isKnown() {
        return amount.isPresent();
    }

    /** So many of it; none of something costs nothing, whatever its price. */
    public Price times(double count) {
        if (count == 0) {
            return of(0);
        }
        return isKnown() ? of(count * amount.getAsDouble()) : this;
    }

    /** Both together; lacks what the first of them lacks. */
    public Price plus(Price other) {
        if (!isKnown() || !other.isKnown()) {
            return isKnown() ? other : this;
        }
        return of(amount.getAsDouble() + other.amount.getAsDouble());
    }

    /** What this costs more than the other. */
    public Price minus(Price other) {
        return plus(other.isKnown() ? of(-other.amount.getAsDouble()) : other);
    }

    /** "184.00", or what is lacking. */
    public String words() {
        return isKnown() ? money(amount.getAsDouble()) : lacking;
    }

    /** An amount as it is read: "184.00". */
    static String money(double amount) {
        return Wording.rounded(amount, 2);
    }
}
