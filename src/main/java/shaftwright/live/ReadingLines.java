package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;

import java.util.List;
import shaftwright.contract.Contract;
import shaftwright.reading.Sizing;

/**
 * The typed rows of one side as numbers, and what follows from each row by itself. An empty row has
 * weight zero and zeros behind it.
 */
final class ReadingLines {
    static final List<String> REPEATS = List.of("first", "second", "third");

    /** Lengths closer than this are one length, mm. */
    static final String SAME = "0.000001";

    /** Whether one of a row's readings of the distance is mistyped. */
    static final String BROKEN = "{row_apart}>{repeat_limit}+" + SAME;

    /** A row's readings of the distance. */
    static final String ALL = "{row_distance_first>row_distance_third}";

    private static final ReadLines.Cell CELL = new ReadLines.Slot("row_slot");

    private static final List<String> TYPED =
            List.of(
                    "height",
                    "distance_first",
                    "distance_second",
                    "distance_third",
                    "fore_aft",
                    "camber",
                    "toe");

    private ReadingLines() {}

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PATH_WORK, READING_SLOT);
        all.ordinal("row_slot", "Row");
        for (String name : TYPED) {
            ReadLines.aside(all, "row_" + name, Contract.input(name), CELL);
        }
        for (String name : TYPED) {
            ReadLines.ofSide(
                    all,
                    "row_" + name,
                    "row_" + name,
                    Contract.input(name),
                    (sizing, index) -> sizing.readings(index.side()).typed(name, index.row()));
        }
        LineSet<ReadRow> any = all.about(ReadRow::of, Lacking.ZERO.value());
        LineSet<ReadRow> rows = all.only(new Known<>("{row_weight}>0", ReadRow::of), Lacking.ZERO);
        any.whole("row_weight", "Readings")
                .is(
                        "IF(AND(ISNUMBER({row_height}),COUNT(#)>0),COUNT(#),0)".replace("#", ALL),
                        row -> row.fitted().row().readings());
        rows.since(2)
                .mm("row_apart", "Farthest from the next")
                .is(
                        "IF({row_weight}<2,0,IF({row_weight}=2,MAX(#)-MIN(#),MAX(MEDIAN(#)-MIN(#),MAX(#)-MEDIAN(#))))"
                                .replace("#", ALL),
                        row -> row.path().repeats().apart(row.point()));
        rows.since(2)
                .whole("row_calm", "Within four graduations")
                .is(
                        "IF({row_apart}<={repeat_graduations}+" + SAME + ",1,0)",
                        row -> row.path().repeats().isCalm(row.point()) ? 1 : 0);
        rows.revised(2)
                .mm("row_distance", "Mean distance, or median")
                .is(
                        ("IF(" + BROKEN + ",MEDIAN(#),SUM(#)/{row_weight})").replace("#", ALL),
                        row -> row.path().repeats().first(row.point()));
        rows.number("row_scatter", "Squared scatter")
                .is("DEVSQ(" + ALL + ")", row -> row.fitted().row().scatter());
        rows.number("row_squared", "Squared reach")
                .is(
                        "{row_distance}^2-{row_fore_aft}^2-({row_height}-{inner_height_used})^2",
                        row -> row.path().firstSquaredReach(row.point()));
        // A workbook with a flawed row is never filled.
        any.revised(2)
                .whole("row_flaw", "Flaw")
                .is(
                        ("IF(" + MisreadLines.count("{row_height>row_toe}") + ">0,1,")
                                + "IF(COUNT({row_height>row_distance_third})=0,0,"
                                + "IF({row_weight}=0,2,"
                                + "IF(COUNTIF({row_height:all},{row_height})>1,4,"
                                + "IF(ISNUMBER({inner_height_used}),"
                                + "IF({row_squared}<=0,3,0),0)))))",
                        row -> 0);
    }
}
