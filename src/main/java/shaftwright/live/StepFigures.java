package shaftwright.live;

import java.util.List;
import java.util.regex.Pattern;
import shaftwright.contract.Grid;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.TravelSteps;
import shaftwright.study.CardPrint;
import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep;
import shaftwright.study.DerivationStep.Kind;
import shaftwright.study.DerivationStep.Topic;

/**
 * Formulas of the figures on the way to the card's length, of one group of a topic. Most of them
 * look a working line up, at the card's scenario and, of the position table, at the row that sets
 * the limit.
 *
 * @param first whether it is the first group: the inner end, or the longest shaft
 */
record StepFigures(Topic topic, boolean first) {
    /** A line's place among those that {@link #card} replaces in a formula of a scenario's side. */
    private static final Pattern LINE = Pattern.compile("\\{([a-z_]+)}");

    private static final List<ShaftEnd> ENDS = List.of(ShaftEnd.values());

    private static final List<Axis> AXES = List.of(Axis.values());

    /** The figure of a step on the page, in the workbook's unit. */
    String cell(DerivationStep step) {
        return cell(step, 0);
    }

    private String cell(DerivationStep step, int at) {
        int row = DerivationLine.of(step.topic()).indexOf(new DerivationLine(step, 0));
        return "{" + DerivationLines.name(step.topic(), first, at) + "#" + row + "}";
    }

    private StepFigures other() {
        return new StepFigures(topic, !first);
    }

    private ShaftEnd end() {
        return first ? ShaftEnd.INNER : ShaftEnd.OUTER;
    }

    private static ShaftEnd end(int at) {
        return ENDS.get(at);
    }

    /** What stands at a place of the group. */
    String formula(DerivationLine line, int at, Kind kind) {
        String figure =
                line.step() == DerivationStep.BENCH
                        ? bench(line.row(), at, kind)
                        : figure(line.step(), at, kind);
        return Given.number(
                "{shop_e}", topic == Topic.CHOICE ? allowed(CardPrint.LENGTHS, figure) : figure);
    }

    private static String allowed(CardPrint least, String formula) {
        return Given.when("{card_allowed}>=" + least.level(), formula);
    }

    /** A working figure, mm or rad, as it is shown. */
    private static String shown(Kind kind, String working) {
        return switch (kind) {
            case LENGTH -> "(" + working + ")/tape_mm";
            case ANGLE -> "DEGREES(" + working + ")";
            default -> working;
        };
    }

    private String ofEnd(String line) {
        return card(line + "_" + end().shortWord());
    }

    /** A row of the joint in the sorted list of all joints' limits. */
    private String bench(int row, int at, Kind kind) {
        String column = List.of("limit_angle", "limit_inward", "limit_outward").get(at);
        Pieces pieces =
                Pieces.of("joint", ofEnd("joint_row")).and("row", row).and("column", column);
        return pieces.in("IF(COUNTIF(limit_joint,<joint>)><row>,")
                + shown(kind, pieces.in("INDEX(<column>,MATCH(<joint>,limit_joint,0)+<row>)"))
                + ",\"\")";
    }

    /** Some steps go on from figures as they are shown, or have none everywhere. */
    private String figure(DerivationStep step, int at, Kind kind) {
        return switch (step) {
            case NEAREST, READ -> Given.when("{linkage_used}=0", shown(kind, working(step, at)));
            case SHAFT_END -> inward(end(at), shown(kind, working(step, at)), "\"\"");
            case TRAVELS -> {
                String race = cell(DerivationStep.RACE, at);
                String least = "MIN(" + race + "," + cell(DerivationStep.SHAFT_END, at) + ")";
                yield inward(end(at), least, race);
            }
            case MOCK_UP -> "ROUND(" + shown(kind, working(step, at)) + ",8)";
            case BESIDE_TRAVEL, BESIDE -> {
                String row = cell(DerivationStep.ROW);
                String there = at == 0 ? row + ">1" : row + "<" + Grid.POSITION.rows();
                yield Given.when(there, shown(kind, working(step, at)));
            }
            case WINDOW -> allowed(CardPrint.WINDOW, shown(kind, working(step, at)));
            case SLACK -> {
                String limit = cell(DerivationStep.SPACING);
                String shaft = (first ? this : other()).cell(DerivationStep.CARD_SPACING);
                yield first ? limit + "-" + shaft : shaft + "-" + limit;
            }
            default -> shown(kind, working(step, at));
        };
    }

    /** In mm, rad or plain. */
    private String working(DerivationStep step, int at) {
        return switch (step) {
            case HEIGHT -> first ? "{inner_height_used}" : "{ride_height_used}";
            case MOVED -> first ? card("shift_" + letter(at)) : card("shift_hub");
            case AXIS -> card("u_" + letter(at));
            case CENTRE -> ofEnd("centre");
            case SEAT -> ofEnd("seat");
            case STUB -> ofEnd("stub");
            case OVERHANG -> ofEnd("overhang");
            case END_RADIUS -> ofEnd("end_radius");
            case CUP -> ofEnd("cup_bottom");
            case BOOT -> ofEnd("boot_change");
            case ROW -> card(bound() + "_row");
            case TRAVEL -> at("travel");
            case OUTER_HEIGHT -> "{ride_height_used}+" + at("travel");
            case NEAREST -> at == 0 ? nearest() : read("row_height");
            case READ -> read("row_counted") + (at == 0 ? "" : "-" + read("row_residual"));
            case BY_CURVE -> curve(at);
            case DISTANCE ->
                    Pieces.of("x", curve(0))
                            .and("reach", at("path_reach_squared"))
                            .and("z", curve(2))
                            .in("SQRT(<reach>+<x>^2+(<z>)^2)");
            case TILT -> at(at == 0 ? "path_camber" : "path_toe");
            case STUB_AXIS -> at("n_" + letter(at));
            case STEERED -> steered(AXES.get(at));
            case APART -> at("d_" + letter(at));
            case CENTRE_DISTANCE -> at("centre_distance");
            case MIDDLE_ANGLES -> at("mid_angle_" + end(at).shortWord());
            case WAY -> way(end(at));
            case FIRST_TRAVEL ->
                    inward(
                            end(at),
                            at("first_in_" + end(at).shortWord()),
                            at("first_out_" + end(at).shortWord()));
            case ANGLES -> angles(end(at).shortWord());
            case RACE ->
                    inward(
                            end(at),
                            cards(CentreFormulas.raceInward(end(at), angle(end(at)))),
                            cards(CentreFormulas.outwardLimit(end(at), angle(end(at)))));
            case SHAFT_END -> cards(CentreFormulas.endInward(end(at), angle(end(at))));
            case MOCK_UP -> spacing() + "-" + byTravels();
            case SPACING -> spacing();
            case MARGIN -> at == 0 ? margin() : doubt();
            case WITH_MARGIN -> at(withMargin());
            case BESIDE_TRAVEL -> at("travel", at == 0 ? "-1" : "+1");
            case BESIDE -> at(withMargin(), at == 0 ? "-1" : "+1");
            case BOUND -> card(bound());
            case WINDOW -> card(first ? "e_high" : "e_low");
            case PREFERENCE -> card("length_bias_read");
            case WANTED -> card("e_target");
            case INCREMENT -> "shop_increment_read";
            case CHOSEN -> card("e_chosen");
            case CLIP_TO_CLIP -> card("k_chosen");
            case CARD_CLIP -> card("k_final");
            case CARD_STUB ->
                    cards(EndText.of(end(at), "IF({plan_row}=0,{stub_<end>},{plan_stub_<end>})"));
            case CARD_END -> card("e_final");
            case CARD_SPACING -> card("spacing_final");
            default -> throw new IllegalArgumentException(step + " is no working figure");
        };
    }

    private static String letter(int at) {
        return AXES.get(at).letter;
    }

    private String bound() {
        return first ? "s_max" : "s_min";
    }

    private String withMargin() {
        return first ? "longest" : "shortest";
    }

    /** The card's scenario's cell of a line. */
    private static String card(String line) {
        return Card.cell(line);
    }

    /** A formula over lines of a scenario's side, for the card's scenario. */
    private static String cards(String formula) {
        return LINE.matcher(formula).replaceAll(line -> card(line.group(1)));
    }

    /** The limit's row of a line of the position table. */
    private String at(String line) {
        return at(line, "");
    }

    private String at(String line, String more) {
        return Pieces.of("line", line)
                .and("rows", TravelSteps.COUNT)
                .and("row", cell(DerivationStep.ROW))
                .and("more", more)
                .in("INDEX(<line>~,(card_index-1)*<rows>+<row><more>)");
    }

    private String nearest() {
        String off = "{how_off_" + (first ? "first" : "second") + ":all}";
        return "MATCH(MIN(" + off + ")," + off + ",0)";
    }

    /** The nearest reading's cell of a line. */
    private String read(String line) {
        return "INDEX({" + line + ":all}," + cell(DerivationStep.NEAREST) + ")";
    }

    private String curve(int at) {
        return switch (AXES.get(at)) {
            case X -> at("path_fore_aft");
            case Y -> "SQRT(" + at("path_reach_squared") + ")";
            case Z -> "{ride_rise}+" + at("travel");
        };
    }

    private String steered(Axis axis) {
        return LINE.matcher(PositionLines.steered(axis, "move"))
                .replaceAll(
                        line -> {
                            String name = line.group(1);
                            return name.startsWith("path_") ? at(name) : card(name);
                        });
    }

    /** 1 where an end's race goes in at the limit, -1 where it goes out. */
    private String way(ShaftEnd end) {
        if (first) {
            return "1";
        }
        Pieces spacings =
                Pieces.of("out", at("spacing_out"))
                        .and("inner", at("soft_in_spacing"))
                        .and("outer", at("soft_out_spacing"))
                        .and("inner_soft", card("soft_in"))
                        .and("outer_soft", card("soft_out"));
        // The inner joint is pulled out with the outer race in, and the other way round.
        return end == ShaftEnd.OUTER
                ? spacings.in(
                        """
                        IF(<inner_soft>=1,IF(<inner>><out>,
                        IF(<outer_soft>=1,IF(<inner>>=<outer>,1,-1),1),-1),-1)
                        """)
                : spacings.and("outer_way", wayCell(ShaftEnd.OUTER))
                        .in(
                                """
                                IF(<outer_way>=1,-1,
                                IF(<outer_soft>=1,IF(<outer>><out>,1,-1),-1))
                                """);
    }

    private String wayCell(ShaftEnd end) {
        return cell(DerivationStep.WAY, ENDS.indexOf(end));
    }

    /** One of two formulas by whether an end's race goes in. */
    private String inward(ShaftEnd end, String in, String out) {
        return first ? in : "IF(" + wayCell(end) + "=1," + in + "," + out + ")";
    }

    private String angles(String end) {
        return byState(
                "angle_in_" + end,
                "angle_out_" + end,
                "soft_in_angle_" + end,
                "soft_out_angle_" + end);
    }

    /** One of four lines by how both races stand. */
    private String byState(String in, String out, String innerPulled, String outerPulled) {
        return first
                ? at(in)
                : Pieces.of("inner", wayCell(ShaftEnd.INNER))
                        .and("outer", wayCell(ShaftEnd.OUTER))
                        .and("both_out", at(out))
                        .and("inner_pulled", at(innerPulled))
                        .and("outer_pulled", at(outerPulled))
                        .in(
                                """
                                IF(<inner>+<outer>=-2,<both_out>,
                                IF(<outer>=1,<inner_pulled>,<outer_pulled>))
                                """);
    }

    private String spacing() {
        return byState("spacing_in", "spacing_out", "soft_in_spacing", "soft_out_spacing");
    }

    /** The same by the travels alone. */
    private String byTravels() {
        String formula = CentreFormulas.length(moved(ShaftEnd.INNER), moved(ShaftEnd.OUTER));
        return LINE.matcher(formula)
                .replaceAll(
                        line -> {
                            String name = line.group(1);
                            return name.startsWith("u_") ? card(name) : at(name);
                        });
    }

    /** A race's travel, positive inward. */
    private String moved(ShaftEnd end) {
        String travel = cell(DerivationStep.TRAVELS, ENDS.indexOf(end)) + "*tape_mm";
        return first ? travel : wayCell(end) + "*" + travel;
    }

    private String margin() {
        return card(first ? "margin_in" : "margin_out");
    }

    /** Of all that adds to it. */
    private String doubt() {
        return first
                ? spacing() + "-" + margin() + "-" + at(withMargin())
                : at(withMargin()) + "-" + margin() + "-" + spacing();
    }

    private String angle(ShaftEnd end) {
        return "RADIANS(" + cell(DerivationStep.ANGLES, ENDS.indexOf(end)) + ")";
    }
}
