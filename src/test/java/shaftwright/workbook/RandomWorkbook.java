package shaftwright.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.OpenBook;
import shaftwright.build.MeasuringCheck;
import shaftwright.contract.CheckInputs;
import shaftwright.contract.Grid;
import shaftwright.units.LengthUnit;

/**
 * Typed cells as a builder might leave them, invented by a seed: realistic sizes, wild habits. Rows
 * are left out or stand in any order, lengths are written in every way, columns are unused or half
 * done.
 */
public final class RandomWorkbook {
    /** Scenario columns that one may have. */
    public static final int MOST_SCENARIOS = 3;

    private static final String[] STEPS = {"8", "16", "32", "64"};

    private final Random random;
    private final LengthUnit unit;
    private final int scenarios;
    private final Map<String, List<CellValue>> typed = new LinkedHashMap<>();
    private final List<String> joints = new ArrayList<>();
    private final List<String> boots = new ArrayList<>();
    private final List<String> blanks = new ArrayList<>();
    private final double reachAtRide;
    private final double lowest;
    private final double highest;
    private int fewest = 15;

    /** The workbook of this seed. */
    public RandomWorkbook(long seed) {
        random = new Random(seed * 7919 + 17);
        unit = random.nextBoolean() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        scenarios = 1 + random.nextInt(MOST_SCENARIOS);
        reachAtRide = between(330, 720);
        lowest = -between(60, 150);
        highest = between(60, 170);
        vehicle();
        sides();
        joints();
        boots();
        blanks();
        for (int scenario = 0; scenario < scenarios; scenario++) {
            scenario();
        }
        new RandomMoves(seed, unit, typed).type(scenarios);
        new RandomStrength(seed, unit, typed).type(joints, scenarios);
    }

    /** The same with loads that come back, which the recorded answers do not know. */
    public RandomWorkbook withLoads(long seed) {
        new RandomLoads(seed, unit, typed).type(scenarios);
        return this;
    }

    public LengthUnit unit() {
        return unit;
    }

    /** Scenario columns. */
    public int scenarios() {
        return scenarios;
    }

    /** Types everything into a new workbook of this unit and number of scenarios. */
    public void typeInto(OpenBook book) {
        Map<String, Area> names = book.names();
        Map<CellPlace, CellValue> cells = new HashMap<>();
        for (Map.Entry<String, List<CellValue>> column : typed.entrySet()) {
            Area area = names.get(column.getKey());
            for (int offset = 0; offset < area.size(); offset++) {
                List<CellValue> values = column.getValue();
                cells.put(
                        area.place(offset),
                        offset < values.size() ? values.get(offset) : CellValue.BLANK);
            }
        }
        book.write(cells);
    }

    private void vehicle() {
        put("vehicle_name", text("Invented " + random.nextInt(1000)));
        put("shop_increment", often(0.8) ? length(pick(1, 2, 1.5875, 3.175)) : CellValue.BLANK);
        put("tape_graduation", often(0.8) ? length(pick(1, 0.5, 1.5875)) : CellValue.BLANK);
        put("height_graduation", often(0.8) ? length(pick(1, 2, 1.5875)) : CellValue.BLANK);
        put("curve_allowance_quadratic", often(0.5) ? length(between(0, 4)) : CellValue.BLANK);
        put("curve_allowance_cubic", often(0.5) ? length(between(0, 2)) : CellValue.BLANK);
        put("inner_tilt", often(0.4) ? angle(-6, 6) : CellValue.BLANK);
        put("inner_sweep", often(0.4) ? angle(-6, 6) : CellValue.BLANK);
        put("hub_face_offset", often(0.8) ? length(between(40, 120)) : CellValue.BLANK);
        put("clearance_ride", often(0.8) ? length(between(200, 350)) : CellValue.BLANK);
        put("clearance_tyre_diameter", often(0.7) ? length(between(600, 760)) : CellValue.BLANK);
        put("width_limit", often(0.5) ? length(between(1500, 2300)) : CellValue.BLANK);
        put("ring_thickness", often(0.8) ? length(between(1.5, 2.5)) : CellValue.BLANK);
        put("groove_width", often(0.8) ? length(between(1.6, 2.8)) : CellValue.BLANK);
        put("groove_depth", often(0.8) ? length(between(0.8, 1.6)) : CellValue.BLANK);
        put("spline_runout", often(0.8) ? length(between(0, 8)) : CellValue.BLANK);
        put("shaft_end_diameter_inner", often(0.8) ? length(between(22, 34)) : CellValue.BLANK);
        put("shaft_end_diameter_outer", often(0.8) ? length(between(22, 34)) : CellValue.BLANK);
        put("mockup_pin", often(0.8) ? length(between(4, 10)) : CellValue.BLANK);
        put("built_gauge", often(0.3) ? CellValue.of(between(0.1, 1)) : CellValue.BLANK);
        for (String side : List.of("left", "right")) {
            put("built_e_" + side, often(0.3) ? length(between(300, 700)) : CellValue.BLANK);
            put("built_k_" + side, often(0.3) ? length(between(300, 700)) : CellValue.BLANK);
            built("built_play_" + side, 0, 40, true);
            built("built_angle_inner_" + side, 0, 25, false);
            built("built_angle_outer_" + side, 0, 25, false);
        }
        typed.put("service_hours", List.of(CellValue.BLANK, CellValue.of(random.nextInt(3))));
        typed.put("service_boots", List.of(text(choose("good", "torn", "replaced"))));
        typed.put("service_bolts", List.of(CellValue.BLANK, text(choose("yes", "no"))));
        for (MeasuringCheck check : MeasuringCheck.values()) {
            put(
                    CheckInputs.name(check),
                    often(0.7) ? text(choose("yes", "Yes", "no")) : CellValue.BLANK);
        }
        put("shop_scenario", text(choose("A", "a", "B", "C", "Z")));
    }

    private void built(String name, double least, double most, boolean length) {
        List<CellValue> cells = new ArrayList<>();
        for (int row = 0; row < Grid.BUILT.rows(); row++) {
            double value = between(least, most);
            cells.add(often(0.4) ? CellValue.BLANK : length ? length(value) : CellValue.of(value));
        }
        typed.put(name, cells);
    }

    private CellValue fitDegree() {
        if (fewest < 9) {
            return often(0.9) ? text("auto") : blank();
        }
        return switch (random.nextInt(6)) {
            case 0 -> text("4");
            case 1 -> CellValue.of(5);
            case 2 -> CellValue.of(4);
            case 3 -> text("5");
            default -> text("auto");
        };
    }

    private void sides() {
        boolean own = often(0.5);
        put("right_side", text(own ? choose("measured", "Measured") : "same as left"));
        double inner = between(330, 620);
        double ride = inner + between(-90, 50);
        side("left", inner, ride);
        if (own || often(0.3)) {
            side("right", inner + between(-5, 5), ride + between(-10, 10));
        }
        put("fit_degree", fitDegree());
    }

    private void side(String side, double inner, double ride) {
        put("inner_offset_" + side, often(0.8) ? length(between(90, 220)) : CellValue.BLANK);
        put("inner_height_" + side, length(inner));
        put("ride_height_" + side, length(ride));
        List<Integer> slots = slots(heights(), 15);
        fewest = Math.min(fewest, slots.size());
        List<List<CellValue>> columns = new ArrayList<>();
        for (int column = 0; column < 7; column++) {
            columns.add(new ArrayList<>(Collections.nCopies(15, CellValue.BLANK)));
        }
        Arm arm =
                new Arm(
                        ride - inner,
                        between(-0.05, 0.05),
                        1 / between(600, 1800),
                        between(-40, 40));
        double angles = pick(0, 0, 0.4, 1);
        double foreAft = pick(0, 0.7, 1);
        List<Double> travels = travels(slots.size());
        if (often(0.15)) {
            Collections.shuffle(travels, random);
        }
        for (int row = 0; row < slots.size(); row++) {
            int slot = slots.get(row);
            double travel = travels.get(row);
            columns.get(0).set(slot, length(ride + travel));
            repeats(columns, slot, arm.distance(travel));
            columns.get(4).set(slot, often(foreAft) ? length(arm.foreAft(travel)) : blank());
            columns.get(5).set(slot, often(angles) ? degrees(-0.02 * travel - 0.3) : blank());
            columns.get(6).set(slot, often(angles) ? degrees(0.2 - 0.003 * travel) : blank());
        }
        String[] names = {
            "height",
            "distance_first",
            "distance_second",
            "distance_third",
            "fore_aft",
            "camber",
            "toe"
        };
        for (int column = 0; column < names.length; column++) {
            typed.put(names[column] + "_" + side, columns.get(column));
        }
    }

    /** An invented path: reach and fore-aft offset over travel, mm. */
    private final class Arm {
        private final double rise;
        private final double slope;
        private final double bend;
        private final double ahead;

        Arm(double rise, double slope, double bend, double ahead) {
            this.rise = rise;
            this.slope = slope;
            this.bend = bend;
            this.ahead = ahead;
        }

        double foreAft(double travel) {
            return ahead + 0.03 * travel;
        }

        double distance(double travel) {
            double reach = reachAtRide + slope * travel - bend * travel * travel;
            return Math.sqrt(
                    reach * reach
                            + foreAft(travel) * foreAft(travel)
                            + (rise + travel) * (rise + travel));
        }
    }

    private int heights() {
        return switch (random.nextInt(10)) {
            case 0 -> 2;
            case 1, 2 -> 3 + random.nextInt(2);
            case 3, 4, 5, 6 -> 5 + random.nextInt(4);
            default -> 9 + random.nextInt(7);
        };
    }

    /** Travels from lowest to highest, no two alike, ride between them. */
    private List<Double> travels(int count) {
        List<Double> travels = new ArrayList<>();
        double step = (highest - lowest) / (count - 1);
        for (int i = 0; i < count; i++) {
            boolean end = i == 0 || i == count - 1;
            travels.add(lowest + step * i + (end ? 0 : step * between(-0.2, 0.2)));
        }
        return travels;
    }

    private void repeats(List<List<CellValue>> columns, int slot, double distance) {
        double gross = often(0.02) ? between(6, 20) : 0;
        columns.get(1).set(slot, length(distance + gross + 0.5 * random.nextGaussian()));
        for (int repeat = 2; repeat <= 3; repeat++) {
            if (often(0.25)) {
                columns.get(repeat).set(slot, length(distance + 0.5 * random.nextGaussian()));
            }
        }
    }

    private void joints() {
        List<Integer> rows = slots(2 + random.nextInt(5), 16);
        Table table = new Table(16);
        Table bench = new Table(40);
        List<Integer> free = slots(40, 40);
        for (int row : rows) {
            String name = 90 + random.nextInt(30) + " mm joint " + (char) ('A' + joints.size());
            joints.add(name);
            boolean benched = often(0.4);
            table.set("joint_name", row, text(name));
            table.set("joint_body_diameter", row, length(between(90, 120)));
            table.set("joint_race_half_width", row, length(between(9, 15)));
            table.set("joint_datum_offset", row, often(0.1) ? text("0") : length(between(20, 45)));
            table.set("joint_cup_bottom", row, length(between(35, 65)));
            table.set("joint_cup_radius", row, often(0.6) ? length(between(17, 40)) : blank());
            boolean lip = often(0.3);
            table.set("joint_lip_radius", row, lip ? length(between(17, 36)) : blank());
            table.set(
                    "joint_lip_depth", row, lip || often(0.1) ? length(between(20, 40)) : blank());
            table.set("joint_mouth", row, often(0.6) ? length(between(5, 25)) : blank());
            double most = tenths(between(17, 28));
            table.set("joint_angle_max", row, CellValue.of(most));
            table.set(
                    "joint_angle_continuous",
                    row,
                    often(0.8) ? CellValue.of(tenths(most * between(0.15, 1))) : blank());
            table.set("joint_outward_stop", row, often(0.8) ? stop() : blank());
            table.set(
                    "joint_plunge",
                    row,
                    !benched || often(0.3) ? length(between(25, 70)) : blank());
            table.set(
                    "joint_plunge_residual",
                    row,
                    often(0.8) ? CellValue.of(tenths(between(0.1, 1))) : blank());
            table.set("joint_splines", row, often(0.8) ? CellValue.of(28) : blank());
            table.set("joint_mass", row, often(0.8) ? CellValue.of(2.1) : blank());
            table.set("joint_price", row, often(0.8) ? CellValue.of(random.nextInt(300)) : blank());
            if (benched) {
                bench(bench, free, name, most);
            }
        }
        table.put();
        bench.put();
    }

    private CellValue stop() {
        return text(choose("hard", "soft", "hard", "Soft"));
    }

    private void bench(Table bench, List<Integer> free, String joint, double most) {
        int rows = 1 + random.nextInt(6);
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            own.add(free.remove(0));
            if (often(0.1)) {
                free.remove(0);
            }
        }
        if (often(0.3)) {
            Collections.shuffle(own, random);
        }
        double inward = between(15, 35);
        double outward = between(15, 35);
        double first = often(0.8) ? 0 : 3;
        for (int i = 0; i < rows; i++) {
            double part = rows == 1 ? 0 : i / (rows - 1.0);
            int row = own.get(i);
            bench.set("bench_joint", row, text(anyCase(joint)));
            bench.set("bench_angle", row, CellValue.of(tenths(first + part * (most - first))));
            bench.set("bench_inward", row, length(inward * (1 - 0.7 * part) + between(-1, 1)));
            bench.set(
                    "bench_outward",
                    row,
                    often(0.05) ? blank() : length(outward * (1 - 0.8 * part) + between(-1, 1)));
        }
    }

    private void boots() {
        Table table = new Table(8);
        for (int row : slots(1 + random.nextInt(3), 8)) {
            String name = "boot style " + (boots.size() + 1);
            boots.add(name);
            table.set("boot_name", row, text(name));
            table.set("boot_outward_change", row, often(0.7) ? length(between(-5, 5)) : blank());
            table.set("boot_price", row, often(0.8) ? CellValue.of(15.5) : blank());
        }
        table.put();
    }

    private void blanks() {
        Table table = new Table(12);
        for (int row : slots(random.nextInt(11), 12)) {
            String name = "blank no. " + (blanks.size() + 1);
            blanks.add(name);
            table.set("blank_name", row, text(name));
            table.set("blank_length", row, length(reachAtRide + between(-60, 130)));
            table.set("blank_diameter", row, often(0.8) ? length(30) : blank());
            boolean alike = often(0.85);
            table.set("blank_splines_inner", row, often(0.8) ? CellValue.of(28) : blank());
            table.set("blank_splines_outer", row, CellValue.of(alike ? 28 : 33));
            table.set("blank_spline_length_inner", row, length(between(45, 110)));
            table.set(
                    "blank_spline_length_outer",
                    row,
                    often(0.05) ? blank() : length(between(45, 110)));
            table.set("blank_groove_inner", row, often(0.35) ? length(between(6, 25)) : blank());
            table.set("blank_groove_outer", row, often(0.35) ? length(between(6, 25)) : blank());
            table.set("blank_price", row, often(0.9) ? CellValue.of(random.nextInt(200)) : blank());
            table.set("blank_in_stock", row, often(0.8) ? text(choose("yes", "Yes")) : no());
        }
        table.put();
    }

    private CellValue no() {
        return often(0.5) ? blank() : text(choose("no", "No"));
    }

    private void scenario() {
        boolean used = often(0.88);
        add("scenario_name", used ? text(choose("29 in tyre", "wide", "as is", "1/2")) : blank());
        add("tyre_size", tyre());
        add("tyre_measured", often(0.4) ? length(between(600, 800)) : blank());
        add("tyre_width_measured", often(0.2) ? length(between(150, 350)) : blank());
        add("wheel_offset", often(0.6) ? length(between(-40, 40)) : blank());
        add("wheel_spacer", often(0.3) ? length(between(0, 40)) : blank());
        add("hub_shift", often(0.5) ? length(between(-10, 50)) : blank());
        add("transaxle_forward", often(0.3) ? length(between(-30, 30)) : blank());
        add("transaxle_left", often(0.3) ? length(between(-20, 20)) : blank());
        add("transaxle_up", often(0.4) ? length(between(-30, 50)) : blank());
        add("joint_inner", often(0.97) ? text(anyCase(any(joints))) : blank());
        add("joint_outer", often(0.97) ? text(anyCase(any(joints))) : blank());
        add("cup_spacer_inner", often(0.3) ? length(between(0, 15)) : blank());
        add("cup_spacer_outer", often(0.3) ? length(between(0, 15)) : blank());
        add("joint_spacer_inner", often(0.3) ? length(between(0, 15)) : blank());
        add("joint_spacer_outer", often(0.3) ? length(between(0, 15)) : blank());
        add("counterbore_inner", often(0.3) ? length(between(0, 8)) : blank());
        add("counterbore_outer", often(0.3) ? length(between(0, 8)) : blank());
        add("boot_inner", often(0.6) ? text(anyCase(any(boots))) : blank());
        add("boot_outer", often(0.6) ? text(anyCase(any(boots))) : blank());
        add("stub_inner", often(0.8) ? length(between(6, 16)) : blank());
        add("stub_outer", often(0.8) ? length(between(6, 16)) : blank());
        boolean clearance = often(0.3);
        add("bump_rule", clearance ? text(choose("clearance", "Clearance")) : typedRule());
        double bump = highest * (often(0.9) ? between(0.5, 0.97) : between(1, 1.2));
        add("bump_limit", often(clearance ? 0.3 : 0.95) ? length(bump) : blank());
        add(
                "clearance_wanted",
                often(clearance ? 0.95 : 0.3) ? length(between(120, 260)) : blank());
        double droop = -lowest * (often(0.9) ? between(0.5, 0.97) : between(1, 1.2));
        add("droop_limit", often(0.97) ? length(droop) : blank());
        add("margin_inward", often(0.8) ? length(between(0, 7)) : blank());
        add("margin_outward", often(0.8) ? length(between(0, 7)) : blank());
        add("length_bias", often(0.8) ? CellValue.of(tenths(between(0, 1))) : blank());
        add("blank_choice", blankChoice());
        add("shaft_pair_price", often(0.3) ? CellValue.of(random.nextInt(500)) : blank());
        add("other_cost", often(0.6) ? CellValue.of(random.nextInt(100)) : blank());
    }

    private CellValue typedRule() {
        return often(0.5) ? text("typed") : blank();
    }

    private CellValue blankChoice() {
        if (!blanks.isEmpty() && often(0.3)) {
            return text(anyCase(any(blanks)));
        }
        return often(0.5) ? text(choose("auto", "Auto")) : blank();
    }

    private CellValue tyre() {
        return switch (random.nextInt(6)) {
            case 0 -> text(choose("235/75R15", "P255/70R16", "lt245/75 r16", "205/60-15"));
            case 1, 2 -> text(choose("31x10.50R15", "33X12.50-15", "LT30x9.50R15"));
            case 3 -> blank();
            default -> text(choose("225/75R16", "27x8.50R14"));
        };
    }

    // How things are typed.

    /** A table of typed columns that may be filled in any order. */
    private final class Table {
        private final int rows;
        private final Map<String, List<CellValue>> columns = new LinkedHashMap<>();

        Table(int rows) {
            this.rows = rows;
        }

        void set(String name, int row, CellValue value) {
            columns.computeIfAbsent(
                            name, n -> new ArrayList<>(Collections.nCopies(rows, CellValue.BLANK)))
                    .set(row, value);
        }

        void put() {
            typed.putAll(columns);
        }
    }

    private void put(String name, CellValue value) {
        typed.put(name, List.of(value));
    }

    private void add(String name, CellValue value) {
        typed.computeIfAbsent(name, n -> new ArrayList<>()).add(value);
    }

    private List<Integer> slots(int count, int of) {
        List<Integer> slots = new ArrayList<>();
        for (int slot = 0; slot < of; slot++) {
            slots.add(slot);
        }
        boolean gaps = often(0.5);
        while (slots.size() > count) {
            slots.remove(gaps ? random.nextInt(slots.size()) : slots.size() - 1);
        }
        return slots;
    }

    /** A length in any of the ways in which it may be written. */
    private CellValue length(double millimetres) {
        String sign = millimetres < 0 ? choose("-", "\u2212") : often(0.03) ? "+" : "";
        double size = Math.abs(millimetres);
        double own = size / unit.mm();
        return switch (random.nextInt(9)) {
            case 0, 1 -> text(sign + fraction(size));
            case 2 -> text(sign + feet(size));
            case 3 -> text(sign + rounded(own, unit == LengthUnit.INCH ? 3 : 1));
            case 4 -> text(sign + rounded(own, 2).replace('.', ','));
            case 5 -> text(sign + rounded(size / 25.4, 2) + choose(" in", "in.", "\"", "\u2033"));
            case 6 -> text(sign + rounded(size, 1) + choose(" mm", "mm", " MM"));
            default ->
                    CellValue.of(
                            Double.parseDouble(rounded(own, unit == LengthUnit.INCH ? 4 : 1))
                                    * Math.signum(millimetres));
        };
    }

    private String fraction(double millimetres) {
        int parts = millimetres < 5 ? 64 : Integer.parseInt(choose(STEPS));
        long count = Math.round(millimetres / 25.4 * parts);
        long whole = count / parts;
        long rest = count % parts;
        if (rest == 0) {
            return whole + choose("\"", " in");
        }
        boolean reduced = often(0.7);
        while (reduced && rest % 2 == 0) {
            rest /= 2;
            parts /= 2;
        }
        String mark = choose("", "\"", " in");
        return (whole > 0 ? whole + choose(" ", "-") : "") + rest + "/" + parts + mark;
    }

    private String feet(double millimetres) {
        long feet = (long) (millimetres / 304.8);
        return feet + choose("' ", "'", "'-") + fraction(millimetres - feet * 304.8);
    }

    private CellValue angle(double least, double most) {
        return CellValue.of(tenths(between(least, most)));
    }

    private CellValue degrees(double mean) {
        return CellValue.of(tenths(mean + 0.1 * random.nextGaussian()));
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10 + 0.0;
    }

    private static String rounded(double value, int decimals) {
        return java.math.BigDecimal.valueOf(value)
                .setScale(decimals, java.math.RoundingMode.HALF_UP)
                .toPlainString();
    }

    private String anyCase(String name) {
        return often(0.8) ? name : name.toUpperCase(java.util.Locale.ROOT);
    }

    private static CellValue text(String text) {
        return CellValue.of(text);
    }

    private static CellValue blank() {
        return CellValue.BLANK;
    }

    private boolean often(double share) {
        return random.nextDouble() < share;
    }

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    private double pick(double... values) {
        return values[random.nextInt(values.length)];
    }

    private String choose(String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    private String any(List<String> names) {
        return names.get(random.nextInt(names.size()));
    }
}
