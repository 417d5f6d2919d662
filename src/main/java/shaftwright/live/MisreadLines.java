package shaftwright.live;

import static shaftwright.live.NumberFormula.OUT_OF_RANGE;
import static shaftwright.live.NumberFormula.UNREADABLE;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.Misread;
import shaftwright.reading.Sizing;

/**
 * Which typed cell can't be used, in words: one line per input that scenarios share, each of which
 * passes on what the line before it says, and one per scenario for its own inputs.
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

    private MisreadLines() {}

    /** Of all inputs but the scenarios' own, whose reading lines must be there. */
    static void declare(LiveLines lines) {
        String last = chain(lines, false, "");
        String side = chain(lines, true, "");
        lines.add(
                line(
                        SHARED,
                        Section.BOOK_WORK,
                        Grid.BOOK,
                        "What can't be used",
                        first(
                                "{" + last + "}",
                                first("{" + side + "@left}", "{" + side + "@right}"))));
    }

    /** Of a scenario's own inputs. */
    static void declareColumn(LiveLines lines) {
        lines.add(
                line(
                        COLUMN,
                        Section.SCENARIO_WORK,
                        Grid.SCENARIO,
                        "What can't be used",
                        ofColumn()));
    }

    /** How many of a range's cells can't be used, as a formula. */
    static String count(String range) {
        return count(range, UNREADABLE) + "+" + count(range, OUT_OF_RANGE);
    }

    private static String count(String range, String word) {
        return "COUNTIF(" + range + ",\"" + word + "\")";
    }

    private static String chain(LiveLines lines, boolean sided, String first) {
        String before = first;
        for (Input input : Contract.inputs()) {
            if (Misread.isShared(input) && input.grid().sided() == sided) {
                String name = input.name() + "_misread";
                lines.add(
                        new LiveLine(
                                name,
                                sided ? Section.PATH_WORK : Section.BOOK_WORK,
                                sided ? Grid.SIDE : Grid.BOOK,
                                input.label() + ": what can't be used",
                                Quantity.TEXT,
                                new OfInput(input, before),
                                Nothing.SAID));
                before = name;
            }
        }
        return before;
    }

    /** A text literal. */
    private static String text(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    private static LiveLine line(
            String name, Section section, Grid grid, String label, String formula) {
        return new LiveLine(
                        name,
                        section,
                        grid,
                        label,
                        Quantity.TEXT,
                        new Written(formula),
                        Nothing.SAID)
                .since(ReadLines.RANGES)
                .revised(COLUMN.equals(name) ? CELLS : QUOTED);
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
        StringBuilder labels = new StringBuilder();
        StringBuilder rows = new StringBuilder();
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            if (input.kind().numeric()) {
                labels.append(',').append(text(Misread.quoted(input)));
                rows.append(",ROW({").append(input.name()).append("})");
            }
        }
        String range = ScenarioLines.numbers();
        return "IF("
                + count(range)
                + "=0,\"\",CHOOSE("
                + place(range)
                + labels
                + ")&\" (\"&"
                + TypedCell.title("scenario_name")
                + "&ADDRESS(CHOOSE("
                + place(range)
                + rows
                + "),COLUMN({scenario_name}),4)&\"),\"&"
                + flaw(range)
                + ")";
    }

    private static String place(String range) {
        return "IFERROR(MATCH(\""
                + UNREADABLE
                + "\","
                + range
                + ",0),MATCH(\""
                + OUT_OF_RANGE
                + "\","
                + range
                + ",0))";
    }

    private static String flaw(String range) {
        return "IF("
                + count(range, UNREADABLE)
                + ">0,\""
                + Misread.CANT_BE_READ
                + "\",\""
                + Misread.OUT_OF_RANGE
                + "\")";
    }

    /** A workbook with a cell that can't be used is never filled. */
    private enum Nothing implements LiveLine.Core {
        SAID;

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of("");
        }
    }

    private record Written(String formula) implements LiveLine.Formula {
        @Override
        public String at(Index index) {
            return formula;
        }
    }

    /** What the line before says, else the first cell of this input. */
    private record OfInput(Input input, String before) implements LiveLine.Formula {
        @Override
        public int since() {
            return Math.max(ReadLines.RANGES, input.since());
        }

        @Override
        public int revised() {
            return Math.max(CELLS, input.since());
        }

        @Override
        public String at(Index index) {
            String own = own(index.side());
            return before.isEmpty() ? own : first("{" + before + "}", own);
        }

        private String named(String reference) {
            return "\" (\"&" + TypedCell.named(input.name(), reference) + "&\"),\"";
        }

        private String own(Side side) {
            String subject = text(Misread.subject(input, side));
            if (input.grid().rows() == 1) {
                String cell = "{" + read(input) + "}";
                return "IF("
                        + count(cell)
                        + "=0,\"\","
                        + subject
                        + "&"
                        + named(input.definedName(side))
                        + "&"
                        + flaw(cell)
                        + ")";
            }
            String range = "{" + read(input) + ":all}";
            return "IF("
                    + count(range)
                    + "=0,\"\","
                    + subject
                    + "&"
                    + place(range)
                    + "&"
                    + named("INDEX(" + input.definedName(side) + "," + place(range) + ")")
                    + "&"
                    + flaw(range)
                    + ")";
        }
    }
}
