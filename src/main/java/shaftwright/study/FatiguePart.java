package shaftwright.study;

/** Sections of each side's shaft that torque may tire, in the order in which they are listed. */
public enum FatiguePart {
    BAR("bar"),
    RUNOUT_INNER("spline run-out, inner end"),
    RUNOUT_OUTER("spline run-out, outer end"),
    SHOULDER_INNER("shoulder, inner end"),
    SHOULDER_OUTER("shoulder, outer end"),
    GROOVE_INNER("old groove, inner end"),
    GROOVE_OUTER("old groove, outer end");

    private final String words;

    FatiguePart(String words) {
        this.words = words;
    }

    /** As the tables name it. */
    public String words() {
        return words;
    }
}
