package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** What torque that comes back is judged by: notches of a shaft, and shares of a joint's time. */
final class FatigueInputs {
    private static final int VERSION = 6;
    private static final Range CONCENTRATION = new Range(1, 20);
    private static final Range USUAL_CONCENTRATION = new Range(1, 4);
    private static final Range PER_CENT = new Range(0, 100);

    private FatigueInputs() {}

    static void declare(List<Input> all) {
        share(all, "share_bump", "Share of time near full bump, %");
        share(all, "share_ride", "Share of time near ride height, %");
        share(all, "share_droop", "Share of time near full droop, %");
        all.add(
                Input.number(
                                "notch_sensitivity",
                                Grid.BOOK,
                                "Notch sensitivity of the steel, q",
                                InputKind.NUMBER,
                                new Range(0, 1),
                                new Range(0.5, 1),
                                "0 to 1: what of a notch counts, Kfs = 1 + q (Kts - 1). Empty: 1, on the safe side.")
                        .orElse(1)
                        .since(VERSION));
        concentration(all, "kts_bar", "Kts of the bar itself", "Empty: 1, a smooth bar.", 1);
        concentration(
                all,
                "kts_runout",
                "Kts where splines run out",
                "Of the teeth's roots, in torsion. Empty: not judged.",
                Double.NaN);
        concentration(
                all,
                "kts_shoulder",
                "Kts of the shoulder at the splines",
                "Between bar and teeth. Empty: by the radius below.",
                Double.NaN);
        radius(
                all,
                "radius_shoulder",
                "Radius of that shoulder",
                "Fillet between bar and teeth, for Peterson's chart. Empty: not judged by it.");
        concentration(
                all,
                "kts_groove",
                "Kts of an old ring groove",
                "Of one left inboard of the ring. Empty: by the radius below.",
                Double.NaN);
        radius(
                all,
                "radius_groove",
                "Radius at the bottom of that groove",
                "For Peterson's chart of a round groove. Empty: not judged by it.");
        all.add(
                Input.words(
                                "fatigue_surface",
                                Grid.BOOK,
                                "Surface of the shaft",
                                InputKind.CHOICE,
                                List.of("ground", "machined", "hot-rolled", "as forged"),
                                "How it was made, for the surface factor (Shigley). Empty: machined.")
                        .since(VERSION));
        all.add(
                Input.number(
                                "fatigue_other",
                                Grid.BOOK,
                                "Other fatigue factors, multiplied",
                                InputKind.NUMBER,
                                new Range(0.05, 5),
                                new Range(0.5, 1.5),
                                "Reliability (99 in 100: 0.814), temperature, shot peening. Empty: 1, as often as not.")
                        .orElse(1)
                        .since(VERSION));
        all.add(
                Input.number(
                                "fatigue_wanted",
                                Grid.BOOK,
                                "Fatigue factor wanted",
                                InputKind.NUMBER,
                                new Range(0.1, 20),
                                new Range(0.5, 5),
                                "A section below it is called too tired. Empty: factors compare variants, and no verdict rests on them.")
                        .since(VERSION));
    }

    private static void share(List<Input> all, String name, String label) {
        all.add(
                Input.number(
                                name,
                                Grid.BOOK,
                                label,
                                InputKind.NUMBER,
                                PER_CENT,
                                PER_CENT,
                                "For the joints' life index. The three add up to 100. All empty: all of it at ride.")
                        .since(VERSION));
    }

    private static void concentration(
            List<Input> all, String name, String label, String meaning, double whenEmpty) {
        all.add(
                Input.number(
                                name,
                                Grid.BOOK,
                                label,
                                InputKind.NUMBER,
                                CONCENTRATION,
                                USUAL_CONCENTRATION,
                                "Stress concentration factor in torsion, 1 or more. " + meaning)
                        .orElse(whenEmpty)
                        .since(VERSION));
    }

    private static void radius(List<Input> all, String name, String label, String meaning) {
        all.add(
                Input.length(
                                name,
                                Grid.BOOK,
                                label,
                                new Range(0.01, 100),
                                new Range(0.05, 20),
                                meaning)
                        .since(VERSION));
    }
}
