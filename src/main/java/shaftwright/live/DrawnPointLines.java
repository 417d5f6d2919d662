package shaftwright.live;

import static shaftwright.contract.Grid.DRAWN_POINT;
import static shaftwright.formula.FormulaText.number;

import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.ShaftEnd;

/**
 * The points that draw a shaft to scale, both ways in parts of the blank's length, from the inner
 * end of the blank. A point that is not known leaves a gap: its height is missing, never its place
 * along the shaft, since a chart without places counts its points instead.
 */
final class DrawnPointLines {
    private DrawnPointLines() {}

    /** A figure as a formula and by the core, mm, NaN while it is not known. */
    private record Figure(String formula, ToDoubleFunction<Card.Printed> core) {
        static Figure ofEnd(ShaftEnd end, String line, ToDoubleFunction<EndCut> core) {
            return new Figure(
                    "{" + line + "_" + end.shortWord() + "}",
                    print -> print.ofPlan(plan -> core.applyAsDouble(plan.cut(end))));
        }

        double of(Card.Printed print) {
            return core.applyAsDouble(print);
        }

        Figure halved() {
            return new Figure(formula + "/2", print -> of(print) / 2);
        }

        /** In parts of the blank's length. */
        Figure scaled() {
            return new Figure(
                    formula + "/{draw_total}", print -> of(print) / ShaftDrawingLines.total(print));
        }

        Figure negative() {
            return new Figure("0-" + formula, print -> -of(print));
        }

        /** From the finished shaft's inner end, when this is how far outboard of an end. */
        Figure outboardOf(ShaftEnd end) {
            return end == ShaftEnd.INNER
                    ? negative()
                    : new Figure(E.formula + "+" + formula, print -> E.of(print) + of(print));
        }

        /** From the finished shaft's inner end, when this is how far inboard of an end. */
        Figure inboardOf(ShaftEnd end) {
            return end == ShaftEnd.INNER
                    ? this
                    : new Figure(E.formula + "-" + formula, print -> E.of(print) - of(print));
        }
    }

    private static final Figure E =
            new Figure("{card_e}", print -> print.shaft().length().endToEnd());

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.SHAFT_DRAWING, DRAWN_POINT);
        set.about(Card::printed, Lacking.ZERO.value())
                .number("draw_along", "Along the blank")
                .cell(
                        index -> isGap(index) ? "0" : "IFERROR(" + along(index).formula() + ",0)",
                        (print, index) -> {
                            double along = isGap(index) ? 0 : along(index).of(print);
                            return CellValue.of(Double.isNaN(along) ? 0 : along);
                        });
        set.about(Card::printed, CellValue.NOT_AVAILABLE)
                .number("draw_up", "Off the middle")
                .cell(
                        index ->
                                isGap(index)
                                        ? "NA()"
                                        : "IFERROR(IF(ISNUMBER("
                                                + along(index).formula()
                                                + "),"
                                                + up(index).formula()
                                                + ",NA()),NA())",
                        (print, index) -> {
                            boolean known = !isGap(index) && !Double.isNaN(along(index).of(print));
                            double up = known ? up(index).of(print) : Double.NaN;
                            return Double.isNaN(up) ? CellValue.NOT_AVAILABLE : CellValue.of(up);
                        });
    }

    private static boolean isGap(Index index) {
        return DrawnPart.station(index.row()) == '-';
    }

    private static Figure along(Index index) {
        Figure place = place(DrawnPart.station(index.row()));
        return new Figure(
                        "(" + place.formula() + "+SUM({card_cut_in}))",
                        print ->
                                place.of(print)
                                        + print.plan().map(plan -> plan.inner().cut()).orElse(0.0))
                .scaled();
    }

    /** A station, capital at the outer end, from the finished shaft's inner end. */
    private static Figure place(char station) {
        ShaftEnd end = Character.isUpperCase(station) ? ShaftEnd.OUTER : ShaftEnd.INNER;
        Figure cut = Figure.ofEnd(end, "card_cut", EndCut::cut);
        return switch (Character.toLowerCase(station)) {
            case '0' -> new Figure("0", print -> 0);
            case 'e' -> E;
            case 'm' -> E.halved();
            case 'n' ->
                    new Figure(
                            "({card_stub_in}+{card_e}-{card_stub_out})/2",
                            print ->
                                    print.ofPlan(
                                            plan ->
                                                    (plan.inner().stub()
                                                                    + E.of(print)
                                                                    - plan.outer().stub())
                                                            / 2));
            case 'a' -> Figure.ofEnd(end, "card_wall", EndCut::outerWall).inboardOf(end);
            case 'b' -> Figure.ofEnd(end, "card_wall2", EndCut::innerWall).inboardOf(end);
            case 'k' -> Figure.ofEnd(end, "card_stub", EndCut::stub).inboardOf(end);
            case 's' ->
                    new Figure(
                                    "{draw_spline_" + end.shortWord() + "}",
                                    print -> print.ofPlan(plan -> plan.splineLeft(end)))
                            .inboardOf(end);
            case 'c' -> cut.outboardOf(end);
            case 'h' -> cut.halved().outboardOf(end);
            default -> throw new IllegalArgumentException("no station " + station);
        };
    }

    /** A height off the middle, capital below it. */
    private static Figure up(Index index) {
        char height = DrawnPart.height(index.row());
        return switch (height) {
            case 'u' -> level(0.045);
            case 'v' -> level(0.075);
            case 'x' -> level(0.05).negative();
            case 'y' -> level(0.075).negative();
            default -> {
                Figure size = size(Character.toLowerCase(height)).scaled();
                yield Character.isUpperCase(height) ? size.negative() : size;
            }
        };
    }

    /** Where words or lengths stand. */
    private static Figure level(double share) {
        return new Figure(number(share), print -> share);
    }

    private static Figure size(char height) {
        return switch (height) {
            case 'i' -> radius(ShaftEnd.INNER);
            case 'j' -> grooveFloor(ShaftEnd.INNER);
            case 'd' -> new Figure("{draw_body}", ShaftDrawingLines::body);
            case 'o' -> radius(ShaftEnd.OUTER);
            case 'p' -> grooveFloor(ShaftEnd.OUTER);
            default -> throw new IllegalArgumentException("no height " + height);
        };
    }

    private static Figure radius(ShaftEnd end) {
        return new Figure(
                "shaft_end_diameter_" + end.word() + "_read/2",
                print -> print.endDiameter(end) / 2);
    }

    private static Figure grooveFloor(ShaftEnd end) {
        Figure radius = radius(end);
        return new Figure(
                "(" + radius.formula() + "-groove_depth_read)",
                print -> radius.of(print) - print.sizing().inputs().number("groove_depth"));
    }
}
