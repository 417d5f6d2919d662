package shaftwright.study;

import java.util.ArrayList;
import java.util.List;
import shaftwright.build.AllStates;

/** Names of a scenario's states: only what differs between them is said. */
final class StateWords {
    /** Turns nearer than this are a lock, rad. */
    private static final double NEAR = 1e-9;

    private StateWords() {}

    /** Such as "full left lock, under drive"; "as it stands" where nothing differs. */
    static String of(AllStates all, AllStates.State state) {
        List<String> words = new ArrayList<>();
        if (all.steers()) {
            words.add(turn(all.locks().orElseThrow(), state.turn()));
        }
        if (all.gives()) {
            words.add(load(state.load()));
        }
        return words.isEmpty() ? "as it stands" : String.join(", ", words);
    }

    private static String turn(AllStates.Locks locks, double turn) {
        if (turn == 0) {
            return "straight ahead";
        }
        String way = turn > 0 ? "left" : "right";
        double lock = turn > 0 ? locks.left() : locks.right();
        return Math.abs(lock - turn) < NEAR
                ? "full " + way + " lock"
                : "steered " + Wording.angle(Math.abs(turn)) + " " + way;
    }

    private static String load(AllStates.Load load) {
        return switch (load) {
            case REST -> "at rest";
            case DRIVE -> "under drive";
            case OVERRUN -> "under overrun";
        };
    }
}
