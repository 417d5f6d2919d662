package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntBiFunction;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
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
     * @param given the same as far as it is to be bought
     * @param spares input of its spares, empty for none: those of both shafts are bought with the
     *     left one's
     * @param core row, from 1, of the part among the typed ones; 0 for none
     */
    private record Part(
            String name,
            String label,
            int count,
            String table,
            String row,
            String given,
            String spares,
            LineSet.Figure<Sizing> core) {
        static Part shaft(Side side) {
            String word = side.word();
            return new Part(
                    "shaft_" + word,
                    "Shaft, " + word,
                    1,
                    "blank",
                    "{plan_row@" + word + "}",
                    "IF({ready@" + word + "}=1,<row>,0)",
                    side == Side.LEFT ? "spare_shafts" : "",
                    (sizing, index) -> sizing.blankRow(new Index(side, index.scenario(), 0)));
        }

        static Part of(
                String table,
                ShaftEnd end,
                String label,
                ToIntBiFunction<ScenarioOutcome, ShaftEnd> core) {
            return new Part(
                    table + "_" + end.word(),
                    label,
                    2,
                    table,
                    "{" + table + "_row_" + end.shortWord() + "}",
                    "<row>",
                    "spare_" + table + "s_" + end.word(),
                    (sizing, index) -> core.applyAsInt(sizing.scenario(index.scenario()), end));
        }

        boolean isShaft() {
            return table.equals("blank");
        }

        /** Where a scenario in use has it. */
        Optional<Listed> in(Sizing sizing, Index index) {
            int at = (int) core.of(sizing, index);
            return sizing.scenario(index.scenario()).used() && at > 0
                    ? Optional.of(new Listed(this, sizing, index, new Index(Side.LEFT, 0, at - 1)))
                    : Optional.empty();
        }
    }

    /**
     * A part that a scenario has.
     *
     * @param typed its cells
     */
    private record Listed(Part part, Sizing sizing, Index scenario, Index typed) {
        String name() {
            return sizing.inputs().text(part.table() + "_name", typed);
        }

        double each() {
            double pair = sizing.inputs().number("shaft_pair_price", scenario);
            return part.isShaft() && !Double.isNaN(pair)
                    ? pair / 2
                    : sizing.inputs().number(part.table() + "_price", typed);
        }

        CellValue priceOfEach() {
            double each = each();
            return Double.isNaN(each) ? CellValue.of(Price.NO_PRICE) : CellValue.of(each);
        }
    }

    private static final List<Part> PARTS =
            List.of(
                    Part.shaft(Side.LEFT),
                    Part.shaft(Side.RIGHT),
                    Part.of("joint", ShaftEnd.INNER, "Inner joints", ScenarioOutcome::jointRow),
                    Part.of("joint", ShaftEnd.OUTER, "Outer joints", ScenarioOutcome::jointRow),
                    Part.of("boot", ShaftEnd.INNER, "Inner boot kits", ScenarioOutcome::bootRow),
                    Part.of("boot", ShaftEnd.OUTER, "Outer boot kits", ScenarioOutcome::bootRow));

    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.PARTS_LIST, SCENARIO);
        PARTS.forEach(part -> declare(all, part));
        sum(lines, all, "list_pair", "Shafts, the pair", "cost_shafts");
        sum(lines, all, "list_vehicle", "All for one vehicle, other cost included", "cost_total");
        sum(lines, all, "list_spares", "Spares to carry", "cost_spares");
        sum(lines, all, "list_all", "Vehicle and spares", "cost_with_spares");
    }

    private static void declare(LineSet<Sizing> all, Part part) {
        String own = "IF(ISNUMBER(<price>),<price>,<no_price>)";
        LineSet<Listed> set =
                all.with(
                                Pieces.of("name", "list_" + part.name())
                                        .and("count", part.count())
                                        .and("table", part.table())
                                        .and("row", part.row())
                                        .and("price", "INDEX(<table>_price_read,<row>)")
                                        .and("no_price", quoted(Price.NO_PRICE))
                                        .and("own", own))
                        .ofAny(part::in)
                        .inRow("IF({used}=0,0," + part.given() + ")");
        set.text("<name>_part", part.label()).is("INDEX(<table>_name,<row>)&\"\"", Listed::name);
        set.whole("<name>_count", "… number").is("<count>", bought -> part.count());
        set.money("<name>_each", "… price each")
                .cell(
                        part.isShaft()
                                ? """
                                  IF(ISNUMBER({shaft_pair_price_read}),
                                  {shaft_pair_price_read}/2,<own>)
                                  """
                                : "<own>",
                        (bought, index) -> bought.priceOfEach());
        set.revised(3)
                .given("{<name>_each}")
                .money("<name>_price", "… price")
                .is("<count>*{<name>_each}", bought -> part.count() * bought.each());
        if (!part.spares().isEmpty()) {
            set.whole("<name>_spare", "… spares to carry")
                    .is(
                            ReadLines.name(part.spares()),
                            bought -> bought.sizing().inputs().number(part.spares()));
        }
    }

    /** What the rows add up to. */
    private static void sum(
            LiveLines lines, LineSet<Sizing> all, String name, String label, String source) {
        all.money(name, label).cell("{" + source + "}", lines.line(source).core()::at);
    }
}
