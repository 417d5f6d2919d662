package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.live.EndText.both;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Price;
import shaftwright.study.SetCost;
import shaftwright.study.Wording;

/** What a scenario makes of the whole vehicle: tyre, ground clearance, width and cost. */
final class VehicleLines {
    private VehicleLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.SCENARIO_RESULTS, SCENARIO);
        LineSet<ScenarioOutcome> scenarios =
                all.ofAny(
                        (sizing, index) ->
                                Optional.of(sizing.scenario(index.scenario()))
                                        .filter(ScenarioOutcome::used));
        sizes(scenarios);
        width(all.revised(2), scenarios.revised(2));
        costs(
                scenarios
                        .revised(3)
                        .inRow("{used}")
                        .with(pieces())
                        .of((scenario, index) -> scenario.cost()));
    }

    private static void sizes(LineSet<ScenarioOutcome> set) {
        set.when("AND({used}=1,ISNUMBER({tyre_diameter}))")
                .shown("result_tyre", "Tyre diameter")
                .is("{tyre_diameter}/tape_mm", ScenarioOutcome::tyreDiameter);
        set.when("AND({used}=1,ISNUMBER(clearance_ride_read))")
                .shown("result_clearance_ride", "Ground clearance at ride")
                .is(
                        "(clearance_ride_read+{tyre_radius_gain})/tape_mm",
                        ScenarioOutcome::clearanceAtRide);
        set.when("{ready@left}=1")
                .given("clearance_ride_read")
                .shown("result_clearance_bump", "Ground clearance at bump")
                .is(
                        """
                        (clearance_ride_read
                        +{tyre_radius_gain}-({t_high@left}-{wheel_arm}
                        *(SIN({path_camber@left#<bump>})-SIN({path_camber@left#<ride>}))))/tape_mm
                        """,
                        ScenarioOutcome::clearanceAtBump);
        set.when("{ready@left}*{ready@right}=1")
                .givenAll("{inner_offset_used@left}", "{inner_offset_used@right}")
                .with(Pieces.of("left", hubFace(Side.LEFT)).and("right", hubFace(Side.RIGHT)))
                .shown("result_track", "Track width")
                .is(
                        "(<left>+<right>+2*({wheel_spacer_read}-{wheel_offset_read}))/tape_mm",
                        ScenarioOutcome::track);
    }

    /** From the centre plane. */
    private static String hubFace(Side side) {
        return Pieces.of("side", side.word())
                .in(
                        """
                        {inner_offset_used@<side>}+SQRT({path_reach_squared@<side>#<ride>})
                        +{shift_hub@<side>}+SUM(hub_face_offset_read)
                        *COS({path_toe@<side>#<ride>})*COS({path_camber@<side>#<ride>})
                        """);
    }

    private static void width(LineSet<Sizing> all, LineSet<ScenarioOutcome> scenarios) {
        scenarios
                .when("AND(ISNUMBER({result_track}),ISNUMBER({tyre_width}))")
                .shown("result_width", "Overall width at the tyres")
                .is("{result_track}+{tyre_width}/tape_mm", ScenarioOutcome::overallWidth);
        String over = Phrases.length("{result_width}*tape_mm-width_limit_read");
        String inside = Phrases.length("width_limit_read-{result_width}*tape_mm");
        all.when("AND(ISNUMBER({result_width}),ISNUMBER(width_limit_read))")
                .with(Pieces.of("over", over).and("inside", inside))
                .text("result_width_note", "Width against your limit")
                .is(
                        """
                        IF({result_width}*tape_mm>width_limit_read,
                        "over by "&<over>,"inside by "&<inside>)
                        """,
                        (sizing, index) -> note(sizing, sizing.scenario(index.scenario())));
    }

    private static String note(Sizing sizing, ScenarioOutcome scenario) {
        double width = scenario.overallWidth();
        double limit = sizing.inputs().number("width_limit");
        if (Double.isNaN(width) || Double.isNaN(limit)) {
            return "";
        }
        return (width > limit ? "over by " : "inside by ")
                + Wording.length(Math.abs(width - limit), sizing.unit());
    }

    /** Prices of joints and boots at both ends, and whether there are some. */
    private static Pieces pieces() {
        Pieces pieces =
                Pieces.of("no_price", quoted(Price.NO_PRICE))
                        .and("not_priced", quoted(Price.NOT_PRICED))
                        .and("unpriced", unpriced("shafts", "joints", "boots"))
                        .and(
                                "all",
                                "SUM({cost_shafts},{cost_joints},{cost_boots},{other_cost_read})");
        for (Side side : Side.values()) {
            String blank = "INDEX(blank_price_read,{plan_row@" + side.word() + "})";
            pieces = pieces.and("blank_" + side.word(), blank);
        }
        pieces = both(pieces, "joint", "INDEX(joint_price_read,{joint_row_<end>})");
        pieces = both(pieces, "boot", "INDEX(boot_price_read,{boot_row_<end>})");
        // No boot costs nothing, no joint has no price.
        pieces = both(pieces, "joint_priced", "IF({joint_row_<end>}=0,0,COUNT(<joint_<end>>))");
        pieces = both(pieces, "boot_priced", "IF({boot_row_<end>}=0,1,COUNT(<boot_<end>>))");
        pieces = both(pieces, "joint_price", "IF({joint_row_<end>}=0,0,SUM(<joint_<end>>))");
        return both(pieces, "boot_price", "IF({boot_row_<end>}=0,0,SUM(<boot_<end>>))");
    }

    private static void costs(LineSet<SetCost> set) {
        set.money("cost_shafts", "Shaft pair")
                .cell(
                        """
                        IF(ISNUMBER({shaft_pair_price_read}),{shaft_pair_price_read},
                        IF({ready@left}*{ready@right}=0,"no shaft",
                        IF({plan_row@left}*{plan_row@right}=0,"no blank",
                        IF(COUNT(<blank_left>,<blank_right>)<2,<no_price>,
                        SUM(<blank_left>,<blank_right>)))))
                        """,
                        (cost, index) -> shown(cost.shafts()));
        set.money("cost_joints", "Joints, four")
                .cell(
                        """
                        IF({joint_row_in}*{joint_row_out}=0,"no joint",
                        IF(COUNT(<joint_in>,<joint_out>)<2,<no_price>,
                        2*SUM(<joint_in>,<joint_out>)))
                        """,
                        (cost, index) -> shown(cost.joints()));
        set.money("cost_boots", "Boot kits, four")
                .cell(
                        """
                        IF(<boot_priced_in>*<boot_priced_out>=0,<no_price>,
                        2*(<boot_price_in>+<boot_price_out>))
                        """,
                        (cost, index) -> shown(cost.boots()));
        // A number when all is priced, else what is priced and what is not.
        set.money("cost_total", "Cost of the vehicle set")
                .cell(
                        """
                        IF(COUNT({cost_shafts},{cost_joints},{cost_boots})=3,<all>,
                        IF(<all>=0,<not_priced>,
                        FIXED(ROUND(ROUND(<all>,8),2),2,1)&" without "&MID(<unpriced>,3,99)))
                        """,
                        (cost, index) -> shown(cost.total()));
        // Of the scenario's own parts; a spare shaft costs half of the pair.
        set.money("cost_spares", "Spares")
                .cell(
                        """
                        IF(IF(spare_shafts_read=0,1,COUNT({cost_shafts}))
                        *IF(spare_joints_inner_read=0,1,<joint_priced_in>)
                        *IF(spare_joints_outer_read=0,1,<joint_priced_out>)
                        *IF(spare_boots_inner_read=0,1,<boot_priced_in>)
                        *IF(spare_boots_outer_read=0,1,<boot_priced_out>)=0,<not_priced>,
                        spare_shafts_read*SUM({cost_shafts})/2+spare_joints_inner_read*<joint_price_in>
                        +spare_joints_outer_read*<joint_price_out>+spare_boots_inner_read*<boot_price_in>
                        +spare_boots_outer_read*<boot_price_out>)
                        """,
                        (cost, index) -> shown(cost.spares()));
        set.money("cost_with_spares", "Cost with spares")
                .cell(
                        """
                        IF(COUNT({cost_total},{cost_spares})=2,{cost_total}+{cost_spares},<not_priced>)
                        """,
                        (cost, index) -> shown(cost.withSpares()));
    }

    private static String unpriced(String... parts) {
        return joined(
                "&", parts, part -> "IF(ISNUMBER({cost_" + part + "}),\"\",\", " + part + "\")");
    }

    /** The amount, or what is lacking. */
    static CellValue shown(Price price) {
        return price.isKnown()
                ? CellValue.of(price.amount().getAsDouble())
                : CellValue.of(price.lacking());
    }
}
