package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;
import shaftwright.shaft.ShaftEnd;

/** What must mate with what: splines beyond their count, the flanges that joints bolt to. */
public final class MatingInputs {
    private static final int SINCE = 6;

    private MatingInputs() {}

    /** A vehicle's flange at an end, by one of its measures: circle, bolts, bolt_size, pilot. */
    public static String flange(ShaftEnd end, String measure) {
        return "flange_" + end.word() + "_" + measure;
    }

    static void declare(List<Input> all) {
        splines(all);
        flange(all, "inner", "Transaxle's flange");
        flange(all, "outer", "Hub's flange");
    }

    private static void splines(List<Input> all) {
        words(
                all,
                "spline_joint",
                "Joint",
                InputKind.PICK,
                List.of("joint_name"),
                "Joint whose race has the spline of this row; or leave it empty and name a blank.");
        words(
                all,
                "spline_blank",
                "or blank",
                InputKind.PICK,
                List.of("blank_name"),
                "Blank whose end has the spline of this row. Joint and blank may share a row when"
                        + " their splines are known to be alike.");
        words(
                all,
                "spline_end",
                "Blank's end",
                InputKind.CHOICE,
                List.of("inner", "outer"),
                "End of the blank that has this spline. Empty: both ends.");
        words(
                all,
                "spline_standard",
                "Standard",
                InputKind.CHOICE,
                List.of("ANSI", "ISO", "DIN", "JIS"),
                "ANSI: American, by diametral pitch. ISO, DIN, JIS: by module, each with teeth of"
                        + " its own. Empty: not known.");
        number(
                all,
                "spline_module",
                "Module, mm",
                InputKind.NUMBER,
                new Range(0.2, 15),
                new Range(0.5, 3),
                "Pitch diameter divided by the number of teeth. Or type the diametral pitch.");
        number(
                all,
                "spline_pitch",
                "Diametral pitch",
                InputKind.NUMBER,
                new Range(1.5, 130),
                new Range(8, 48),
                "Teeth per inch of pitch diameter: 24 of a spline called 24/48. Or type the module.");
        number(
                all,
                "spline_angle",
                "Pressure angle",
                InputKind.ANGLE,
                new Range(14.5, 45),
                new Range(30, 45),
                "30, 37.5 or 45 of standard splines.");
        words(
                all,
                "spline_root",
                "Root",
                InputKind.CHOICE,
                List.of("flat", "fillet"),
                "Shape between the teeth: flat with corners, or one round fillet.");
        words(
                all,
                "spline_fit",
                "Fit",
                InputKind.CHOICE,
                List.of("side", "major diameter"),
                "What centres the spline: its flanks, or its outside.");
    }

    private static void flange(List<Input> all, String end, String label) {
        Range circle = new Range(50, 180);
        length(
                all,
                "flange_" + end + "_circle",
                label + ", bolt circle",
                circle,
                "Diameter. Compared with that of the joint's bolts on the sheet Strength.");
        all.add(
                Input.number(
                                "flange_" + end + "_bolts",
                                Grid.BOOK,
                                label + ", bolts",
                                InputKind.COUNT,
                                new Range(1, 40),
                                new Range(3, 12),
                                "How many holes or studs it has.")
                        .since(SINCE));
        length(
                all,
                "flange_" + end + "_bolt_size",
                label + ", bolt size",
                new Range(5, 16),
                "Nominal, such as 10 mm or 3/8.");
        length(
                all,
                "flange_" + end + "_pilot",
                label + ", pilot",
                new Range(20, 150),
                "Diameter of the step that centres the joint.");
    }

    private static void length(
            List<Input> all, String name, String label, Range usual, String meaning) {
        all.add(
                Input.length(name, Grid.BOOK, label, new Range(1, 1000), usual, meaning)
                        .since(SINCE));
    }

    private static void number(
            List<Input> all,
            String name,
            String label,
            InputKind kind,
            Range allowed,
            Range usual,
            String meaning) {
        all.add(Input.number(name, Grid.SPLINE, label, kind, allowed, usual, meaning).since(SINCE));
    }

    private static void words(
            List<Input> all,
            String name,
            String label,
            InputKind kind,
            List<String> choices,
            String meaning) {
        all.add(Input.words(name, Grid.SPLINE, label, kind, choices, meaning).since(SINCE));
    }

    /** Where a boot is clamped, and what it takes. */
    static void boots(List<Input> all) {
        boot(
                all,
                "boot_cup_seat",
                "Seat on the cup",
                Ranges.OFFSET,
                new Range(-40, 120),
                "Joint centre to the clamp on the cup, toward the shaft. Empty: the boot's length"
                        + " is not looked at.");
        boot(
                all,
                "boot_shaft_seat",
                "Seat on the shaft",
                Ranges.SIZE,
                new Range(20, 250),
                "Race centre to the clamp on the shaft, along the shaft.");
        boot(
                all,
                "boot_cup_diameter",
                "Diameter of the cup's seat",
                Ranges.SIZE,
                new Range(40, 160),
                "Where the boot is clamped on the cup.");
        boot(
                all,
                "boot_shaft_diameter",
                "Diameter of the shaft's seat",
                Ranges.SIZE,
                new Range(15, 60),
                "Where the boot is clamped on the shaft.");
        boot(
                all,
                "boot_shortest",
                "Shortest length",
                Ranges.SIZE,
                new Range(10, 200),
                "Seat to seat, straight and pressed together. Empty: not judged.");
        boot(
                all,
                "boot_longest",
                "Longest length",
                Ranges.SIZE,
                new Range(20, 300),
                "Seat to seat, straight and pulled out. Empty: not judged.");
        all.add(
                Input.angle(
                                "boot_angle",
                                Grid.BOOT,
                                "Angle that it takes",
                                new Range(1, 60),
                                "Greatest angle of its joint. Empty: not judged.")
                        .since(SINCE));
    }

    private static void boot(
            List<Input> all,
            String name,
            String label,
            Range allowed,
            Range usual,
            String meaning) {
        all.add(Input.length(name, Grid.BOOT, label, allowed, usual, meaning).since(SINCE));
    }
}
