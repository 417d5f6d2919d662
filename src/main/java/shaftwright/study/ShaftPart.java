package shaftwright.study;

/** Parts that each side's shaft has, in the order in which they are listed. */
public enum ShaftPart {
    BAR("shaft bar"),
    ROOT_INNER("spline root, inner end"),
    ROOT_OUTER("spline root, outer end"),
    TEETH_INNER("spline, fatigue and wear, inner end"),
    TEETH_OUTER("spline, fatigue and wear, outer end"),
    GROOVE_INNER("old groove, inner end"),
    GROOVE_OUTER("old groove, outer end");

    private final String words;

    ShaftPart(String words) {
        this.words = words;
    }

    /** As the tables name it. */
    public String words() {
        return words;
    }
}
