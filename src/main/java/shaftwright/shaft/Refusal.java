package shaftwright.shaft;

/**
 * Why a blank, or one way of cutting it, will not do.
 *
 * @param reason what is wrong
 * @param amount by how much, mm; 0 where the reason has no amount
 */
public record Refusal(Reason reason, double amount) {
    /** Reasons in the order in which they are looked for. */
    public enum Reason {
        NOT_IN_STOCK("not in stock", false),
        SPLINES_DIFFER("splines differ from the joint's", false),
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
}
