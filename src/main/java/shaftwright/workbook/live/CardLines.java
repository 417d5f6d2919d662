package shaftwright.workbook.live;

import static shaftwright.workbook.Grid.BOOK;
import static shaftwright.workbook.Grid.SIDE;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.Index;
import shaftwright.workbook.LengthTextFormula;
import shaftwright.workbook.Sizing;

/** What the shop card of each side prints for the scenario that is to be built. */
final class CardLines {
    private CardLines() {}

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        "card_index",
                        Section.BOOK_WORK,
                        BOOK,
                        "Scenario on the cards",
                        Quantity.WHOLE,
                        index -> "IFERROR(MATCH(shop_scenario,{work_letter:each},0),0)",
                        (sizing, index) -> CellValue.of(sizing.shopScenario() + 1)));
        lines.add(
                new LiveLine(
                        "card_vehicle",
                        Section.SHOP_CARD,
                        SIDE,
                        "Vehicle",
                        Quantity.TEXT,
                        index -> "vehicle_name&\"\"",
                        (sizing, index) -> CellValue.of(sizing.inputs().text("vehicle_name"))));
        words(
                lines,
                "card_name",
                "Scenario",
                "{scenario_name:each}",
                TYPED_COLUMN,
                (sizing, scenario, index) ->
                        sizing.inputs()
                                .text("scenario_name", new Index(index.side(), scenario, 0)));
        words(
                lines,
                "card_verdict",
                "Verdict",
                "{side_verdict:each}",
                WORKING_COLUMN,
                (sizing, scenario, index) ->
                        VerdictLines.words(sizing, sizing.scenario(scenario).side(index.side())));
        words(
                lines,
                "card_blank",
                "Blank",
                "{result_blank:each}",
                TYPED_COLUMN,
                (sizing, scenario, index) ->
                        result(sizing, index)
                                .map(r -> r.plan().map(p -> p.blank().name()).orElse("none"))
                                .orElse(""));
        words(
                lines,
                "card_put_in",
                "Getting it in",
                "{result_put_in:each}",
                TYPED_COLUMN,
                (sizing, scenario, index) ->
                        RimLines.sentence(sizing, new Index(index.side(), scenario, 0)));
        for (String end : new String[] {"inner", "outer"}) {
            words(
                    lines,
                    "card_joint_" + end,
                    "Joint, " + end,
                    "{joint_" + end + ":each}",
                    TYPED_COLUMN,
                    (sizing, scenario, index) ->
                            sizing.inputs()
                                    .text("joint_" + end, new Index(index.side(), scenario, 0)));
            words(
                    lines,
                    "card_boot_" + end,
                    "Boot, " + end,
                    "{boot_" + end + ":each}",
                    TYPED_COLUMN,
                    (sizing, scenario, index) ->
                            sizing.inputs()
                                    .text("boot_" + end, new Index(index.side(), scenario, 0)));
        }
        length(lines, "card_e", "End to end, E", "e_final", r -> r.length().endToEnd());
        length(lines, "card_k", "Clip to clip, K", "k_final", r -> r.length().clipToClip());
        cut(lines, "card_cut_in", "Cut off the inner end", "plan_cut_in", p -> p.inner().cut());
        cut(lines, "card_cut_out", "Cut off the outer end", "plan_cut_out", p -> p.outer().cut());
        cut(
                lines,
                "card_stub_in",
                "Stub beyond ring, inner",
                "plan_stub_in",
                p -> p.inner().stub());
        cut(
                lines,
                "card_stub_out",
                "Stub beyond ring, outer",
                "plan_stub_out",
                p -> p.outer().stub());
        cut(
                lines,
                "card_wall_in",
                "Inner end to groove's outer wall",
                "plan_wall_in",
                p -> p.inner().outerWall());
        cut(
                lines,
                "card_wall2_in",
                "Inner end to groove's inner wall",
                "plan_inner_wall_in",
                p -> p.inner().innerWall());
        cut(
                lines,
                "card_wall_out",
                "Outer end to groove's outer wall",
                "plan_wall_out",
                p -> p.outer().outerWall());
        cut(
                lines,
                "card_wall2_out",
                "Outer end to groove's inner wall",
                "plan_inner_wall_out",
                p -> p.outer().innerWall());
        cut(
                lines,
                "card_left_in",
                "Old groove left inboard, inner end",
                "plan_leftover_in",
                p -> p.inner().leftoverGroove().orElse(Double.NaN));
        cut(
                lines,
                "card_left_out",
                "Old groove left inboard, outer end",
                "plan_leftover_out",
                p -> p.outer().leftoverGroove().orElse(Double.NaN));
        lines.add(
                millimetres(
                        "card_mockup",
                        "Mock-up stick, hole spacing",
                        "mockup_holes",
                        (sizing, r) ->
                                r.length().clipToClip() + sizing.inputs().number("mockup_pin")));
        texts(lines, "card_mockup", "Mock-up stick, hole spacing");
    }

    private static void length(
            LiveLines lines,
            String name,
            String label,
            String source,
            ToDoubleFunction<SideResult> core) {
        lines.add(millimetres(name, label, source, (sizing, r) -> core.applyAsDouble(r)));
        texts(lines, name, label);
    }

    private static void cut(
            LiveLines lines,
            String name,
            String label,
            String source,
            Function<CutPlan, Double> core) {
        length(lines, name, label, source, r -> r.plan().map(core).orElse(Double.NaN));
    }

    private static LiveLine millimetres(
            String name, String label, String source, Guarded.OfResult core) {
        return new LiveLine(
                name,
                Section.SHOP_CARD,
                SIDE,
                label,
                Quantity.MILLIMETRE,
                index ->
                        "IF(card_index=0,\"\",IFERROR("
                                + chosen("{" + source + ":each}", WORKING_COLUMN)
                                + ",\"\"))",
                (sizing, index) -> ReadLines.shown(number(sizing, index, core)));
    }

    /** The shop scenario's column among the working ones. */
    private static final String WORKING_COLUMN = "card_index";

    /** Its column among the typed ones, where a builder may have put columns between. */
    private static final String TYPED_COLUMN = "MATCH(shop_scenario,scenario_letter,0)";

    /** The shop scenario's cell; Gnumeric's INDEX refuses a row of a single cell. */
    private static String chosen(String row, String column) {
        return "IF(COLUMNS(" + row + ")=1," + row + ",INDEX(" + row + ",1," + column + "))";
    }

    private static double number(Sizing sizing, Index index, Guarded.OfResult core) {
        return result(sizing, index).map(r -> core.of(sizing, r)).orElse(Double.NaN);
    }

    /** The same length as decimal inch and to the nearest 64th. */
    private static void texts(LiveLines lines, String name, String label) {
        lines.add(
                text(
                        name + "_inch",
                        label,
                        LengthTextFormula.decimalInch("{" + name + "}"),
                        name,
                        LengthStyle.DECIMAL_INCH));
        lines.add(
                text(
                        name + "_64",
                        label,
                        LengthTextFormula.sixtyFourths("{" + name + "}"),
                        name,
                        LengthStyle.SIXTY_FOURTHS));
    }

    private static LiveLine text(
            String name, String label, String formula, String source, LengthStyle style) {
        return new LiveLine(
                name,
                Section.SHOP_CARD,
                SIDE,
                label,
                Quantity.TEXT,
                index -> formula,
                (sizing, index) ->
                        LiveLines.all().line(source).core().at(sizing, index)
                                        instanceof CellValue.Numeric number
                                ? CellValue.of(new Length(number.value()).format(style))
                                : CellValue.of(""));
    }

    private interface Words {
        String of(Sizing sizing, int scenario, Index index);
    }

    private static void words(
            LiveLines lines, String name, String label, String source, String column, Words core) {
        lines.add(
                new LiveLine(
                        name,
                        Section.SHOP_CARD,
                        SIDE,
                        label,
                        Quantity.TEXT,
                        index ->
                                "IF(card_index=0,\"\",IFERROR("
                                        + chosen(source, column)
                                        + "&\"\",\"\"))",
                        (sizing, index) -> {
                            int scenario = sizing.shopScenario();
                            return CellValue.of(
                                    scenario < 0 ? "" : core.of(sizing, scenario, index));
                        }));
    }

    private static Optional<SideResult> result(Sizing sizing, Index index) {
        int scenario = sizing.shopScenario();
        return scenario < 0
                ? Optional.empty()
                : Optional.ofNullable(sizing.resultOrNull(new Index(index.side(), scenario, 0)));
    }
}
