package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.SideResult;

/**
 * The length window of one side of each scenario and the length chosen in it. A bound of the window
 * stands with the row and the travel at which it binds.
 */
enum WindowLines implements LiveLine.Formula, LiveLine.Core {
    S_MAX("s_max", "Longest race spacing", MILLIMETRE, "MIN({longest_vertex:all})"),
    S_MAX_ROW(
            "s_max_row",
            "Longest race spacing: row",
            WHOLE,
            "MATCH({s_max},{longest_vertex:all},0)"),
    S_MAX_TRAVEL(
            "s_max_travel",
            "Longest race spacing: at travel",
            MILLIMETRE,
            travel("s_max", "longest")),
    S_MIN("s_min", "Shortest race spacing", MILLIMETRE, "MAX({shortest_vertex:all})"),
    S_MIN_ROW(
            "s_min_row",
            "Shortest race spacing: row",
            WHOLE,
            "MATCH({s_min},{shortest_vertex:all},0)"),
    S_MIN_TRAVEL(
            "s_min_travel",
            "Shortest race spacing: at travel",
            MILLIMETRE,
            travel("s_min", "shortest")),

    WIDTH("window_width", "Window", MILLIMETRE, "{s_max}-{s_min}"),
    E_OVER_S(
            "e_over_s",
            "End to end less spacing",
            MILLIMETRE,
            "{seat_in}+{seat_out}+{stub_in}+{stub_out}"),
    E_LOW("e_low", "Shortest end to end", MILLIMETRE, "{s_min}+{e_over_s}"),
    E_HIGH("e_high", "Longest end to end", MILLIMETRE, "{s_max}+{e_over_s}"),
    E_TARGET(
            "e_target",
            "Wanted end to end",
            MILLIMETRE,
            "{e_low}+{length_bias_read}*({e_high}-{e_low})"),
    STEP_FITS(
            "step_fits",
            "A step fits",
            WHOLE,
            "IF(AND({s_min}<={s_max},0-INT(0-ROUND({e_low}/shop_increment_read,6))"
                    + "<=INT(ROUND({e_high}/shop_increment_read,6))),1,0)"),
    E_CHOSEN(
            "e_chosen",
            "Chosen end to end",
            MILLIMETRE,
            "IF({step_fits}=1,MIN(MAX(ROUND(ROUND({e_target}/shop_increment_read,6),0),"
                    + "0-INT(0-ROUND({e_low}/shop_increment_read,6))),"
                    + "INT(ROUND({e_high}/shop_increment_read,6)))*shop_increment_read,{e_target})"),
    K_CHOSEN("k_chosen", "Chosen clip to clip", MILLIMETRE, "{e_chosen}-{stub_in}-{stub_out}");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final String formula;

    WindowLines(String name, String label, Quantity quantity, String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.formula = formula;
    }

    static void declare(LiveLines lines) {
        for (WindowLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SIDE_WORK,
                            SCENARIO_SIDE,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        return "IF({ready}=1," + formula + ",NA())";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return sizing.result(index)
                .map(result -> ReadLines.shown(core(result)))
                .orElse(CellValue.NOT_AVAILABLE);
    }

    private double core(SideResult r) {
        return switch (this) {
            case S_MAX -> r.window().longest().value();
            case S_MAX_ROW -> r.window().longest().row() + 1;
            case S_MAX_TRAVEL -> r.window().longest().travel();
            case S_MIN -> r.window().shortest().value();
            case S_MIN_ROW -> r.window().shortest().row() + 1;
            case S_MIN_TRAVEL -> r.window().shortest().travel();
            case WIDTH -> r.window().width();
            case E_OVER_S -> r.choice().chosen().endToEnd() - r.choice().chosen().spacing();
            case E_LOW -> r.choice().shortest().endToEnd();
            case E_HIGH -> r.choice().longest().endToEnd();
            case E_TARGET -> r.choice().target();
            case STEP_FITS -> r.choice().rounded() == Rounded.TO_INCREMENT ? 1 : 0;
            case E_CHOSEN -> r.choice().chosen().endToEnd();
            case K_CHOSEN -> r.choice().chosen().clipToClip();
        };
    }

    /** Travel at which a bound binds: a row's, or that of the parabola's vertex beside it. */
    private static String travel(String bound, String column) {
        String row = "{" + bound + "_row}";
        String f0 = "INDEX({" + column + ":all}," + row + "-1)";
        String f1 = "INDEX({" + column + ":all}," + row + ")";
        String f2 = "INDEX({" + column + ":all}," + row + "+1)";
        String t0 = "INDEX({travel:all}," + row + "-1)";
        String t1 = "INDEX({travel:all}," + row + ")";
        String t2 = "INDEX({travel:all}," + row + "+1)";
        String rise = "((" + f1 + "-" + f0 + ")/(" + t1 + "-" + t0 + "))";
        String next = "((" + f2 + "-" + f1 + ")/(" + t2 + "-" + t1 + "))";
        String bend = "((" + next + "-" + rise + ")/(" + t2 + "-" + t0 + "))";
        return "IF(OR(" + row + "=1," + row + "=25)," + t1 + ",IF(" + f1 + "={" + bound + "}," + t1
                + "," + t1 + "-(" + rise + "+" + bend + "*(" + t1 + "-" + t0 + "))/(2*" + bend
                + ")))";
    }
}
