package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.formula.Given;
import shaftwright.formula.LengthTextFormula;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.EndCut;
import shaftwright.shaft.GrooveWalls;
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
        MILLIMETRES(""),
        INCH("_inch"),
        SIXTY_FOURTHS("_64");

        /** Those that stand beside a number in mm. */
        static final List<Written> BESIDE = List.of(INCH, SIXTY_FOURTHS);

        final String suffix;

        Written(String suffix) {
            this.suffix = suffix;
        }

        String formula(String mm) {
            return switch (this) {
                case MILLIMETRES -> "FIXED(ROUND(ROUND(" + mm + ",8),2),2,1)";
                case INCH -> LengthTextFormula.decimalInch(mm);
                case SIXTY_FOURTHS -> LengthTextFormula.sixtyFourths(mm);
            };
        }

        String of(double mm) {
            if (Double.isNaN(mm)) {
                return "";
            }
            return switch (this) {
                case MILLIMETRES -> Wording.rounded(mm, 2);
                case INCH -> new Length(mm).format(LengthStyle.DECIMAL_INCH);
                case SIXTY_FOURTHS -> new Length(mm).format(LengthStyle.SIXTY_FOURTHS);
            };
        }
    }

    private CardLines() {}

    static void declare(LiveLines lines) {
        CardWordLines.declare(lines);
        LineSet<Card.Printed> card = Card.printed(LineSet.in(lines, Section.SHOP_CARD, SIDE));
        length(card, "card_e", "End to end, E", "e_final", Card.Printed::endToEnd);
        length(card, "card_k", "Clip to clip, K", "k_final", Card.Printed::clipToClip);
        for (ShaftEnd end : ShaftEnd.values()) {
            length(
                    card.at(end),
                    "card_cut_<end>",
                    "Cut off the <inner> end",
                    "plan_cut_<end>",
                    print -> print.ofPlan(plan -> plan.cut(end).cut()));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            length(
                    card.at(end),
                    "card_stub_<end>",
                    "Shaft end beyond ring, <inner>",
                    "plan_stub_<end>",
                    print -> print.ofPlan(plan -> plan.cut(end).stub()));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            walls(card.at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            oldWall(card.in(Section.SHAFT_SIZES, SIDE).at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Card.Printed> set = card.revised(3).at(end);
            oldGroove(set, "card_left_", "in", "<inboard>", end, EndCut::inboardGroove);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Card.Printed> set = card.since(3).at(end);
            oldGroove(set, "card_outboard_", "out", "NOT(<inboard>)", end, EndCut::outboardGroove);
        }
        length(
                card,
                "card_mockup",
                "Mock-up stick, hole spacing",
                "mockup_holes",
                print -> print.clipToClip() + print.sizing().inputs().number("mockup_pin"));
    }

    private static void length(
            LineSet<Card.Printed> set,
            String name,
            String label,
            String source,
            ToDoubleFunction<Card.Printed> core) {
        set.revised(2).mm(name, label).is(Card.printed(source), core);
        for (Written written : Written.BESIDE) {
            set.text(name + written.suffix, label)
                    .is(
                            written.formula("{" + name + "}"),
                            print -> written.of(core.applyAsDouble(print)));
        }
    }

    /**
     * Both walls of a groove; the inner one is told from the outer, since walls rounded each by
     * itself make a groove that its ring does not enter.
     */
    private static void walls(LineSet<Card.Printed> set, ShaftEnd end) {
        ToDoubleFunction<Card.Printed> outer =
                print -> print.ofPlan(plan -> plan.cut(end).outerWall());
        String label = "<Inner> end to groove's inner wall";
        length(
                set,
                "card_wall_<end>",
                "<Inner> end to groove's outer wall",
                "plan_wall_<end>",
                outer);
        set.revised(2)
                .mm("card_wall2_<end>", label)
                .is(
                        Card.printed("plan_inner_wall_<end>"),
                        print -> print.ofPlan(plan -> plan.cut(end).innerWall()));
        for (Written written : Written.BESIDE) {
            String wall = "{card_wall_<end>" + written.suffix + "}";
            set.revised(2)
                    .text("card_wall2_<end>" + written.suffix, label)
                    .is(
                            Given.number("{card_wall2_<end>}", wall + "&\" + \"&" + grooveWidth()),
                            print ->
                                    print.plan().isEmpty()
                                            ? ""
                                            : (written.of(outer.applyAsDouble(print)) + " + ")
                                                    + grooveWidth(print.sizing()));
        }
    }

    /** Outer wall of an old groove of the card's shaft; the others are written from it. */
    private static void oldWall(LineSet<Card.Printed> set, ShaftEnd end) {
        set.since(3)
                .mm("old_wall_<end>", "Old groove's outer wall, <inner> end")
                .is(
                        Card.printed("plan_leftover_<end>"),
                        print ->
                                print.plan()
                                        .flatMap(plan -> plan.cut(end).oldGroove())
                                        .map(GrooveWalls::outer)
                                        .orElse(Double.NaN));
    }

    /**
     * Both walls of an old groove that the shaft keeps beside a new one, from the finished end, on
     * one side of the new one; empty where there is none.
     */
    private static void oldGroove(
            LineSet<Card.Printed> set,
            String name,
            String way,
            String condition,
            ShaftEnd end,
            Function<EndCut, Optional<GrooveWalls>> groove) {
        for (Written written : Written.values()) {
            Pieces pieces =
                    Pieces.of("inboard", "{old_wall_<end>}>{card_wall_<end>}+0.000001")
                            .and("there", condition)
                            .and("from", written.formula("MAX(0,{old_wall_<end>})"))
                            .and("to", written.formula("({old_wall_<end>}+groove_width_read)"));
            set.with(pieces)
                    .text(
                            name + "<end>" + written.suffix,
                            "Old groove left " + way + "board, <inner> end")
                    .is(
                            "IF(ISNUMBER({old_wall_<end>}),IF(<there>,<from>&\" to"
                                    + " \"&<to>,\"\"),\"\")",
                            print ->
                                    print.plan()
                                            .flatMap(plan -> groove.apply(plan.cut(end)))
                                            .map(walls -> text(walls, written))
                                            .orElse(""));
        }
    }

    private static String text(GrooveWalls walls, Written written) {
        return written.of(Math.max(0, walls.outer())) + " to " + written.of(walls.inner());
    }

    /** Width of the grooves, to a hundredth of a millimetre: "2.15 mm". */
    static String grooveWidth() {
        return "FIXED(ROUND(ROUND(groove_width_read,8),2),2,1)&\" mm\"";
    }

    static String grooveWidth(Sizing sizing) {
        return Wording.rounded(sizing.inputs().number("groove_width"), 2) + " mm";
    }
}
