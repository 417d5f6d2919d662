package shaftwright.build;

/**
 * What must be so before a tape reading means anything. Common practice, no source. One that was
 * not made sure of spoils no number; whatever rests on the readings says so.
 */
public enum MeasuringCheck {
    ALIGNMENT(
            "Alignment set and checked, its bolts tight",
            "Alignment not ticked: lengths may move when it is set.",
            "Camber, toe and link lengths come first: they move the hub, and so every distance."),
    SPRINGS(
            "Springs out, wheel moves freely by hand",
            "Springs out not ticked: full bump and droop may not have been reached.",
            "Stands under the vehicle before a spring comes out. Dampers may stay if they allow full travel."),
    LEVEL(
            "Vehicle level on stands, one floor for all heights",
            "Level on stands not ticked: heights may be off: uneven floor or leaning vehicle.",
            "Level across and lengthwise, on stands, never on a jack alone."),
    STRAIGHT(
            "Wheel straight ahead, upright and hub without play",
            "Wheel straight not ticked: a turned hub changes the distance.",
            "Bearings and link ends without play, the wheel or hub pointing straight ahead."),
    MOUNTS(
            "Transaxle bolted where it will stay, datum faces clean",
            "Transaxle in place not ticked: the inner ends may still move.",
            "On its final mounts, flanges or cups bare and clean where the tape touches.");

    private final String label;
    private final String warning;
    private final String meaning;

    MeasuringCheck(String label, String warning, String meaning) {
        this.label = label;
        this.warning = warning;
        this.meaning = meaning;
    }

    /** What is to be so. */
    public String label() {
        return label;
    }

    /** What is said of the readings while it is not ticked. */
    public String warning() {
        return warning;
    }

    /** What is meant by it, and how it is done. */
    public String meaning() {
        return meaning;
    }
}
