package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.study.Wording;
import shaftwright.suspension.BallJoint;
import shaftwright.suspension.Kingpin;
import shaftwright.units.LengthUnit;

/**
 * The line about which a side's hub is steered: as it was measured, else through the ball joints of
 * its linkage's two wishbones.
 */
final class KingpinLines {
    /** Said of a line that comes from ball joints. */
    private static final String BY_PIECES =
            "By the linkage's ball joints, since the rows above do not tell it: inclination %s,"
                    + " caster %s, %s inward of the outer datum, ahead of it %s";

    private static final Pieces PIECES =
            Pieces.of(
                            "measured",
                            """
                            COUNT(kingpin_inclination_read,kingpin_caster_read,kingpin_inward_read,
                            kingpin_ahead_read)=4
                            """)
                    .and("wishbones", LinkagePointLines.isDoubleWishbone())
                    .and("ux", ball("point_x", BallJoint.UPPER))
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
        LineSet<Sizing> set = LineSet.in(lines, Section.PATH_WORK, SIDE).since(6).with(PIECES);
        set.whole("kingpin_linked", "Kingpin line by ball joints")
                .yes(
                        """
                        IF(<measured>,0,IF(<wishbones>,
                        IF(COUNT(<ux>,<uy>,<uz>,<lx>,<ly>,<lz>,{inner_ahead_used},
                        {inner_height_used},{outer_ahead_used},{outer_out_used},
                        {ride_height_used})=11,IF(<uz>><lz>,1,0),0),0))
                        """,
                        (sizing, index) -> sizing.kingpinByLinkage(index.side()));
        LineSet<Kingpin> used = set.ofAny((sizing, index) -> sizing.kingpin(index.side()));
        used.rad("kingpin_inclination_used", "Kingpin inclination used")
                .is(used("kingpin_inclination_read", "ATAN(0-<outward>)"), Kingpin::inclination);
        used.rad("kingpin_caster_used", "Caster used")
                .is(used("kingpin_caster_read", "ATAN(0-<ahead>)"), Kingpin::caster);
        used.mm("kingpin_inward_used", "Outer datum to kingpin line used")
                .is(
                        used("kingpin_inward_read", "{outer_out_used}-<ly>-<outward>*<rise>"),
                        Kingpin::inward);
        used.mm("kingpin_ahead_used", "Kingpin line ahead of outer datum used")
                .is(used("kingpin_ahead_read", "<lx>+<ahead>*<rise>-<datum_x>"), Kingpin::ahead);
        set.in(Section.KINGPIN_NOTE, SIDE)
                .ofAny(
                        (sizing, index) ->
                                sizing.kingpin(index.side())
                                        .filter(line -> sizing.kingpinByLinkage(index.side())))
                .text("kingpin_note", "Kingpin line")
                .inUnit(
                        Given.when(
                                "{kingpin_linked}=1",
                                Phrases.said(
                                        BY_PIECES,
                                        Phrases.angle("{kingpin_inclination_used}"),
                                        Phrases.angle("{kingpin_caster_used}"),
                                        Phrases.length("{kingpin_inward_used}"),
                                        Phrases.length("{kingpin_ahead_used}"))),
                        KingpinLines::words);
    }

    private static String used(String read, String byBalls) {
        return "IF({kingpin_linked}=1," + byBalls + ",IF(<measured>," + read + ",\"\"))";
    }

    private static String words(Kingpin kingpin, LengthUnit unit) {
        return BY_PIECES.formatted(
                Wording.angle(kingpin.inclination()),
                Wording.angle(kingpin.caster()),
                Wording.length(kingpin.inward(), unit),
                Wording.length(kingpin.ahead(), unit));
    }
}
