package shaftwright.reading;

import java.util.List;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.FlangeBolts;

/** Looks for rows of the parts tables that can't be told apart, lack something or contradict. */
public final class PartsCheck {
    /** Bench angles nearer than this are the same reading taken twice, rad: a tenth of a degree. */
    private static final double SAME_ANGLE = Math.toRadians(0.1);

    private static final String[] BENCH_NUMBERS = {"bench_angle", "bench_inward", "bench_outward"};

    private final InputValues inputs;
    private final Parts parts;
    private final List<Problem> problems;

    PartsCheck(InputValues inputs, Parts parts, List<Problem> problems) {
        this.inputs = inputs;
        this.parts = parts;
        this.problems = problems;
    }

    /** Says all that is wrong. */
    void run() {
        names("joint_name", "joint_race_half_width");
        names("boot_name", "boot_price");
        names("blank_name", "blank_length");
        tooMany("bench_joint");
        for (int row = 0; row < slots("joint_name"); row++) {
            joint(row);
        }
        for (int row = 0; row < slots("bench_joint"); row++) {
            bench(row);
        }
        for (int row = 0; row < slots("blank_name"); row++) {
            blank(row);
            strength(row);
        }
        new MatingCheck(inputs, parts, problems).run();
        names("material_name", "material_yield");
        for (String column :
                new String[] {
                    "rated_joint",
                    "spline_joint",
                    "rating_part",
                    "duty_share",
                    "restraint_name",
                    "tube_name",
                    "own_scenario"
                }) {
            tooMany(column);
        }
        StrengthReader strength = new StrengthReader(inputs, parts);
        for (int row = 0; row < slots("rated_joint"); row++) {
            int place = row;
            rated(row);
            strength.bolts(row).ifPresent(bolts -> tightness(bolts, place));
        }
    }

    private int slots(String column) {
        return Math.min(Parts.slots(column), inputs.rows(column, Side.LEFT));
    }

    private void names(String column, String size) {
        tooMany(column);
        for (int row = 0; row < slots(column); row++) {
            String name = parts.text(column, row);
            int first = parts.row(column, name) - 1;
            if (!name.isEmpty() && first < row) {
                error(
                        column,
                        row,
                        quoted(name) + ", the name of row " + (first + 1) + " too",
                        "a name that no other row has; capitals make no difference");
            }
            if (name.isEmpty() && !isBad(column, row) && has(size, row)) {
                warning(column, row, "no name beside sizes", "a name; the row can't be picked");
            }
        }
    }

    private void tooMany(String column) {
        int first = 0;
        int count = 0;
        for (int row = inputs.rows(column, Side.LEFT) - 1; row >= Parts.slots(column); row--) {
            if (!parts.text(column, row).isEmpty()) {
                first = row;
                count++;
            }
        }
        if (count > 0) {
            error(
                    column,
                    first,
                    quoted(parts.text(column, first))
                            + (count == 1
                                    ? ", a row more than can be read"
                                    : ", with it " + count + " rows more than can be read"),
                    "at most " + Parts.slots(column) + " rows; delete those not wanted");
        }
    }

    private void joint(int row) {
        if (parts.number("joint_angle_continuous", row) > parts.number("joint_angle_max", row)) {
            error(
                    "joint_angle_continuous",
                    row,
                    quoted(parts.text("joint_angle_continuous", row)),
                    "no more than the angle limit beside it, "
                            + parts.text("joint_angle_max", row)
                            + " deg");
        }
        if (has("joint_lip_radius", row) && isEmpty("joint_lip_depth", row)) {
            error("joint_lip_depth", row, "nothing", "the depth of the lip, or no lip radius");
        }
        if (has("joint_lip_depth", row) && isEmpty("joint_lip_radius", row)) {
            error("joint_lip_radius", row, "nothing", "the radius of the lip, or no lip depth");
        }
    }

    private void bench(int row) {
        String name = parts.text("bench_joint", row);
        boolean any = false;
        for (String column : BENCH_NUMBERS) {
            any |= has(column, row);
            if (!name.isEmpty() && isEmpty(column, row)) {
                error(
                        column,
                        row,
                        "nothing",
                        "angle, inward and outward travel in every row of the bench table");
            }
        }
        if (name.isEmpty() && any && !isBad("bench_joint", row)) {
            error("bench_joint", row, "nothing", "the name of the joint that was measured");
        }
        if (name.isEmpty()) {
            return;
        }
        if (parts.benchJoint(row) == 0) {
            error("bench_joint", row, quoted(name), "a name in the joint table");
        } else {
            sameAngle(row);
            growing(row);
        }
    }

    private void sameAngle(int row) {
        double angle = parts.number("bench_angle", row);
        for (int other = 0; other < row; other++) {
            if (parts.benchJoint(other) == parts.benchJoint(row)
                    && Math.abs(parts.number("bench_angle", other) - angle) < SAME_ANGLE) {
                error(
                        "bench_angle",
                        row,
                        quoted(parts.text("bench_angle", row))
                                + ", the angle of row "
                                + (other + 1)
                                + " too",
                        "each angle of a joint once; keep the smaller travel of both");
                return;
            }
        }
    }

    /** Joints lose outward travel as they are tilted; more of it is likely a slip. */
    private void growing(int row) {
        double angle = parts.number("bench_angle", row);
        int below = -1;
        for (int other = 0; other < slots("bench_joint"); other++) {
            double lower = parts.number("bench_angle", other);
            if (parts.benchJoint(other) == parts.benchJoint(row)
                    && lower < angle
                    && (below < 0 || lower > parts.number("bench_angle", below))) {
                below = other;
            }
        }
        if (below >= 0
                && parts.number("bench_outward", row) > parts.number("bench_outward", below)) {
            warning(
                    "bench_outward",
                    row,
                    quoted(parts.text("bench_outward", row))
                            + " at "
                            + parts.text("bench_angle", row)
                            + " deg, more than "
                            + quoted(parts.text("bench_outward", below))
                            + " at "
                            + parts.text("bench_angle", below)
                            + " deg",
                    "outward travel that does not grow with the angle; measure both again");
        }
    }

    private void blank(int row) {
        String name = parts.text("blank_name", row);
        if (name.isEmpty()) {
            return;
        }
        for (String column :
                new String[] {
                    "blank_length", "blank_spline_length_inner", "blank_spline_length_outer"
                }) {
            if (isEmpty(column, row)) {
                warning(column, row, "nothing", "a length; this blank is not looked at without it");
            }
        }
        double length = parts.number("blank_length", row);
        for (ShaftEnd end : ShaftEnd.values()) {
            if (parts.ringFace(row, end) > length) {
                String column = "blank_groove_" + end.word();
                error(
                        column,
                        row,
                        quoted(parts.text(column, row)),
                        "a groove on the blank, which is "
                                + quoted(parts.text("blank_length", row))
                                + " long");
            }
        }
    }

    private void strength(int row) {
        String material = parts.text("blank_material", row);
        if (!material.isEmpty() && parts.row("material_name", material) == 0) {
            error("blank_material", row, quoted(material), "a name in the table of materials");
        }
        if (parts.number("blank_bore", row) >= parts.number("blank_diameter", row)) {
            error(
                    "blank_bore",
                    row,
                    quoted(parts.text("blank_bore", row)),
                    "less than the bar's diameter");
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String root = "blank_spline_root_" + end.word();
            if (parts.number(root, row)
                    >= parts.number("blank_spline_outside_" + end.word(), row)) {
                error(
                        root,
                        row,
                        quoted(parts.text(root, row)),
                        "less than the spline's outside diameter");
            }
        }
    }

    private void rated(int row) {
        String name = parts.text("rated_joint", row);
        if (!name.isEmpty() && parts.row("joint_name", name) == 0) {
            warning(
                    "rated_joint",
                    row,
                    quoted(name),
                    "a name in the joint table; the row counts for nothing");
        }
        if (parts.number("bolt_pitch", row) >= parts.number("bolt_diameter", row)) {
            error(
                    "bolt_pitch",
                    row,
                    quoted(parts.text("bolt_pitch", row)),
                    "less than the bolt's diameter: 1 divided by threads per inch for inch bolts");
        }
    }

    /** Beyond that, friction is not counted on and the bolts lead the list of weak parts. */
    private void tightness(FlangeBolts bolts, int row) {
        if (bolts.tooTight()) {
            InputKind torque = InputKind.TORQUE;
            warning(
                    "bolt_torque",
                    row,
                    quoted(parts.text("bolt_torque", row)),
                    "at most "
                            + Math.floor(torque.typed(bolts.mostTorque(), inputs.unit()) * 10) / 10
                            + " "
                            + torque.symbol(inputs.unit())
                            + ", three quarters of the bolt's proof load");
        }
    }

    private boolean has(String column, int row) {
        return !parts.text(column, row).isEmpty() || isBad(column, row);
    }

    private boolean isEmpty(String column, int row) {
        return !has(column, row);
    }

    private boolean isBad(String column, int row) {
        return inputs.unreadable(column, index(row)) && parts.text(column, row).isEmpty();
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }

    private static Index index(int row) {
        return new Index(Side.LEFT, 0, row);
    }

    private void error(String column, int row, String found, String expected) {
        problems.add(
                Problem.error(
                        inputs.place(column, index(row)), subject(column, row), found, expected));
    }

    private void warning(String column, int row, String found, String expected) {
        problems.add(
                Problem.warning(
                        inputs.place(column, index(row)), subject(column, row), found, expected));
    }

    private static String subject(String column, int row) {
        return Contract.input(column).label() + ", row " + (row + 1);
    }
}
