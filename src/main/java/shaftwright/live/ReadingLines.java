package shaftwright.live;

import static shaftwright.contract.Grid.READING;
import static shaftwright.contract.Grid.READING_SLOT;

import java.util.List;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;

/**
 * The typed rows of one side as numbers, and what follows from each row by itself. An empty row has
 * weight zero and zeros behind it.
 */
final class ReadingLines {
    static final List<String> REPEATS = List.of("first", "second", "third");

    /**
     * {@code <all>} of a row's readings of the distance; {@code <broken>}, whether one of them is
     * mistyped; lengths closer than {@code <same>} are one length, mm.
     */
    static final Pieces PIECES =
            Pieces.of("same", "0.000001")
                    .and("broken", "{row_apart}>{repeat_limit}+<same>")
                    .and("all", "{row_distance_first>row_distance_third}");

    private static final ReadLines.Cell CELL = new ReadLines.Slot("row_slot");

    private ReadingLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PATH_WORK, READING_SLOT);
        all.ordinal("row_slot", "Row");
        for (Input input : Contract.inputs(READING)) {
            ReadLines.aside(all, "row_" + input.name(), input, CELL);
        }
        for (Input input : Contract.inputs(READING)) {
            ReadLines.ofSide(all, "row_" + input.name(), "row_" + input.name(), input);
        }
        LineSet<ReadRow> any = all.with(PIECES).about(ReadRow::of, Lacking.ZERO.value());
        any.whole("row_weight", "Readings")
                .is(
                        "IF(AND(ISNUMBER({row_height}),COUNT(<all>)>0),COUNT(<all>),0)",
                        row -> row.fitted().row().readings());
        LineSet<ReadRow> rows =
                all.with(PIECES).only(new Known<>("{row_weight}>0", ReadRow::of), Lacking.ZERO);
        rows.since(2)
                .mm("row_apart", "Farthest from the next")
                .is(
                        """
                        IF({row_weight}<2,0,IF({row_weight}=2,MAX(<all>)-MIN(<all>),
                        MAX(MEDIAN(<all>)-MIN(<all>),MAX(<all>)-MEDIAN(<all>))))
                        """,
                        row -> row.path().repeats().apart(row.point()));
        rows.since(2)
                .whole("row_calm", "Within four graduations")
                .yes(
                        "IF({row_apart}<={repeat_graduations}+<same>,1,0)",
                        row -> row.path().repeats().isCalm(row.point()));
        rows.revised(2)
                .mm("row_distance", "Mean distance, or median")
                .is(
                        "IF(<broken>,MEDIAN(<all>),SUM(<all>)/{row_weight})",
                        row -> row.path().repeats().first(row.point()));
        rows.number("row_scatter", "Squared scatter")
                .is("DEVSQ(<all>)", row -> row.fitted().row().scatter());
        rows.number("row_squared", "Squared reach")
                .is(
                        "{row_distance}^2-{row_fore_aft}^2-({row_height}-{inner_height_used})^2",
                        row -> row.path().firstSquaredReach(row.point()));
        // A workbook with a flawed row is never filled.
        any.revised(2)
                .with(Pieces.of("misread", MisreadLines.count("{row_height>row_toe}")))
                .whole("row_flaw", "Flaw")
                .is(
                        """
                        IF(<misread>>0,1,IF(COUNT({row_height>row_distance_third})=0,0,
                        IF({row_weight}=0,2,IF(COUNTIF({row_height:all},{row_height})>1,4,
                        IF(ISNUMBER({inner_height_used}),IF({row_squared}<=0,3,0),0)))))
                        """,
                        row -> 0);
    }
}
