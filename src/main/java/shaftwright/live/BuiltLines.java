package shaftwright.live;

import static shaftwright.contract.Grid.AS_CUT;
import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.BUILT;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.FinishedShafts;
import shaftwright.reading.ServiceLog;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.TravelSteps;
import shaftwright.study.AsBuilt;
import shaftwright.study.AsBuilt.Compared;

/**
 * The finished shafts against the plan: slack as cut, end play and angles to be expected; and what
 * the service log says of them.
 */
final class BuiltLines {
    private static final String BOLTS_DUE = "Bolts were never torqued again: do it now.";
    private static final String BOLTS_DONE = "Bolts were torqued again.";
    private static final String BOOTS_DUE =
            " A torn boot was not replaced: do it before the next run.";

    /** Of the position table. */
    private static final String[] COLUMNS =
            """
            path_doubt slack_in slack_out last_in_in last_out_in last_in_out last_out_out
            centre_distance d_x d_y d_z n_x n_y n_z
            """
                    .split("\\s+");

    /** Of the scenario's column. */
    private static final List<String> CELLS = List.of("u_x", "u_y", "u_z", "spacing_final");

    private BuiltLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.BUILT_WORK, AS_CUT);
        ReadLines.declare(all, AS_CUT, (input, index) -> input.name() + "~");
        LineSet<Sizing> places = all.in(Section.BUILT_WORK, BUILT);
        places.ordinal("built_row", "Row");
        ReadLines.declare(
                places, BUILT, (input, index) -> "INDEX(" + input.name() + "~,{built_row})");
        LineSet<AsBuilt> built =
                all.ofAny((sizing, index) -> FinishedShafts.of(sizing, index.side()));
        planned(built.revised(2));
        places.with(Pieces.of("steps", TravelSteps.COUNT))
                .whole("built_place", "Row of all positions")
                .is(
                        index ->
                                Pieces.of("step", at(index).step() + 1)
                                        .in(
                                                "IF(ISNUMBER({built_shift#0}),(card_index-1)*<steps>+<step>,0)"),
                        (sizing, index) ->
                                sizing.shopResult(index.side()).isEmpty()
                                        ? 0
                                        : sizing.shopScenario().orElseThrow() * TravelSteps.COUNT
                                                + at(index).step()
                                                + 1);
        expected(built.in(Section.BUILT_WORK, BUILT));
        asCut(built.in(Section.BUILT_CUT, AS_CUT));
        shown(built.in(Section.BUILT_SHOWN, BUILT));
        service(all.in(Section.SERVICE, BOOK));
    }

    private static WheelPlace at(Index index) {
        return WheelPlace.of(index.row());
    }

    /** Slack of the shop scenario as planned, and how the shaft differs from that. */
    private static void planned(LineSet<AsBuilt> built) {
        LineSet<AsBuilt> known = built.given("{shop_k}");
        known.mm("built_worst_in", "Planned slack")
                .is(Card.cell("worst_slack_in"), shaft -> shaft.planned().leastSlackIn().value());
        known.mm("built_worst_out", "Planned slack")
                .is(Card.cell("worst_slack_out"), shaft -> shaft.planned().leastSlackOut().value());
        known.mm("built_shift", "Cut longer than planned")
                .is(
                        """
                        IF(ISNUMBER({built_k_read}),{built_k_read}-{shop_k},
                        IF(ISNUMBER({built_e_read}),{built_e_read}-{shop_e},0))
                        """,
                        AsBuilt::shift);
    }

    private static void expected(LineSet<AsBuilt> built) {
        built.mm("built_path_doubt", "Doubt of the hub path")
                .is(known("{path_doubt}"), (shaft, index) -> shaft.pathDoubt(at(index)));
        built.mm("built_play_plan", "End play expected")
                .is(
                        known(
                                """
                                MIN({slack_in}-{built_shift#0},{slack_out}+{built_shift#0},
                                {last_in_in}+{last_out_in},{last_in_out}+{last_out_out})
                                """),
                        (shaft, index) -> shaft.play(at(index)));
        // Of the shaft as cut; a much too short one has none.
        String spacing = "({spacing_final}+{built_shift#0})";
        String root = CentreFormulas.pushRoot(spacing);
        built.since(3)
                .mm("built_push", "Push-in, equal at both ends")
                .ifKnown(
                        known("IF(" + root + "<0,\"\"," + CentreFormulas.push(spacing) + ")"),
                        (shaft, index) -> shaft.push(at(index)));
        for (ShaftEnd end : ShaftEnd.values()) {
            built.revised(3)
                    .at(end)
                    .rad("built_<inner>_plan", "<Inner> angle of the shaft as cut")
                    .ifKnown(
                            joined(CentreFormulas.angle(end, "{built_push}", "{built_push}")),
                            (shaft, index) -> shaft.angle(at(index), end));
        }
        built.rad("built_angle_doubt", "Doubt of an angle")
                .is(
                        known(
                                "built_gauge_read+({built_path_doubt}+height_graduation_read)/{centre_distance}"),
                        (shaft, index) -> shaft.angleDoubt(at(index)));
    }

    private static void asCut(LineSet<AsBuilt> built) {
        LineSet<AsBuilt> cut = built.given("{built_shift}");
        cut.shown("built_slack_in", "Least slack before bottoming")
                .is("({built_worst_in}-{built_shift})/tape_mm", AsBuilt::slackIn);
        cut.shown("built_slack_out", "Least slack before pull-out")
                .is("({built_worst_out}+{built_shift})/tape_mm", AsBuilt::slackOut);
        built.revised(2)
                .with(
                        Pieces.of("bottoms", quoted(AsBuilt.BOTTOMS))
                                .and("pulls_out", quoted(AsBuilt.PULLS_OUT))
                                .and("clear", quoted(AsBuilt.CLEAR))
                                .and("short_in", Phrases.length("0-{built_slack_in}*tape_mm"))
                                .and("short_out", Phrases.length("0-{built_slack_out}*tape_mm")))
                .when("AND(ISNUMBER({built_shift}),COUNT({built_e_read},{built_k_read})>0)")
                .text("built_says", "As it was cut")
                .inUnit(
                        """
                        IF({built_slack_in}<0,<bottoms>&<short_in>,
                        IF({built_slack_out}<0,<pulls_out>&<short_out>,<clear>))
                        """,
                        (shaft, unit) -> shaft.sentence(unit).orElse(""));
    }

    private static void shown(LineSet<AsBuilt> built) {
        built.shown("built_play_expected", "Expected")
                .is(known("{built_play_plan}/tape_mm"), (shaft, index) -> shaft.play(at(index)));
        built.shown("built_play_doubt", "Doubt ±")
                .is(
                        known("({built_path_doubt}+tape_graduation_read)/tape_mm"),
                        (shaft, index) -> shaft.playDoubt(at(index)));
        compared(
                built.with(
                                Pieces.of("read", "{built_play_read}")
                                        .and("plan", "{built_play_plan}")
                                        .and("doubt", "{built_path_doubt}+tape_graduation_read")
                                        .and("shown", Phrases.length("<off>")))
                        .ofAny((shaft, index) -> shaft.playCompared(at(index))),
                "built_play_says",
                "End play");
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<AsBuilt> angles = built.at(end);
            angles.revised(3)
                    .deg("built_<inner>_expected", "Expected")
                    .ifKnown(
                            joined("DEGREES({built_<inner>_plan})"),
                            (shaft, index) -> shaft.angle(at(index), end));
            compared(
                    angles.with(
                                    Pieces.of("read", "{built_angle_<inner>_read}")
                                            .and("plan", "{built_<inner>_plan}")
                                            .and("doubt", "{built_angle_doubt}")
                                            .and("shown", Phrases.angle("<off>")))
                            .ofAny((shaft, index) -> shaft.angleCompared(at(index), end)),
                    "built_<inner>_says",
                    "<Inner> angle");
        }
        built.deg("built_angles_doubt", "Doubt of angles ±")
                .is(
                        known("DEGREES({built_angle_doubt})"),
                        (shaft, index) -> shaft.angleDoubt(at(index)));
    }

    /** What a measured figure makes of the expected one. */
    private static void compared(LineSet<Compared> compared, String name, String label) {
        compared.revised(2)
                .with(
                        Pieces.of("off", "ABS(<read>-<plan>)")
                                .and("more", quoted(Compared.MORE))
                                .and("less", quoted(Compared.LESS))
                                .and("beyond", quoted(Compared.BEYOND))
                                .and("within", quoted(Compared.WITHIN)))
                .text(name, label)
                .inUnit(
                        """
                        IF(COUNT(<read>,<plan>)<2,"",IF(ROUND(<off>-(<doubt>),6)>0,
                        <shown>&IF(<read>><plan>,<more>,<less>)&<beyond>,<within>))
                        """,
                        Compared::sentence);
    }

    /**
     * Where a side has finished shafts, a formula over a row of the position table and the
     * scenario's column, for the shop scenario's row of the place.
     */
    private static String known(String formula) {
        String text = formula;
        for (String column : COLUMNS) {
            text = text.replace("{" + column + "}", "INDEX(" + column + "~,{built_place})");
        }
        for (String cell : CELLS) {
            text = text.replace("{" + cell + "}", Card.cell(cell));
        }
        return "IF({built_place}=0,\"\"," + text + ")";
    }

    /** Where they reach from joint to joint. */
    private static String joined(String formula) {
        return known("IF({built_push}=\"\",\"\"," + formula + ")");
    }

    /** One sentence on the service log. */
    private static void service(LineSet<Sizing> set) {
        set.revised(ReadLines.RANGES)
                .with(
                        Pieces.of("due", quoted(BOLTS_DUE))
                                .and("done", quoted(BOLTS_DONE))
                                .and("torn", quoted(BOOTS_DUE)))
                .text("service_says", "The log says")
                .is(
                        """
                        IF(COUNTBLANK(service_hours)=ROWS(service_hours),"",
                        IF(COUNTIF(service_bolts,"yes")=0,<due>,<done>))
                        &IF(COUNTIF(service_boots,"torn")>COUNTIF(service_boots,"replaced"),<torn>,"")
                        """,
                        BuiltLines::service);
    }

    private static String service(Sizing sizing) {
        ServiceLog log = ServiceLog.of(sizing.inputs());
        String bolts = log.boltsDue() ? BOLTS_DUE : log.rows() > 0 ? BOLTS_DONE : "";
        return bolts + (log.bootsDue() ? BOOTS_DUE : "");
    }
}
