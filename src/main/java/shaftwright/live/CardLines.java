package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.List;
import java.util.function.ToDoubleFunction;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;

/**
 * Lengths that the shop card of each side prints for the scenario that is to be built: in mm, as
 * decimal inch and to the nearest 64th.
 */
final class CardLines {
    /** How a length is written out, by what the names of its lines end with. */
    private enum Written {
        INCH("_inch", LengthStyle.DECIMAL_INCH),
        SIXTY_FOURTHS("_64", LengthStyle.SIXTY_FOURTHS);

        final String suffix;
        final LengthStyle style;

        Written(String suffix, LengthStyle style) {
            this.suffix = suffix;
            this.style = style;
        }

        String formula(String millimetres) {
            return this == INCH
                    ? LengthTextFormula.decimalInch(millimetres)
                    : LengthTextFormula.sixtyFourths(millimetres);
        }

        String of(double millimetres) {
            return Double.isNaN(millimetres) ? "" : new Length(millimetres).format(style);
        }
    }

    private final LineSet<Card.Printed> set;

    private CardLines(LineSet<Card.Printed> set) {
        this.set = set;
    }

    static void declare(LiveLines lines) {
        CardWordLines.declare(lines);
        CardLines card = new CardLines(Card.printed(LineSet.in(lines, Section.SHOP_CARD, SIDE)));
        card.length(
                "card_e", "End to end, E", "e_final", print -> print.shaft().length().endToEnd());
        card.length(
                "card_k",
                "Clip to clip, K",
                "k_final",
                print -> print.shaft().length().clipToClip());
        List<ShaftEnd> ends = List.of(ShaftEnd.values());
        for (ShaftEnd end : ends) {
            card.length(
                    "card_cut_" + end.shortWord(),
                    "Cut off the " + end.word() + " end",
                    "plan_cut_" + end.shortWord(),
                    print -> print.ofPlan(plan -> plan.cut(end).cut()));
        }
        for (ShaftEnd end : ends) {
            card.length(
                    "card_stub_" + end.shortWord(),
                    "Shaft end beyond ring, " + end.word(),
                    "plan_stub_" + end.shortWord(),
                    print -> print.ofPlan(plan -> plan.cut(end).stub()));
        }
        for (ShaftEnd end : ends) {
            card.walls(end);
        }
        OldGrooveLines.declare(lines);
        card.length(
                "card_mockup",
                "Mock-up stick, hole spacing",
                "mockup_holes",
                print ->
                        print.shaft().length().clipToClip()
                                + print.sizing().inputs().number("mockup_pin"));
    }

    private void length(
            String name, String label, String source, ToDoubleFunction<Card.Printed> core) {
        millimetres(name, label, source, core);
        for (Written written : Written.values()) {
            set.text(name + written.suffix, label)
                    .is(
                            written.formula("{" + name + "}"),
                            print -> written.of(core.applyAsDouble(print)));
        }
    }

    private void millimetres(
            String name, String label, String source, ToDoubleFunction<Card.Printed> core) {
        set.revised(2).mm(name, label).is(Card.printed(source), core);
    }

    /**
     * Both walls of a groove; the inner one is told from the outer, since walls rounded each by
     * itself make a groove that its ring does not enter.
     */
    private void walls(ShaftEnd end) {
        String groove = (end == ShaftEnd.INNER ? "Inner" : "Outer") + " end to groove's ";
        String outer = "card_wall_" + end.shortWord();
        String inner = "card_wall2_" + end.shortWord();
        String label = groove + "inner wall";
        ToDoubleFunction<Card.Printed> outerWall =
                print -> print.ofPlan(plan -> plan.cut(end).outerWall());
        length(outer, groove + "outer wall", "plan_wall_" + end.shortWord(), outerWall);
        millimetres(
                inner,
                label,
                "plan_inner_wall_" + end.shortWord(),
                print -> print.ofPlan(plan -> plan.cut(end).innerWall()));
        for (Written written : Written.values()) {
            set.revised(2)
                    .text(inner + written.suffix, label)
                    .is(
                            "IF(ISNUMBER({"
                                    + inner
                                    + "}),{"
                                    + outer
                                    + written.suffix
                                    + "}&\" + \"&"
                                    + grooveWidth()
                                    + ",\"\")",
                            print ->
                                    print.plan().isEmpty()
                                            ? ""
                                            : written.of(outerWall.applyAsDouble(print))
                                                    + " + "
                                                    + grooveWidth(print.sizing()));
        }
    }

    /** Width of the grooves, to a hundredth of a millimetre: "2.15 mm". */
    static String grooveWidth() {
        return "FIXED(ROUND(ROUND(groove_width_read,8),2),2,1)&\" mm\"";
    }

    static String grooveWidth(Sizing sizing) {
        return Wording.rounded(sizing.inputs().number("groove_width"), 2) + " mm";
    }
}
