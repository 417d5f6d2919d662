package shaftwright.live;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.reading.Sizing;
import shaftwright.reading.Variants;

/**
 * Fingerprints of everything that a scenario's variants follow from: all numbers of the parts
 * tables, of the settings, of each scenario column, and the paths. Names of parts are not in them.
 */
enum VariantPrintLines implements LiveLine.Formula, LiveLine.Core {
    JOINT_SOFT("joint_soft", Section.PARTS_WORK, Grid.JOINT_SLOT, "Soft outward stop"),
    JOINT_ROW("joint_row_print", Section.PARTS_WORK, Grid.JOINT_SLOT, "Fingerprint of the row"),
    LIMIT_KEY("limit_key_print", Section.PARTS_WORK, Grid.LIMIT, "Fingerprint of the key"),
    BOOT_ROW("boot_row_print", Section.PARTS_WORK, Grid.BOOT_SLOT, "Fingerprint of the row"),
    BLANK_STOCK("blank_stocked", Section.PARTS_WORK, Grid.BLANK_SLOT, "In stock"),
    BLANK_ROW("blank_row_print", Section.PARTS_WORK, Grid.BLANK_SLOT, "Fingerprint of the row"),
    PARTS("parts_print", Section.BOOK_WORK, Grid.BOOK, "Fingerprint of the parts tables"),
    SETTINGS("settings_print", Section.BOOK_WORK, Grid.BOOK, "Fingerprint of the settings"),
    BY_CLEARANCE("by_clearance", Section.SCENARIO_WORK, Grid.SCENARIO, "Bump by clearance"),
    COLUMN("column_print", Section.SCENARIO_WORK, Grid.SCENARIO, "Fingerprint of the column");

    /** The workbook's settings that a scenario's result, or a change's cost, follows from. */
    private static final String[] SETTINGS_READ = {
        "shop_increment",
        "inner_tilt",
        "inner_sweep",
        "kingpin_inclination",
        "kingpin_caster",
        "kingpin_inward",
        "kingpin_ahead",
        "clearance_ride",
        "clearance_tyre_diameter",
        "hub_face_offset",
        "ring_thickness",
        "groove_width",
        "groove_depth",
        "spline_runout",
        "shaft_end_diameter_inner",
        "shaft_end_diameter_outer",
        "counterbore_price",
        "spacer_price",
        "strap_price",
        "bump_stop_price",
        "transaxle_price",
        "hub_price"
    };

    private final String name;
    private final Section section;
    private final Grid grid;
    private final String label;

    VariantPrintLines(String name, Section section, Grid grid, String label) {
        this.name = name;
        this.section = section;
        this.grid = grid;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (VariantPrintLines line : values()) {
            Fingerprint print = line.print(lines);
            Printed printed = print == null ? null : new Printed(line, print);
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            Quantity.WHOLE,
                            printed == null ? line : printed,
                            printed == null ? line : printed));
        }
    }

    /** What a fingerprint is made of, null for the lines that are none. */
    private Fingerprint print(LiveLines lines) {
        Fingerprint print = new Fingerprint(lines);
        return switch (this) {
            case JOINT_SOFT, BLANK_STOCK, BY_CLEARANCE -> null;
            case JOINT_ROW -> print.measured(reads(Grid.JOINT)).measured("joint_soft");
            case LIMIT_KEY -> print.measured("limit_key");
            case BOOT_ROW -> print.measured(reads(Grid.BOOT));
            case BLANK_ROW -> print.measured(reads(Grid.BLANK)).measured("blank_stocked");
            case PARTS ->
                    print.sum("joint_row_print")
                            .sum("limit_key_print")
                            .sum("limit_print")
                            .sum("boot_row_print")
                            .sum("blank_row_print");
            case SETTINGS -> print.measured(settings()).measured("tape_mm");
            case COLUMN ->
                    print.measured(reads(Grid.SCENARIO))
                            .measured("tyre_diameter", "by_clearance", "margin_built")
                            .measured("mount_forward", "mount_left", "mount_up", "mount_roll")
                            .measured("inner_offset_used@left", "inner_offset_used@right")
                            .whole("joint_row_in", "joint_row_out", "boot_row_in", "boot_row_out")
                            .whole("blank_row_wanted", "path_print@left", "path_print@right")
                            .whole("own_sum@left", "own_sum@right");
        };
    }

    private static String[] reads(Grid grid) {
        List<String> names = new ArrayList<>();
        for (Input input : Contract.inputs(grid)) {
            if (input.kind().numeric()) {
                names.add(ReadLines.name(input));
            }
        }
        return names.toArray(new String[0]);
    }

    private static String[] settings() {
        String[] names = new String[SETTINGS_READ.length];
        for (int i = 0; i < names.length; i++) {
            names[i] = ReadLines.name(SETTINGS_READ[i]);
        }
        return names;
    }

    @Override
    public int revised() {
        return this == SETTINGS ? 3 : this == COLUMN ? 2 : since();
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case JOINT_SOFT -> word("joint_outward_stop", "joint_slot", "soft");
            case BLANK_STOCK -> "1-" + word("blank_in_stock", "blank_slot", "no");
            case BY_CLEARANCE -> "IF({bump_rule}=\"clearance\",1,0)";
            default -> throw new IllegalStateException(name + " is a fingerprint");
        };
    }

    /** 1 where a row of a table's column says this word, which may be one with another. */
    private static String word(String column, String slot, String word) {
        return "IF({"
                + slot
                + "}>ROWS("
                + column
                + "),0,IF(INDEX("
                + column
                + ",{"
                + slot
                + "})=\""
                + word
                + "\",1,0))";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        return switch (this) {
            case JOINT_SOFT -> says(sizing, "joint_outward_stop", index, "soft", 1);
            case BLANK_STOCK -> says(sizing, "blank_in_stock", index, "no", 0);
            case BY_CLEARANCE -> says(sizing, "bump_rule", index, "clearance", 1);
            default -> throw new IllegalStateException(name + " is a fingerprint");
        };
    }

    private static CellValue says(Sizing sizing, String input, Index index, String word, int then) {
        boolean so = sizing.inputs().text(input, index).equalsIgnoreCase(word);
        return CellValue.of(so ? then : 1 - then);
    }

    /** Columns without both paths have none. */
    private record Printed(VariantPrintLines line, Fingerprint print)
            implements LiveLine.Formula, LiveLine.Core {
        @Override
        public int revised() {
            return line.revised();
        }

        @Override
        public String at(Index index) {
            return line == COLUMN
                    ? "IF(AND({path_ready@left}=1,{path_ready@right}=1)," + print.formula(0) + ",0)"
                    : print.formula(0);
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            boolean known =
                    sizing.path(Side.LEFT).chosen().isPresent()
                            && sizing.path(Side.RIGHT).chosen().isPresent();
            return CellValue.of(line != COLUMN || known ? print.of(sizing, index, 0) : 0);
        }
    }

    /** Zero-based scenario whose variants have figures, -1 for none. */
    static int varied(Sizing sizing) {
        int scenario = Variants.scenario(sizing);
        return scenario >= 0 && sizing.scenario(scenario).computed() ? scenario : -1;
    }
}
