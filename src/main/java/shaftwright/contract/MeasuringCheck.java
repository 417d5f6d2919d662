package shaftwright.contract;

import java.util.List;

/**
 * What must be so before a tape reading means anything, each ticked by the builder. Common
 * practice, no source. An unticked one spoils no number; whatever rests on the readings says so.
 */
public enum MeasuringCheck {
    ALIGNMENT(
            "alignment",
            "Alignment set and checked, its bolts tight",
            "Alignment not ticked: lengths may move when it is set.",
            "Camber, toe and link lengths come first: they move the hub, and so every distance."),
    SPRINGS(
            "springs",
            "Springs out, wheel moves freely by hand",
            "Springs out not ticked: full bump and droop may not have been reached.",
            "Stands under the vehicle before a spring comes out. Dampers may stay if they let go of the full travel."),
    LEVEL(
            "level",
            "Vehicle level on stands, one floor for all heights",
            "Level on stands not ticked: heights may differ by the floor or a lean.",
            "Level across and lengthwise, on stands, never on a jack alone."),
    STRAIGHT(
            "straight",
            "Wheel straight ahead, upright and hub without play",
            "Wheel straight not ticked: a turned hub changes the distance.",
            "Bearings and link ends without play, the wheel or hub pointing straight ahead."),
    MOUNTS(
            "mounts",
            "Transaxle bolted where it will stay, datum faces clean",
            "Transaxle in place not ticked: the inner ends may still move.",
            "On its final mounts, flanges or cups bare and clean where the tape touches.");

    private final String name;
    private final String label;
    private final String warning;
    private final String meaning;

    MeasuringCheck(String name, String label, String warning, String meaning) {
        this.name = "done_" + name;
        this.label = label;
        this.warning = warning;
        this.meaning = meaning;
    }

    /** Defined name of the cell that is ticked. */
    public String input() {
        return name;
    }

    /** What is said of the readings while it is not ticked. */
    public String warning() {
        return warning;
    }

    static void declare(List<Input> all) {
        for (MeasuringCheck check : values()) {
            all.add(
                    Input.words(
                            check.name,
                            Grid.BOOK,
                            check.label,
                            InputKind.CHOICE,
                            List.of("yes", "no"),
                            check.meaning));
        }
    }
}
