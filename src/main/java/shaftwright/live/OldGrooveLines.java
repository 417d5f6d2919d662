package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import java.util.Optional;
import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveWalls;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;

/**
 * Both walls of an old groove that the shop card's shaft keeps beside a new one, from the finished
 * end, on whichever side of the new one it lies; empty where there is none.
 */
record OldGrooveLines(ShaftEnd end, Place place, Form form)
        implements LiveLine.Formula, LiveLine.Core {
    private enum Place {
        INBOARD("card_left_", "Old groove left inboard"),
        OUTBOARD("card_outboard_", "Old groove left outboard");

        final String name;
        final String label;

        Place(String name, String label) {
            this.name = name;
            this.label = label;
        }

        Optional<GrooveWalls> groove(ShaftEnd end, CutPlan plan) {
            return this == INBOARD ? plan.cut(end).inboardGroove() : plan.cut(end).outboardGroove();
        }
    }

    private enum Form {
        MILLIMETRES(""),
        INCH("_inch"),
        SIXTY_FOURTHS("_64");

        final String suffix;

        Form(String suffix) {
            this.suffix = suffix;
        }

        String formula(String wall) {
            return switch (this) {
                case MILLIMETRES -> "FIXED(ROUND(ROUND(" + wall + ",8),2),2,1)";
                case INCH -> LengthTextFormula.decimalInch(wall);
                case SIXTY_FOURTHS -> LengthTextFormula.sixtyFourths(wall);
            };
        }

        String text(double wall) {
            return switch (this) {
                case MILLIMETRES -> Wording.rounded(wall, 2);
                case INCH -> new Length(wall).format(LengthStyle.DECIMAL_INCH);
                case SIXTY_FOURTHS -> new Length(wall).format(LengthStyle.SIXTY_FOURTHS);
            };
        }
    }

    /** Outer wall of an old groove of the card's shaft; the others are written from it. */
    private record Wall(ShaftEnd end) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int since() {
            return 3;
        }

        @Override
        public String at(Index index) {
            return Card.printed("plan_leftover_" + end.shortWord());
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return ReadLines.shown(
                    plan(sizing, index)
                            .flatMap(plan -> plan.cut(end).oldGroove())
                            .map(GrooveWalls::outer)
                            .orElse(Double.NaN));
        }

        String name() {
            return "old_wall_" + end.shortWord();
        }
    }

    static void declare(LiveLines lines) {
        for (ShaftEnd end : ShaftEnd.values()) {
            Wall wall = new Wall(end);
            lines.add(
                    new LiveLine(
                            wall.name(),
                            Section.SHAFT_SIZES,
                            SIDE,
                            "Old groove's outer wall, " + end.word() + " end",
                            Quantity.MILLIMETRE,
                            wall,
                            wall));
        }
        for (Place place : Place.values()) {
            for (ShaftEnd end : ShaftEnd.values()) {
                for (Form form : Form.values()) {
                    OldGrooveLines line = new OldGrooveLines(end, place, form);
                    lines.add(
                            new LiveLine(
                                    place.name + end.shortWord() + form.suffix,
                                    Section.SHOP_CARD,
                                    SIDE,
                                    place.label + ", " + end.word() + " end",
                                    Quantity.TEXT,
                                    line,
                                    line));
                }
            }
        }
    }

    @Override
    public int since() {
        return place == Place.INBOARD ? 1 : 3;
    }

    @Override
    public int revised() {
        return 3;
    }

    @Override
    public String at(Index index) {
        String old = "{old_wall_" + end.shortWord() + "}";
        String inboard = old + ">{card_wall_" + end.shortWord() + "}+0.000001";
        return "IF(ISNUMBER("
                + old
                + "),IF("
                + (place == Place.INBOARD ? inboard : "NOT(" + inboard + ")")
                + ","
                + form.formula("MAX(0," + old + ")")
                + "&\" to \"&"
                + form.formula("(" + old + "+groove_width_read)")
                + ",\"\"),\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return CellValue.of(
                plan(sizing, index)
                        .flatMap(plan -> place.groove(end, plan))
                        .map(this::text)
                        .orElse(""));
    }

    private String text(GrooveWalls walls) {
        return form.text(Math.max(0, walls.outer())) + " to " + form.text(walls.inner());
    }

    private static Optional<CutPlan> plan(Sizing sizing, Index index) {
        return Card.printed(sizing, index).flatMap(Card.Printed::plan);
    }
}
