package shaftwright.live;

import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.RestraintInputs;
import shaftwright.reading.SideRestraints;
import shaftwright.reading.Sizing;

/**
 * The rows of dampers, straps and tubes as numbers: whether they are in use and which words were
 * chosen; fingerprints of them, and a side's mark of all that moves them.
 */
enum RestraintSlotLines implements LiveLine.Formula, LiveLine.Core {
    ON("restraint_on", Grid.RESTRAINT_SLOT, "In use"),
    KIND("restraint_kind_number", Grid.RESTRAINT_SLOT, "Kind by number"),
    BY("restraint_by_number", Grid.RESTRAINT_SLOT, "What carries it, by number"),
    TUBE_ON("tube_on", Grid.TUBE_SLOT, "In use"),
    TUBE_BY("tube_by_number", Grid.TUBE_SLOT, "What carries it, by number");

    private final String name;
    private final Grid grid;
    private final String label;

    RestraintSlotLines(String name, Grid grid, String label) {
        this.name = name;
        this.grid = grid;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (RestraintSlotLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.PARTS_WORK,
                            line.grid,
                            line.label,
                            WHOLE,
                            line,
                            line));
        }
        row(
                lines,
                "restraint_row_print",
                ON,
                new Fingerprint(lines)
                        .measured("restraint_fixed_ahead_read", "restraint_fixed_out_read")
                        .measured("restraint_fixed_height_read", "restraint_moving_ahead_read")
                        .measured("restraint_moving_out_read", "restraint_moving_height_read")
                        .measured("restraint_shortest_read", "restraint_longest_read")
                        .measured("restraint_kind_number", "restraint_by_number"));
        row(
                lines,
                "tube_row_print",
                TUBE_ON,
                new Fingerprint(lines)
                        .measured("tube_first_ahead_read", "tube_first_out_read")
                        .measured("tube_first_height_read", "tube_second_ahead_read")
                        .measured("tube_second_out_read", "tube_second_height_read")
                        .measured("tube_diameter_read", "tube_by_number"));
    }

    private static void row(
            LiveLines lines, String name, RestraintSlotLines on, Fingerprint print) {
        RowPrint row = new RowPrint(print, on);
        lines.add(
                new LiveLine(
                        name,
                        Section.PARTS_WORK,
                        on.grid,
                        "Fingerprint of the row",
                        WHOLE,
                        row,
                        row));
    }

    /**
     * A side's mark: a fingerprint of the rows of dampers and straps, and of what moves them; 0
     * while there is nothing to move.
     */
    static void mark(LiveLines lines) {
        Mark mark =
                new Mark(
                        new Fingerprint(lines)
                                .sum("restraint_row_print")
                                .sum("tube_row_print")
                                .whole("path_print", "linkage_mark")
                                .measured("inner_ahead_used", "inner_offset_used")
                                .measured("inner_height_used"));
        LinkageMark linkage = new LinkageMark(lines);
        lines.add(
                new LiveLine(
                        "linkage_mark",
                        Section.PATH_WORK,
                        Grid.SIDE,
                        "Fingerprint of the linkage, 0 without",
                        WHOLE,
                        linkage,
                        linkage));
        lines.add(
                new LiveLine(
                        "restraint_mark",
                        Section.PATH_WORK,
                        Grid.SIDE,
                        "Fingerprint of dampers, straps and tubes",
                        WHOLE,
                        mark,
                        mark));
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case ON -> on("{restraint_fixed_ahead_read>restraint_longest_read}");
            case TUBE_ON -> on("{tube_first_ahead_read>tube_diameter_read}");
            case KIND -> number("restraint_kind", "{restraint_slot}");
            case BY -> number("restraint_carried_by", "{restraint_slot}");
            case TUBE_BY -> number("tube_carried_by", "{tube_slot}");
        };
    }

    private static String on(String numbers) {
        return "IF(COUNT(" + numbers + ")>0,1,0)";
    }

    /** Which of the offered words a row has, from 1; the first for an empty cell. */
    static String number(String column, String slot) {
        String cell = "INDEX(" + column + "," + slot + ")";
        StringBuilder text = new StringBuilder("IF(" + slot + ">ROWS(" + column + "),1,IF(" + cell);
        text.append("=\"\",1,");
        int number = 1;
        for (String word : Contract.input(column).choices()) {
            text.append("IF(").append(cell).append("=\"").append(word).append("\",");
            text.append(number++).append(',');
        }
        return text.append('0').append(")".repeat(number + 1)).toString();
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case ON -> CellValue.of(isOn(sizing, index) ? 1 : 0);
            case TUBE_ON -> CellValue.of(isOn(sizing, index) ? 1 : 0);
            case KIND -> number(sizing, "restraint_kind", index);
            case BY -> number(sizing, "restraint_carried_by", index);
            case TUBE_BY -> number(sizing, "tube_carried_by", index);
        };
    }

    private boolean isOn(Sizing sizing, Index index) {
        return grid == Grid.TUBE_SLOT
                ? SideRestraints.isTubeTyped(sizing.inputs(), index.row())
                : SideRestraints.isTyped(sizing.inputs(), index.row());
    }

    private static CellValue number(Sizing sizing, String column, Index index) {
        Input input = Contract.input(column);
        return CellValue.of(RestraintInputs.number(input, sizing.inputs().text(column, index)));
    }

    /** A row's fingerprint, with weights that no other row has; 0 for a row without numbers. */
    private record RowPrint(Fingerprint print, RestraintSlotLines on)
            implements LiveLine.Formula, LiveLine.Core {
        /** No row has more terms. */
        private static final int TERMS = 10;

        @Override
        public String at(Index index) {
            return "IF({"
                    + on.name
                    + "}=0,0,IFERROR("
                    + print.formula(TERMS * index.row())
                    + ",0))";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return CellValue.of(
                    on.isOn(sizing, index) ? print.of(sizing, index, TERMS * index.row()) : 0);
        }
    }

    /** The linkage's fingerprint as a number: it moves points whatever the path comes from. */
    private record LinkageMark(LiveLines lines) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return "IF(ISNUMBER({linkage_print}),{linkage_print},0)";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            CellValue print = lines.line("linkage_print").core().at(sizing, index);
            return print instanceof CellValue.Numeric ? print : CellValue.of(0);
        }
    }

    private record Mark(Fingerprint print) implements LiveLine.Formula, LiveLine.Core {
        @Override
        public String at(Index index) {
            return "IF(SUM(restraint_on)+SUM(tube_on)=0,0,IF({path_ready}=1,"
                    + print.formula(0)
                    + ",NA()))";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            if (!anyOn(sizing, ON) && !anyOn(sizing, TUBE_ON)) {
                return CellValue.of(0);
            }
            return sizing.path(index.side()).chosen().isPresent()
                    ? CellValue.of(print.of(sizing, index, 0))
                    : CellValue.NOT_AVAILABLE;
        }
    }

    /** Whether any row of dampers and straps, or of tubes, is in use. */
    static boolean anyOn(Sizing sizing, RestraintSlotLines on) {
        for (int row = 0; row < on.grid.rows(); row++) {
            if (on.isOn(sizing, new Index(shaftwright.build.Side.LEFT, 0, row))) {
                return true;
            }
        }
        return false;
    }
}
