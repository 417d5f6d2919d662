package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;

import java.util.Optional;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.RowGaps;

/** The places halfway between neighbouring rows, from the highest down, and the least known one. */
final class GapLines {
    private static final Known<RowGaps> GAP =
            new Known<>(
                    "{fit_ready}*IF({row_slot}<{path_rows},1,0)=1",
                    (sizing, index) ->
                            gaps(sizing, index).filter(gaps -> index.row() < gaps.count()));
    private static final Known<RowGaps> ANY = new Known<>("{fit_ready}*1=1", GapLines::gaps);

    private GapLines() {}

    private static Optional<RowGaps> gaps(Sizing sizing, Index index) {
        return sizing.readings(index.side()).path().map(MeasuredPath::gaps);
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> set = LineSet.in(lines, Section.PATH_WORK, READING_SLOT).since(2);
        LineSet<RowGaps> each = set.only(GAP, Lacking.ZERO);
        each.mm("gap_height", "Halfway to the next row")
                .byRow(
                        "(LARGE({row_height:all},{row_slot})+LARGE({row_height:all},{row_slot}+1))/2",
                        RowGaps::height);
        each.number("gap_norm", "The same, normalised")
                .byRow(
                        "(2*({gap_height}-{ride_height_used})-{fit_high}-{fit_low})/({fit_high}-{fit_low})",
                        RowGaps::normalised);
        each.number("gap_deviation", "How well it is known")
                .byRow(
                        "ROUND(SQRT(MAX(0," + PathLines.horner("fit_hat", "{gap_norm}") + ")),6)",
                        RowGaps::deviation);
        set.in(Section.PATH_WORK, SIDE)
                .only(ANY, Lacking.ZERO)
                .mm("gap_least_known", "Best height for one more row")
                .is(
                        "INDEX({gap_height:all},MATCH(MAX({gap_deviation:all}),"
                                + "{gap_deviation:all},0))",
                        RowGaps::leastKnown);
    }
}
