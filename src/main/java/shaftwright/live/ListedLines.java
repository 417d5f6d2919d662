package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.Price;

/** The parts list of a scenario: what, how many, price of each, price of the line, spares. */
final class ListedLines {
    private ListedLines() {}

    /**
     * A row of the list, as a buyer writes it.
     *
     * @param name in those of its lines
     * @param table of the part
     * @param row working cell with the part's row in its table
     * @param spares input of its spares; those of both shafts are bought with the left one's
     * @param core row, from 1, of the part among the typed ones; 0 for none
     */
    private record Part(
            String name,
            String label,
            int count,
            String table,
            String row,
            Optional<String> spares,
            LineSet.Figure<Sizing> core) {
        boolean isShaft() {
            return table.equals("blank");
        }

        static Part shaft(Side side) {
            String word = side.word();
            return new Part(
                    "shaft_" + word,
                    "Shaft, " + word,
                    1,
                    "blank",
                    "{plan_row@" + word + "}",
                    side == Side.LEFT ? Optional.of("spare_shafts") : Optional.empty(),
                    (sizing, index) ->
                            sizing.scenario(index.scenario())
                                    .side(side)
                                    .result()
                                    .flatMap(SideResult::plan)
                                    .map(plan -> sizing.parts().blankSlot(plan.row()) + 1)
                                    .orElse(0));
        }

        static Part of(
                String table, ShaftEnd end, String label, ToIntFunction<ScenarioOutcome> core) {
            return new Part(
                    table + "_" + end.word(),
                    label,
                    2,
                    table,
                    "{" + table + "_row_" + end.shortWord() + "}",
                    Optional.of("spare_" + table + "s_" + end.word()),
                    (sizing, index) -> core.applyAsInt(sizing.scenario(index.scenario())));
        }
    }

    private static final List<Part> PARTS =
            List.of(
                    Part.shaft(Side.LEFT),
                    Part.shaft(Side.RIGHT),
                    Part.of(
                            "joint",
                            ShaftEnd.INNER,
                            "Inner joints",
                            ScenarioOutcome::jointRowInner),
                    Part.of(
                            "joint",
                            ShaftEnd.OUTER,
                            "Outer joints",
                            ScenarioOutcome::jointRowOuter),
                    Part.of(
                            "boot",
                            ShaftEnd.INNER,
                            "Inner boot kits",
                            ScenarioOutcome::bootRowInner),
                    Part.of(
                            "boot",
                            ShaftEnd.OUTER,
                            "Outer boot kits",
                            ScenarioOutcome::bootRowOuter));

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PARTS_LIST, SCENARIO);
        for (Part part : PARTS) {
            declare(all, part);
        }
        sum(lines, all, "list_pair", "Shafts, the pair", "cost_shafts");
        sum(lines, all, "list_vehicle", "All for one vehicle, other cost included", "cost_total");
        sum(lines, all, "list_spares", "Spares to carry", "cost_spares");
        sum(lines, all, "list_all", "Vehicle and spares", "cost_with_spares");
    }

    /** Lines of a part that has a row, and its price. */
    private static void declare(LineSet<Sizing> all, Part part) {
        String ready = part.row().replace("plan_row", "ready");
        String given = part.isShaft() ? "IF(" + ready + "=1,<row>,0)" : "<row>";
        LineSet<Sizing> set =
                all.about(
                                (sizing, index) -> row(part, sizing, index).map(row -> sizing),
                                Lacking.EMPTY.value())
                        .with(
                                Pieces.of("name", "list_" + part.name())
                                        .and("count", part.count())
                                        .and("table", part.table())
                                        .and("row", part.row())
                                        .and("given", "IF({used}=0,0," + given + ")")
                                        .and("price", "INDEX(<table>_price_read,<row>)"));
        set.text("<name>_part", part.label())
                .is(
                        Given.row("<given>", "INDEX(<table>_name,<row>)&\"\""),
                        (sizing, index) ->
                                sizing.inputs()
                                        .text(part.table() + "_name", typed(part, sizing, index)));
        set.whole("<name>_count", "… number")
                .is(Given.row("<given>", "<count>"), sizing -> part.count());
        set.money("<name>_each", "… price each")
                .cell(
                        Given.row("<given>", each(part)),
                        (sizing, index) -> {
                            double each = each(part, sizing, index);
                            return Double.isNaN(each)
                                    ? CellValue.of(Price.NO_PRICE)
                                    : CellValue.of(each);
                        });
        set.revised(3)
                .money("<name>_price", "… price")
                .is(
                        Given.row(
                                "<given>", Given.number("{<name>_each}", "<count>*{<name>_each}")),
                        (sizing, index) -> part.count() * each(part, sizing, index));
        part.spares()
                .ifPresent(
                        spares ->
                                set.whole("<name>_spare", "… spares to carry")
                                        .is(
                                                Given.row("<given>", ReadLines.name(spares)),
                                                sizing -> sizing.inputs().number(spares)));
    }

    private static String each(Part part) {
        String own = "IF(ISNUMBER(<price>),<price>," + quoted(Price.NO_PRICE) + ")";
        return part.isShaft()
                ? "IF(ISNUMBER({shaft_pair_price_read}),{shaft_pair_price_read}/2," + own + ")"
                : own;
    }

    private static double each(Part part, Sizing sizing, Index index) {
        double pair = sizing.inputs().number("shaft_pair_price", index);
        return part.isShaft() && !Double.isNaN(pair)
                ? pair / 2
                : sizing.inputs().number(part.table() + "_price", typed(part, sizing, index));
    }

    private static Optional<Integer> row(Part part, Sizing sizing, Index index) {
        return sizing.scenario(index.scenario()).used()
                ? Optional.of((int) part.core().of(sizing, index)).filter(row -> row > 0)
                : Optional.empty();
    }

    /** The part's typed cells. */
    private static Index typed(Part part, Sizing sizing, Index index) {
        return new Index(Side.LEFT, 0, row(part, sizing, index).orElseThrow() - 1);
    }

    /** What the rows add up to. */
    private static void sum(
            LiveLines lines, LineSet<Sizing> all, String name, String label, String source) {
        all.money(name, label).cell("{" + source + "}", lines.line(source).core()::at);
    }
}
