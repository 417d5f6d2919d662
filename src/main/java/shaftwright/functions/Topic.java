package shaftwright.functions;

/** What functions are about; lists are in this order. */
public enum Topic {
    LENGTHS("Lengths"),
    GEOMETRY("Distances and angles"),
    JOINT("Joints"),
    SHAFT("Shaft length"),
    CUTTING("Blank, grooves, mock-up"),
    TYRE("Tyre, width, speed"),
    TRAVEL("Travel and clearance"),
    PATH("Hub path from tape readings"),
    DOUBT("Doubt"),
    STRENGTH("Strength");

    private final String title;

    Topic(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
