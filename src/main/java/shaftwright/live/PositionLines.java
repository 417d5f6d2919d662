package shaftwright.live;

import static shaftwright.contract.Grid.POSITION;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.NUMBER;
import static shaftwright.live.Quantity.RADIAN;

import java.util.List;
import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.Sizing;
import shaftwright.shaft.EndFloat;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideResult;

/**
 * The position table of one side of one scenario: hub, axes, angles, travel limits, window and
 * slack at each travel step, in mm and radians. Every cell shows {@code #N/A} while its side has no
 * numbers, so that charts leave a gap.
 */
enum PositionLines implements LiveLine.Formula, LiveLine.Core {
    TRAVEL(
            "travel",
            "Travel",
            MILLIMETRE,
            "IF({step}<=12,{t_low}*(12-{step})/12,{t_high}*({step}-12)/12)"),
    TRAVEL_NORM(
            "travel_norm",
            "Travel, normalised",
            NUMBER,
            "(2*{travel}-({path_high}+{path_low}))/({path_high}-{path_low})"),
    PATH_FORE_AFT("path_fore_aft", "Outer datum ahead", MILLIMETRE, curve("fore_aft")),
    PATH_REACH_SQUARED(
            "path_reach_squared", "Lateral reach squared", NUMBER, curve("reach_squared")),
    PATH_CAMBER("path_camber", "Camber", RADIAN, curve("camber")),
    PATH_TOE("path_toe", "Toe", RADIAN, curve("toe")),
    PATH_SLOPE(
            "path_slope",
            "Change of distance with height",
            NUMBER,
            "(("
                    + slope("reach_squared")
                    + ")/({path_high}-{path_low})+{path_fore_aft}*2*("
                    + slope("fore_aft")
                    + ")/({path_high}-{path_low})+({ride_rise}+{travel}))"
                    + "/SQRT({path_reach_squared}+{path_fore_aft}^2+({ride_rise}+{travel})^2)"),
    PATH_DOUBT(
            "path_doubt",
            "Doubt of the fit",
            MILLIMETRE,
            "(2*SQRT(MAX(0,"
                    + horner("coef_hat")
                    + "))+ABS("
                    + horner("coef_shift")
                    + "))/(2*SQRT({path_reach_squared}+{path_fore_aft}^2+({ride_rise}+{travel})^2))"
                    + "+{curve_allowance}"),

    N_X("n_x", "Stub axis forward", NUMBER, forward("axis")),
    N_Y("n_y", "Stub axis outward", NUMBER, outward("axis")),
    N_Z("n_z", "Stub axis up", NUMBER, up("axis")),
    D_X(
            "d_x",
            "Centres apart forward",
            MILLIMETRE,
            "{path_fore_aft}+("
                    + forward("move")
                    + ")-{shift_x}-{centre_in}*{u_x}-{centre_out}*{n_x}"),
    D_Y(
            "d_y",
            "Centres apart outward",
            MILLIMETRE,
            "SQRT({path_reach_squared})+{shift_hub}+("
                    + outward("move")
                    + ")-{shift_y}-{centre_in}*{u_y}-{centre_out}*{n_y}"),
    D_Z(
            "d_z",
            "Centres apart up",
            MILLIMETRE,
            "{ride_rise}+{travel}+("
                    + up("move")
                    + ")-{shift_z}-{centre_in}*{u_z}-{centre_out}*{n_z}"),
    CENTRE_DISTANCE("centre_distance", "Centre distance", MILLIMETRE, length("0", "0")),
    MID_ANGLE_IN("mid_angle_in", "Inner angle, mid-stroke", RADIAN, innerAngle("0", "0")),
    MID_ANGLE_OUT("mid_angle_out", "Outer angle, mid-stroke", RADIAN, outerAngle("0", "0")),

    FIRST_IN_IN(
            "first_in_in",
            "Inner travel inward, first step",
            MILLIMETRE,
            inwardLimit("in", "{mid_angle_in}")),
    FIRST_IN_OUT(
            "first_in_out",
            "Outer travel inward, first step",
            MILLIMETRE,
            inwardLimit("out", "{mid_angle_out}")),
    ANGLE_IN_IN(
            "angle_in_in",
            "Inner angle, races inward",
            RADIAN,
            innerAngle("{first_in_in}", "{first_in_out}")),
    ANGLE_IN_OUT(
            "angle_in_out",
            "Outer angle, races inward",
            RADIAN,
            outerAngle("{first_in_in}", "{first_in_out}")),
    LAST_IN_IN("last_in_in", "Inner travel inward", MILLIMETRE, inwardLimit("in", "{angle_in_in}")),
    LAST_IN_OUT(
            "last_in_out", "Outer travel inward", MILLIMETRE, inwardLimit("out", "{angle_in_out}")),
    SPACING_IN(
            "spacing_in",
            "Race spacing, both inward",
            MILLIMETRE,
            length("{last_in_in}", "{last_in_out}")),

    FIRST_OUT_IN(
            "first_out_in",
            "Inner travel outward, first step",
            MILLIMETRE,
            outwardLimit("in", "{mid_angle_in}")),
    FIRST_OUT_OUT(
            "first_out_out",
            "Outer travel outward, first step",
            MILLIMETRE,
            outwardLimit("out", "{mid_angle_out}")),
    ANGLE_OUT_IN(
            "angle_out_in",
            "Inner angle, races outward",
            RADIAN,
            innerAngle("(0-{first_out_in})", "(0-{first_out_out})")),
    ANGLE_OUT_OUT(
            "angle_out_out",
            "Outer angle, races outward",
            RADIAN,
            outerAngle("(0-{first_out_in})", "(0-{first_out_out})")),
    LAST_OUT_IN(
            "last_out_in",
            "Inner travel outward",
            MILLIMETRE,
            outwardLimit("in", "{angle_out_in}")),
    LAST_OUT_OUT(
            "last_out_out",
            "Outer travel outward",
            MILLIMETRE,
            outwardLimit("out", "{angle_out_out}")),
    SPACING_OUT(
            "spacing_out",
            "Race spacing, both outward",
            MILLIMETRE,
            length("(0-{last_out_in})", "(0-{last_out_out})")),

    SOFT_IN_ANGLE_IN(
            "soft_in_angle_in",
            "Inner angle, inner race pulled out",
            RADIAN,
            soft("in", innerAngle("(0-{first_out_in})", "{first_in_out}"))),
    SOFT_IN_ANGLE_OUT(
            "soft_in_angle_out",
            "Outer angle, inner race pulled out",
            RADIAN,
            soft("in", outerAngle("(0-{first_out_in})", "{first_in_out}"))),
    SOFT_IN_SPACING(
            "soft_in_spacing",
            "Race spacing, inner race pulled out",
            MILLIMETRE,
            soft(
                    "in",
                    length(
                            "(0-(" + outwardLimit("in", "{soft_in_angle_in}") + "))",
                            inwardLimit("out", "{soft_in_angle_out}")))),
    SOFT_OUT_ANGLE_IN(
            "soft_out_angle_in",
            "Inner angle, outer race pulled out",
            RADIAN,
            soft("out", innerAngle("{first_in_in}", "(0-{first_out_out})"))),
    SOFT_OUT_ANGLE_OUT(
            "soft_out_angle_out",
            "Outer angle, outer race pulled out",
            RADIAN,
            soft("out", outerAngle("{first_in_in}", "(0-{first_out_out})"))),
    SOFT_OUT_SPACING(
            "soft_out_spacing",
            "Race spacing, outer race pulled out",
            MILLIMETRE,
            soft(
                    "out",
                    length(
                            inwardLimit("in", "{soft_out_angle_in}"),
                            "(0-(" + outwardLimit("out", "{soft_out_angle_out}") + "))"))),

    LONGEST(
            "longest",
            "Longest spacing with margin",
            MILLIMETRE,
            "{spacing_in}-{margin_in}-{path_doubt}"),
    LONGEST_VERTEX(
            "longest_vertex", "At the parabola's vertex", MILLIMETRE, vertex("longest", ">", "<")),
    SHORTEST(
            "shortest",
            "Shortest spacing with margin",
            MILLIMETRE,
            "MAX({spacing_out},{soft_in_spacing},{soft_out_spacing})+{margin_out}+{path_doubt}"),
    SHORTEST_VERTEX(
            "shortest_vertex",
            "At the parabola's vertex",
            MILLIMETRE,
            vertex("shortest", "<", ">")),

    SLACK_IN("slack_in", "Slack before bottoming", MILLIMETRE, "{spacing_in}-{spacing_final}"),
    SLACK_OUT("slack_out", "Slack before pull-out", MILLIMETRE, "{spacing_final}-{spacing_out}"),
    PUSH("push", "Push-in, equal at both ends", MILLIMETRE, push("{spacing_final}")),
    SHAFT_ANGLE_IN(
            "shaft_angle_in", "Inner angle, shaft in", RADIAN, innerAngle("{push}", "{push}")),
    SHAFT_ANGLE_OUT(
            "shaft_angle_out", "Outer angle, shaft in", RADIAN, outerAngle("{push}", "{push}")),
    FREE_PLAY(
            "free_play",
            "Free end play",
            MILLIMETRE,
            "MIN({slack_in},{slack_out},{last_in_in}+{last_out_in},{last_in_out}+{last_out_out})"),
    FLOAT_OUT_IN(
            "float_out_in",
            "Inner race, floated outward",
            MILLIMETRE,
            floated(
                    "MAX("
                            + "0-("
                            + outwardLimit("in", "{shaft_angle_in}")
                            + ")"
                            + ",{push}+({push}-("
                            + inwardLimit("out", "{shaft_angle_out}")
                            + "))*COS({shaft_angle_out})/COS({shaft_angle_in})"
                            + ")")),
    FLOAT_IN_IN(
            "float_in_in",
            "Inner race, floated inward",
            MILLIMETRE,
            floated(
                    "MIN("
                            + inwardLimit("in", "{shaft_angle_in}")
                            + ",{push}+({push}-("
                            + "0-("
                            + outwardLimit("out", "{shaft_angle_out}")
                            + ")"
                            + "))*COS({shaft_angle_out})/COS({shaft_angle_in})"
                            + ")")),
    FLOAT_OUT_OUT(
            "float_out_out",
            "Outer race, floated outward",
            MILLIMETRE,
            floated(
                    "MAX("
                            + "0-("
                            + outwardLimit("out", "{shaft_angle_out}")
                            + ")"
                            + ",{push}+({push}-("
                            + inwardLimit("in", "{shaft_angle_in}")
                            + "))*COS({shaft_angle_in})/COS({shaft_angle_out})"
                            + ")")),
    FLOAT_IN_OUT(
            "float_in_out",
            "Outer race, floated inward",
            MILLIMETRE,
            floated(
                    "MIN("
                            + inwardLimit("out", "{shaft_angle_out}")
                            + ",{push}+({push}-("
                            + "0-("
                            + outwardLimit("in", "{shaft_angle_in}")
                            + ")"
                            + "))*COS({shaft_angle_in})/COS({shaft_angle_out})"
                            + ")")),
    FLOAT_ANGLE_IN(
            "float_angle_in",
            "Steepest inner angle, floated",
            RADIAN,
            floated(
                    "MAX("
                            + innerAngle("{float_in_in}", "{float_out_out}")
                            + ","
                            + innerAngle("{float_out_in}", "{float_in_out}")
                            + ")")),
    FLOAT_ANGLE_OUT(
            "float_angle_out",
            "Steepest outer angle, floated",
            RADIAN,
            floated(
                    "MAX("
                            + outerAngle("{float_in_in}", "{float_out_out}")
                            + ","
                            + outerAngle("{float_out_in}", "{float_in_out}")
                            + ")")),
    MOUTH_IN("mouth_in", "Shaft end to cup, inner", MILLIMETRE, mouth("in")),
    MOUTH_OUT("mouth_out", "Shaft end to cup, outer", MILLIMETRE, mouth("out")),
    MOUTH(
            "mouth",
            "Least gap of shaft end to cup",
            MILLIMETRE,
            "IF(COUNT({mouth_in},{mouth_out})=0,\"\",MIN({mouth_in},{mouth_out}))"),
    RIM_GAP(
            "rim_gap",
            "Gap between the cups' rims",
            MILLIMETRE,
            "IF(COUNT({rim_in},{rim_out})<2,\"\"," + length("{rim_in}", "{rim_out}") + ")"),
    SOFT_RESERVE(
            "soft_reserve",
            "Reserve of a soft stop",
            MILLIMETRE,
            "IF({soft_in}+{soft_out}=0,\"\","
                    + "{spacing_final}-MAX({soft_in_spacing},{soft_out_spacing}))");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    PositionLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        lines.add(LiveLine.ordinal("step", Section.POSITION_WORK, POSITION, "Step", 0));
        for (PositionLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.POSITION_WORK,
                            POSITION,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    /**
     * The value by the core; infinite where there is nothing to tell, and the cell is empty then.
     */
    private double core(Row row) {
        return switch (this) {
            case TRAVEL -> row.before.travel();
            case TRAVEL_NORM -> row.before.hub().s();
            case PATH_FORE_AFT -> row.before.hub().foreAft();
            case PATH_REACH_SQUARED -> row.before.hub().reachSquared();
            case PATH_CAMBER -> row.before.hub().camber();
            case PATH_TOE -> row.before.hub().toe();
            case PATH_SLOPE -> row.side.setup().path().distanceSlope(row.before.travel());
            case PATH_DOUBT -> row.before.hub().doubt();
            case N_X -> row.before.line().n().x();
            case N_Y -> row.before.line().n().y();
            case N_Z -> row.before.line().n().z();
            case D_X -> row.before.line().d().x();
            case D_Y -> row.before.line().d().y();
            case D_Z -> row.before.line().d().z();
            case CENTRE_DISTANCE -> row.before.distance();
            case MID_ANGLE_IN -> row.before.innerAngle();
            case MID_ANGLE_OUT -> row.before.outerAngle();
            case FIRST_IN_IN -> row.inner().inward(row.before.innerAngle());
            case FIRST_IN_OUT -> row.outer().inward(row.before.outerAngle());
            case ANGLE_IN_IN -> row.before.inward().innerAngle();
            case ANGLE_IN_OUT -> row.before.inward().outerAngle();
            case LAST_IN_IN -> row.before.inward().innerTravel();
            case LAST_IN_OUT -> row.before.inward().outerTravel();
            case SPACING_IN -> row.before.inward().spacing();
            case FIRST_OUT_IN -> row.inner().outward(row.before.innerAngle());
            case FIRST_OUT_OUT -> row.outer().outward(row.before.outerAngle());
            case ANGLE_OUT_IN -> row.before.outward().innerAngle();
            case ANGLE_OUT_OUT -> row.before.outward().outerAngle();
            case LAST_OUT_IN -> row.before.outward().innerTravel();
            case LAST_OUT_OUT -> row.before.outward().outerTravel();
            case SPACING_OUT -> row.before.outward().spacing();
            case SOFT_IN_ANGLE_IN -> pulled(row.before.innerPulled()).innerAngle();
            case SOFT_IN_ANGLE_OUT -> pulled(row.before.innerPulled()).outerAngle();
            case SOFT_IN_SPACING -> pulled(row.before.innerPulled()).spacing();
            case SOFT_OUT_ANGLE_IN -> pulled(row.before.outerPulled()).innerAngle();
            case SOFT_OUT_ANGLE_OUT -> pulled(row.before.outerPulled()).outerAngle();
            case SOFT_OUT_SPACING -> pulled(row.before.outerPulled()).spacing();
            case LONGEST -> row.before.longest();
            case LONGEST_VERTEX -> row.side.window().longestVertices().get(row.number).value();
            case SHORTEST -> row.before.shortest();
            case SHORTEST_VERTEX -> row.side.window().shortestVertices().get(row.number).value();
            case SLACK_IN -> row.after.slackIn();
            case SLACK_OUT -> row.after.slackOut();
            case PUSH -> row.after.push();
            case SHAFT_ANGLE_IN -> row.after.innerAngle();
            case SHAFT_ANGLE_OUT -> row.after.outerAngle();
            case FREE_PLAY -> row.after.freePlay();
            case FLOAT_OUT_IN -> row.ends().innerOut();
            case FLOAT_IN_IN -> row.ends().innerIn();
            case FLOAT_OUT_OUT -> row.ends().outerOut();
            case FLOAT_IN_OUT -> row.ends().outerIn();
            case FLOAT_ANGLE_IN -> row.ends().innerAngle();
            case FLOAT_ANGLE_OUT -> row.ends().outerAngle();
            case MOUTH_IN -> row.after.innerMouth();
            case MOUTH_OUT -> row.after.outerMouth();
            case MOUTH -> Math.min(row.after.innerMouth(), row.after.outerMouth());
            case RIM_GAP -> row.side.mouthGap(row.number).orElse(Double.POSITIVE_INFINITY);
            case SOFT_RESERVE -> row.after.softReserve();
        };
    }

    /** Infinite where no bore or lip asks for the float. */
    private static final EndFloat UNASKED =
            new EndFloat(
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY);

    /** Infinite where the joint's outward stop is hard. */
    private static PlungeState pulled(Optional<PlungeState> state) {
        return state.orElse(HARD);
    }

    private static final PlungeState HARD =
            new PlungeState(
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY);

    /** Since which version a line is there, and when its formula was last changed. */
    @Override
    public int since() {
        return name.startsWith("soft_in_")
                        || name.startsWith("soft_out_")
                        || name.startsWith("float_")
                ? 2
                : 1;
    }

    @Override
    public int revised() {
        return switch (this) {
            case SHORTEST, SOFT_RESERVE, PATH_DOUBT, MOUTH_IN, MOUTH_OUT -> 2;
            default -> since();
        };
    }

    /** Empty where the joint's outward stop is hard. */
    private static String soft(String end, String formula) {
        return "IF({soft_" + end + "}=1," + formula + ",\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult side = sizing.resultOrNull(index);
        if (side == null) {
            return CellValue.NOT_AVAILABLE;
        }
        double value = core(new Row(side, index.row()));
        return Double.isInfinite(value) ? CellValue.of("") : CellValue.of(value);
    }

    @Override
    public String at(Index index) {
        return "IF({ready}=1," + unguarded(index.row()) + ",NA())";
    }

    /** The first and the last row have a neighbour on one side only, so no parabola. */
    private String unguarded(int row) {
        boolean end = row == 0 || row == POSITION.rows() - 1;
        return switch (this) {
            case LONGEST_VERTEX -> end ? "{longest}" : formula;
            case SHORTEST_VERTEX -> end ? "{shortest}" : formula;
            default -> formula;
        };
    }

    /** Part of a steered hub's stub axis, or of its datum's move, along the vehicle. */
    private static String forward(String what) {
        return "{steer_"
                + what
                + "_out}*SIN({path_toe})*COS({path_camber})+{steer_"
                + what
                + "_ahead}*COS({path_toe})+{steer_"
                + what
                + "_up}*SIN({path_camber})*SIN({path_toe})";
    }

    /** The same outward. */
    private static String outward(String what) {
        return "{steer_"
                + what
                + "_out}*COS({path_toe})*COS({path_camber})-{steer_"
                + what
                + "_ahead}*SIN({path_toe})+{steer_"
                + what
                + "_up}*SIN({path_camber})*COS({path_toe})";
    }

    /** The same upward. */
    private static String up(String what) {
        return "{steer_"
                + what
                + "_up}*COS({path_camber})-{steer_"
                + what
                + "_out}*SIN({path_camber})";
    }

    /**
     * A row's value, or that of the parabola through it and its neighbours when it is an extreme
     * between them.
     *
     * @param bent how the second difference compares with 0 at such an extreme
     * @param beyond how the row compares with a neighbour when it is not one
     */
    private static String vertex(String name, String bent, String beyond) {
        String here = "{" + name + "}";
        String before = "{" + name + "-1}";
        String after = "{" + name + "+1}";
        String rise = "((" + here + "-" + before + ")/({travel}-{travel-1}))";
        String next = "((" + after + "-" + here + ")/({travel+1}-{travel}))";
        String bend = "((" + next + "-" + rise + ")/({travel+1}-{travel-1}))";
        String slope = "(" + rise + "+" + bend + "*({travel}-{travel-1}))";
        return "IF(OR(" + before + beyond + here + "," + after + beyond + here + ")," + here
                + ",IF(" + bend + bent + "0," + here + "-" + slope + "^2/(4*" + bend + ")," + here
                + "))";
    }

    /** Equal push-in at both ends of a shaft of this race spacing. */
    static String push(String spacing) {
        return "(SQRT(" + pushRoot(spacing) + ")-" + pushedAlong() + ")/" + pushedTwice();
    }

    /** Negative where a shaft of this race spacing can't join the centres. */
    static String pushRoot(String spacing) {
        return pushedAlong() + "^2-" + pushedTwice() + "*({centre_distance}^2-" + spacing + "^2)";
    }

    private static String pushedAlong() {
        return "({d_x}*({u_x}+{n_x})+{d_y}*({u_y}+{n_y})+{d_z}*({u_z}+{n_z}))";
    }

    private static String pushedTwice() {
        return "(2+2*({u_x}*{n_x}+{u_y}*{n_y}+{u_z}*{n_z}))";
    }

    /** Empty where neither cup has a bore or a lip that asks for the float. */
    private static String floated(String formula) {
        return "IF(COUNT({cup_radius_in},{lip_radius_in},{cup_radius_out},{lip_radius_out})=0,\"\","
                + formula
                + ")";
    }

    /**
     * Least gap between the tilted shaft and cup or lip over the float; empty where neither is
     * given or reached.
     */
    private static String mouth(String end) {
        String angle = "{float_angle_" + end + "}";
        String overhang = "{overhang_" + end + "}";
        String half = "{end_radius_" + end + "}";
        String cup = "{cup_radius_" + end + "}";
        String lip = "{lip_radius_" + end + "}";
        String depth = "{lip_depth_" + end + "}";
        String most = "MAX({float_out_" + end + "},{float_in_" + end + "})";
        String least = "MIN({float_out_" + end + "},{float_in_" + end + "})";
        String reached = depth + "-" + overhang + "*COS(" + angle + ")";
        String corner =
                cup + "-(" + overhang + "*SIN(" + angle + ")+" + half + "*COS(" + angle + "))";
        String off =
                "MAX(" + most + "-" + depth + "," + depth + "-MAX(" + least + "," + reached + "))";
        String edge = lip + "-(" + off + "*TAN(" + angle + ")+" + half + "/COS(" + angle + "))";
        return "IF("
                + lip
                + "=\"\",IF("
                + cup
                + "=\"\",\"\","
                + corner
                + "),IF("
                + most
                + ">"
                + reached
                + ",IF("
                + cup
                + "=\"\","
                + edge
                + ",MIN("
                + corner
                + ","
                + edge
                + ")),IF("
                + cup
                + "=\"\",\"\","
                + corner
                + ")))";
    }

    /** Polynomial of the side's path at the row's normalised travel. */
    private static String horner(String coefficients) {
        return PathLines.horner(coefficients, "{travel_norm}");
    }

    /** The same of a curve that scenarios may have of their own. */
    private static String curve(String curve) {
        return OwnPointLines.either(horner("own_" + curve), horner("coef_" + curve));
    }

    private static String slope(String curve) {
        return OwnPointLines.either(
                PathLines.hornerSlope("own_" + curve, "{travel_norm}"),
                PathLines.hornerSlope("coef_" + curve, "{travel_norm}"));
    }

    /** Length of {@code d + a u + b n}. */
    private static String length(String a, String b) {
        StringBuilder text = new StringBuilder("SQRT(");
        for (String axis : List.of("x", "y", "z")) {
            text.append(axis.equals("x") ? "" : "+").append("({d_").append(axis).append("}");
            if (!a.equals("0")) {
                text.append("+").append(a).append("*{u_").append(axis).append("}");
                text.append("+").append(b).append("*{n_").append(axis).append("}");
            }
            text.append(")^2");
        }
        return text.append(")").toString();
    }

    /**
     * Angle between {@code d + a u + b n} and u. As {@code u × u} is nothing, only {@code d + b n}
     * enters the cross product.
     */
    static String innerAngle(String a, String b) {
        return angle("u", "n", a, b);
    }

    static String outerAngle(String a, String b) {
        return angle("n", "u", b, a);
    }

    private static String angle(String to, String other, String along, String across) {
        String x = moved("x", other, across);
        String y = moved("y", other, across);
        String z = moved("z", other, across);
        String tx = "{" + to + "_x}";
        String ty = "{" + to + "_y}";
        String tz = "{" + to + "_z}";
        return "ATAN2("
                + (x + "*" + tx + "+" + y + "*" + ty + "+" + z + "*" + tz)
                + (along.equals("0") ? "" : "+" + along)
                + ",SQRT("
                + ("(" + y + "*" + tz + "-" + z + "*" + ty + ")^2")
                + ("+(" + z + "*" + tx + "-" + x + "*" + tz + ")^2")
                + ("+(" + x + "*" + ty + "-" + y + "*" + tx + ")^2")
                + "))";
    }

    private static String moved(String axis, String other, String by) {
        String d = "{d_" + axis + "}";
        return by.equals("0") ? d : "(" + d + "+" + by + "*{" + other + "_" + axis + "})";
    }

    private static String inwardLimit(String end, String angle) {
        return "MIN("
                + limit("limit_inward", end, angle)
                + ",{cup_bottom_"
                + end
                + "}-{overhang_"
                + end
                + "}*COS("
                + angle
                + ")-{end_radius_"
                + end
                + "}*SIN("
                + angle
                + "))";
    }

    private static String outwardLimit(String end, String angle) {
        return limit("limit_outward", end, angle) + "+{boot_change_" + end + "}";
    }

    /** The joint's limit at an angle, looked up in the sorted list of all joints' limits. */
    private static String limit(String list, String end, String angle) {
        String first = "MAX(" + angle + ",{limit_first_" + end + "})";
        String key = "{limit_base_" + end + "}+" + first;
        return "LOOKUP("
                + key
                + ",limit_key,"
                + list
                + "_at_zero)+"
                + first
                + "*LOOKUP("
                + key
                + ",limit_key,"
                + list
                + "_slope)";
    }

    /** What the core knows of one row. */
    private static final class Row {
        final SideResult side;
        final int number;
        final Position before;
        final FittedPosition after;

        Row(SideResult side, int number) {
            this.side = side;
            this.number = number;
            before = side.positions().get(number);
            after = side.fitted().get(number);
        }

        EndFloat ends() {
            return after.endFloat().orElse(UNASKED);
        }

        MountedJoint inner() {
            return side.setup().inner();
        }

        MountedJoint outer() {
            return side.setup().outer();
        }
    }
}
