package shaftwright.live;

import static shaftwright.live.Quantity.MONEY;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.SweepInput;
import shaftwright.reading.Lever;
import shaftwright.reading.Sizing;
import shaftwright.reading.Sweep;
import shaftwright.reading.Variants;
import shaftwright.study.Finding;
import shaftwright.study.Wording;

/**
 * What changes do for the scenario that the builder wants varied, and the grid of its variants: an
 * engine block.
 */
enum VariantLines implements LiveLine.Formula, LiveLine.Core {
    SCENARIO("try_index", Section.BOOK_WORK, Grid.BOOK, "Scenario to vary", WHOLE),
    READY("try_ready", Section.BOOK_WORK, Grid.BOOK, "It is computed", WHOLE),
    COLUMN("try_column_print", Section.BOOK_WORK, Grid.BOOK, "Fingerprint of its column", WHOLE),
    ACROSS("sweep_across_index", Section.BOOK_WORK, Grid.BOOK, "Varied across", WHOLE),
    DOWN("sweep_down_index", Section.BOOK_WORK, Grid.BOOK, "Varied down", WHOLE),
    LEVER_WORDS("lever_words", Section.LEVER_BLOCK, Grid.LEVER, "Change", TEXT),
    LEVER_GAIN("lever_gain", Section.LEVER_BLOCK, Grid.LEVER, "Window gained", SHOWN_LENGTH),
    LEVER_COST("lever_cost", Section.LEVER_BLOCK, Grid.LEVER, "Cost more", MONEY),
    LEVER_THEN("lever_then", Section.LEVER_BLOCK, Grid.LEVER, "Then it", TEXT),
    /** Apart from the changes, as it is none. */
    MARGIN_CHOICE("lever_margins", Section.LEVER_BLOCK, Grid.BOOK, "Smaller margins", TEXT),
    ACROSS_VALUE(
            "sweep_across_value", Section.SWEEP_EDGES, Grid.SWEEP_STEP, "Across", SHOWN_LENGTH),
    DOWN_VALUE("sweep_down_value", Section.SWEEP_EDGES, Grid.SWEEP_STEP, "Down", SHOWN_LENGTH),
    CELL("sweep_cell", Section.SWEEP_BLOCK, Grid.SWEEP_CELL, "Variant", TEXT);

    private static final EngineBlock BLOCK =
            new EngineBlock("variants", Grid.BOOK, Section.BOOK_WORK, Section.LEVER_BLOCK);

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;
    private final Quantity quantity;

    VariantLines(String name, Section section, Grid grid, String label, Quantity quantity) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
        this.quantity = quantity;
    }

    static void declare(LiveLines lines) {
        for (VariantLines line : values()) {
            lines.add(
                    line.isFigure()
                            ? LiveLine.engine(
                                            line.name,
                                            line.section,
                                            line.grid,
                                            line.label,
                                            line.quantity,
                                            line)
                                    .since(line == MARGIN_CHOICE ? 3 : 1)
                            : new LiveLine(
                                    line.name,
                                    line.section,
                                    line.grid,
                                    line.label,
                                    line.quantity,
                                    line,
                                    line));
            if (line == DOWN) {
                stamp(lines);
            }
        }
    }

    private static void stamp(LiveLines lines) {
        Fingerprint all =
                new Fingerprint(lines)
                        .whole("parts_print", "settings_print", "try_column_print")
                        .whole("sweep_across_index", "sweep_down_index")
                        .measured("sweep_across_first_read", "sweep_across_last_read")
                        .measured("sweep_down_first_read", "sweep_down_last_read");
        BLOCK.stamp(lines, all, "{try_ready}=1", new Varied());
    }

    private boolean isFigure() {
        return section == Section.LEVER_BLOCK || section == Section.SWEEP_BLOCK;
    }

    private static final class Varied implements EngineBlock.Present {
        @Override
        public boolean has(Sizing sizing, Index index) {
            return VariantPrintLines.varied(sizing) >= 0;
        }
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case SCENARIO -> "IFERROR(MATCH(try_scenario,{work_letter:each},0),0)";
            case READY ->
                    "IF({try_index}=0,0,IFERROR("
                            + chosen("{ready@left:each}")
                            + "*"
                            + chosen("{ready@right:each}")
                            + ",0))";
            case COLUMN -> "IF({try_index}=0,0,IFERROR(" + chosen("{column_print:each}") + ",0))";
            case ACROSS -> number("sweep_across");
            case DOWN -> number("sweep_down");
            case ACROSS_VALUE -> edge("sweep_across", index.row());
            case DOWN_VALUE -> edge("sweep_down", index.row());
            default -> throw new IllegalStateException(name + " has no formula");
        };
    }

    private static String chosen(String row) {
        return Card.inColumn(row, "{try_index}");
    }

    /** The picked word's number, 0 for none. */
    private static String number(String input) {
        StringBuilder text = new StringBuilder("IFERROR(");
        SweepInput[] all = SweepInput.values();
        for (int i = 0; i < all.length; i++) {
            text.append("IF(").append(input).append("=\"").append(all[i].word()).append("\",");
            text.append(i + 1).append(',');
        }
        return text.append('0').append(")".repeat(all.length)).append(",0)").toString();
    }

    private static String edge(String input, int step) {
        String first = "{" + input + "_first_read}";
        String last = "{" + input + "_last_read}";
        return "IF(COUNT("
                + first
                + ","
                + last
                + ")=2,("
                + first
                + "+("
                + last
                + "-"
                + first
                + ")*"
                + step
                + "/"
                + (Grid.SWEEP_STEP.rows() - 1)
                + ")/tape_mm,\"\")";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        int varied = VariantPrintLines.varied(sizing);
        return switch (this) {
            case SCENARIO -> CellValue.of(Variants.scenario(sizing) + 1);
            case READY -> CellValue.of(varied >= 0 ? 1 : 0);
            case COLUMN -> column(sizing);
            case ACROSS -> number(sizing, "sweep_across");
            case DOWN -> number(sizing, "sweep_down");
            case ACROSS_VALUE -> edge(sizing, "sweep_across", index.row());
            case DOWN_VALUE -> edge(sizing, "sweep_down", index.row());
            case LEVER_WORDS, LEVER_GAIN, LEVER_COST, LEVER_THEN -> lever(sizing, index.row());
            case MARGIN_CHOICE ->
                    CellValue.of(sizing.variants().marginChoice().orElse(Fingerprint.NOTHING));
            case CELL -> cell(sizing, index.row());
        };
    }

    private static CellValue column(Sizing sizing) {
        int scenario = Variants.scenario(sizing);
        return scenario < 0
                ? CellValue.of(0)
                : LiveLines.all()
                        .line("column_print")
                        .core()
                        .at(sizing, new Index(Side.LEFT, scenario, 0));
    }

    private static CellValue number(Sizing sizing, String input) {
        String word = sizing.inputs().text(input);
        SweepInput[] all = SweepInput.values();
        for (int i = 0; i < all.length; i++) {
            if (all[i].word().equalsIgnoreCase(word)) {
                return CellValue.of(i + 1);
            }
        }
        return CellValue.of(0);
    }

    private static CellValue edge(Sizing sizing, String input, int step) {
        double first = sizing.inputs().number(input + "_first");
        double last = sizing.inputs().number(input + "_last");
        return ReadLines.shown(
                (first + (last - first) * step / (Grid.SWEEP_STEP.rows() - 1))
                        / sizing.unit().mm());
    }

    private CellValue lever(Sizing sizing, int row) {
        List<Lever> levers = sizing.variants().levers();
        if (row >= levers.size()) {
            return CellValue.of(Fingerprint.NOTHING);
        }
        Lever lever = levers.get(row);
        return switch (this) {
            case LEVER_WORDS -> CellValue.of(lever.words());
            case LEVER_GAIN -> CellValue.of(lever.gain() / sizing.unit().mm());
            case LEVER_COST -> VehicleLines.shown(lever.cost());
            default -> CellValue.of(lever.fits() ? "fits" : "does not fit");
        };
    }

    private static CellValue cell(Sizing sizing, int place) {
        if (sizing.variants().sweep().isEmpty()) {
            return CellValue.of(Fingerprint.NOTHING);
        }
        int columns = Grid.SWEEP_STEP.rows();
        Sweep.Cell cell = sizing.variants().sweep().get().cell(place / columns, place % columns);
        if (cell.beyondHeights()) {
            return CellValue.of("beyond heights");
        }
        if (Double.isNaN(cell.width())) {
            return CellValue.of("not computed");
        }
        String width =
                Wording.rounded(
                        Math.abs(cell.width()) / sizing.unit().mm(),
                        Wording.decimals(sizing.unit()));
        return CellValue.of(cell.fits() ? "fits " + width : word(cell.obstacle().get(), width));
    }

    private static String word(Finding obstacle, String width) {
        return switch (obstacle) {
            case NO_WINDOW -> "short " + width;
            case NO_BLANK -> "no blank";
            case INNER_ANGLE, OUTER_ANGLE -> "too steep";
            case TOUCHES_CUP -> "touches cup";
            default -> "no verdict";
        };
    }
}
