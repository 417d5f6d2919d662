package shaftwright.live;

import static shaftwright.contract.Grid.DRAWN_POINT;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;

/**
 * The points that draw a shaft to scale, both ways in parts of the blank's length, from the inner
 * end of the blank. A point that is not known leaves a gap: its height is missing, never its place
 * along the shaft, since a chart without places counts its points instead.
 */
enum DrawnPointLines implements LiveLine.Formula, LiveLine.Core {
    ALONG("draw_along", "Along the blank"),
    UP("draw_up", "Off the middle");

    private static final double WORDS_LOW = 0.045;
    private static final double WORDS_HIGH = 0.075;
    private static final double CLIPS_BELOW = -0.05;
    private static final double LENGTH_BELOW = -0.075;

    private final String name;
    private final String label;

    DrawnPointLines(String name, String label) {
        this.name = name;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (DrawnPointLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.SHAFT_DRAWING,
                            DRAWN_POINT,
                            line.label,
                            Quantity.NUMBER,
                            line,
                            line));
        }
    }

    @Override
    public String at(Index index) {
        char station = DrawnPart.station(index.row());
        char height = DrawnPart.height(index.row());
        if (station == '-') {
            return this == ALONG ? "0" : "NA()";
        }
        String along = "(" + along(station) + "+SUM({card_cut_in}))/{draw_total}";
        return this == ALONG
                ? "IFERROR(" + along + ",0)"
                : "IFERROR(IF(ISNUMBER(" + along + ")," + up(height) + ",NA()),NA())";
    }

    /** From the finished shaft's inner end, mm. */
    private static String along(char station) {
        return switch (station) {
            case '0' -> "0";
            case 'a' -> "{card_wall_in}";
            case 'b' -> "{card_wall2_in}";
            case 's' -> "{draw_spline_in}";
            case 'S' -> "{card_e}-{draw_spline_out}";
            case 'B' -> "{card_e}-{card_wall2_out}";
            case 'A' -> "{card_e}-{card_wall_out}";
            case 'E' -> "{card_e}";
            case 'm' -> "{card_e}/2";
            case 'k' -> "{card_stub_in}";
            case 'K' -> "{card_e}-{card_stub_out}";
            case 'n' -> "({card_stub_in}+{card_e}-{card_stub_out})/2";
            case 'c' -> "0-{card_cut_in}";
            case 'C' -> "{card_e}+{card_cut_out}";
            case 'h' -> "0-{card_cut_in}/2";
            case 'H' -> "{card_e}+{card_cut_out}/2";
            default -> throw new IllegalArgumentException("no station " + station);
        };
    }

    private static String up(char height) {
        String size =
                switch (Character.toLowerCase(height)) {
                    case 'i' -> "shaft_end_diameter_inner_read/2";
                    case 'j' -> "(shaft_end_diameter_inner_read/2-groove_depth_read)";
                    case 'd' -> "{draw_body}";
                    case 'o' -> "shaft_end_diameter_outer_read/2";
                    case 'p' -> "(shaft_end_diameter_outer_read/2-groove_depth_read)";
                    default -> "";
                };
        if (size.isEmpty()) {
            double level = level(height);
            return level < 0 ? "0-" + -level : String.valueOf(level);
        }
        return (Character.isUpperCase(height) ? "0-" : "") + size + "/{draw_total}";
    }

    private static double level(char height) {
        return switch (height) {
            case 'u' -> WORDS_LOW;
            case 'v' -> WORDS_HIGH;
            case 'x' -> CLIPS_BELOW;
            case 'y' -> LENGTH_BELOW;
            default -> throw new IllegalArgumentException("no height " + height);
        };
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        char station = DrawnPart.station(index.row());
        SideResult result = CardGateLines.printedOrNull(sizing, index);
        double along =
                station == '-' || result == null ? Double.NaN : along(sizing, result, station);
        if (this == ALONG) {
            return CellValue.of(Double.isNaN(along) ? 0 : along);
        }
        double up =
                Double.isNaN(along)
                        ? Double.NaN
                        : up(sizing, result, DrawnPart.height(index.row()));
        return Double.isNaN(up) ? CellValue.NOT_AVAILABLE : CellValue.of(up);
    }

    private static double along(Sizing sizing, SideResult result, char station) {
        CutPlan plan = result.plan().orElse(null);
        double end = result.length().endToEnd();
        double place =
                switch (station) {
                    case '0' -> 0;
                    case 'E' -> end;
                    case 'm' -> end / 2;
                    default -> plan == null ? Double.NaN : along(sizing, result, plan, station);
                };
        double cut = plan == null ? 0 : plan.inner().cut();
        return (place + cut) / ShaftDrawingLines.TOTAL.core(sizing, result);
    }

    private static double along(Sizing sizing, SideResult result, CutPlan plan, char station) {
        double end = result.length().endToEnd();
        return switch (station) {
            case 'a' -> plan.inner().outerWall();
            case 'b' -> plan.inner().innerWall();
            case 's' -> ShaftDrawingLines.SPLINE_IN.core(sizing, result);
            case 'S' -> end - ShaftDrawingLines.SPLINE_OUT.core(sizing, result);
            case 'B' -> end - plan.outer().innerWall();
            case 'A' -> end - plan.outer().outerWall();
            case 'k' -> plan.inner().stub();
            case 'K' -> end - plan.outer().stub();
            case 'n' -> (plan.inner().stub() + end - plan.outer().stub()) / 2;
            case 'c' -> -plan.inner().cut();
            case 'C' -> end + plan.outer().cut();
            case 'h' -> -plan.inner().cut() / 2;
            case 'H' -> end + plan.outer().cut() / 2;
            default -> throw new IllegalArgumentException("no station " + station);
        };
    }

    private static double up(Sizing sizing, SideResult result, char height) {
        double depth = sizing.inputs().number("groove_depth");
        double inner = sizing.inputs().number("shaft_end_diameter_inner") / 2;
        double outer = sizing.inputs().number("shaft_end_diameter_outer") / 2;
        double size;
        switch (Character.toLowerCase(height)) {
            case 'i' -> size = inner;
            case 'j' -> size = inner - depth;
            case 'd' -> size = ShaftDrawingLines.BODY.core(sizing, result);
            case 'o' -> size = outer;
            case 'p' -> size = outer - depth;
            default -> {
                return level(height);
            }
        }
        double part = size / ShaftDrawingLines.TOTAL.core(sizing, result);
        return Character.isUpperCase(height) ? -part : part;
    }
}
