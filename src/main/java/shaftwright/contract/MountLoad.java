package shaftwright.contract;

import java.util.ArrayList;
import java.util.List;
import shaftwright.contract.Input.Range;

/** What pushes the drive unit in its mounts, with the inputs that say how far it gives. */
public enum MountLoad {
    REST("at rest", ""),
    DRIVE("drive", "mount_drive_"),
    OVERRUN("overrun", "mount_overrun_");

    /** How the drive unit may move; what a move's name ends in. */
    public static final List<String> WAYS = List.of("forward", "left", "up", "roll");

    private static final Range OFFSET = new Range(-2_000, 2_000);
    private static final Range SOFT = new Range(-40, 40);

    private final String word;
    private final String prefix;

    MountLoad(String word, String prefix) {
        this.word = word;
        this.prefix = prefix;
    }

    /** As typed: at rest, drive, overrun. */
    public String word() {
        return word;
    }

    /**
     * The input that says how far it gives.
     *
     * @param way one of {@link #WAYS}
     * @throws IllegalStateException at rest, which has none
     */
    public String input(String way) {
        if (this == REST) {
            throw new IllegalStateException("at rest nothing gives");
        }
        return prefix + way;
    }

    static void vehicle(List<Input> all) {
        for (MountLoad load : List.of(DRIVE, OVERRUN)) {
            String under = "Mounts under " + load.word + ": ";
            String level =
                    "How far the drive unit moves then: the point on the vehicle's centre plane"
                            + " level with the flange.";
            all.add(move(load, "forward", under + "forward", level));
            all.add(move(load, "left", under + "left", level));
            all.add(move(load, "up", under + "up", level));
            all.add(
                    Input.number(
                                    load.input("roll"),
                                    Grid.BOOK,
                                    under + "left side up",
                                    InputKind.ANGLE,
                                    new Range(-30, 30),
                                    new Range(-10, 10),
                                    "Roll about the fore-aft line through that point. Lever the"
                                            + " unit in its mounts and measure.")
                            .orElse(0));
        }
    }

    static void scenario(List<Input> all) {
        List<String> words = new ArrayList<>();
        for (MountLoad load : values()) {
            words.add(load.word);
        }
        all.add(
                Input.words(
                        "mount_load",
                        Grid.SCENARIO,
                        "Drive unit in its mounts",
                        InputKind.CHOICE,
                        words,
                        "at rest: as measured. drive, overrun: moved as typed on the sheet Measure."
                                + " Empty: at rest."));
    }

    private static Input move(MountLoad load, String way, String label, String meaning) {
        return Input.length(load.input(way), Grid.BOOK, label, OFFSET, SOFT, meaning).orElse(0);
    }

    /** The one of this word in either case; at rest for any other. */
    public static MountLoad ofWord(String typed) {
        for (MountLoad load : values()) {
            if (load.word.equalsIgnoreCase(typed)) {
                return load;
            }
        }
        return REST;
    }
}
