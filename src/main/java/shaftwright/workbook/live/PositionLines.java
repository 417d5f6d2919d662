package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.POSITION;
import static shaftwright.workbook.live.Quantity.MILLIMETRE;
import static shaftwright.workbook.live.Quantity.NUMBER;
import static shaftwright.workbook.live.Quantity.RADIAN;

import java.util.List;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Binding;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideResult;
import shaftwright.workbook.CellValue;

/**
 * The position table of one side of one scenario: hub, axes, angles, travel limits, window and
 * slack at each travel step, in mm and radians. Every cell shows {@code #N/A} while its side has no
 * numbers, so that charts leave a gap.
 */
final class PositionLines {
    private PositionLines() {}

    static void declare(LiveLines lines) {
        travelAndHub(lines);
        axes(lines);
        stroke(lines, Stroke.INWARD);
        stroke(lines, Stroke.OUTWARD);
        window(lines);
        chosenShaft(lines);
    }

    private static void travelAndHub(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "step",
                        Section.POSITION_WORK,
                        POSITION,
                        "Step",
                        Quantity.ORDINAL,
                        index -> String.valueOf(index.row()),
                        (sizing, index) -> CellValue.of(index.row())));
        position(
                lines,
                "travel",
                "Travel",
                MILLIMETRE,
                "IF({step}<=12,{t_low}*(12-{step})/12,{t_high}*({step}-12)/12)",
                row -> row.before.travel());
        position(
                lines,
                "travel_norm",
                "Travel, normalised",
                NUMBER,
                "(2*{travel}-({path_high}+{path_low}))/({path_high}-{path_low})",
                row -> row.before.hub().s());
        position(
                lines,
                "path_fore_aft",
                "Outer datum ahead",
                MILLIMETRE,
                horner("coef_fore_aft"),
                row -> row.before.hub().foreAft());
        position(
                lines,
                "path_reach_squared",
                "Lateral reach squared",
                NUMBER,
                horner("coef_reach_squared"),
                row -> row.before.hub().reachSquared());
        position(
                lines,
                "path_camber",
                "Camber",
                RADIAN,
                horner("coef_camber"),
                row -> row.before.hub().camber());
        position(
                lines,
                "path_toe",
                "Toe",
                RADIAN,
                horner("coef_toe"),
                row -> row.before.hub().toe());
        position(
                lines,
                "path_slope",
                "Change of distance with height",
                NUMBER,
                "(("
                        + slope("coef_reach_squared")
                        + ")/({path_high}-{path_low})+{path_fore_aft}*2*("
                        + slope("coef_fore_aft")
                        + ")/({path_high}-{path_low})+({ride_rise}+{travel}))"
                        + "/SQRT({path_reach_squared}+{path_fore_aft}^2+({ride_rise}+{travel})^2)",
                row -> row.side.setup().path().distanceSlope(row.before.travel()));
        position(
                lines,
                "path_doubt",
                "Doubt of the fit",
                MILLIMETRE,
                "2*SQRT(({variance_distance}+{path_slope}^2*{variance_height})*MAX(0,"
                        + horner("coef_hat")
                        + "))+{curve_allowance}",
                row -> row.before.hub().doubt());
    }

    private static void axes(LiveLines lines) {
        position(
                lines,
                "n_x",
                "Stub axis forward",
                NUMBER,
                "SIN({path_toe})*COS({path_camber})",
                row -> row.before.line().n().x());
        position(
                lines,
                "n_y",
                "Stub axis outward",
                NUMBER,
                "COS({path_toe})*COS({path_camber})",
                row -> row.before.line().n().y());
        position(
                lines,
                "n_z",
                "Stub axis up",
                NUMBER,
                "0-SIN({path_camber})",
                row -> row.before.line().n().z());
        position(
                lines,
                "d_x",
                "Centres apart forward",
                MILLIMETRE,
                "{path_fore_aft}-{shift_x}-{centre_in}*{u_x}-{centre_out}*{n_x}",
                row -> row.before.line().d().x());
        position(
                lines,
                "d_y",
                "Centres apart outward",
                MILLIMETRE,
                "SQRT({path_reach_squared})+{shift_hub}-{shift_y}-{centre_in}*{u_y}-{centre_out}*{n_y}",
                row -> row.before.line().d().y());
        position(
                lines,
                "d_z",
                "Centres apart up",
                MILLIMETRE,
                "{ride_rise}+{travel}-{shift_z}-{centre_in}*{u_z}-{centre_out}*{n_z}",
                row -> row.before.line().d().z());
        position(
                lines,
                "centre_distance",
                "Centre distance",
                MILLIMETRE,
                length("0", "0"),
                row -> row.before.distance());
        position(
                lines,
                "mid_angle_in",
                "Inner angle, mid-stroke",
                RADIAN,
                innerAngle("0", "0"),
                row -> row.before.innerAngle());
        position(
                lines,
                "mid_angle_out",
                "Outer angle, mid-stroke",
                RADIAN,
                outerAngle("0", "0"),
                row -> row.before.outerAngle());
    }

    /** Columns of the state with both races on their inward or outward limit. */
    private static void stroke(LiveLines lines, Stroke stroke) {
        String way = stroke.suffix;
        String firstIn = "{first_" + way + "_in}";
        String firstOut = "{first_" + way + "_out}";
        String lastIn = stroke.signed("{last_" + way + "_in}");
        String lastOut = stroke.signed("{last_" + way + "_out}");
        position(
                lines,
                "first_" + way + "_in",
                "Inner travel " + stroke.word + ", first step",
                MILLIMETRE,
                stroke.limit("in", "{mid_angle_in}"),
                row -> stroke.travel(row.inner(), row.before.innerAngle()));
        position(
                lines,
                "first_" + way + "_out",
                "Outer travel " + stroke.word + ", first step",
                MILLIMETRE,
                stroke.limit("out", "{mid_angle_out}"),
                row -> stroke.travel(row.outer(), row.before.outerAngle()));
        position(
                lines,
                "angle_" + way + "_in",
                "Inner angle, races " + stroke.word,
                RADIAN,
                innerAngle(stroke.signed(firstIn), stroke.signed(firstOut)),
                row -> stroke.state(row.before).innerAngle());
        position(
                lines,
                "angle_" + way + "_out",
                "Outer angle, races " + stroke.word,
                RADIAN,
                outerAngle(stroke.signed(firstIn), stroke.signed(firstOut)),
                row -> stroke.state(row.before).outerAngle());
        position(
                lines,
                "last_" + way + "_in",
                "Inner travel " + stroke.word,
                MILLIMETRE,
                stroke.limit("in", "{angle_" + way + "_in}"),
                row -> stroke.state(row.before).innerTravel());
        position(
                lines,
                "last_" + way + "_out",
                "Outer travel " + stroke.word,
                MILLIMETRE,
                stroke.limit("out", "{angle_" + way + "_out}"),
                row -> stroke.state(row.before).outerTravel());
        position(
                lines,
                "spacing_" + way,
                "Race spacing, both " + stroke.word,
                MILLIMETRE,
                length(lastIn, lastOut),
                row -> stroke.state(row.before).spacing());
    }

    private static void window(LiveLines lines) {
        position(
                lines,
                "longest",
                "Longest spacing with margin",
                MILLIMETRE,
                "{spacing_in}-{margin_in}-{path_doubt}",
                row -> row.before.longest());
        vertex(
                lines,
                "longest",
                ">",
                "<",
                row -> row.side.window().longestVertices().get(row.number));
        position(
                lines,
                "shortest",
                "Shortest spacing with margin",
                MILLIMETRE,
                "{spacing_out}+{margin_out}+{path_doubt}",
                row -> row.before.shortest());
        vertex(
                lines,
                "shortest",
                "<",
                ">",
                row -> row.side.window().shortestVertices().get(row.number));
    }

    /**
     * A row's value, or that of the parabola through it and its neighbours when it is an extreme
     * between them.
     *
     * @param bent how the second difference compares with 0 at such an extreme
     * @param beyond how the row compares with a neighbour when it is not one
     */
    private static void vertex(
            LiveLines lines, String name, String bent, String beyond, VertexOf core) {
        String here = "{" + name + "}";
        String before = "{" + name + "-1}";
        String after = "{" + name + "+1}";
        String rise = "((" + here + "-" + before + ")/({travel}-{travel-1}))";
        String next = "((" + after + "-" + here + ")/({travel+1}-{travel}))";
        String bend = "((" + next + "-" + rise + ")/({travel+1}-{travel-1}))";
        String slope = "(" + rise + "+" + bend + "*({travel}-{travel-1}))";
        String value =
                "IF(OR(" + before + beyond + here + "," + after + beyond + here + ")," + here
                        + ",IF(" + bend + bent + "0," + here + "-" + slope + "^2/(4*" + bend + "),"
                        + here + "))";
        lines.add(
                guarded(
                        name + "_vertex",
                        "At the parabola's vertex",
                        MILLIMETRE,
                        index ->
                                index.row() == 0 || index.row() == POSITION.rows() - 1
                                        ? here
                                        : value,
                        row -> core.of(row).value()));
    }

    private interface VertexOf {
        Binding of(Row row);
    }

    private static void chosenShaft(LiveLines lines) {
        position(
                lines,
                "slack_in",
                "Slack before bottoming",
                MILLIMETRE,
                "{spacing_in}-{spacing_final}",
                row -> row.after.slackIn());
        position(
                lines,
                "slack_out",
                "Slack before pull-out",
                MILLIMETRE,
                "{spacing_final}-{spacing_out}",
                row -> row.after.slackOut());
        String along = "({d_x}*({u_x}+{n_x})+{d_y}*({u_y}+{n_y})+{d_z}*({u_z}+{n_z}))";
        String both = "(2+2*({u_x}*{n_x}+{u_y}*{n_y}+{u_z}*{n_z}))";
        position(
                lines,
                "push",
                "Push-in, equal at both ends",
                MILLIMETRE,
                "(SQRT("
                        + along
                        + "^2-"
                        + both
                        + "*({centre_distance}^2-{spacing_final}^2))-"
                        + along
                        + ")/"
                        + both,
                row -> row.after.push());
        position(
                lines,
                "shaft_angle_in",
                "Inner angle, shaft in",
                RADIAN,
                innerAngle("{push}", "{push}"),
                row -> row.after.innerAngle());
        position(
                lines,
                "shaft_angle_out",
                "Outer angle, shaft in",
                RADIAN,
                outerAngle("{push}", "{push}"),
                row -> row.after.outerAngle());
        position(
                lines,
                "free_play",
                "Free end play",
                MILLIMETRE,
                "MIN({slack_in},{slack_out},{last_in_in}+{last_out_in},{last_in_out}+{last_out_out})",
                row -> row.after.freePlay());
        mouth(lines, "in", row -> row.after.innerMouth());
        mouth(lines, "out", row -> row.after.outerMouth());
        lines.add(
                guardedOptional(
                        "mouth",
                        "Least gap of shaft end to cup",
                        MILLIMETRE,
                        "IF(COUNT({mouth_in},{mouth_out})=0,\"\",MIN({mouth_in},{mouth_out}))",
                        row -> Math.min(row.after.innerMouth(), row.after.outerMouth())));
        lines.add(
                guardedOptional(
                        "soft_reserve",
                        "Reserve of a soft stop",
                        MILLIMETRE,
                        "IF({soft_in}+{soft_out}=0,\"\",{spacing_final}-{centre_distance}"
                                + "+MIN(IF({soft_in}=1,{last_out_in}-{last_in_out},1E+9),"
                                + "IF({soft_out}=1,{last_out_out}-{last_in_in},1E+9)))",
                        row -> row.after.softReserve()));
    }

    /** Gap between the tilted shaft end and cup or lip; empty where neither is given or reached. */
    private static void mouth(LiveLines lines, String end, OfRow core) {
        String angle = "{shaft_angle_" + end + "}";
        String overhang = "{overhang_" + end + "}";
        String half = "{end_radius_" + end + "}";
        String cup = "{cup_radius_" + end + "}";
        String lip = "{lip_radius_" + end + "}";
        String depth = "{lip_depth_" + end + "}";
        String corner =
                cup + "-(" + overhang + "*SIN(" + angle + ")+" + half + "*COS(" + angle + "))";
        String edge =
                lip
                        + "-(("
                        + depth
                        + "-{push})*TAN("
                        + angle
                        + ")+"
                        + half
                        + "/COS("
                        + angle
                        + "))";
        String reached = "{push}+" + overhang + "*COS(" + angle + ")>" + depth;
        String formula =
                "IF("
                        + lip
                        + "=\"\",IF("
                        + cup
                        + "=\"\",\"\","
                        + corner
                        + "),IF("
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
        lines.add(
                guardedOptional(
                        "mouth_" + end,
                        "Shaft end to cup, " + (end.equals("in") ? "inner" : "outer"),
                        MILLIMETRE,
                        formula,
                        core));
    }

    /** Polynomial of the side's path at the row's normalised travel. */
    private static String horner(String coefficients) {
        return PathLines.horner(coefficients, "{travel_norm}");
    }

    private static String slope(String coefficients) {
        return PathLines.hornerSlope(coefficients, "{travel_norm}");
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
    private static String innerAngle(String a, String b) {
        return angle("u", "n", a, b);
    }

    private static String outerAngle(String a, String b) {
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

    /** Inward or outward: which limits, which sign along the axes. */
    private enum Stroke {
        INWARD("in", "inward"),
        OUTWARD("out", "outward");

        final String suffix;
        final String word;

        Stroke(String suffix, String word) {
            this.suffix = suffix;
            this.word = word;
        }

        String signed(String travel) {
            return this == INWARD ? travel : "(0-" + travel + ")";
        }

        PlungeState state(Position position) {
            return this == INWARD ? position.inward() : position.outward();
        }

        double travel(MountedJoint joint, double angle) {
            return this == INWARD ? joint.inward(angle) : joint.outward(angle);
        }

        /** The joint's limit at an angle, looked up in the sorted list of all joints' limits. */
        String limit(String end, String angle) {
            String key = "{limit_base_" + end + "}+MAX(" + angle + ",{limit_first_" + end + "})";
            String list = this == INWARD ? "limit_inward" : "limit_outward";
            String race =
                    "LOOKUP("
                            + key
                            + ",limit_key,"
                            + list
                            + "_at_zero)+MAX("
                            + angle
                            + ",{limit_first_"
                            + end
                            + "})*LOOKUP("
                            + key
                            + ",limit_key,"
                            + list
                            + "_slope)";
            if (this == OUTWARD) {
                return race + "+{boot_change_" + end + "}";
            }
            return "MIN("
                    + race
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

        MountedJoint inner() {
            return side.setup().inner();
        }

        MountedJoint outer() {
            return side.setup().outer();
        }
    }

    private interface OfRow {
        double of(Row row);
    }

    private static void position(
            LiveLines lines,
            String name,
            String label,
            Quantity quantity,
            String formula,
            OfRow core) {
        lines.add(guarded(name, label, quantity, index -> formula, core));
    }

    private static LiveLine guarded(
            String name, String label, Quantity quantity, LiveLine.Formula formula, OfRow core) {
        return new LiveLine(
                name,
                Section.POSITION_WORK,
                POSITION,
                label,
                quantity,
                index -> "IF({ready}=1," + formula.at(index) + ",NA())",
                (sizing, index) -> {
                    SideResult side = sizing.resultOrNull(index);
                    return side == null
                            ? CellValue.NOT_AVAILABLE
                            : CellValue.of(core.of(new Row(side, index.row())));
                });
    }

    /**
     * A line whose core value is infinite where there is nothing to tell; the cell is empty then.
     */
    private static LiveLine guardedOptional(
            String name, String label, Quantity quantity, String formula, OfRow core) {
        return new LiveLine(
                name,
                Section.POSITION_WORK,
                POSITION,
                label,
                quantity,
                index -> "IF({ready}=1," + formula + ",NA())",
                (sizing, index) -> {
                    SideResult side = sizing.resultOrNull(index);
                    if (side == null) {
                        return CellValue.NOT_AVAILABLE;
                    }
                    double value = core.of(new Row(side, index.row()));
                    return Double.isInfinite(value) ? CellValue.of("") : CellValue.of(value);
                });
    }
}
