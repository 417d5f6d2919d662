package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shaftwright.build.Side;
import shaftwright.contract.Input.Range;
import shaftwright.suspension.LinkageKind;

/**
 * The workbook contract: every input, declared once. Whatever else needs to know an input's name,
 * place, unit, range, default or meaning asks here.
 */
public final class Contract {
    /**
     * Version written into every workbook: 1 for program version 0.1.0. It is raised once a release
     * in which an input or a live line is added or a formula changes; a workbook of a lower version
     * lacks what came later.
     */
    public static final int VERSION = 3;

    /** Defined name of the cell that holds {@link #VERSION}. */
    public static final String VERSION_NAME = "shaftwright_contract";

    /** Name of the cell that says which cells need the function pack. */
    public static final String PACK_NOTE_NAME = "pack_note";

    /** Defined name by which a comparison of several workbooks is told from one of them. */
    public static final String COMPARISON_NAME = "shaftwright_comparison";

    /** Scenarios of a workbook when nobody asks for another number. */
    public static final int USUAL_SCENARIOS = 8;

    /** Most scenarios that one workbook may hold. */
    public static final int MOST_SCENARIOS = 24;

    private static final Range SIZE = new Range(0.01, 5_000);
    private static final Range OFFSET = new Range(-2_000, 2_000);
    private static final Range NOT_NEGATIVE = new Range(0, 5_000);
    private static final Range ANY_ANGLE = new Range(-45, 45);

    private static final Range PLACE = new Range(-20_000, 20_000);
    private static final Range AHEAD = new Range(-3_500, 3_500);
    private static final Range OUTWARD = new Range(0, 1_500);
    private static final Range TRAVEL = new Range(1, 1_000);

    private static final Map<String, Input> BY_NAME = declare();
    private static final Map<Grid, List<Input>> BY_GRID = byGrid();

    /** By side and input's name; put together once, as every look at an input asks for one. */
    private static final Map<Side, Map<String, String>> DEFINED_NAMES = namesBySide();

    private Contract() {}

    /** All inputs in the order in which a builder meets them. */
    public static List<Input> inputs() {
        return List.copyOf(BY_NAME.values());
    }

    /**
     * The input of this name, without side suffix.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Input input(String name) {
        Input input = BY_NAME.get(name);
        if (input == null) {
            throw new IllegalArgumentException("no input is called \"" + name + "\"");
        }
        return input;
    }

    /**
     * The input that this defined name belongs to, with side suffix where it is sided.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Input named(String definedName) {
        Input input = BY_NAME.get(definedName);
        for (Side side : Side.values()) {
            if (input == null && definedName.endsWith(Contract.suffix(side))) {
                Input sided =
                        BY_NAME.get(
                                definedName.substring(
                                        0, definedName.length() - Contract.suffix(side).length()));
                input = sided != null && sided.grid().sided() ? sided : null;
            }
        }
        if (input == null || !definedName(input, definedName)) {
            throw new IllegalArgumentException("no input is called \"" + definedName + "\"");
        }
        return input;
    }

    private static boolean definedName(Input input, String name) {
        return input.definedName(Side.LEFT).equals(name)
                || input.definedName(Side.RIGHT).equals(name);
    }

    /** Every input's defined names, sided inputs with both, in declared order. */
    public static List<String> definedNames() {
        List<String> names = new ArrayList<>(190);
        for (Input input : BY_NAME.values()) {
            names.add(input.definedName(Side.LEFT));
            if (input.grid().sided()) {
                names.add(input.definedName(Side.RIGHT));
            }
        }
        return names;
    }

    private static Map<Side, Map<String, String>> namesBySide() {
        Map<Side, Map<String, String>> bySide = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Map<String, String> names = new HashMap<>();
            for (Input input : BY_NAME.values()) {
                names.put(input.name(), input.definedName(side));
            }
            bySide.put(side, names);
        }
        return bySide;
    }

    /** What the defined name of a sided cell ends in: {@code _left}, {@code _right}. */
    public static String suffix(Side side) {
        return side == Side.LEFT ? "_left" : "_right";
    }

    /**
     * The defined name that {@link Input#definedName} gives the input of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static String definedName(String name, Side side) {
        String found = DEFINED_NAMES.get(side).get(name);
        if (found == null) {
            throw new IllegalArgumentException("no input is called \"" + name + "\"");
        }
        return found;
    }

    /** Inputs of one grid in declared order. */
    public static List<Input> inputs(Grid grid) {
        List<Input> found = BY_GRID.get(grid);
        return found == null ? List.of() : found;
    }

    private static Map<Grid, List<Input>> byGrid() {
        Map<Grid, List<Input>> byGrid = new EnumMap<>(Grid.class);
        for (Input input : BY_NAME.values()) {
            List<Input> inputs = byGrid.get(input.grid());
            if (inputs == null) {
                inputs = new ArrayList<>();
                byGrid.put(input.grid(), inputs);
            }
            inputs.add(input);
        }
        for (Map.Entry<Grid, List<Input>> inputs : byGrid.entrySet()) {
            inputs.setValue(List.copyOf(inputs.getValue()));
        }
        return byGrid;
    }

    private static Map<String, Input> declare() {
        List<Input> all = new ArrayList<>(170);
        vehicle(all);
        SteerInputs.vehicle(all);
        MountLoad.vehicle(all);
        MeasuringCheck.declare(all);
        readings(all);
        linkage(all);
        joints(all);
        shaftStock(all);
        StrengthInputs.path(all);
        StrengthInputs.materials(all);
        StrengthInputs.joints(all);
        StrengthInputs.ratings(all);
        DoubtInputs.doubt(all);
        DoubtInputs.spares(all);
        WorkInputs.declare(all);
        BuiltInputs.declare(all);
        RestraintInputs.declare(all);
        OwnPointInputs.declare(all);
        scenarios(all);
        Map<String, Input> byName = new LinkedHashMap<>();
        for (Input input : all) {
            byName.put(input.name(), input);
        }
        return byName;
    }

    private static void vehicle(List<Input> all) {
        all.add(
                words(
                                "unit",
                                BOOK,
                                "Unit of this workbook",
                                CHOICE,
                                List.of("inch", "mm"),
                                "Unit of bare numbers and of every result. Chosen when the workbook"
                                        + " is made.")
                        .starting("inch", "mm"));
        all.add(
                words(
                        "vehicle_name",
                        BOOK,
                        "Vehicle",
                        TEXT,
                        List.of(),
                        "Any name; it is printed on the shop cards."));
        all.add(
                length(
                                "shop_increment",
                                BOOK,
                                "Shaft length is cut to the nearest",
                                new Range(0.01, 25.4),
                                new Range(0.05, 13),
                                "Finished end-to-end lengths are rounded to this step where the"
                                        + " window allows it.")
                        .orElse(1)
                        .starting("1/16", "1"));
        all.add(
                length(
                                "tape_graduation",
                                BOOK,
                                "Tape graduation",
                                new Range(0.01, 25.4),
                                new Range(0.1, 4),
                                "Smallest division of the tape between the joint cups.")
                        .orElse(1)
                        .starting("1/16", "1"));
        all.add(
                length(
                                "height_graduation",
                                BOOK,
                                "Height graduation",
                                new Range(0.01, 25.4),
                                new Range(0.1, 7),
                                "Smallest division of the tape used for heights.")
                        .orElse(1)
                        .starting("1/16", "1"));
        all.add(
                words(
                                "fit_degree",
                                BOOK,
                                "Curve through the readings",
                                CHOICE,
                                List.of("auto", "4", "5"),
                                "auto: degree 2 for three or four heights, 3 from five on. Degree 4"
                                        + " or 5 needs nine heights.")
                        .starting("auto", "auto"));
        all.add(
                length(
                                "curve_allowance_quadratic",
                                BOOK,
                                "Curve allowance, three or four heights",
                                NOT_NEGATIVE,
                                new Range(0, 10),
                                "Doubt added for what so few heights can't show, for 450 mm of"
                                        + " travel; scales with travel to the power 3.")
                        .orElse(2.0)
                        .starting("2 mm", "2"));
        all.add(
                length(
                                "curve_allowance_cubic",
                                BOOK,
                                "Curve allowance, five or more heights",
                                NOT_NEGATIVE,
                                new Range(0, 10),
                                "Doubt added for what the readings can't show, for 450 mm of"
                                        + " travel; scales with travel to the power 4.")
                        .orElse(0.8)
                        .starting("0.8 mm", "0.8"));
        all.add(
                words(
                                "right_side",
                                BOOK,
                                "Right side",
                                CHOICE,
                                List.of("same as left", "measured"),
                                "Same as left: the left readings serve both sides. Measured: the"
                                        + " right has its own.")
                        .starting("same as left", "same as left"));
        all.add(
                angle(
                                "inner_tilt",
                                BOOK,
                                "Inner flange tilt, outer end up",
                                new Range(-20, 20),
                                "Slope of the transaxle's output axis in front view; 0 when it is"
                                        + " level.")
                        .orElse(0));
        all.add(
                angle(
                                "inner_sweep",
                                BOOK,
                                "Inner flange sweep, outer end forward",
                                new Range(-20, 20),
                                "Slope of the transaxle's output axis in plan view; 0 when it is"
                                        + " square to the vehicle.")
                        .orElse(0));
        all.add(
                words(
                                "path_source",
                                SIDE,
                                "Hub path from",
                                CHOICE,
                                List.of("measured", "linkage"),
                                "Measured: the readings below. Linkage: the points on the sheet"
                                        + " Linkage, worked out by a fill.")
                        .starting("measured", "measured"));
        all.add(
                length(
                        "inner_offset",
                        SIDE,
                        "Vehicle centre to inner datum",
                        OFFSET,
                        new Range(20, 700),
                        "Sideways distance from the vehicle's centre plane to the inner datum face."
                                + " Needed for track, overall width and a linkage."));
        all.add(
                length(
                        "inner_height",
                        SIDE,
                        "Inner datum height",
                        OFFSET,
                        new Range(100, 1_200),
                        "Height of the centre of the inner datum face, from the same floor as all"
                                + " heights."));
        all.add(
                length(
                        "ride_height",
                        SIDE,
                        "Outer datum height at ride",
                        OFFSET,
                        new Range(100, 1_200),
                        "Height of the centre of the outer datum face with the vehicle at its"
                                + " static height."));
        all.add(
                length(
                                "hub_face_offset",
                                BOOK,
                                "Outer datum to wheel mounting face",
                                OFFSET,
                                new Range(0, 300),
                                "Along the stub axis, outward. Needed for track, width and the"
                                        + " wheel centre's rise.")
                        .orElse(0));
        all.add(
                length(
                        "clearance_ride",
                        BOOK,
                        "Ground clearance at ride",
                        NOT_NEGATIVE,
                        new Range(50, 600),
                        "Lowest fixed point above level ground, with the tyre named next."));
        all.add(
                length(
                        "clearance_tyre_diameter",
                        BOOK,
                        "Diameter of the tyre fitted then",
                        SIZE,
                        new Range(300, 1_300),
                        "Measured diameter of the tyre that was on when the clearance was"
                                + " measured."));
        all.add(
                length(
                        "width_limit",
                        BOOK,
                        "Overall width limit",
                        SIZE,
                        new Range(1_000, 3_000),
                        "Widest that the vehicle may be, by your rules or your trailer. Empty: no"
                                + " limit."));
    }

    private static void readings(List<Input> all) {
        all.add(
                length(
                        "height",
                        READING,
                        "Outer datum height",
                        OFFSET,
                        new Range(100, 1_500),
                        "Height of the centre of the outer datum face (not of the hub face) for"
                                + " this row."));
        String distance =
                "Straight tape distance from the inner datum to the outer datum. Repeat readings go"
                        + " in the next columns.";
        Range usual = new Range(150, 1_500);
        all.add(length("distance_first", READING, "Distance, first", SIZE, usual, distance));
        all.add(length("distance_second", READING, "Distance, second", SIZE, usual, distance));
        all.add(length("distance_third", READING, "Distance, third", SIZE, usual, distance));
        all.add(
                length(
                                "fore_aft",
                                READING,
                                "Outer ahead of inner",
                                OFFSET,
                                new Range(-400, 400),
                                "How far the outer datum sits ahead of the inner one; negative when"
                                        + " behind. Empty: 0.")
                        .orElse(0));
        all.add(
                angle(
                        "camber",
                        READING,
                        "Camber, top out +",
                        new Range(-15, 15),
                        "Camber at this height; positive when the wheel's top leans outward. May"
                                + " stay empty."));
        all.add(
                angle(
                        "toe",
                        READING,
                        "Toe-in +",
                        new Range(-10, 10),
                        "Toe at this height; positive for toe-in. May stay empty."));
    }

    private static void linkage(List<Input> all) {
        all.add(
                words(
                                "linkage_kind",
                                BOOK,
                                "Kind of linkage",
                                CHOICE,
                                linkageKinds(),
                                "Decides which points are needed; their names stand beside the"
                                        + " rows.")
                        .starting(
                                LinkageKind.DOUBLE_WISHBONE.tradeName(),
                                LinkageKind.DOUBLE_WISHBONE.tradeName()));
        Range usual = new Range(25, 400);
        all.add(
                length(
                                "linkage_up",
                                BOOK,
                                "Solved up from ride",
                                TRAVEL,
                                usual,
                                "Travel of the outer datum above ride that the linkage is worked"
                                        + " out for.")
                        .starting("6", "150"));
        all.add(
                length(
                                "linkage_down",
                                BOOK,
                                "Solved down from ride",
                                TRAVEL,
                                usual,
                                "Travel of the outer datum below ride that the linkage is worked"
                                        + " out for.")
                        .starting("6", "150"));
        all.add(
                length(
                                "inner_ahead",
                                SIDE,
                                "Inner datum ahead of the mark",
                                PLACE,
                                AHEAD,
                                "Fore-aft place of the inner datum, from any mark that all points"
                                        + " share. Empty: the inner datum is the mark.")
                        .orElse(0));
        all.add(
                length(
                        "outer_ahead",
                        SIDE,
                        "Outer datum ahead of the mark, at ride",
                        PLACE,
                        AHEAD,
                        "Fore-aft place of the outer datum at ride; negative when behind the"
                                + " mark."));
        all.add(
                length(
                        "outer_out",
                        SIDE,
                        "Outer datum from the centreline, at ride",
                        PLACE,
                        OUTWARD,
                        "Sideways distance from the vehicle's centre plane to the outer datum at"
                                + " ride. Its height is the ride height on the first sheet of"
                                + " measures."));
        all.add(
                angle(
                                "static_camber",
                                SIDE,
                                "Camber at ride, top out +",
                                new Range(-15, 15),
                                "Positive when the wheel's top leans outward. Empty: 0.")
                        .orElse(0));
        all.add(
                angle(
                                "static_toe",
                                SIDE,
                                "Toe-in at ride +",
                                new Range(-10, 10),
                                "Positive for toe-in. Empty: 0.")
                        .orElse(0));
        all.add(
                length(
                        "point_ahead",
                        LINKAGE_POINT,
                        "Ahead of the mark",
                        PLACE,
                        AHEAD,
                        "Fore-aft place of this point at ride; negative when behind the mark."));
        all.add(
                length(
                        "point_out",
                        LINKAGE_POINT,
                        "From the centreline",
                        PLACE,
                        OUTWARD,
                        "Sideways distance of this point from the vehicle's centre plane, at"
                                + " ride."));
        all.add(
                length(
                        "point_height",
                        LINKAGE_POINT,
                        "Height",
                        PLACE,
                        new Range(0, 1_500),
                        "Height of this point at ride, from the same floor as all heights."));
    }

    private static List<String> linkageKinds() {
        List<String> names = new ArrayList<>();
        for (LinkageKind kind : LinkageKind.values()) {
            names.add(kind.tradeName());
        }
        return names;
    }

    private static void joints(List<Input> all) {
        all.add(
                words(
                        "joint_name",
                        JOINT,
                        "Joint",
                        TEXT,
                        List.of(),
                        "Name by type and size; scenarios pick it by this name."));
        all.add(
                length(
                        "joint_body_diameter",
                        JOINT,
                        "Body diameter",
                        SIZE,
                        new Range(50, 200),
                        "Outside diameter of the joint body."));
        all.add(
                length(
                        "joint_race_half_width",
                        JOINT,
                        "Race half width",
                        SIZE,
                        new Range(5, 40),
                        "Race centre to the face that bears on the retaining ring."));
        all.add(
                length(
                        "joint_datum_offset",
                        JOINT,
                        "Datum to joint centre",
                        OFFSET,
                        new Range(0, 120),
                        "From the face that the tape touched to the joint centre, toward the other"
                                + " end. 0 when measured at joint centres."));
        all.add(
                length(
                        "joint_cup_bottom",
                        JOINT,
                        "Centre to cup bottom",
                        SIZE,
                        new Range(15, 150),
                        "Joint centre to the nearest thing that the shaft end can hit: cup back,"
                                + " plug, or a spring pressed solid."));
        all.add(
                length(
                        "joint_cup_radius",
                        JOINT,
                        "Cup inner radius",
                        SIZE,
                        new Range(10, 100),
                        "Radius inside the cup where the tilted shaft end's corner swings. Empty:"
                                + " not checked."));
        all.add(
                length(
                        "joint_lip_radius",
                        JOINT,
                        "Lip radius",
                        SIZE,
                        new Range(8, 100),
                        "Radius of a lip or plug opening that the shaft passes. Empty: none."));
        all.add(
                length(
                        "joint_lip_depth",
                        JOINT,
                        "Lip depth",
                        OFFSET,
                        new Range(0, 100),
                        "Joint centre to that lip, toward the cup bottom."));
        all.add(
                length(
                        "joint_mouth",
                        JOINT,
                        "Centre to cup rim",
                        OFFSET,
                        new Range(-30, 80),
                        "Joint centre to the rim of the cup, toward the cup bottom: half the width"
                                + " of a joint that bolts onto the rim. Says whether the shaft goes in"
                                + " between the cups. Empty: not said."));
        all.add(
                angle(
                        "joint_angle_max",
                        JOINT,
                        "Angle limit",
                        new Range(1, 60),
                        "Never exceed, at any position."));
        all.add(
                angle(
                        "joint_angle_continuous",
                        JOINT,
                        "Running angle limit",
                        new Range(0.5, 60),
                        "For long running, judged at ride height. Empty: not judged."));
        all.add(
                words(
                        "joint_outward_stop",
                        JOINT,
                        "Outward stop",
                        CHOICE,
                        List.of("hard", "soft"),
                        "hard: cage or body stops the race. soft: only the boot holds it."));
        all.add(
                length(
                        "joint_plunge",
                        JOINT,
                        "Plunge, straight, total",
                        NOT_NEGATIVE,
                        new Range(5, 90),
                        "Stop to stop with the joint straight. Not used when the bench table has"
                                + " rows for this joint."));
        all.add(
                number(
                                "joint_plunge_residual",
                                JOINT,
                                "Part left at the angle limit",
                                NUMBER,
                                new Range(0, 1),
                                new Range(0, 1),
                                "Part of the straight plunge that is left at the angle limit,"
                                        + " falling evenly. Empty: 0.3, own assumption.")
                        .orElse(0.3));
        all.add(
                number(
                        "joint_splines",
                        JOINT,
                        "Splines",
                        COUNT,
                        new Range(1, 100),
                        new Range(10, 60),
                        "Spline count of the race; compared with the blank's when both are"
                                + " given."));
        all.add(
                number(
                        "joint_mass",
                        JOINT,
                        "Mass, kg",
                        NUMBER,
                        new Range(0, 100),
                        new Range(0.5, 20),
                        "Mass of the joint. For the parts list only."));
        all.add(money("joint_price", JOINT, "Price each", "Your price for one joint."));
        all.add(
                words(
                        "bench_joint",
                        BENCH,
                        "Joint",
                        PICK,
                        List.of("joint_name"),
                        "Joint that was measured, by its name in the joint table."));
        all.add(
                angle(
                        "bench_angle",
                        BENCH,
                        "Joint angle",
                        new Range(0, 60),
                        "Angle at which the assembled, booted joint was held."));
        all.add(
                length(
                        "bench_inward",
                        BENCH,
                        "Travel inward",
                        OFFSET,
                        new Range(-10, 60),
                        "Race travel toward the cup bottom from mid-stroke to the stop, along the"
                                + " cup."));
        all.add(
                length(
                        "bench_outward",
                        BENCH,
                        "Travel outward",
                        OFFSET,
                        new Range(-10, 60),
                        "Race travel away from the cup bottom from mid-stroke to the stop."));
        all.add(
                words(
                        "boot_name",
                        BOOT,
                        "Boot",
                        TEXT,
                        List.of(),
                        "Name by type and size; scenarios pick it by this name."));
        all.add(
                length(
                                "boot_outward_change",
                                BOOT,
                                "Change of outward travel",
                                OFFSET,
                                new Range(-30, 30),
                                "Added to the joint's outward limit; negative when the boot stops"
                                        + " it earlier.")
                        .orElse(0));
        all.add(
                length(
                        "boot_length",
                        BOOT,
                        "Length along the shaft",
                        SIZE,
                        new Range(20, 300),
                        "From the joint's centre to the boot's small end, as fitted. Empty: its gap"
                                + " to tubes is not looked at."));
        all.add(
                length(
                        "boot_diameter",
                        BOOT,
                        "Largest diameter",
                        SIZE,
                        new Range(40, 200),
                        "As fitted, folds bulged out. Empty: its gap to tubes is not looked at."));
        all.add(money("boot_price", BOOT, "Price each", "Your price for one boot kit."));
    }

    private static void shaftStock(List<Input> all) {
        all.add(
                words(
                        "blank_name",
                        BLANK,
                        "Blank",
                        TEXT,
                        List.of(),
                        "Name by length and spline; scenarios may pick it by this name."));
        all.add(
                length(
                        "blank_length",
                        BLANK,
                        "Length end to end",
                        SIZE,
                        new Range(150, 1_500),
                        "Sellers quote blanks end to end, not clip to clip."));
        all.add(
                length(
                        "blank_diameter",
                        BLANK,
                        "Diameter",
                        SIZE,
                        new Range(15, 60),
                        "Bar diameter between the splines."));
        all.add(splines("blank_splines_inner", "Splines inner", "Spline count at the inner end."));
        all.add(splines("blank_splines_outer", "Splines outer", "Spline count at the outer end."));
        Range splineLength = new Range(20, 300);
        all.add(
                length(
                        "blank_spline_length_inner",
                        BLANK,
                        "Spline length inner",
                        SIZE,
                        splineLength,
                        "Full spline from the inner end."));
        all.add(
                length(
                        "blank_spline_length_outer",
                        BLANK,
                        "Spline length outer",
                        SIZE,
                        splineLength,
                        "Full spline from the outer end."));
        String groove =
                "Shaft end to the outer wall of a ring groove that is there already. Empty: none.";
        Range grooveRange = new Range(3, 80);
        all.add(
                length(
                        "blank_groove_inner",
                        BLANK,
                        "Old groove, inner",
                        SIZE,
                        grooveRange,
                        groove));
        all.add(
                length(
                        "blank_groove_outer",
                        BLANK,
                        "Old groove, outer",
                        SIZE,
                        grooveRange,
                        groove));
        all.add(money("blank_price", BLANK, "Price each", "Your price for one blank."));
        all.add(
                words(
                        "blank_in_stock",
                        BLANK,
                        "Can be had",
                        CHOICE,
                        List.of("yes", "to order", "no"),
                        "In the seller's stock, not in your garage. no: it can't be had and is not"
                                + " chosen."));
        StrengthInputs.blanks(all);
        all.add(
                length(
                                "ring_thickness",
                                BOOK,
                                "Ring thickness",
                                SIZE,
                                new Range(0.8, 4),
                                "Thickness of the retaining ring.")
                        .orElse(1.75)
                        .starting("1.75 mm", "1.75"));
        all.add(
                length(
                                "groove_width",
                                BOOK,
                                "Groove width",
                                SIZE,
                                new Range(0.8, 5),
                                "Width of the ring groove, a little more than the ring.")
                        .orElse(1.85)
                        .starting("1.85 mm", "1.85"));
        all.add(
                length(
                                "groove_depth",
                                BOOK,
                                "Groove depth",
                                SIZE,
                                new Range(0.3, 4),
                                "Depth of the ring groove.")
                        .orElse(1.1)
                        .starting("1.1 mm", "1.1"));
        all.add(
                length(
                                "spline_runout",
                                BOOK,
                                "Spline run-out",
                                NOT_NEGATIVE,
                                new Range(0, 25),
                                "Length at the spline's inboard end where it is not full depth.")
                        .orElse(6)
                        .starting("1/4", "6"));
        Range end = new Range(12, 60);
        all.add(
                length(
                                "shaft_end_diameter_inner",
                                BOOK,
                                "Shaft end diameter, inner",
                                SIZE,
                                end,
                                "Diameter of the shaft's inner end, at its chamfer.")
                        .orElse(26)
                        .starting("1.02", "26"));
        all.add(
                length(
                                "shaft_end_diameter_outer",
                                BOOK,
                                "Shaft end diameter, outer",
                                SIZE,
                                end,
                                "Diameter of the shaft's outer end, at its chamfer.")
                        .orElse(26)
                        .starting("1.02", "26"));
        all.add(
                length(
                                "mockup_pin",
                                BOOK,
                                "Mock-up pin diameter",
                                SIZE,
                                new Range(2, 16),
                                "Diameter of the cross pins in the mock-up stick; the races bear on"
                                        + " their sides.")
                        .orElse(6)
                        .starting("1/4", "6"));
    }

    private static void scenarios(List<Input> all) {
        all.add(
                words(
                        "scenario_name",
                        SCENARIO,
                        "Name of the scenario",
                        TEXT,
                        List.of(),
                        "A column with a name is computed; one without is left alone."));
        all.add(
                words(
                        "tyre_size",
                        SCENARIO,
                        "Tyre size",
                        TYRE,
                        List.of(),
                        "Metric such as 235/75 R15, flotation such as 30x9.50 R15, or without an"
                                + " aspect ratio such as 195R14C or 7.50-16: then measure the"
                                + " diameter."));
        all.add(
                length(
                        "tyre_measured",
                        SCENARIO,
                        "Tyre diameter, measured",
                        SIZE,
                        new Range(300, 1_300),
                        "Overrides the size: tyres commonly measure under their nominal"
                                + " diameter."));
        all.add(
                length(
                                "tyre_width_measured",
                                SCENARIO,
                                "Tyre section width, measured",
                                SIZE,
                                new Range(80, 500),
                                "Over the sidewalls, on its rim and without load. Overrides the"
                                        + " size, whose width is a nominal one.")
                        .since(2));
        all.add(
                length(
                                "wheel_offset",
                                SCENARIO,
                                "Wheel offset, inward +",
                                OFFSET,
                                new Range(-150, 150),
                                "Mounting face outboard of the wheel's centre plane is positive."
                                        + " Moves the tyre, not the shaft.")
                        .orElse(0));
        all.add(
                length(
                                "wheel_spacer",
                                SCENARIO,
                                "Wheel spacer",
                                NOT_NEGATIVE,
                                new Range(0, 150),
                                "Between hub face and wheel. Moves the tyre, not the shaft.")
                        .orElse(0));
        all.add(
                length(
                                "hub_shift",
                                SCENARIO,
                                "Hub moved outward, each side",
                                OFFSET,
                                new Range(-200, 200),
                                "Half of a change of track made by wider arms. The shaft changes"
                                        + " with it.")
                        .orElse(0));
        SteerInputs.scenario(all);
        Range shift = new Range(-150, 150);
        all.add(
                length(
                                "transaxle_forward",
                                SCENARIO,
                                "Transaxle moved forward",
                                OFFSET,
                                shift,
                                "From where it was when the readings were taken.")
                        .orElse(0));
        all.add(
                length(
                                "transaxle_left",
                                SCENARIO,
                                "Transaxle moved left",
                                OFFSET,
                                shift,
                                "Toward the vehicle's left; the right shaft grows by what the left"
                                        + " one loses.")
                        .orElse(0));
        all.add(
                length(
                                "transaxle_up",
                                SCENARIO,
                                "Transaxle moved up",
                                OFFSET,
                                shift,
                                "From where it was when the readings were taken.")
                        .orElse(0));
        MountLoad.scenario(all);
        String joint = "Name of a joint in the joint table.";
        all.add(pick("joint_inner", "Inner joint", "joint_name", joint));
        all.add(pick("joint_outer", "Outer joint", "joint_name", joint));
        String spacer = "Between flange and cup: moves the joint centre toward the other end.";
        Range spacerRange = new Range(0, 60);
        all.add(
                length(
                                "cup_spacer_inner",
                                SCENARIO,
                                "Cup spacer, inner",
                                OFFSET,
                                spacerRange,
                                spacer)
                        .orElse(0));
        all.add(
                length(
                                "cup_spacer_outer",
                                SCENARIO,
                                "Cup spacer, outer",
                                OFFSET,
                                spacerRange,
                                spacer)
                        .orElse(0));
        String deeper =
                "Thickness of a spacer between the joint and its cup: joint centre toward the other"
                        + " end, and the cup that much deeper; 0 for none.";
        for (String end : new String[] {"inner", "outer"}) {
            all.add(
                    length(
                                    "joint_spacer_" + end,
                                    SCENARIO,
                                    "Joint spacer, " + end,
                                    NOT_NEGATIVE,
                                    new Range(0, 40),
                                    deeper)
                            .orElse(0));
        }
        String counterbore = "How deep the ring seat is sunk in the race; 0 for a plain race.";
        Range bore = new Range(0, 20);
        all.add(
                length(
                                "counterbore_inner",
                                SCENARIO,
                                "Race counterbore, inner",
                                NOT_NEGATIVE,
                                bore,
                                counterbore)
                        .orElse(0));
        all.add(
                length(
                                "counterbore_outer",
                                SCENARIO,
                                "Race counterbore, outer",
                                NOT_NEGATIVE,
                                bore,
                                counterbore)
                        .orElse(0));
        String boot = "Name of a boot in the boot table. Empty: none, the joint's own limits.";
        all.add(pick("boot_inner", "Boot, inner", "boot_name", boot));
        all.add(pick("boot_outer", "Boot, outer", "boot_name", boot));
        String stub = "Shaft beyond the ring's bearing face, to the shaft's end.";
        Range stubRange = new Range(3, 40);
        all.add(
                length(
                                "stub_inner",
                                SCENARIO,
                                "Stub beyond ring, inner",
                                NOT_NEGATIVE,
                                stubRange,
                                stub)
                        .orElse(10));
        all.add(
                length(
                                "stub_outer",
                                SCENARIO,
                                "Stub beyond ring, outer",
                                NOT_NEGATIVE,
                                stubRange,
                                stub)
                        .orElse(10));
        all.add(
                words(
                        "bump_rule",
                        SCENARIO,
                        "Bump limit comes from",
                        CHOICE,
                        List.of("typed", "clearance"),
                        "typed: the next row. clearance: bump until the wanted ground clearance is"
                                + " left."));
        Range travel = new Range(0.1, 600);
        Range usualTravel = new Range(20, 350);
        all.add(
                length(
                        "bump_limit",
                        SCENARIO,
                        "Bump travel from ride",
                        travel,
                        usualTravel,
                        "Outer datum's rise from ride to full bump."));
        all.add(
                length(
                        "clearance_wanted",
                        SCENARIO,
                        "Clearance wanted at full bump",
                        OFFSET,
                        new Range(0, 300),
                        "Ground clearance that must be left at full bump, when the limit comes from"
                                + " clearance."));
        all.add(
                length(
                        "droop_limit",
                        SCENARIO,
                        "Droop travel from ride",
                        travel,
                        usualTravel,
                        "Outer datum's fall from ride to full droop, typed as a positive length."));
        Range margin = new Range(0, 30);
        all.add(
                length(
                                "margin_inward",
                                SCENARIO,
                                "Margin before bottoming",
                                NOT_NEGATIVE,
                                margin,
                                "Kept free at the tightest position for soft mounts, flex and what"
                                        + " the tape can't see.")
                        .orElse(6));
        all.add(
                length(
                                "margin_outward",
                                SCENARIO,
                                "Margin before pull-out",
                                NOT_NEGATIVE,
                                margin,
                                "Kept free at the widest position.")
                        .orElse(6));
        all.add(
                number(
                                "length_bias",
                                SCENARIO,
                                "Choose within the window (0 short … 1 long)",
                                NUMBER,
                                new Range(0, 1),
                                new Range(0, 1),
                                "Default 0.25: bottoming breaks the transaxle, pull-out tears a"
                                        + " boot. Own assumption.")
                        .orElse(0.25));
        all.add(
                pick(
                        "blank_choice",
                        "Blank",
                        "blank_name",
                        "auto or empty: the best usable one. Else the name of a blank in the blank"
                                + " table."));
        StrengthInputs.scenarios(all);
        all.add(
                money(
                        "shaft_pair_price",
                        SCENARIO,
                        "Price of the shaft pair",
                        "Overrides twice the blank's price; a finished pair may cost more."));
        all.add(
                money(
                                "other_cost",
                                SCENARIO,
                                "Other cost",
                                "Anything else to be added once a vehicle.")
                        .orElse(0));
        all.add(
                words(
                                "shop_scenario",
                                BOOK,
                                "Scenario on the shop cards",
                                TEXT,
                                List.of(),
                                "Letter of the scenario that is to be built.")
                        .starting("A", "A"));
        variants(all);
    }

    private static void variants(List<Input> all) {
        all.add(
                words(
                        "try_scenario",
                        BOOK,
                        "Scenario to vary",
                        TEXT,
                        List.of(),
                        "Letter of the scenario of which changes and the grid below are computed by"
                                + " a fill. Empty: none."));
        axis(all, "across", "across", SweepInput.TYRE);
        axis(all, "down", "down", SweepInput.HUBS);
    }

    private static void axis(List<Input> all, String name, String word, SweepInput usual) {
        all.add(
                words(
                                "sweep_" + name,
                                BOOK,
                                "Varied " + word,
                                CHOICE,
                                SweepInput.words(),
                                "What changes from cell to cell " + word + " the grid.")
                        .starting(usual.word(), usual.word()));
        Range any = new Range(-1000, 2000);
        all.add(
                length(
                        "sweep_" + name + "_first",
                        BOOK,
                        "Varied " + word + ", from",
                        OFFSET,
                        any,
                        "Its smallest value in the grid. Empty: no grid."));
        all.add(
                length(
                        "sweep_" + name + "_last",
                        BOOK,
                        "Varied " + word + ", to",
                        OFFSET,
                        any,
                        "Its greatest value in the grid."));
    }

    private static Input length(
            String name, Grid grid, String label, Range allowed, Range usual, String meaning) {
        return Input.length(name, grid, label, allowed, usual, meaning);
    }

    private static Input angle(String name, Grid grid, String label, Range usual, String meaning) {
        Range allowed = ANY_ANGLE;
        if (usual.least() > 0) {
            allowed = new Range(0.1, 89);
        } else if (name.startsWith("bench")) {
            allowed = new Range(0, 89);
        }
        return Input.number(name, grid, label, ANGLE, allowed, usual, meaning);
    }

    private static Input number(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            Range allowed,
            Range usual,
            String meaning) {
        return Input.number(name, grid, label, kind, allowed, usual, meaning);
    }

    private static Input money(String name, Grid grid, String label, String meaning) {
        Range amount = new Range(0, 1e6);
        return Input.number(name, grid, label, MONEY, amount, amount, meaning);
    }

    private static Input splines(String name, String label, String meaning) {
        return Input.number(
                name, BLANK, label, COUNT, new Range(1, 100), new Range(10, 60), meaning);
    }

    private static Input words(
            String name,
            Grid grid,
            String label,
            InputKind kind,
            List<String> choices,
            String meaning) {
        return Input.words(name, grid, label, kind, choices, meaning);
    }

    private static Input pick(String name, String label, String source, String meaning) {
        return Input.words(name, SCENARIO, label, PICK, List.of(source), meaning);
    }
}
