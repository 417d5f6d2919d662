package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Inputs of the torque path, materials, ratings and duty: no one of them must be given. */
public final class StrengthInputs {
    private static final Range SIZE = new Range(0.01, 5_000);
    private static final Range NOT_NEGATIVE = new Range(0, 5_000);
    private static final Range TORQUE = new Range(0.1, 1e5);

    private StrengthInputs() {}

    static void path(List<Input> all) {
        all.add(
                Input.number(
                        "engine_torque",
                        Grid.BOOK,
                        "Peak engine torque",
                        InputKind.TORQUE,
                        TORQUE,
                        new Range(20, 2000),
                        "At the flywheel. Empty: the engine limits nothing here."));
        all.add(
                Input.number(
                        "clutch_capacity",
                        Grid.BOOK,
                        "Torque at which the clutch slips",
                        InputKind.TORQUE,
                        TORQUE,
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

    static void materials(List<Input> all) {
        all.add(
                Input.words(
                        "material_name",
                        Grid.MATERIAL,
                        "Material",
                        InputKind.TEXT,
                        List.of(),
                        "Grade and treatment; blanks pick it by this name."));
        all.add(
                Input.number(
                        "material_yield",
                        Grid.MATERIAL,
                        "Yield strength",
                        InputKind.STRESS,
                        new Range(10, 4000),
                        new Range(200, 2500),
                        "In tension, in the state in which the shaft runs."));
        all.add(
                Input.number(
                        "material_elastic",
                        Grid.MATERIAL,
                        "Elastic modulus",
                        InputKind.STRESS,
                        new Range(1000.0, 1000000.0),
                        new Range(60000.0, 230000.0),
                        "E; about 206000 MPa (29900 ksi) for steel."));
        all.add(
                Input.number(
                        "material_shear",
                        Grid.MATERIAL,
                        "Shear modulus",
                        InputKind.STRESS,
                        new Range(1000.0, 1000000.0),
                        new Range(20000.0, 90000.0),
                        "G; about 79300 MPa (11500 ksi) for steel."));
        all.add(
                Input.number(
                        "material_density",
                        Grid.MATERIAL,
                        "Density",
                        InputKind.DENSITY,
                        new Range(100, 30000),
                        new Range(1500, 9000),
                        "About 7850 kg/m³ (0.284 lb/in³) for steel."));
        all.add(
                Input.number(
                        "material_spline_shear",
                        Grid.MATERIAL,
                        "Spline, shear allowed",
                        InputKind.STRESS,
                        new Range(1, 2000),
                        new Range(100, 500),
                        "Dudley: 138 MPa soft, 276 hardened, 345 case-hardened steel (20, 40, 50 ksi)."));
        all.add(
                Input.number(
                        "material_spline_pressure",
                        Grid.MATERIAL,
                        "Spline, pressure allowed",
                        InputKind.STRESS,
                        new Range(0.5, 500),
                        new Range(8, 60),
                        "On straight flanks. Dudley: 10 MPa soft, 28 surface-hardened, 34 case-hardened (1.5, 4, 5 ksi)."));
        all.add(
                Input.words(
                        "material_source",
                        Grid.MATERIAL,
                        "Where the figures are from",
                        InputKind.TEXT,
                        List.of(),
                        "Data sheet, table or test; so that somebody else can check them."));
    }

    static void joints(List<Input> all) {
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
                        TORQUE,
                        new Range(100, 20000),
                        "The most that the joint takes for a moment, by its catalogue."));
        all.add(
                Input.number(
                        "rated_life",
                        Grid.RATED,
                        "Life torque",
                        InputKind.TORQUE,
                        TORQUE,
                        new Range(30, 5000),
                        "Dynamic torque capacity of the straight joint, for the life index."));
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
                        TORQUE,
                        new Range(5, 200),
                        "Torque of the wrench on each bolt."));
        all.add(
                Input.length(
                        "bolt_engagement",
                        Grid.RATED,
                        "Thread engaged",
                        new Range(0.1, 300),
                        new Range(5, 40),
                        "Length of thread in nut or flange. Under one diameter it is flagged."));
    }

    static void ratings(List<Input> all) {
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
                        TORQUE,
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
    }

    static void blanks(List<Input> all) {
        all.add(
                Input.words(
                        "blank_material",
                        Grid.BLANK,
                        "Material",
                        InputKind.PICK,
                        List.of("material_name"),
                        "Name of a material on the sheet Strength. Empty: its strength is not checked."));
        all.add(
                Input.length(
                                "blank_bore",
                                Grid.BLANK,
                                "Bore",
                                NOT_NEGATIVE,
                                new Range(0, 40),
                                "Of a hollow shaft; empty when solid.")
                        .orElse(0));
        all.add(
                Input.length(
                        "blank_spline_outside_inner",
                        Grid.BLANK,
                        "Spline outside diameter, inner",
                        SIZE,
                        new Range(15, 60),
                        "Outside diameter over the spline teeth."));
        all.add(
                Input.length(
                        "blank_spline_outside_outer",
                        Grid.BLANK,
                        "Spline outside diameter, outer",
                        SIZE,
                        new Range(15, 60),
                        "Outside diameter over the spline teeth."));
        all.add(
                Input.length(
                        "blank_spline_root_inner",
                        Grid.BLANK,
                        "Spline root diameter, inner",
                        SIZE,
                        new Range(12, 58),
                        "Diameter under the teeth. Empty: that of a standard spline of 30 degrees with a fillet root."));
        all.add(
                Input.length(
                        "blank_spline_root_outer",
                        Grid.BLANK,
                        "Spline root diameter, outer",
                        SIZE,
                        new Range(12, 58),
                        "Diameter under the teeth. Empty: that of a standard spline of 30 degrees with a fillet root."));
    }

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
    }
}
