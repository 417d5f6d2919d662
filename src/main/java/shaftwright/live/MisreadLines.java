package shaftwright.live;

import static shaftwright.contract.Grid.LINKAGE_POINT;
import static shaftwright.contract.Grid.READING;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;
import static shaftwright.formula.NumberFormula.OUT_OF_RANGE;
import static shaftwright.formula.NumberFormula.UNREADABLE;

import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.formula.Pieces;
import shaftwright.reading.Misread;
import shaftwright.reading.Sizing;

/**
 * Which typed cell can't be used, in words: one line per input that scenarios share, each of which
 * passes on what the line before it says, and one per scenario for its own inputs. A workbook with
 * such a cell is never filled.
 */
final class MisreadLines {
    /** The first cell that can't be used of those that all scenarios share. */
    static final String SHARED = "misread_shared";

    /** The first cell of a scenario that can't be used. */
    static final String COLUMN = "misread_column";

    /** Contract version since which the cell is named. */
    private static final int CELLS = 4;

    /** Contract version since which labels stand in quotes. */
    private static final int QUOTED = 3;

    private static final String LABEL = "What can't be used";

    private static final Pieces OF_RANGE =
            Pieces.of("unreadable", quoted(UNREADABLE))
                    .and("out_of_range", quoted(OUT_OF_RANGE))
                    .and("count", "COUNTIF(<range>,<unreadable>)+COUNTIF(<range>,<out_of_range>)")
                    .and(
                            "place",
                            "IFERROR(MATCH(<unreadable>,<range>,0),MATCH(<out_of_range>,<range>,0))")
                    .and("cant_be_read", quoted(Misread.CANT_BE_READ))
                    .and("not_allowed", quoted(Misread.OUT_OF_RANGE))
                    .and(
                            "flaw",
                            "IF(COUNTIF(<range>,<unreadable>)>0,<cant_be_read>,<not_allowed>)");

    private MisreadLines() {}

    /** Of all inputs but the scenarios' own, whose reading lines must be there. */
    static void declare(LiveLines lines) {
        String last = chain(LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK), false);
        String side = chain(LineSet.in(lines, Section.PATH_WORK, Grid.SIDE), true);
        LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK)
                .since(ReadLines.RANGES)
                .revised(QUOTED)
                .text(SHARED, LABEL)
                .is(
                        first(
                                "{" + last + "}",
                                first("{" + side + "@left}", "{" + side + "@right}")),
                        sizing -> "");
    }

    /** Of a scenario's own inputs. */
    static void declareColumn(LiveLines lines) {
        int newest =
                Contract.inputs(Grid.SCENARIO).stream()
                        .mapToInt(Input::since)
                        .reduce(CELLS, Math::max);
        LineSet.in(lines, Section.SCENARIO_WORK, Grid.SCENARIO)
                .since(ReadLines.RANGES)
                .revised(newest)
                .text(COLUMN, LABEL)
                .is(ofColumn(), sizing -> "");
    }

    /** How many of a range's cells can't be used, as a formula. */
    static String count(String range) {
        return in(range, "<count>");
    }

    private static String in(String range, String open) {
        return Pieces.of("range", range).in(OF_RANGE.in(open));
    }

    /** What the line before says, else the first cell of this input. */
    private static String chain(LineSet<Sizing> set, boolean sided) {
        String last = "";
        int lastSince = CELLS;
        for (Input input : Contract.inputs()) {
            if (Misread.isShared(input) && input.grid().sided() == sided) {
                String name = input.name() + "_misread";
                String before = "{" + last + "}";
                boolean first = last.isEmpty();
                set.since(Math.max(ReadLines.RANGES, input.since()))
                        .revised(Math.max(Math.max(CELLS, lastSince), input.since()))
                        .text(name, input.label() + ": what can't be used")
                        .is(
                                index ->
                                        first
                                                ? own(input, index.side())
                                                : first(before, own(input, index.side())),
                                (sizing, index) -> "");
                last = name;
                lastSince = input.since();
            }
        }
        return last;
    }

    private static String first(String text, String other) {
        return "IF(" + text + "<>\"\"," + text + "," + other + ")";
    }

    /** Name of the line that has the input's numbers for a side. */
    private static String read(Input input) {
        return switch (input.grid()) {
            case READING -> "row_" + input.name();
            case SIDE, LINKAGE_POINT -> input.name() + "_used";
            default -> ReadLines.name(input);
        };
    }

    private static String ofColumn() {
        Input[] numeric =
                Contract.inputs(Grid.SCENARIO).stream()
                        .filter(input -> input.kind().numeric())
                        .toArray(Input[]::new);
        return Pieces.of("labels", joined(",", numeric, input -> quoted(Misread.quoted(input))))
                .and("rows", joined(",", numeric, input -> "ROW({" + input.name() + "})"))
                .and("sheet", TypedCell.title("scenario_name"))
                .in(
                        in(
                                ScenarioLines.numbers(),
                                """
                                IF(<count>=0,"",CHOOSE(<place>,<labels>)&" ("&<sheet>
                                &ADDRESS(CHOOSE(<place>,<rows>),COLUMN({scenario_name}),4)
                                &"),"&<flaw>)
                                """));
    }

    private static String own(Input input, Side side) {
        boolean single = input.grid().rows() == 1;
        String range = "{" + read(input) + (single ? "}" : ":all}");
        String block = input.definedName(side);
        String cell = single ? block : in(range, "INDEX(" + block + ",<place>)");
        Pieces pieces =
                Pieces.of(
                                "subject",
                                quoted(Misread.subject(input, side)) + (single ? "" : "&<place>"))
                        .and("cell", TypedCell.named(input.name(), cell));
        String open = "IF(<count>=0,\"\",<subject>&\" (\"&<cell>&\"),\"&<flaw>)";
        return in(range, pieces.in(open));
    }
}
