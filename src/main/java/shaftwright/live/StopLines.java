package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
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
        boolean inUse = RestraintLines.anyRestraint(sizing) || RestraintLines.anyTube(sizing);
        return RestraintLines.moving(sizing, index, inUse)
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
                        .measured("centre_in", "centre_out")
                        .measured("boot_length_in", "boot_length_out")
                        .measured("boot_diameter_in", "boot_diameter_out");
        BLOCK.stamp(lines, all, 1, STOPS);
        BLOCK.figures(lines, STOPS.inWorkbook().source())
                .of(Quantity.TEXT, "stop_say", "Dampers and straps")
                .filledCell(StopLines::say);
        end(lines, "up", "bump", TravelEnds::up);
        end(lines, "down", "droop", TravelEnds::down);
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
                .mm(column + "_<end>", label + ", <inner>")
                .ifKnown(
                        Given.row(
                                "{boot_row_<end>}", "INDEX(" + column + "_read,{boot_row_<end>})"),
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
    private static void end(
            LiveLines lines, String way, String word, Function<TravelEnds, TravelEnds.End> end) {
        LineSet<TravelEnds.End> set =
                BLOCK.figures(
                                lines,
                                (sizing, index) ->
                                        stops(sizing, index)
                                                .map(stops -> end.apply(stops.wheelEnds()))
                                                .filter(met -> met.stop().isRestraint()))
                        .since(2);
        set.shown("stop_" + way + "_at", "… end " + word + " at").filled(TravelEnds.End::travel);
        set.text("stop_" + way + "_by", "… by").filled(met -> met.stop().words());
    }

    private static void gap(LiveLines lines, ShaftEnd end) {
        Known.Source<SideStops.Gap> source =
                (sizing, index) -> stops(sizing, index).flatMap(stops -> stops.gap(end));
        LineSet<SideStops.Gap> set = BLOCK.figures(lines, source).at(end);
        set.shown("stop_gap_<end>", "<Inner> boot to tube, least gap").filled(SideStops.Gap::least);
        set.shown("stop_gap_at_<end>", "… at travel, bump +").filled(SideStops.Gap::leastAt);
        set.shown("stop_gap_ride_<end>", "… the same at ride").filled(SideStops.Gap::atRide);
        BLOCK.figures(
                        lines,
                        (sizing, index) ->
                                source.of(sizing, index)
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
