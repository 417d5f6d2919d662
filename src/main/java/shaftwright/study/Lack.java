package shaftwright.study;

/** What a scenario asks for without the figure that it needs for that. */
public enum Lack {
    KINGPIN("steered, but the kingpin line is not known"),
    CLEARANCE("the clearance rule needs clearance at ride and clearance wanted"),
    CENTRE("the drive unit rolls: type the distance from vehicle centre to inner datum"),
    BUMP("the clearance rule leaves no bump travel");

    private final String words;

    Lack(String words) {
        this.words = words;
    }

    /** What is missing, for a sentence about a side that can't be computed. */
    public String words() {
        return words;
    }
}
