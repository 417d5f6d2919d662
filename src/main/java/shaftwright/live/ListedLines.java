package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.live.Quantity.MONEY;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;
import shaftwright.study.Price;

/** The parts list of a scenario: what, how many, price of each, price of the line, spares. */
record ListedLines(Kind kind, What what) implements LiveLine.Formula, LiveLine.Core {
    /** A row of the list, as a buyer writes it. */
    enum Kind {
        SHAFT_LEFT("shaft_left", "Shaft, left", 1),
        SHAFT_RIGHT("shaft_right", "Shaft, right", 1),
        JOINT_IN("joint_inner", "Inner joints", 2),
        JOINT_OUT("joint_outer", "Outer joints", 2),
        BOOT_IN("boot_inner", "Inner boot kits", 2),
        BOOT_OUT("boot_outer", "Outer boot kits", 2);

        private final String name;
        private final String label;
        private final int count;

        Kind(String name, String label, int count) {
            this.name = name;
            this.label = label;
            this.count = count;
        }

        private boolean isShaft() {
            return this == SHAFT_LEFT || this == SHAFT_RIGHT;
        }

        private Side side() {
            return this == SHAFT_LEFT ? Side.LEFT : Side.RIGHT;
        }

        private boolean isJoint() {
            return this == JOINT_IN || this == JOINT_OUT;
        }

        private boolean isInner() {
            return this == JOINT_IN || this == BOOT_IN;
        }

        /** The part's table. */
        private String table() {
            return isShaft() ? "blank" : isJoint() ? "joint" : "boot";
        }

        /** Working cell with the part's row in its table. */
        private String row() {
            return isShaft()
                    ? "{plan_row@" + side().word() + "}"
                    : "{" + table() + "_row_" + (isInner() ? "in" : "out") + "}";
        }

        /** Spares of both shafts are bought with the left one's. */
        private String spares() {
            return isShaft()
                    ? this == SHAFT_LEFT ? "spare_shafts" : ""
                    : "spare_" + table() + "s_" + (isInner() ? "inner" : "outer");
        }
    }

    /** A figure of a row. */
    enum What {
        PART("part", "", TEXT),
        COUNT("count", "number", WHOLE),
        EACH("each", "price each", MONEY),
        PRICE("price", "price", MONEY),
        SPARE("spare", "spares to carry", WHOLE);

        private final String name;
        private final String label;
        private final Quantity quantity;

        What(String name, String label, Quantity quantity) {
            this.name = name;
            this.label = label;
            this.quantity = quantity;
        }
    }

    /** What the rows add up to. */
    private enum Sum implements LiveLine.Formula, LiveLine.Core {
        PAIR("list_pair", "Shafts, the pair", "cost_shafts"),
        VEHICLE("list_vehicle", "All for one vehicle, other cost included", "cost_total"),
        SPARES("list_spares", "Spares to carry", "cost_spares"),
        ALL("list_all", "Vehicle and spares", "cost_with_spares");

        private final String name;
        private final String label;
        private final String source;

        Sum(String name, String label, String source) {
            this.name = name;
            this.label = label;
            this.source = source;
        }

        @Override
        public String at(Index index) {
            return "{" + source + "}";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return LiveLines.all().line(source).core().at(sizing, index);
        }
    }

    static void declare(LiveLines lines) {
        for (Kind kind : Kind.values()) {
            for (What what : What.values()) {
                if (what != What.SPARE || !kind.spares().isEmpty()) {
                    add(lines, kind, what);
                }
            }
        }
        for (Sum sum : Sum.values()) {
            lines.add(
                    new LiveLine(
                            sum.name, Section.PARTS_LIST, SCENARIO, sum.label, MONEY, sum, sum));
        }
    }

    private static void add(LiveLines lines, Kind kind, What what) {
        ListedLines line = new ListedLines(kind, what);
        lines.add(
                new LiveLine(
                        "list_" + kind.name + "_" + what.name,
                        Section.PARTS_LIST,
                        SCENARIO,
                        what == What.PART ? kind.label : "… " + what.label,
                        what.quantity,
                        line,
                        line));
    }

    @Override
    public int revised() {
        return what == What.PRICE ? 3 : since();
    }

    @Override
    public String at(Index index) {
        String row = kind.row();
        String given =
                kind.isShaft() ? "IF({ready@" + kind.side().word() + "}=1," + row + ",0)" : row;
        return "IF(IF({used}=0,0," + given + ")=0,\"\"," + figure(row) + ")";
    }

    private String figure(String row) {
        return switch (what) {
            case PART -> "INDEX(" + kind.table() + "_name," + row + ")&\"\"";
            case COUNT -> String.valueOf(kind.count);
            case EACH -> each(row);
            case PRICE -> {
                String each = "{list_" + kind.name + "_each}";
                yield "IF(ISNUMBER(" + each + ")," + kind.count + "*" + each + ",\"\")";
            }
            case SPARE -> kind.spares() + "_read";
        };
    }

    private String each(String row) {
        String price = "INDEX(" + kind.table() + "_price_read," + row + ")";
        String own = "IF(ISNUMBER(" + price + ")," + price + ",\"" + Price.NO_PRICE + "\")";
        return kind.isShaft()
                ? "IF(ISNUMBER({shaft_pair_price_read}),{shaft_pair_price_read}/2," + own + ")"
                : own;
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        int row = row(sizing, sizing.scenario(index.scenario()));
        if (row == 0) {
            return CellValue.of("");
        }
        return switch (what) {
            case PART ->
                    CellValue.of(
                            sizing.inputs()
                                    .text(
                                            kind.table() + "_name",
                                            new Index(Side.LEFT, 0, row - 1)));
            case COUNT -> CellValue.of(kind.count);
            case EACH -> {
                double each = each(sizing, index, row);
                yield Double.isNaN(each) ? CellValue.of(Price.NO_PRICE) : CellValue.of(each);
            }
            case PRICE -> {
                double each = each(sizing, index, row);
                yield ReadLines.shown(kind.count * each);
            }
            case SPARE -> CellValue.of(sizing.inputs().number(kind.spares()));
        };
    }

    /** Row, from 1, of the part among the typed ones; 0 for none. */
    private int row(Sizing sizing, ScenarioOutcome scenario) {
        if (!scenario.used()) {
            return 0;
        }
        if (kind.isShaft()) {
            return scenario.side(kind.side())
                    .result()
                    .flatMap(SideResult::plan)
                    .map(plan -> sizing.parts().blankSlot(plan.row()) + 1)
                    .orElse(0);
        }
        if (kind.isJoint()) {
            return kind.isInner() ? scenario.jointRowInner() : scenario.jointRowOuter();
        }
        return kind.isInner() ? scenario.bootRowInner() : scenario.bootRowOuter();
    }

    private double each(Sizing sizing, Index index, int row) {
        double pair = sizing.inputs().number("shaft_pair_price", index);
        return kind.isShaft() && !Double.isNaN(pair)
                ? pair / 2
                : sizing.inputs().number(kind.table() + "_price", new Index(Side.LEFT, 0, row - 1));
    }
}
