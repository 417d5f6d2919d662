package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Whether a scenario's shafts are to bear all states at once, and how far its hubs are steered. */
public final class StateInputs {
    /** Asked for in a scenario whose shafts are to bear all states. */
    public static final String WANTED = "yes";

    private static final int SINCE = 6;

    private StateInputs() {}

    static void scenario(List<Input> all) {
        all.add(
                Input.words(
                                "all_states",
                                Grid.SCENARIO,
                                "All states at once",
                                InputKind.CHOICE,
                                List.of(WANTED, "no"),
                                "yes: one shaft for the hubs from lock to lock, and the drive unit"
                                        + " at rest, under drive and under overrun; fill computes"
                                        + " them. Tables still show one state. Empty: no.")
                        .since(SINCE));
        all.add(
                lock(
                        "lock_left",
                        "Full left lock",
                        new Range(0, 60),
                        new Range(10, 45),
                        "Turn of both hubs to the left at full left lock, +. Empty in both rows:"
                                + " the hubs stay as steered above."));
        all.add(
                lock(
                        "lock_right",
                        "Full right lock, to the left +",
                        new Range(-60, 0),
                        new Range(-45, -10),
                        "Turn of both hubs at full right lock: to the left is +, so this is a"
                                + " negative angle such as -33."));
    }

    private static Input lock(String name, String label, Range range, Range usual, String meaning) {
        return Input.number(name, Grid.SCENARIO, label, InputKind.ANGLE, range, usual, meaning)
                .outside("To the left is +, to the right -: are both locks swapped?")
                .since(SINCE);
    }
}
