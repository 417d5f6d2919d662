package shaftwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import shaftwright.build.RatedJoint;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.joint.BenchTable;
import shaftwright.joint.BoltPattern;
import shaftwright.joint.Boot;
import shaftwright.joint.BootLimits;
import shaftwright.joint.BootSeats;
import shaftwright.joint.CupLip;
import shaftwright.joint.Joint;
import shaftwright.joint.Mating;
import shaftwright.joint.OutwardStop;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.Treatment;
import shaftwright.strength.Material;
import shaftwright.strength.ShaftMaterial;
import shaftwright.strength.SplineStrength;
import shaftwright.units.ContradictionException;

/**
 * The parts tables of a workbook, by row. A row is found by its name the way in which spreadsheets
 * match texts: first row, case ignored.
 */
public final class Parts {
    private static final String JOINT_NAME = "joint_name";

    private final InputValues inputs;
    private final int[] benchJoint = new int[Grid.BENCH_SLOT.rows()];
    private final List<Blank> blanks = new ArrayList<>();
    private final int[] blankListed = new int[Grid.BLANK_SLOT.rows()];
    private final List<Integer> blankSlots = new ArrayList<>();
    private final SplineRows splines;

    Parts(InputValues inputs) {
        this.inputs = inputs;
        for (int row = 0; row < benchJoint.length; row++) {
            benchJoint[row] = row("joint_name", text("bench_joint", row));
        }
        splines = new SplineRows(this);
        for (int row = 0; row < blankListed.length; row++) {
            blankListed[row] = -1;
            if (blankUsed(row) && groovesInside(row)) {
                blankListed[row] = blanks.size();
                blankSlots.add(row);
                blanks.add(blank(row));
            }
        }
    }

    /** Which row says how which spline's teeth are shaped. */
    public SplineRows splines() {
        return splines;
    }

    /** Row, from 1, of the part of this name; 0 when the name is empty or not there. */
    int row(String column, String name) {
        if (name.isEmpty()) {
            return 0;
        }
        int rows = Math.min(inputs.rows(column, Side.LEFT), slots(column));
        for (int row = 0; row < rows; row++) {
            if (text(column, row).equalsIgnoreCase(name)) {
                return row + 1;
            }
        }
        return 0;
    }

    /** Rows that the live cells of a parts table can read. */
    static int slots(String column) {
        return switch (Contract.input(column).grid()) {
            case JOINT -> Grid.JOINT_SLOT.rows();
            case BENCH -> Grid.BENCH_SLOT.rows();
            case BOOT -> Grid.BOOT_SLOT.rows();
            case BLANK -> Grid.BLANK_SLOT.rows();
            case MATERIAL -> Grid.MATERIAL_SLOT.rows();
            case RATED -> Grid.RATED_SLOT.rows();
            case SPLINE -> Grid.SPLINE_SLOT.rows();
            case RATING -> Grid.RATING_SLOT.rows();
            case DUTY -> Grid.DUTY_SLOT.rows();
            case DOUBT -> Grid.DOUBT_SLOT.rows();
            case RESTRAINT -> Grid.RESTRAINT_SLOT.rows();
            case TUBE -> Grid.TUBE_SLOT.rows();
            case OWN_POINT -> Grid.OWN_POINT_SLOT.rows();
            default -> throw new IllegalArgumentException(column + " is in no parts table");
        };
    }

    private boolean groovesInside(int row) {
        double length = number("blank_length", row);
        return !(ringFace(row, ShaftEnd.INNER) > length || ringFace(row, ShaftEnd.OUTER) > length);
    }

    /** Number in a row of a parts table, NaN when the cell is empty or beyond the table. */
    double number(String column, int row) {
        return inputs.number(column, Side.LEFT, row);
    }

    String text(String column, int row) {
        return inputs.text(column, new Index(Side.LEFT, 0, row));
    }

    /** Row, from 1, of the joint that a bench row belongs to; 0 for none. */
    public int benchJoint(int row) {
        return benchJoint[row];
    }

    /** Whether a row holds a blank with all sizes that a review needs. */
    public boolean blankUsed(int row) {
        return !text("blank_name", row).isEmpty()
                && !Double.isNaN(
                        number("blank_length", row)
                                + number("blank_spline_length_inner", row)
                                + number("blank_spline_length_outer", row));
    }

    /** The usable rows as blanks. */
    List<Blank> blanks() {
        return blanks;
    }

    /** Place of a row in {@link #blanks()}, or -1. */
    public int blankListed(int row) {
        return blankListed[row];
    }

    /** Row, from 1, of the blank at a place in {@link #blanks()}. */
    public int blankRow(int listed) {
        return blankSlots.get(listed) + 1;
    }

    /** A bore that leaves no bar is a problem already. */
    private Blank blank(int row) {
        double bore = number("blank_bore", row);
        return new Blank(
                text("blank_name", row),
                number("blank_length", row),
                optional(number("blank_diameter", row)),
                end(row, ShaftEnd.INNER),
                end(row, ShaftEnd.OUTER),
                optional(number("blank_price", row)),
                !text("blank_in_stock", row).equalsIgnoreCase("no"),
                bore >= number("blank_diameter", row) ? 0 : orZero(bore),
                material(materialRow(row + 1)),
                treatment(row));
    }

    /** What the heat treatment of a row's blank leaves for the shop. */
    public Treatment treatment(int row) {
        String typed = text("blank_treatment", row);
        for (Treatment treatment : Treatment.values()) {
            if (treatment.typed().equalsIgnoreCase(typed)) {
                return treatment;
            }
        }
        return Treatment.UNKNOWN;
    }

    private BlankEnd end(int row, ShaftEnd end) {
        return new BlankEnd(
                (int) orZero(number("blank_splines_" + end.word(), row)),
                number("blank_spline_length_" + end.word(), row),
                optional(ringFace(row, end)),
                optional(number("blank_spline_outside_" + end.word(), row)),
                optional(number("blank_spline_root_" + end.word(), row)),
                splines.form(splines.ofBlank(row + 1, end)));
    }

    /**
     * Blank's end to the face of a ring in its existing groove that the race bears on, mm: the ring
     * leans on the groove's outer wall, which is what a builder can measure.
     */
    public double ringFace(int row, ShaftEnd end) {
        return number("blank_groove_" + end.word(), row) + inputs.number("ring_thickness");
    }

    /** Names in a parts table that scenarios can pick, in its order. */
    List<String> names(String column) {
        List<String> names = new ArrayList<>();
        int rows = Math.min(inputs.rows(column, Side.LEFT), slots(column));
        for (int row = 0; row < rows; row++) {
            String name = text(column, row);
            boolean complete = !column.equals(JOINT_NAME) || jointComplete(row + 1);
            if (!name.isEmpty() && complete) {
                names.add(name);
            }
        }
        return names;
    }

    /** Whether a joint's row has every size that a length needs. */
    boolean jointComplete(int row) {
        for (JointSize need : JointSize.TYPED) {
            if (Double.isNaN(number(need.column(), row - 1))) {
                return false;
            }
        }
        return true;
    }

    /** Row, from 1, of the material of the blank in a row; 0 for none. */
    public int materialRow(int blank) {
        return blank == 0 ? 0 : row("material_name", text("blank_material", blank - 1));
    }

    /** The material of a row, from 1, as far as its figures are there; 0 for none. */
    private ShaftMaterial material(int row) {
        return row == 0
                ? ShaftMaterial.UNKNOWN
                : new ShaftMaterial(
                        steel(row - 1),
                        teeth(row - 1),
                        optional(number("material_tensile", row - 1)));
    }

    private Optional<Material> steel(int row) {
        double yield = number("material_yield", row);
        double elastic = number("material_elastic", row);
        double shear = number("material_shear", row);
        double density = number("material_density", row);
        return Double.isNaN(yield + elastic + shear + density)
                ? Optional.empty()
                : Optional.of(
                        new Material(
                                text("material_name", row),
                                yield,
                                elastic,
                                shear,
                                density * Material.TONNE_PER_MM3));
    }

    private Optional<SplineStrength> teeth(int row) {
        double shear = number("material_spline_shear", row);
        double pressure = number("material_spline_pressure", row);
        return Double.isNaN(shear + pressure)
                ? Optional.empty()
                : Optional.of(SplineStrength.allowing(shear, pressure));
    }

    /** A joint's travel limits by angle, empty when it has neither bench nor plunge. */
    private BenchTable limits(JointLimits limits, int joint) {
        int count = 0;
        boolean benched = false;
        double[] angle = new double[Grid.LIMIT.rows()];
        double[] inward = new double[Grid.LIMIT.rows()];
        double[] outward = new double[Grid.LIMIT.rows()];
        for (int row = 0; row < Grid.LIMIT.rows(); row++) {
            benched |= limits.joint(row) == joint && limits.isBench(row);
            if (limits.joint(row) == joint && (limits.isBench(row) || !benched)) {
                angle[count] = limits.angle(row);
                inward[count] = limits.inward(row);
                outward[count] = limits.outward(row);
                count++;
            }
        }
        BenchTable table =
                BenchTable.of(
                        Arrays.copyOf(angle, count),
                        Arrays.copyOf(inward, count),
                        Arrays.copyOf(outward, count));
        double most = number("joint_angle_max", joint - 1);
        double left = number("joint_plunge_residual", joint - 1);
        return Double.isNaN(most + left) ? table : table.endingAt(most, left);
    }

    /**
     * The joint of a complete row.
     *
     * @throws shaftwright.units.ContradictingSizesException if two of its sizes contradict each
     *     other
     */
    Joint joint(int row, JointLimits limits) {
        int at = row - 1;
        double max = number("joint_angle_max", at);
        double running = number("joint_angle_continuous", at);
        Joint.Builder joint =
                Joint.named(
                                text("joint_name", at),
                                number("joint_race_half_width", at),
                                limits(limits, row),
                                max)
                        .bodyDiameter(orZero(number("joint_body_diameter", at)))
                        .datumOffset(number("joint_datum_offset", at))
                        .cupBottom(number("joint_cup_bottom", at))
                        .angleContinuous(Double.isNaN(running) ? max : running)
                        .outwardStop(
                                text("joint_outward_stop", at).equalsIgnoreCase("soft")
                                        ? OutwardStop.SOFT
                                        : OutwardStop.HARD)
                        .splines((int) orZero(number("joint_splines", at)))
                        .mass(orZero(number("joint_mass", at)))
                        .mating(new Mating(splines.form(splines.ofJoint(row)), bolts(row)));
        optional(number("joint_price", at)).ifPresent(joint::price);
        optional(number("joint_cup_radius", at)).ifPresent(joint::cupRadius);
        optional(number("joint_mouth", at)).ifPresent(joint::mouth);
        lip(at).ifPresent(joint::lip);
        return joint.build();
    }

    /** The boot of a row, from 1; none for 0. */
    Boot boot(int row) {
        return row == 0
                ? Boot.PLAIN
                : new Boot(
                        text("boot_name", row - 1),
                        number("boot_outward_change", row - 1),
                        optional(number("boot_length", row - 1)),
                        optional(number("boot_diameter", row - 1)),
                        optional(number("boot_price", row - 1)),
                        seats(row - 1),
                        bootLimits(row - 1));
    }

    /** Where a boot is clamped; empty while one of its measures is missing. */
    private Optional<BootSeats> seats(int at) {
        double cup = number("boot_cup_seat", at);
        double shaft = number("boot_shaft_seat", at);
        double cupDiameter = number("boot_cup_diameter", at);
        double shaftDiameter = number("boot_shaft_diameter", at);
        return Double.isNaN(cup + shaft + cupDiameter + shaftDiameter)
                ? Optional.empty()
                : Optional.of(new BootSeats(cup, shaft, cupDiameter / 2, shaftDiameter / 2));
    }

    /** Lengths that contradict each other are a problem already. */
    private BootLimits bootLimits(int at) {
        double shortest = number("boot_shortest", at);
        double longest = number("boot_longest", at);
        return new BootLimits(
                shortest > longest ? OptionalDouble.empty() : optional(shortest),
                optional(longest),
                optional(number("boot_angle", at)));
    }

    /** Bolts of a joint's row, from 1, by the table of joints' torque and flange bolts. */
    private BoltPattern bolts(int joint) {
        for (int at = 0; at < Grid.RATED_SLOT.rows(); at++) {
            if (row(JOINT_NAME, text("rated_joint", at)) == joint) {
                return new BoltPattern(
                        optional(number("bolt_circle", at)),
                        count(number("bolt_count", at)),
                        optional(number("bolt_diameter", at)),
                        optional(number("bolt_pilot", at)),
                        optional(number("bolt_engagement", at)));
            }
        }
        return BoltPattern.UNKNOWN;
    }

    static OptionalInt count(double number) {
        return Double.isNaN(number) ? OptionalInt.empty() : OptionalInt.of((int) number);
    }

    /** Joints that can be had: those of which sizes and travel are known, and agree. */
    List<RatedJoint> joints(JointLimits limits, StrengthReader strength) {
        List<RatedJoint> joints = new ArrayList<>();
        for (String name : names(JOINT_NAME)) {
            int row = row(JOINT_NAME, name);
            if (limits.has(row)) {
                made(row, limits)
                        .map(joint -> new RatedJoint(joint, strength.ratingOf(row)))
                        .ifPresent(joints::add);
            }
        }
        return joints;
    }

    /** Sizes that contradict each other are a problem already. */
    private Optional<Joint> made(int row, JointLimits limits) {
        try {
            return Optional.of(joint(row, limits));
        } catch (ContradictionException e) {
            return Optional.empty();
        }
    }

    /** Boots that can be had. */
    List<Boot> boots() {
        List<Boot> boots = new ArrayList<>();
        for (String name : names("boot_name")) {
            boots.add(boot(row("boot_name", name)));
        }
        return boots;
    }

    private Optional<CupLip> lip(int at) {
        double radius = number("joint_lip_radius", at);
        double depth = number("joint_lip_depth", at);
        return Double.isNaN(radius + depth)
                ? Optional.empty()
                : Optional.of(new CupLip(radius, depth));
    }

    static double orZero(double number) {
        return Double.isNaN(number) ? 0 : number;
    }

    static OptionalDouble optional(double number) {
        return Double.isNaN(number) ? OptionalDouble.empty() : OptionalDouble.of(number);
    }
}
