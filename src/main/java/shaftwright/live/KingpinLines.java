package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.function.ToDoubleFunction;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.Wording;
import shaftwright.suspension.BallJoint;
import shaftwright.suspension.Kingpin;

/**
 * The line about which a side's hub is steered: as it was measured, else through the ball joints of
 * its linkage's two wishbones.
 */
final class KingpinLines {
    private static final String MEASURED =
            """
            COUNT(kingpin_inclination_read,kingpin_caster_read,kingpin_inward_read,
            kingpin_ahead_read)=4
            """;

    private static final Pieces BALLS =
            Pieces.of("ux", ball("point_x", BallJoint.UPPER))
                    .and("uy", ball("point_y", BallJoint.UPPER))
                    .and("uz", ball("point_z", BallJoint.UPPER))
                    .and("lx", ball("point_x", BallJoint.LOWER))
                    .and("ly", ball("point_y", BallJoint.LOWER))
                    .and("lz", ball("point_z", BallJoint.LOWER))
                    .and("datum_x", "({outer_ahead_used}-{inner_ahead_used})")
                    .and("rise", "({ride_height_used}-{inner_height_used}-<lz>)")
                    .and("ahead", "((<ux>-<lx>)/(<uz>-<lz>))")
                    .and("outward", "((<uy>-<ly>)/(<uz>-<lz>))");

    private KingpinLines() {}

    private static String ball(String line, BallJoint joint) {
        return "INDEX({" + line + ":all}," + (joint.row() + 1) + ")";
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.PATH_WORK, SIDE).since(6).with(BALLS);
        set.whole("kingpin_linked", "Kingpin line by ball joints")
                .yes(
                        Pieces.of("measured", MEASURED)
                                .and("wishbones", LinkagePointLines.isDoubleWishbone())
                                .and(
                                        "all",
                                        BALLS.in(
                                                """
                                        COUNT(<ux>,<uy>,<uz>,<lx>,<ly>,<lz>,{inner_ahead_used},
                                        {inner_height_used},{outer_ahead_used},{outer_out_used},
                                        {ride_height_used})
                                        """))
                                .and("above", BALLS.in("<uz>><lz>"))
                                .in(
                                        """
                                        IF(<measured>,0,IF(<wishbones>,
                                        IF(<all>=11,IF(<above>,1,0),0),0))
                                        """),
                        (sizing, index) -> sizing.kingpinByLinkage(index.side()));
        used(
                set.rad("kingpin_inclination_used", "Kingpin inclination used"),
                "kingpin_inclination_read",
                "ATAN(0-<outward>)",
                Kingpin::inclination);
        used(
                set.rad("kingpin_caster_used", "Caster used"),
                "kingpin_caster_read",
                "ATAN(0-<ahead>)",
                Kingpin::caster);
        used(
                set.mm("kingpin_inward_used", "Outer datum to kingpin line used"),
                "kingpin_inward_read",
                "{outer_out_used}-<ly>-<outward>*<rise>",
                Kingpin::inward);
        used(
                set.mm("kingpin_ahead_used", "Kingpin line ahead of outer datum used"),
                "kingpin_ahead_read",
                "<lx>+<ahead>*<rise>-<datum_x>",
                Kingpin::ahead);
        set.in(Section.KINGPIN_NOTE, SIDE)
                .text("kingpin_note", "Kingpin line")
                .is(
                        Pieces.of("by_balls", quoted(Words.BY_BALLS))
                                .and("lean", Phrases.angle("{kingpin_inclination_used}"))
                                .and("caster", quoted(Words.CASTER))
                                .and("back", Phrases.angle("{kingpin_caster_used}"))
                                .and("inward", quoted(Words.INWARD))
                                .and("in", Phrases.length("{kingpin_inward_used}"))
                                .and("forward", quoted(Words.AHEAD))
                                .and("to", Phrases.length("{kingpin_ahead_used}"))
                                .in(
                                        """
                                        IF({kingpin_linked}=1,<by_balls>&<lean>&<caster>&<back>
                                        &<inward>&<in>&<forward>&<to>,"")
                                        """),
                        (sizing, index) ->
                                sizing.kingpinByLinkage(index.side())
                                        ? Words.of(
                                                sizing.kingpin(index.side()).orElseThrow(), sizing)
                                        : "");
    }

    private static void used(
            LineSet.NumberLine<Sizing> line,
            String read,
            String byBalls,
            ToDoubleFunction<Kingpin> core) {
        line.is(
                Pieces.of("read", read)
                        .and("measured", MEASURED)
                        .and("by_balls", byBalls)
                        .in("IF({kingpin_linked}=1,<by_balls>,IF(<measured>,<read>,\"\"))"),
                (sizing, index) ->
                        sizing.kingpin(index.side()).map(core::applyAsDouble).orElse(Double.NaN));
    }

    /** What is said of a line that comes from ball joints. */
    private static final class Words {
        static final String BY_BALLS =
                "By the linkage's ball joints, since the rows above do not tell it: inclination ";
        static final String CASTER = ", caster ";
        static final String INWARD = ", ";
        static final String AHEAD = " inward of the outer datum, ahead of it ";

        private Words() {}

        static String of(Kingpin kingpin, Sizing sizing) {
            return BY_BALLS
                    + Wording.angle(kingpin.inclination())
                    + CASTER
                    + Wording.angle(kingpin.caster())
                    + INWARD
                    + Wording.length(kingpin.inward(), sizing.unit())
                    + AHEAD
                    + Wording.length(kingpin.ahead(), sizing.unit());
        }
    }
}
