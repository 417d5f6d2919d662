package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Materials, and what the strength of a blank of one follows from. */
final class MaterialInputs {
    private MaterialInputs() {}

    static void declare(List<Input> all) {
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
                                "material_tensile",
                                Grid.MATERIAL,
                                "Tensile strength",
                                InputKind.STRESS,
                                new Range(10, 4000),
                                new Range(300, 2800),
                                "Ultimate, for fatigue. Empty: fatigue is not looked at.")
                        .since(6));
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

    /** Of what and how thick a blank is. */
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
                Input.words(
                                "blank_treatment",
                                Grid.BLANK,
                                "Heat treatment",
                                InputKind.CHOICE,
                                List.of("case-hardened", "through-hardened"),
                                "case-hardened: hard outside only, by induction too, and not to be cut. Empty: not known, cut as any other.")
                        .since(6));
        all.add(
                Input.length(
                                "blank_bore",
                                Grid.BLANK,
                                "Bore",
                                Ranges.NOT_NEGATIVE,
                                new Range(0, 40),
                                "Of a hollow shaft; empty when solid.")
                        .orElse(0));
        all.add(
                Input.length(
                        "blank_spline_outside_inner",
                        Grid.BLANK,
                        "Spline outside diameter, inner",
                        Ranges.SIZE,
                        new Range(15, 60),
                        "Outside diameter over the spline teeth."));
        all.add(
                Input.length(
                        "blank_spline_outside_outer",
                        Grid.BLANK,
                        "Spline outside diameter, outer",
                        Ranges.SIZE,
                        new Range(15, 60),
                        "Outside diameter over the spline teeth."));
        all.add(
                Input.length(
                        "blank_spline_root_inner",
                        Grid.BLANK,
                        "Spline root diameter, inner",
                        Ranges.SIZE,
                        new Range(12, 58),
                        "Diameter under the teeth. Empty: that of a standard spline of 30 degrees with a fillet root."));
        all.add(
                Input.length(
                        "blank_spline_root_outer",
                        Grid.BLANK,
                        "Spline root diameter, outer",
                        Ranges.SIZE,
                        new Range(12, 58),
                        "Diameter under the teeth. Empty: that of a standard spline of 30 degrees with a fillet root."));
    }
}
