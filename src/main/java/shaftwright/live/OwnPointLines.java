package shaftwright.live;

import static shaftwright.contract.Grid.OWN_POINT_SIDE;
import static shaftwright.contract.Grid.OWN_POINT_SLOT;
import static shaftwright.contract.Grid.SCENARIO_POWER;
import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.stream.IntStream;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.contract.OwnPointInputs;
import shaftwright.formula.Pieces;
import shaftwright.reading.OwnPoints;
import shaftwright.reading.SidePath;
import shaftwright.reading.Sizing;
import shaftwright.suspension.LinkagePath;

/**
 * Pick-up points that scenarios have of their own, row by row, and the hub paths that a fill made
 * of them: an engine block a scenario, empty for those without such points.
 */
final class OwnPointLines {
    /** Puts the scenario before the point in one number. */
    static final int SCENARIO_STEP = 100;

    private static final EngineBlock BLOCK =
            new EngineBlock("own", SCENARIO_SIDE, Section.SIDE_WORK, Section.OWN_BLOCK);
    private static final Known<SidePath> OWN = new Known<>("{own_used}=1", OwnPointLines::own);
    private static final String NO_LINKAGE = "points of its own need the linkage as hub path";
    private static final String STALE = "its own points were changed: fill again";
    private static final int TERMS = 5;

    private OwnPointLines() {}

    private static Optional<SidePath> own(Sizing sizing, Index index) {
        return sizing.ownPath(index.side(), index.scenario());
    }

    static void declare(LiveLines lines) {
        LineSet<Sizing> rows = LineSet.in(lines, Section.PARTS_WORK, OWN_POINT_SLOT);
        rows(rows);
        Fingerprint row =
                new Fingerprint(lines)
                        .measured("own_ahead_read", "own_out_read", "own_height_read")
                        .whole("own_point_number", "own_side_number");
        rows.about(
                        (sizing, index) ->
                                Optional.of(sizing).filter(all -> scenario(all, index.row()) > 0),
                        Lacking.ZERO.value())
                .rowPrint("own_row_print", "own_scenario_number", row, TERMS);
        keys(rows.in(Section.PATH_WORK, OWN_POINT_SIDE));
        used(rows.in(Section.SIDE_WORK, SCENARIO_SIDE), row);
        BLOCK.stamp(lines, new Fingerprint(lines).whole("linkage_print", "own_sum"), 1, OWN);
        BLOCK.figures(lines, OWN.source())
                .text("own_status", "Points of its own")
                .filled(own -> own.linkage().status());
        // Cells of scenarios without points of their own hold something too: among inserted rows
        // only such cells are found again.
        LineSet<LinkagePath> curves =
                rows.in(Section.OWN_CURVES, SCENARIO_POWER)
                        .about(
                                (sizing, index) ->
                                        own(sizing, index).flatMap(own -> own.linkage().path()),
                                Lacking.NO_FIGURES.value());
        for (HubCurve curve : HubCurve.values()) {
            curves.number("own_" + curve.word, curve.label)
                    .filled(
                            (path, index) ->
                                    curve.of(path.path(), path.pitch()).coefficient(index.row()));
        }
    }

    /** A formula over the hub path's coefficients, of the scenario's own path where it has one. */
    static String either(String ofOwn, String ofAll) {
        return "IF({own_used}=1," + ofOwn + "," + ofAll + ")";
    }

    private static void rows(LineSet<Sizing> set) {
        set.whole("own_scenario_number", "Scenario by number")
                .is(
                        """
                        IF({own_slot}>ROWS(own_scenario),0,IF(INDEX(own_scenario,{own_slot})="",0,
                        IFERROR(MATCH(INDEX(own_scenario,{own_slot}),{work_letter:each},0),0)))
                        """,
                        (sizing, index) -> scenario(sizing, index.row()));
        set.whole("own_side_number", "Side by number")
                .is(
                        RestraintLines.number("own_side", "{own_slot}"),
                        (sizing, index) -> OwnPoints.side(sizing.inputs(), index.row()));
        Pieces pieces =
                Pieces.of("point", "INDEX(own_point,{own_slot})")
                        .and("datum", quoted(OwnPointInputs.OUTER_DATUM))
                        .and("number", OwnPointInputs.OUTER_DATUM_NUMBER);
        set.with(pieces)
                .whole("own_point_number", "Point by number")
                .is(
                        """
                        IF({own_slot}>ROWS(own_point),0,IF(<point>="",0,IF(<point>=<datum>,<number>,
                        IFERROR(MATCH(<point>,{point_label@left:all},0),0))))
                        """,
                        (sizing, index) -> OwnPoints.point(sizing.inputs(), index.row()));
    }

    /** Scenario of a row, from 1; 0 for none. */
    private static int scenario(Sizing sizing, int row) {
        return OwnPoints.scenario(sizing.inputs(), row).orElse(-1) + 1;
    }

    /** The rows' scenarios where they count on a side, else 0. */
    private static void keys(LineSet<Sizing> set) {
        set.whole("own_key", "Scenario that it counts for")
                .is(
                        index ->
                                Pieces.of("side", index.side() == Side.LEFT ? 2 : 3)
                                        .in(
                                                """
                                                IF(OR({own_side_number}=1,{own_side_number}=<side>),
                                                {own_scenario_number},0)
                                                """),
                        OwnPointLines::key);
        set.whole("own_place", "The same and the point")
                .is(
                        "IF({own_key}=0,0,{own_key}*" + SCENARIO_STEP + "+{own_point_number})",
                        (sizing, index) -> {
                            int key = key(sizing, index);
                            int point = OwnPoints.point(sizing.inputs(), index.row());
                            return key == 0 ? 0 : key * SCENARIO_STEP + point;
                        });
    }

    private static int key(Sizing sizing, Index index) {
        int scenario = scenario(sizing, index.row());
        return OwnPoints.holds(sizing.inputs(), index.row(), scenario - 1, index.side())
                ? scenario
                : 0;
    }

    private static void used(LineSet<Sizing> open, Fingerprint row) {
        LineSet<Sizing> set =
                open.with(
                        Pieces.of("number", "MATCH({work_letter},{work_letter:each},0)")
                                .and("modulus", Fingerprint.MODULUS)
                                .and("no_linkage", quoted(NO_LINKAGE))
                                .and("current", quoted(EngineBlock.CURRENT))
                                .and("stale", quoted(STALE)));
        set.whole("own_used", "Points of its own")
                .yes(
                        "IF({used}=1,IF(COUNTIF({own_key:all},<number>)>0,1,0),0)",
                        (sizing, index) -> own(sizing, index).isPresent());
        set.about(OWN.inWorkbook().source(), Lacking.ZERO.value())
                .whole("own_sum", "Fingerprint of its own points")
                .is(
                        """
                        IF({own_used}=1,
                        MOD(SUMIF({own_key:all},<number>,{own_row_print:all}),<modulus>),0)
                        """,
                        (sizing, index) -> sum(row, sizing, index));
        // A workbook with points that can't be used is never filled.
        set.text("own_trouble", "What keeps them from use")
                .is(
                        """
                        IF({own_used}=0,"",IF({linkage_used}=0,<no_linkage>,
                        IF({own_stamp}<><current>,<stale>,"")))
                        """,
                        sizing -> "");
    }

    private static double sum(Fingerprint print, Sizing sizing, Index index) {
        return Fingerprint.sum(
                IntStream.range(0, OWN_POINT_SLOT.rows())
                        .filter(
                                row ->
                                        OwnPoints.holds(
                                                sizing.inputs(),
                                                row,
                                                index.scenario(),
                                                index.side()))
                        .mapToDouble(
                                row ->
                                        print.of(
                                                sizing,
                                                new Index(Side.LEFT, 0, row),
                                                TERMS * row)));
    }
}
