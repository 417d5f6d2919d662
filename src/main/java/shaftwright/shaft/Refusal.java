package shaftwright.shaft;

import java.util.Optional;
import shaftwright.joint.SplineClash;

/**
 * Why a blank, or one way of cutting it, will not do.
 *
 * @param reason what is wrong
 * @param amount by how much, mm; 0 where the reason has no amount
 * @param clash of the splines, where they do not mate
 */
public record Refusal(Reason reason, double amount, Optional<SplineClash> clash) {
    /** Reasons in the order in which they are looked for. */
    public enum Reason {
        NOT_IN_STOCK("not in stock", false),
        SPLINES_DIFFER("splines differ from the joint's", false),
        INNER_SPLINE_CLASHES("inner spline does not mate", false),
        OUTER_SPLINE_CLASHES("outer spline does not mate", false),
        NO_GROOVE("no existing groove at that end", false),
        TOO_SHORT("too short by", true),
        INNER_SPLINE_TOO_SHORT("inner spline too short after cutting, by", true),
        OUTER_SPLINE_TOO_SHORT("outer spline too short after cutting, by", true),
        GROOVES_OUTSIDE_WINDOW("existing grooves give a length outside the window, by", true);

        private final String words;
        private final boolean measured;

        Reason(String words, boolean measured) {
            this.words = words;
            this.measured = measured;
        }

        /** In a builder's words; a length follows where the reason is {@link #measured}. */
        public String words() {
            return words;
        }

        /** Whether an amount belongs to the reason. */
        public boolean measured() {
            return measured;
        }
    }

    static Refusal of(Reason reason) {
        return new Refusal(reason, 0);
    }

    /** For something that has an amount. */
    Refusal(Reason reason, double amount) {
        this(reason, amount, Optional.empty());
    }

    static Refusal of(ShaftEnd end, SplineClash clash) {
        return new Refusal(clashesAt(end), 0, Optional.of(clash));
    }

    /** That the splines at an end do not mate. */
    public static Reason clashesAt(ShaftEnd end) {
        return end.either(Reason.INNER_SPLINE_CLASHES, Reason.OUTER_SPLINE_CLASHES);
    }

    /** End whose splines do not mate; asked for only where they {@link #clash}. */
    public ShaftEnd clashingEnd() {
        return reason == Reason.INNER_SPLINE_CLASHES ? ShaftEnd.INNER : ShaftEnd.OUTER;
    }
}
