package shaftwright.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.units.LengthUnit;

/** Torque path, materials, ratings, doubt and spares of a random workbook, each often missing. */
final class RandomStrength {
    private final Random random;
    private final LengthUnit unit;
    private final Map<String, List<CellValue>> typed;

    RandomStrength(long seed, LengthUnit unit, Map<String, List<CellValue>> typed) {
        random = new Random(seed * 104_729 + 3);
        this.unit = unit;
        this.typed = typed;
    }

    /** Types it beside joints of these names. */
    void type(List<String> joints, int scenarios) {
        path();
        materials();
        blanks();
        ratings(joints);
        doubt();
        for (String spare :
                new String[] {
                    "shafts", "joints_inner", "joints_outer", "boots_inner", "boots_outer"
                }) {
            one("spare_" + spare, often(0.5) ? CellValue.of(random.nextInt(4)) : CellValue.BLANK);
        }
        column("first_gear", scenarios, 0.85, 2, 20);
        column("final_drive", scenarios, 0.6, 1, 5);
    }

    private void path() {
        number("engine_torque", 0.7, 80, 400);
        number("clutch_capacity", 0.5, 100, 600);
        number("gear_efficiency", 0.5, 0.7, 1);
        one("differential", choice(0.8, "open", "limited slip", "Locked"));
        number("torque_bias", 0.5, 1, 6);
        number("tyre_friction", 0.7, 0.4, 1.5);
        number("wheel_load", 0.7, 150, 1500);
        number("landing_load", 0.5, 200, 2500);
        number("shock_factor", 0.6, 1, 3);
        number("top_speed", 0.7, 40, 180);
        number("factor_wanted", 0.5, 0.8, 2);
        one("spline_hold", choice(0.6, "fixed", "flexible", "Flexible"));
        number("spline_fatigue", 0.5, 0.3, 1.8);
        number("spline_wear", 0.5, 0.5, 4);
        number("spline_misalignment", 0.4, 1, 2);
        number("nut_factor", 0.4, 0.1, 0.3);
        number("flange_friction", 0.4, 0.1, 0.2);
    }

    private void materials() {
        int rows = Grid.MATERIAL.rows();
        column("material_yield", rows, 0.9, 300, 2000);
        column("material_elastic", rows, 0.9, 190_000, 210_000);
        column("material_shear", rows, 0.9, 75_000, 82_000);
        column("material_density", rows, 0.9, 7000, 8000);
        column("material_spline_shear", rows, 0.8, 150, 350);
        column("material_spline_pressure", rows, 0.8, 10, 40);
        names("material_name", rows, "steel");
    }

    private void blanks() {
        List<CellValue> picks = new ArrayList<>();
        for (int row = 0; row < Grid.BLANK.rows(); row++) {
            picks.add(choice(0.85, "steel 1", "steel 2", "Steel 3", "steel 8"));
        }
        typed.put("blank_material", picks);
        lengths("blank_bore", Grid.BLANK.rows(), 0.3, 2, 14);
        for (String end : new String[] {"inner", "outer"}) {
            lengths("blank_spline_outside_" + end, Grid.BLANK.rows(), 0.85, 27.5, 34);
            lengths("blank_spline_root_" + end, Grid.BLANK.rows(), 0.3, 22, 27);
        }
    }

    private void ratings(List<String> joints) {
        int rows = Grid.RATED.rows();
        List<CellValue> picks = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            picks.add(
                    often(0.8)
                            ? CellValue.of(joints.get(random.nextInt(joints.size())))
                            : CellValue.BLANK);
        }
        typed.put("rated_joint", picks);
        column("rated_peak", rows, 0.8, 800, 6000);
        column("rated_life", rows, 0.8, 100, 800);
        List<CellValue> counts = new ArrayList<>();
        List<CellValue> classes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            counts.add(often(0.9) ? CellValue.of(4 + random.nextInt(5)) : CellValue.BLANK);
            classes.add(
                    choice(0.95, "class 8.8", "Class 10.9", "class 12.9", "grade 5", "grade 8"));
        }
        typed.put("bolt_count", counts);
        typed.put("bolt_class", classes);
        lengths("bolt_circle", rows, 0.95, 70, 110);
        lengths("bolt_diameter", rows, 0.95, 8, 18);
        lengths("bolt_pitch", rows, 0.95, 1, 2);
        column("bolt_torque", rows, 0.95, 20, 90);
        lengths("bolt_engagement", rows, 0.7, 8, 22);
        names("rating_part", Grid.RATING.rows(), "part");
        column("rating_torque", Grid.RATING.rows(), 0.5, 900, 5000);
        column("duty_share", Grid.DUTY.rows(), 0.7, 1, 60);
        column("duty_torque", Grid.DUTY.rows(), 0.8, 0.1, 1);
        column("duty_speed", Grid.DUTY.rows(), 0.8, 5, 180);
    }

    private void doubt() {
        int rows = Grid.DOUBT.rows();
        one("margin_choice", choice(0.6, "typed", "root-sum-square", "Worst case"));
        one("trial_count", often(0.5) ? CellValue.of(200) : CellValue.BLANK);
        one("trial_seed", often(0.5) ? CellValue.of(random.nextInt(1000)) : CellValue.BLANK);
        List<CellValue> kinds = new ArrayList<>();
        List<CellValue> repeats = new ArrayList<>();
        List<CellValue> on = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            kinds.add(choice(0.8, "plus or minus", "Graduation", "scatter", "bias"));
            repeats.add(often(0.4) ? CellValue.of(1 + random.nextInt(9)) : CellValue.BLANK);
            on.add(choice(0.7, "yes", "yes", "No"));
        }
        typed.put("doubt_kind", kinds);
        typed.put("doubt_repeats", repeats);
        typed.put("doubt_on", on);
        lengths("doubt_amount", rows, 0.4, 0, 3);
        names("doubt_name", rows, "thing");
    }

    private void names(String name, int rows, String word) {
        List<CellValue> names = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            names.add(CellValue.of(word + " " + (row + 1)));
        }
        typed.put(name, names);
    }

    private void one(String name, CellValue value) {
        typed.put(name, List.of(value));
    }

    private void number(String name, double share, double least, double most) {
        column(name, 1, share, least, most);
    }

    /** Numbers as a builder of this unit types them, to four digits. */
    private void column(String name, int rows, double share, double least, double most) {
        double factor = Contract.input(name).kind().factor(unit);
        List<CellValue> values = new ArrayList<>(Collections.nCopies(rows, CellValue.BLANK));
        for (int row = 0; row < rows; row++) {
            if (often(share)) {
                double number = least + random.nextDouble() * (most - least);
                values.set(row, CellValue.of(digits(number / factor)));
            }
        }
        typed.put(name, values);
    }

    private void lengths(String name, int rows, double share, double least, double most) {
        List<CellValue> values = new ArrayList<>(Collections.nCopies(rows, CellValue.BLANK));
        for (int row = 0; row < rows; row++) {
            double number = digits(least + random.nextDouble() * (most - least));
            if (often(share)) {
                values.set(
                        row,
                        often(0.5)
                                ? CellValue.of(number + " mm")
                                : CellValue.of(digits(number / unit.mm())));
            }
        }
        typed.put(name, values);
    }

    private static double digits(double number) {
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(4, java.math.RoundingMode.DOWN))
                .doubleValue();
    }

    private CellValue choice(double share, String... words) {
        return often(share) ? CellValue.of(words[random.nextInt(words.length)]) : CellValue.BLANK;
    }

    private boolean often(double share) {
        return random.nextDouble() < share;
    }
}
