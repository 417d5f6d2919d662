package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** The path of the torque, and the factors that strength goes by: no one of them must be given. */
final class TorqueInputs {
    private TorqueInputs() {}

    static void vehicle(List<Input> all) {
        all.add(
                Input.number(
                        "engine_torque",
                        Grid.BOOK,
                        "Peak engine torque",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(20, 2000),
                        "At the flywheel. Empty: the engine limits nothing here."));
        all.add(
                Input.number(
                        "clutch_capacity",
                        Grid.BOOK,
                        "Torque at which the clutch slips",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(20, 3000),
                        "At the flywheel. Empty: the clutch limits nothing."));
        all.add(
                Input.number(
                                "gear_efficiency",
                                Grid.BOOK,
                                "Efficiency of the gears",
                                InputKind.NUMBER,
                                new Range(0.3, 1),
                                new Range(0.7, 1),
                                "Part of the torque that comes through. Empty: 0.9, common practice, no source.")
                        .orElse(0.9));
        all.add(
                Input.words(
                        "differential",
                        Grid.BOOK,
                        "Differential",
                        InputKind.CHOICE,
                        List.of("open", "limited slip", "locked"),
                        "How much can come to one shaft: open half, locked all, limited slip by its bias. Empty: open."));
        all.add(
                Input.number(
                                "torque_bias",
                                Grid.BOOK,
                                "Torque bias of limited slip",
                                InputKind.NUMBER,
                                new Range(1, 50),
                                new Range(1.2, 8),
                                "Torque of the wheel that grips over that of the one that spins. Empty: 3.")
                        .orElse(3));
        all.add(
                Input.number(
                        "tyre_friction",
                        Grid.BOOK,
                        "Tyre on ground, friction",
                        InputKind.NUMBER,
                        new Range(0.05, 5),
                        new Range(0.2, 1.8),
                        "The most friction of tyre on ground. Empty: grip limits nothing."));
        all.add(
                Input.number(
                        "wheel_load",
                        Grid.BOOK,
                        "Weight on a driven wheel",
                        InputKind.LOAD,
                        new Range(1, 20000),
                        new Range(50, 2000),
                        "The most that stands on one driven wheel while it pulls."));
        all.add(
                Input.number(
                        "landing_load",
                        Grid.BOOK,
                        "Weight on a driven wheel when landing",
                        InputKind.LOAD,
                        new Range(1, 50000),
                        new Range(50, 6000),
                        "The most on one driven wheel when it lands spinning. Empty: no landing case."));
        brakes(all);
        all.add(
                Input.number(
                                "shock_factor",
                                Grid.BOOK,
                                "Shock factor",
                                InputKind.NUMBER,
                                new Range(1, 10),
                                new Range(1, 4),
                                "Multiplies every torque here, once. It is also the application factor of the splines. Empty: 1.")
                        .orElse(1));
        all.add(
                Input.number(
                        "top_speed",
                        Grid.BOOK,
                        "Top speed",
                        InputKind.SPEED,
                        new Range(1, 600),
                        new Range(20, 300),
                        "On the road or in a run. Needed for the critical speed of the shaft."));
        all.add(
                Input.number(
                                "factor_wanted",
                                Grid.BOOK,
                                "Safety factor wanted",
                                InputKind.NUMBER,
                                new Range(0.1, 20),
                                new Range(1, 5),
                                "A weakest part below it is called too weak. Empty: 1.")
                        .orElse(1));
        all.add(
                Input.words(
                        "spline_hold",
                        Grid.BOOK,
                        "Races on their splines",
                        InputKind.CHOICE,
                        List.of("fixed", "flexible"),
                        "fixed: held by ring and shoulder. flexible: free to rock; allowed pressure is one ninth. Empty: fixed."));
        all.add(
                Input.number(
                                "spline_fatigue",
                                Grid.BOOK,
                                "Spline fatigue factor",
                                InputKind.NUMBER,
                                new Range(0.05, 5),
                                new Range(0.2, 1.8),
                                "Kf by torque cycles: 1000 1.8, ten thousand 1, a hundred thousand 0.5, a million 0.4 (Dudley). Empty: 1.")
                        .orElse(1));
        all.add(
                Input.number(
                                "spline_wear",
                                Grid.BOOK,
                                "Spline wear factor",
                                InputKind.NUMBER,
                                new Range(0.05, 10),
                                new Range(0.5, 4),
                                "Kw by turns, for flexible splines: a million 2, ten million 1.4, a hundred million 1 (Dudley). Empty: 1.")
                        .orElse(1));
        all.add(
                Input.number(
                                "spline_misalignment",
                                Grid.BOOK,
                                "Spline misalignment factor",
                                InputKind.NUMBER,
                                new Range(1, 10),
                                new Range(1, 3),
                                "Km, 1 when race and shaft are in line (Dudley). Empty: 1.")
                        .orElse(1));
        all.add(
                Input.number(
                                "nut_factor",
                                Grid.BOOK,
                                "Nut factor of flange bolts",
                                InputKind.NUMBER,
                                new Range(0.05, 1),
                                new Range(0.1, 0.3),
                                "K in tension = torque / (K x diameter). Empty: 0.2 for dry threads, common practice, no source.")
                        .orElse(0.2));
        all.add(
                Input.number(
                                "flange_friction",
                                Grid.BOOK,
                                "Friction between flange faces",
                                InputKind.NUMBER,
                                new Range(0.02, 1),
                                new Range(0.08, 0.3),
                                "Clean and free of grease. Empty: 0.15, common practice, no source.")
                        .orElse(0.15));
    }

    private static void brakes(List<Input> all) {
        all.add(
                Input.words(
                                "brakes_inboard",
                                Grid.BOOK,
                                "Brakes inboard",
                                InputKind.CHOICE,
                                List.of("yes", "no"),
                                "yes: at the transaxle, so that the half shafts brake the wheels. Empty: no.")
                        .since(6));
        all.add(
                Input.number(
                                "brake_torque",
                                Grid.BOOK,
                                "Inboard brake, torque of a wheel",
                                InputKind.TORQUE,
                                Ranges.TORQUE,
                                new Range(50, 5000),
                                "The most that one brake makes. Empty: by the deceleration below.")
                        .since(6));
        all.add(
                Input.number(
                                "brake_deceleration",
                                Grid.BOOK,
                                "Hardest braking, in g",
                                InputKind.NUMBER,
                                new Range(0.01, 3),
                                new Range(0.2, 1.2),
                                "Slows down the weight on a driven wheel; used where no brake torque is typed.")
                        .since(6));
    }

    /** Gears, which scenarios may differ by. */
    static void scenarios(List<Input> all) {
        all.add(
                Input.number(
                        "first_gear",
                        Grid.SCENARIO,
                        "Lowest gear ratio",
                        InputKind.NUMBER,
                        new Range(0.1, 500),
                        new Range(1, 60),
                        "Engine turns over final drive input turns; all of it when the final drive is left empty."));
        all.add(
                Input.number(
                                "final_drive",
                                Grid.SCENARIO,
                                "Final drive ratio",
                                InputKind.NUMBER,
                                new Range(0.1, 50),
                                new Range(1, 10),
                                "Multiplies the gear. Empty: 1.")
                        .orElse(1));
        all.add(
                Input.number(
                                "reverse_gear",
                                Grid.SCENARIO,
                                "Reverse gear ratio",
                                InputKind.NUMBER,
                                new Range(0.1, 500),
                                new Range(1, 60),
                                "Counted as the lowest gear is. Matters where it is larger. Empty: not looked at.")
                        .since(6));
    }
}
