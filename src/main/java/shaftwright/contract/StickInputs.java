package shaftwright.contract;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.contract.Grid.STICK;
import static shaftwright.contract.Grid.STICK_READING;
import static shaftwright.contract.InputKind.CHOICE;
import static shaftwright.contract.InputKind.TEXT;

import java.util.Arrays;
import java.util.List;
import shaftwright.contract.Input.Range;
import shaftwright.mockup.FloatStop;
import shaftwright.mockup.RaceStop;
import shaftwright.shaft.ShaftEnd;

/** A mock-up stick of each side and what was read of it; none must be given. */
public final class StickInputs {
    /** Kind of a stick whose holes do not move. */
    public static final String FIXED = "fixed";

    private static final String SLIDING = "sliding";

    /** A scenario's word for a window that the mock-up corrects. */
    public static final String YES = "yes";

    private static final int SINCE = 6;
    private static final Range HOLES = new Range(150, 1_500);

    private StickInputs() {}

    /** The stick, then its readings. */
    static void declare(List<Input> all) {
        all.add(
                words(
                        "stick_scenario",
                        STICK,
                        "Scenario that it was built as",
                        TEXT,
                        List.of(),
                        "Letter of the scenario whose joints it stands in. Empty: the one on the"
                                + " shop cards."));
        all.add(
                words(
                        "stick_kind",
                        STICK,
                        "Kind of stick",
                        CHOICE,
                        List.of(SLIDING, FIXED),
                        "sliding: two tubes, one in the other, with a clamp. fixed: one tube with"
                                + " two holes. Empty: sliding."));
        all.add(
                length(
                        "stick_holes",
                        STICK,
                        "Hole spacing of a fixed stick",
                        Ranges.SIZE,
                        HOLES,
                        "Centre to centre."));
        List<String> stops = Arrays.stream(RaceStop.values()).map(RaceStop::word).toList();
        for (ShaftEnd end : ShaftEnd.values()) {
            all.add(
                    words(
                            "stick_stop_" + end.word(),
                            STICK,
                            "Race stopped inboard by, " + end.word(),
                            CHOICE,
                            stops,
                            "The pin stops a race outboard only. With nothing inboard the stick"
                                    + " does not push the race into its cup, and fully in is not"
                                    + " judged."));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            all.add(
                    length(
                                    "stick_slide_" + end.word(),
                                    STICK,
                                    "Race slides on the stick, " + end.word(),
                                    Ranges.NOT_NEGATIVE,
                                    new Range(0, 20),
                                    "How far, between pin and inboard stop. Empty: 0.")
                            .orElse(0));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            all.add(
                    length(
                            "stick_stub_" + end.word(),
                            STICK,
                            "Stick beyond the pin, " + end.word(),
                            Ranges.NOT_NEGATIVE,
                            new Range(0, 60),
                            "From the side of the pin that the race bears on to the stick's end."
                                    + " Empty: as the shaft's."));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            all.add(
                    length(
                            "stick_end_" + end.word(),
                            STICK,
                            "Stick's end diameter, " + end.word(),
                            Ranges.NOT_NEGATIVE,
                            new Range(8, 60),
                            "Empty: as the shaft's."));
        }
        all.add(
                length(
                        "stick_pin_length",
                        STICK,
                        "Pins, overall length",
                        Ranges.SIZE,
                        new Range(10, 80),
                        "Must go into a race's counterbore. Empty: not checked."));
        all.add(
                length(
                        "stick_seat",
                        STICK,
                        "Counterbore, diameter",
                        Ranges.SIZE,
                        new Range(15, 90),
                        "Of the narrower one of both races. Empty: not checked."));
        all.add(
                words(
                        "stick_note",
                        STICK,
                        "Note",
                        TEXT,
                        List.of(),
                        "Anything else, such as why a reading was off."));
        readings(all);
    }

    private static void readings(List<Input> all) {
        all.add(
                length(
                        "stick_height",
                        STICK_READING,
                        "Outer datum height",
                        Ranges.OFFSET,
                        new Range(100, 1_500),
                        "As on Measure, inside the heights measured there."));
        all.add(
                length(
                        "stick_holes_in",
                        STICK_READING,
                        "Holes apart, both races fully in",
                        Ranges.SIZE,
                        HOLES,
                        "Sliding stick: pulled long until both joints bottom. Centre to centre."));
        all.add(
                length(
                        "stick_holes_out",
                        STICK_READING,
                        "Holes apart, both races fully out",
                        Ranges.SIZE,
                        HOLES,
                        "Sliding stick: pushed short until both joints are pulled out, boots on."
                                + " Centre to centre."));
        all.add(
                length(
                        "stick_play",
                        STICK_READING,
                        "End play of a fixed stick",
                        Ranges.NOT_NEGATIVE,
                        new Range(0, 120),
                        "How far it floats along itself, not along a cup."));
        List<String> stops = Arrays.stream(FloatStop.values()).map(FloatStop::word).toList();
        all.add(
                words(
                        "stick_inboard",
                        STICK_READING,
                        "Pushed inboard it meets",
                        CHOICE,
                        stops,
                        "Fixed stick. bottom: the inner joint bottoms. pull: the outer joint is"
                                + " pulled out."));
        all.add(
                words(
                        "stick_outboard",
                        STICK_READING,
                        "Pushed outboard it meets",
                        CHOICE,
                        stops,
                        "Fixed stick. bottom: the outer joint bottoms. pull: the inner joint is"
                                + " pulled out."));
    }

    /** Whether a scenario's window is corrected. */
    static void scenario(List<Input> all) {
        all.add(
                words(
                        "stick_corrects",
                        SCENARIO,
                        "Window corrected by the mock-up",
                        CHOICE,
                        List.of(YES, "no"),
                        "yes: what the stick's readings on the sheet Mock-up differ by is added to"
                                + " this scenario's window, which should have the joints that the"
                                + " stick was in. Empty: no."));
    }

    private static Input words(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            List<String> choices,
            String meaning) {
        return Input.words(name, grid, label, kind, choices, meaning).since(SINCE);
    }

    private static Input length(
            String name, Grid grid, String label, Range allowed, Range usual, String meaning) {
        return Input.length(name, grid, label, allowed, usual, meaning).since(SINCE);
    }
}
