package shaftwright.live;

import java.util.function.Function;
import shaftwright.contract.Grid;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;
import shaftwright.study.CornerStudy.RestraintCourse;
import shaftwright.travel.TravelEnds;

/** How dampers and straps move on a side, row by row: an engine block. */
final class RestraintLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("restraint", Grid.SIDE, Section.PATH_WORK, Section.RESTRAINT_BLOCK);
    private static final Known<SideRestraints> MOVING =
            new Known<>(
                    "AND(SUM(restraint_on)>0,COUNT({inner_offset_used})=1,{path_ready}=1)",
                    (sizing, index) ->
                            RestraintSlotLines.moving(
                                    sizing, index, RestraintSlotLines.anyRestraint(sizing)));

    private RestraintLines() {}

    static void declare(LiveLines lines) {
        BLOCK.stamp(
                lines,
                new Fingerprint(lines).whole("restraint_mark").measured("tape_mm"),
                1,
                MOVING);
        LineSet<Sizing> rows = LineSet.in(lines, Section.RESTRAINT_ROWS, Grid.RESTRAINT_SIDE);
        RowNameLines.OF_RESTRAINTS.is(
                rows.revised(5).text("restraint_label", "Damper, strap or bump stop"));
        LineSet<RestraintCourse> course =
                rows.about(
                        (sizing, index) -> sizing.path(index.side()).restraints().row(index.row()),
                        Lacking.NO_FIGURES.value());
        course.shown("restraint_ride", "Length at ride").filled(RestraintCourse::lengthAtRide);
        course.number("restraint_ratio", "Length per height at ride")
                .filled(RestraintCourse::ratioAtRide);
        stop(rows, "restraint_up", "Stops the wheel, up", TravelEnds::up);
        stop(rows, "restraint_down", "Stops the wheel, down", TravelEnds::down);
    }

    private static void stop(
            LineSet<Sizing> rows,
            String name,
            String label,
            Function<TravelEnds, TravelEnds.End> end) {
        rows.about(
                        (sizing, index) ->
                                sizing.path(index.side())
                                        .restraints()
                                        .row(index.row())
                                        .map(course -> end.apply(course.alone()))
                                        .filter(alone -> alone.stop().isRestraint()),
                        Lacking.NO_FIGURES.value())
                .shown(name, label)
                .filled(alone -> Math.abs(alone.travel()));
    }
}
