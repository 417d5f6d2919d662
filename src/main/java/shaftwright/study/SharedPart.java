package shaftwright.study;

/** Parts that both sides have alike, in the order in which they are listed. */
public enum SharedPart {
    JOINT_INNER("inner joint"),
    JOINT_OUTER("outer joint"),
    BOLTS_INNER("flange bolts, inner end"),
    BOLTS_OUTER("flange bolts, outer end"),
    /** The least of the builder's own figures; its name is the part's. */
    OWN("weakest part you rated");

    private final String words;

    SharedPart(String words) {
        this.words = words;
    }

    /** As the tables name it. */
    public String words() {
        return words;
    }
}
