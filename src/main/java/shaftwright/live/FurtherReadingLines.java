package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;

import shaftwright.reading.Sizing;
import shaftwright.study.ReadingWording;
import shaftwright.suspension.MeasuredPath;

/** Whether to go on measuring a side: an engine block, since it is the best of all heights. */
final class FurtherReadingLines {
    private static final int SINCE = 7;

    private static final EngineBlock BLOCK =
            new EngineBlock("further", SIDE, Section.PATH_WORK, Section.MEASURE_NOTES).since(SINCE);

    private static final Known<MeasuredPath> OWN =
            new Known<>("{readings_own}=1", (sizing, index) -> sizing.measured(index.side()));

    private FurtherReadingLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> work = LineSet.in(lines, Section.PATH_WORK, SIDE).since(SINCE);
        work.whole("readings_own", "Path from the side's own readings")
                .yes(
                        index ->
                                ReadLines.ownOrLeft(
                                        index.side(), "IF({linkage_used}=1,0,{fit_ready})", "0"),
                        (sizing, index) -> sizing.measured(index.side()).isPresent());
        // Hat and path tell where readings stand, how good they are and what curve they make.
        Fingerprint print =
                new Fingerprint(lines)
                        .whole("path_print")
                        .sum("hat_print")
                        .measured("path_rows", "path_degree", "ride_height_used")
                        .measured("variance_distance", "variance_height", "curve_allowance")
                        .measured("readings_contradict", "tape_graduation_read", "tape_mm");
        BLOCK.stamp(lines, print, SINCE, OWN);
        work.in(Section.MEASURE_NOTES, SIDE)
                .about(OWN.source(), Lacking.EMPTY.value())
                .text("further_reading", "Go on measuring?")
                .filledInUnit(ReadingWording::next);
    }
}
