package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
            String label = "Cut off the <inner> end";
            length(cut(card, end), "card_cut_<end>", label, "plan_cut_<end>", EndCut::cut);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            String label = "Shaft end beyond ring, <inner>";
            length(cut(card, end), "card_stub_<end>", label, "plan_stub_<end>", EndCut::stub);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            walls(card, end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            // The walls of an old groove are written from its outer one.
            cut(card.in(Section.SHAFT_SIZES, SIDE), end)
                    .since(3)
                    .mm("old_wall_<end>", "Old groove's outer wall, <inner> end")
                    .is(
                            Card.printed("plan_leftover_<end>"),
                            cut -> cut.oldGroove().map(GrooveWalls::outer).orElse(Double.NaN));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<EndCut> cut = cut(card.revised(3), end);
            oldGroove(cut, "card_left_", "in", "<inboard>", EndCut::inboardGroove);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<EndCut> cut = cut(card.since(3), end);
            oldGroove(cut, "card_outboard_", "out", "NOT(<inboard>)", EndCut::outboardGroove);
        }
        length(
                card,
                "card_mockup",
                "Mock-up stick, hole spacing",
                "mockup_holes",
                print -> print.clipToClip() + print.sizing().inputs().number("mockup_pin"));
    }

    /** What is done to an end of the card's shaft, where a blank serves. */
    private static LineSet<EndCut> cut(LineSet<Card.Printed> card, ShaftEnd end) {
        return card.at(end).ofAny((print, index) -> print.plan().map(plan -> plan.cut(end)));
    }

    private static <T> void length(
            LineSet<T> set, String name, String label, String source, ToDoubleFunction<T> core) {
        set.revised(2).mm(name, label).is(Card.printed(source), core);
        for (Written written : Written.BESIDE) {
            set.text(name + written.suffix, label)
                    .is(
                            written.formula("{" + name + "}"),
                            from -> written.of(core.applyAsDouble(from)));
        }
    }

    /**
     * Both walls of a groove; the inner one is told from the outer, since walls rounded each by
     * itself make a groove that its ring does not enter.
     */
    private static void walls(LineSet<Card.Printed> card, ShaftEnd end) {
        String outer = "<Inner> end to groove's outer wall";
        LineSet<EndCut> cut = cut(card, end);
        length(cut, "card_wall_<end>", outer, "plan_wall_<end>", EndCut::outerWall);
        String label = "<Inner> end to groove's inner wall";
        cut.revised(2)
                .mm("card_wall2_<end>", label)
                .is(Card.printed("plan_inner_wall_<end>"), EndCut::innerWall);
        for (Written written : Written.BESIDE) {
            String wall = "{card_wall_<end>" + written.suffix + "}";
            card.at(end)
                    .revised(2)
                    .given("{card_wall2_<end>}")
                    .text("card_wall2_<end>" + written.suffix, label)
                    .is(
                            wall + "&\" + \"&" + grooveWidth(),
                            print ->
                                    print.plan()
                                            .map(plan -> plan.cut(end).outerWall())
                                            .map(mm -> written.of(mm) + " + " + width(print))
                                            .orElse(""));
        }
    }

    private static String width(Card.Printed print) {
        return grooveWidth(print.sizing());
    }

    /**
     * Both walls of an old groove that the shaft keeps beside a new one, from the finished end, on
     * one side of the new one; empty where there is none.
     */
    private static void oldGroove(
            LineSet<EndCut> cut,
            String name,
            String way,
            String condition,
            Function<EndCut, Optional<GrooveWalls>> groove) {
        for (Written written : Written.values()) {
            Pieces pieces =
                    Pieces.of("inboard", "{old_wall_<end>}>{card_wall_<end>}+0.000001")
                            .and("from", written.formula("MAX(0,{old_wall_<end>})"))
                            .and("to", written.formula("({old_wall_<end>}+groove_width_read)"));
            cut.with(pieces)
                    .given("{old_wall_<end>}")
                    .when(condition)
                    .text(
                            name + "<end>" + written.suffix,
                            "Old groove left " + way + "board, <inner> end")
                    .is(
                            "<from>&\" to \"&<to>",
                            end -> groove.apply(end).map(walls -> text(walls, written)).orElse(""));
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
