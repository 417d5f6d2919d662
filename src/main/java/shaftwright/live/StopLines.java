package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.joint.Boot;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.reading.StopSentence;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.SideStops;
import shaftwright.travel.Span;
import shaftwright.travel.TravelEnds;

/** What dampers, straps and tubes make of each scenario's wanted travel: an engine block. */
final class StopLines {
    private static final EngineBlock BLOCK =
            new EngineBlock("stop", SCENARIO_SIDE, Section.SIDE_WORK, Section.STOP_BLOCK);
    private static final Known<SideStops> STOPS =
            new Known<>(
                    "AND(SUM(restraint_on)+SUM(tube_on)>0,COUNT({inner_offset_used})=1,{ready}=1)",
                    StopLines::stops);

    private StopLines() {}

    private static Optional<SideStops> stops(Sizing sizing, Index index) {
        return RestraintLines.moving(sizing, index, RestraintLines.anyInUse(sizing))
                .flatMap(moving -> SideLines.outcome(sizing, index).stops());
    }

    static void declare(LiveLines lines) {
        LineSet<SideOutcome> side =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .only(Known.SETUP, Lacking.NOT_AVAILABLE);
        for (ShaftEnd end : ShaftEnd.values()) {
            boot(side, end, "boot_length", "Boot's length", Boot::length);
            boot(side, end, "boot_diameter", "Boot's diameter", Boot::diameter);
        }
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("restraint_mark", "own_sum")
                        .measured("t_low", "t_high", "tape_mm")
                        .whole("stance_print")
                        .atEnds("centre", "boot_length", "boot_diameter");
        BLOCK.stamp(lines, all, 1, STOPS);
        BLOCK.figures(lines, STOPS.inWorkbook().source())
                .of(Quantity.TEXT, "stop_say", "Dampers and straps")
                .filledCell(StopLines::say);
        LineSet<TravelEnds> ends =
                BLOCK.figures(lines, STOPS.source())
                        .since(2)
                        .of((stops, index) -> stops.wheelEnds());
        end(ends.of((both, index) -> both.up()), "up", "bump");
        end(ends.of((both, index) -> both.down()), "down", "droop");
        for (ShaftEnd end : ShaftEnd.values()) {
            gap(lines, end);
        }
        span(lines, "span_longest", "Longest over the travel", Span.Course::longest);
        span(lines, "span_shortest", "Shortest over the travel", Span.Course::shortest);
    }

    /** A size of a scenario's boot, empty when it is not known. */
    private static void boot(
            LineSet<SideOutcome> set,
            ShaftEnd end,
            String column,
            String label,
            Function<Boot, OptionalDouble> core) {
        set.at(end)
                .inRow("{boot_row_<end>}")
                .mm(column + "_<end>", label + ", <inner>")
                .ifKnown(
                        "INDEX(" + column + "_read,{boot_row_<end>})",
                        side -> core.apply(side.joint(end).boot()));
    }

    private static CellValue say(Sizing sizing, Index index) {
        return CellValue.of(
                sizing.path(index.side()).restraints().rows().isEmpty()
                        ? Fingerprint.NOTHING
                        : StopSentence.of(
                                stops(sizing, index).orElseThrow(),
                                SideLines.outcome(sizing, index),
                                sizing));
    }

    /** Where dampers and straps end the travel, whatever is wanted. */
    private static void end(LineSet<TravelEnds.End> ends, String way, String word) {
        LineSet<TravelEnds.End> set = RestraintLines.stop(ends);
        set.shown("stop_" + way + "_at", "… end " + word + " at").filled(TravelEnds.End::travel);
        set.text("stop_" + way + "_by", "… by").filled(met -> met.stop().words());
    }

    private static void gap(LiveLines lines, ShaftEnd end) {
        LineSet<SideStops.Gap> set =
                BLOCK.figures(lines, STOPS.source())
                        .at(end)
                        .ofAny((stops, index) -> stops.gap(end), Lacking.NO_FIGURES);
        set.shown("stop_gap_<end>", "<Inner> boot to tube, least gap").filled(SideStops.Gap::least);
        set.shown("stop_gap_at_<end>", "… at travel, bump +").filled(SideStops.Gap::leastAt);
        set.shown("stop_gap_ride_<end>", "… the same at ride").filled(SideStops.Gap::atRide);
        BLOCK.figures(
                        lines,
                        (sizing, index) ->
                                stops(sizing, index)
                                        .flatMap(stops -> stops.gap(end))
                                        .map(SideLines.outcome(sizing, index)::tubeRow))
                .at(end)
                .whole("stop_gap_tube_<end>", "… tube of row")
                .filled(row -> row + 1);
    }

    /** How long a row gets over the travel. */
    private static void span(
            LiveLines lines, String name, String label, ToDoubleFunction<Span.Course> core) {
        LineSet.in(lines, Section.STOP_TABLE, Grid.RESTRAINT_TABLE)
                .about(
                        (sizing, index) -> SideLines.outcome(sizing, index).course(index.row()),
                        Lacking.NO_FIGURES.value())
                .shown(name, label)
                .filled(core);
    }
}
