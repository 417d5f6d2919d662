package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/**
 * What joints, flange bolts and other parts take by the builder's own figures, and how they are
 * driven.
 */
final class RatedInputs {
    private RatedInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "rated_joint",
                        Grid.RATED,
                        "Joint",
                        InputKind.PICK,
                        List.of("joint_name"),
                        "Joint that the row is about, by its name in the joint table."));
        all.add(
                Input.number(
                        "rated_peak",
                        Grid.RATED,
                        "Peak torque",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(100, 20000),
                        "The most that the joint takes for a moment, by its catalogue."));
        all.add(
                Input.number(
                        "rated_life",
                        Grid.RATED,
                        "Life torque",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(30, 5000),
                        "Dynamic torque capacity of the straight joint, for the life index."));
        all.add(
                Input.number(
                                "rated_speed_angle",
                                Grid.RATED,
                                "Limit of rpm times degrees",
                                InputKind.NUMBER,
                                new Range(1, 1e6),
                                new Range(500, 50_000),
                                "Of the joint, by its maker. Held against the angle at ride and the top speed.")
                        .since(6));
        all.add(
                Input.number(
                        "bolt_count",
                        Grid.RATED,
                        "Bolts",
                        InputKind.COUNT,
                        new Range(1, 40),
                        new Range(3, 12),
                        "Number of bolts in the flange."));
        all.add(
                Input.length(
                        "bolt_circle",
                        Grid.RATED,
                        "Bolt circle",
                        new Range(5, 1000),
                        new Range(50, 180),
                        "Diameter of the bolt circle."));
        all.add(
                Input.length(
                        "bolt_diameter",
                        Grid.RATED,
                        "Bolt diameter",
                        new Range(2, 50),
                        new Range(5, 16),
                        "Nominal, such as 10 mm or 3/8."));
        all.add(
                Input.length(
                        "bolt_pitch",
                        Grid.RATED,
                        "Thread pitch",
                        new Range(0.2, 6),
                        new Range(0.6, 2.2),
                        "1 divided by threads per inch for inch bolts."));
        all.add(
                Input.words(
                        "bolt_class",
                        Grid.RATED,
                        "Bolt class",
                        InputKind.CHOICE,
                        List.of("class 8.8", "class 10.9", "class 12.9", "grade 5", "grade 8"),
                        "By the marks on the head: ISO 898-1 or SAE J429."));
        all.add(
                Input.number(
                        "bolt_torque",
                        Grid.RATED,
                        "Tightened with",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(5, 200),
                        "Torque of the wrench on each bolt."));
        all.add(
                Input.length(
                        "bolt_engagement",
                        Grid.RATED,
                        "Thread engaged",
                        new Range(0.1, 300),
                        new Range(5, 40),
                        "Length of thread in nut or flange without spacers. Under one diameter it is flagged."));
        all.add(
                Input.length(
                                "bolt_pilot",
                                Grid.RATED,
                                "Pilot",
                                new Range(1, 1000),
                                new Range(20, 150),
                                "Diameter of the step that centres the joint on its flange.")
                        .since(6));
        all.add(
                Input.words(
                        "rating_part",
                        Grid.RATING,
                        "Part",
                        InputKind.TEXT,
                        List.of(),
                        "A part that you have a figure for: stub, hub spline, transaxle output."));
        all.add(
                Input.number(
                        "rating_torque",
                        Grid.RATING,
                        "Torque it takes",
                        InputKind.TORQUE,
                        Ranges.TORQUE,
                        new Range(100, 20000),
                        "By test, data sheet or a friend who broke one."));
        all.add(
                Input.number(
                        "duty_share",
                        Grid.DUTY,
                        "Share of time",
                        InputKind.NUMBER,
                        new Range(0, 1000000.0),
                        new Range(0, 1000),
                        "At any scale: hours, per cent."));
        all.add(
                Input.number(
                        "duty_torque",
                        Grid.DUTY,
                        "Part of the driving torque",
                        InputKind.NUMBER,
                        new Range(0.001, 2),
                        new Range(0.01, 1),
                        "1: all that comes to the shaft, shock left out."));
        all.add(
                Input.number(
                        "duty_speed",
                        Grid.DUTY,
                        "Road speed",
                        InputKind.SPEED,
                        new Range(0.1, 600),
                        new Range(1, 300),
                        "At that torque."));
        all.add(
                Input.words(
                                "duty_cycle",
                                Grid.DUTY,
                                "How its torque comes back",
                                InputKind.CHOICE,
                                List.of("repeated", "reversed"),
                                "repeated: on and off. reversed: both ways, as in rocking out of holes. Empty: reversed with inboard brakes, else repeated.")
                        .since(6));
    }
}
