package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Inputs of a steered driven axle: its kingpin line, alike on both sides, and the angle. */
public final class SteerInputs {
    private static final Range LEAN = new Range(-45, 45);
    private static final Range OFFSET = new Range(-2_000, 2_000);

    private SteerInputs() {}

    static void vehicle(List<Input> all) {
        all.add(
                lean(
                        "kingpin_inclination",
                        "Kingpin inclination",
                        new Range(-5, 25),
                        "How far the kingpin line leans in at the top, seen from the front at ride. Needed only where a scenario is steered. Empty: by the linkage's ball joints, where two wishbones are typed."));
        all.add(
                lean(
                                "kingpin_caster",
                                "Caster",
                                new Range(-5, 20),
                                "How far the kingpin line leans back at the top, seen from the side at ride.")
                        .orElse(0));
        all.add(
                Input.length(
                        "kingpin_inward",
                        Grid.BOOK,
                        "Outer datum to kingpin line, inward +",
                        OFFSET,
                        new Range(-150, 250),
                        "Level, at the height of the outer datum, at ride. Needed only where a"
                                + " scenario is steered."));
        all.add(
                Input.length(
                                "kingpin_ahead",
                                Grid.BOOK,
                                "Kingpin line ahead of outer datum",
                                OFFSET,
                                new Range(-60, 60),
                                "At the height of the outer datum, at ride.")
                        .orElse(0));
    }

    static void scenario(List<Input> all) {
        all.add(
                Input.number(
                                "steer_angle",
                                Grid.SCENARIO,
                                "Hubs steered to the left",
                                InputKind.ANGLE,
                                new Range(-60, 60),
                                new Range(-45, 45),
                                "Turn of both hubs about their kingpin lines from straight ahead,"
                                        + " to the left +. One column straight, one at each full"
                                        + " lock shows what a driven front axle needs.")
                        .orElse(0));
    }

    private static Input lean(String name, String label, Range usual, String meaning) {
        return Input.number(name, Grid.BOOK, label, InputKind.ANGLE, LEAN, usual, meaning);
    }
}
