package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.AllStates;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;

/** What is amiss with states that scenarios ask for, by cell. */
final class StatesCheck {
    /** Turns nearer than this are alike, rad. */
    private static final double NEAR = 1e-9;

    private final Sizing sizing;
    private final List<Problem> problems;

    StatesCheck(Sizing sizing, List<Problem> problems) {
        this.sizing = sizing;
        this.problems = problems;
    }

    /** What keeps a scenario from being computed, empty when nothing does. */
    static String trouble(Sizing sizing, int scenario) {
        if (!sizing.wantsAllStates(scenario)) {
            return "";
        }
        double left = number(sizing, "lock_left", scenario);
        double right = number(sizing, "lock_right", scenario);
        if (Double.isNaN(left) != Double.isNaN(right)) {
            return Sizing.ONE_LOCK;
        }
        if (Double.isNaN(left)) {
            return "";
        }
        double steered = number(sizing, "steer_angle", scenario);
        if (steered > left + NEAR || steered < right - NEAR) {
            return Sizing.BEYOND_LOCK;
        }
        return left - right > 0 && !sizing.knowsKingpins() ? Sizing.NO_KINGPIN : "";
    }

    void run() {
        for (int scenario = 0; scenario < sizing.inputs().scenarios(); scenario++) {
            if (sizing.scenario(scenario).used()) {
                look(scenario);
            }
        }
    }

    private void look(int scenario) {
        switch (trouble(sizing, scenario)) {
            case Sizing.ONE_LOCK -> {
                boolean left = Double.isNaN(number(sizing, "lock_left", scenario));
                warn(
                        scenario,
                        left ? "lock_left" : "lock_right",
                        "nothing",
                        "the " + (left ? "left" : "right") + " lock too, or neither");
            }
            case Sizing.BEYOND_LOCK ->
                    warn(
                            scenario,
                            "steer_angle",
                            "\"" + text("steer_angle", scenario) + "\", beyond the locks typed",
                            "an angle from the right lock, \""
                                    + text("lock_right", scenario)
                                    + "\", to the left one, \""
                                    + text("lock_left", scenario)
                                    + "\"");
            default -> lookAtWhatVaries(scenario);
        }
    }

    private void lookAtWhatVaries(int scenario) {
        Optional<AllStates> all = sizing.allStates(scenario);
        if (all.isPresent() && !all.get().steers() && !all.get().gives()) {
            warn(
                    scenario,
                    "all_states",
                    "\"" + text("all_states", scenario) + "\" with nothing that varies",
                    "both locks below it, or how the mounts give on the sheet Measure");
        }
    }

    private void warn(int scenario, String name, String found, String expected) {
        problems.add(
                Problem.warning(
                        sizing.inputs().place(name, new Index(Side.LEFT, scenario, 0)),
                        Contract.input(name).label()
                                + ", scenario "
                                + ScenarioOutcome.letter(scenario),
                        found,
                        expected));
    }

    private String text(String name, int scenario) {
        return sizing.inputs().text(name, new Index(Side.LEFT, scenario, 0));
    }

    private static double number(Sizing sizing, String name, int scenario) {
        return sizing.inputs().number(name, new Index(Side.LEFT, scenario, 0));
    }
}
