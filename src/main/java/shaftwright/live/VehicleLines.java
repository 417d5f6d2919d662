package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.live.Quantity.MONEY;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Price;
import shaftwright.study.SetCost;
import shaftwright.study.Wording;

/** What a scenario makes of the whole vehicle: tyre, ground clearance, width and cost. */
enum VehicleLines implements LiveLine.Formula, LiveLine.Core {
    TYRE(
            "result_tyre",
            "Tyre diameter",
            SHOWN_LENGTH,
            "IF(AND({used}=1,ISNUMBER({tyre_diameter})),{tyre_diameter}/tape_mm,\"\")"),
    CLEARANCE_RIDE(
            "result_clearance_ride",
            "Ground clearance at ride",
            SHOWN_LENGTH,
            "IF(AND({used}=1,ISNUMBER(clearance_ride_read)),"
                    + "(clearance_ride_read+{tyre_radius_gain})/tape_mm,\"\")"),
    CLEARANCE_BUMP(
            "result_clearance_bump",
            "Ground clearance at bump",
            SHOWN_LENGTH,
            "IF({ready@left}=1,IF(ISNUMBER(clearance_ride_read),"
                    + "(clearance_ride_read+{tyre_radius_gain}-({t_high@left}-{wheel_arm}"
                    + "*(SIN({path_camber@left#24})-SIN({path_camber@left#12}))))/tape_mm,"
                    + "\"\"),\"\")"),
    TRACK(
            "result_track",
            "Track width",
            SHOWN_LENGTH,
            "IF({ready@left}*{ready@right}=1,IF(COUNT({inner_offset_used@left},"
                    + "{inner_offset_used@right})=2,("
                    + hubFace("left")
                    + "+"
                    + hubFace("right")
                    + "+2*({wheel_spacer_read}-{wheel_offset_read}))/tape_mm,\"\"),\"\")"),
    WIDTH(
            "result_width",
            "Overall width at the tyres",
            SHOWN_LENGTH,
            "IF(AND(ISNUMBER({result_track}),ISNUMBER({tyre_width})),"
                    + "{result_track}+{tyre_width}/tape_mm,\"\")"),
    WIDTH_NOTE(
            "result_width_note",
            "Width against your limit",
            TEXT,
            "IF(AND(ISNUMBER({result_width}),ISNUMBER(width_limit_read)),"
                    + "IF({result_width}*tape_mm>width_limit_read,\"over by \"&"
                    + Phrases.length("{result_width}*tape_mm-width_limit_read")
                    + ",\"inside by \"&"
                    + Phrases.length("width_limit_read-{result_width}*tape_mm")
                    + "),\"\")"),
    /** A number, or what is lacking. */
    COST_SHAFTS(
            "cost_shafts",
            "Shaft pair",
            MONEY,
            "IF({used}=0,\"\",IF(ISNUMBER({shaft_pair_price_read}),{shaft_pair_price_read},"
                    + "IF({ready@left}*{ready@right}=0,\"no shaft\","
                    + "IF({plan_row@left}*{plan_row@right}=0,\"no blank\","
                    + priced(
                            "INDEX(blank_price_read,{plan_row@left}),INDEX(blank_price_read,{plan_row@right})",
                            "")
                    + "))))"),
    COST_JOINTS(
            "cost_joints",
            "Joints, four",
            MONEY,
            "IF({used}=0,\"\",IF({joint_row_in}*{joint_row_out}=0,\"no joint\","
                    + priced(
                            "INDEX(joint_price_read,{joint_row_in}),INDEX(joint_price_read,{joint_row_out})",
                            "2*")
                    + "))"),
    COST_BOOTS(
            "cost_boots",
            "Boot kits, four",
            MONEY,
            "IF({used}=0,\"\",IF("
                    + isPriced("boot", "in")
                    + "*"
                    + isPriced("boot", "out")
                    + "=0,\""
                    + Price.NO_PRICE
                    + "\",2*("
                    + price("boot", "in")
                    + "+"
                    + price("boot", "out")
                    + ")))"),
    /** A number when all is priced, else what is priced and what is not. */
    COST_TOTAL(
            "cost_total",
            "Cost of the vehicle set",
            MONEY,
            "IF({used}=0,\"\",IF(COUNT({cost_shafts},{cost_joints},{cost_boots})=3,"
                    + all()
                    + ",IF("
                    + all()
                    + "=0,\""
                    + Price.NOT_PRICED
                    + "\",FIXED(ROUND(ROUND("
                    + all()
                    + ",8),2),2,1)&\" without \"&MID("
                    + unlessPriced("shafts")
                    + "&"
                    + unlessPriced("joints")
                    + "&"
                    + unlessPriced("boots")
                    + ",3,99))))"),
    /** Of the scenario's own parts; a spare shaft costs half of the pair. */
    COST_SPARES(
            "cost_spares",
            "Spares",
            MONEY,
            "IF({used}=0,\"\",IF(IF(spare_shafts_read=0,1,COUNT({cost_shafts}))"
                    + "*IF(spare_joints_inner_read=0,1,"
                    + isPriced("joint", "in")
                    + ")*IF(spare_joints_outer_read=0,1,"
                    + isPriced("joint", "out")
                    + ")*IF(spare_boots_inner_read=0,1,"
                    + isPriced("boot", "in")
                    + ")*IF(spare_boots_outer_read=0,1,"
                    + isPriced("boot", "out")
                    + ")=0,\""
                    + Price.NOT_PRICED
                    + "\",spare_shafts_read*SUM({cost_shafts})/2+spare_joints_inner_read*"
                    + price("joint", "in")
                    + "+spare_joints_outer_read*"
                    + price("joint", "out")
                    + "+spare_boots_inner_read*"
                    + price("boot", "in")
                    + "+spare_boots_outer_read*"
                    + price("boot", "out")
                    + "))"),
    COST_WITH_SPARES(
            "cost_with_spares",
            "Cost with spares",
            MONEY,
            "IF({used}=0,\"\",IF(COUNT({cost_total},{cost_spares})=2,{cost_total}+{cost_spares},\""
                    + Price.NOT_PRICED
                    + "\"))");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    VehicleLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (VehicleLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SCENARIO_RESULTS,
                            SCENARIO,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return switch (this) {
            case WIDTH, WIDTH_NOTE -> 2;
            case COST_SHAFTS, COST_JOINTS, COST_BOOTS, COST_TOTAL, COST_SPARES, COST_WITH_SPARES ->
                    3;
            default -> since();
        };
    }

    @Override
    public String at(Index index) {
        return formula;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        ScenarioOutcome scenario = sizing.scenario(index.scenario());
        if (this == WIDTH_NOTE) {
            return CellValue.of(widthNote(sizing, scenario));
        }
        if (quantity == MONEY) {
            return scenario.used() ? shown(cost(scenario.cost())) : CellValue.of("");
        }
        double value = core(scenario);
        return ReadLines.shown(value / sizing.unit().mm());
    }

    /** Value by the core, mm; NaN where there is nothing to tell. */
    private double core(ScenarioOutcome scenario) {
        return switch (this) {
            case TYRE -> scenario.used() ? scenario.tyreDiameter() : Double.NaN;
            case CLEARANCE_RIDE -> scenario.used() ? scenario.clearanceAtRide() : Double.NaN;
            case CLEARANCE_BUMP -> scenario.clearanceAtBump();
            case TRACK -> scenario.track();
            case WIDTH -> scenario.overallWidth();
            default -> throw new IllegalStateException(name + " is no length");
        };
    }

    private Price cost(SetCost cost) {
        return switch (this) {
            case COST_SHAFTS -> cost.shafts();
            case COST_JOINTS -> cost.joints();
            case COST_BOOTS -> cost.boots();
            case COST_TOTAL -> cost.total();
            case COST_SPARES -> cost.spares();
            case COST_WITH_SPARES -> cost.withSpares();
            default -> throw new IllegalStateException(name + " is no cost");
        };
    }

    /** The amount, or what is lacking. */
    static CellValue shown(Price price) {
        return price.isKnown()
                ? CellValue.of(price.amount().getAsDouble())
                : CellValue.of(price.lacking());
    }

    private static String widthNote(Sizing sizing, ScenarioOutcome scenario) {
        double width = scenario.overallWidth();
        double limit = sizing.inputs().number("width_limit");
        if (Double.isNaN(width) || Double.isNaN(limit)) {
            return "";
        }
        return width > limit
                ? "over by " + Wording.length(width - limit, sizing.unit())
                : "inside by " + Wording.length(limit - width, sizing.unit());
    }

    private static String hubFace(String side) {
        return "{inner_offset_used@"
                + side
                + "}+SQRT({path_reach_squared@"
                + side
                + "#12})+{shift_hub@"
                + side
                + "}+SUM(hub_face_offset_read)*COS({path_toe@"
                + side
                + "#12})*COS({path_camber@"
                + side
                + "#12})";
    }

    /** What several cells with prices add up to, where each of them is a number. */
    private static String priced(String prices, String times) {
        return "IF(COUNT("
                + prices
                + ")<2,\""
                + Price.NO_PRICE
                + "\","
                + times
                + "SUM("
                + prices
                + "))";
    }

    /** 1 where a picked part has a price, or no boot is picked; 0 where not. */
    private static String isPriced(String part, String end) {
        String row = "{" + part + "_row_" + end + "}";
        return "IF("
                + row
                + "=0,"
                + (part.equals("boot") ? 1 : 0)
                + ",COUNT(INDEX("
                + part
                + "_price_read,"
                + row
                + ")))";
    }

    private static String price(String part, String end) {
        String row = "{" + part + "_row_" + end + "}";
        return "IF(" + row + "=0,0,SUM(INDEX(" + part + "_price_read," + row + ")))";
    }

    private static String all() {
        return "SUM({cost_shafts},{cost_joints},{cost_boots},{other_cost_read})";
    }

    private static String unlessPriced(String what) {
        return "IF(ISNUMBER({cost_" + what + "}),\"\",\", " + what + "\")";
    }
}
