package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Given;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.units.InchStep;
import shaftwright.units.LengthUnit;

/**
 * Results as fractions of an inch at the shop's step, which stand below their decimals in inch
 * workbooks; empty where the step is no whole number of sixty-fourths.
 */
final class FractionLines {
    /** What their names end with, behind those of their results. */
    private static final String SUFFIX = "_fraction";

    private static final String LABEL = "… to the shop's step";

    private static final String BETWEEN = "between steps";

    private static final int SINCE = 5;

    /** A side's shaft and the shop's step. */
    private record Cut(SideResult result, InchStep step) {
        static Optional<Cut> of(Sizing sizing, Index index) {
            return shopStep(sizing)
                    .flatMap(step -> sizing.result(index).map(result -> new Cut(result, step)));
        }
    }

    private final LineSet<Cut> set;

    private FractionLines(LineSet<Cut> set) {
        this.set = set;
    }

    static void declare(LiveLines lines) {
        LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK)
                .since(SINCE)
                .whole("shop_sixtyfourths", "Shop step in sixty-fourths of an inch (0: in none)")
                .is(
                        StepFormula.sixtyFourths("shop_increment_read"),
                        (sizing, index) -> shopStep(sizing).map(InchStep::sixtyFourths).orElse(0));
        Known<Cut> known = new Known<>("{ready}*shop_sixtyfourths>0", Cut::of);
        FractionLines fractions =
                new FractionLines(
                        LineSet.in(lines, Section.FRACTIONS, Grid.SCENARIO_SIDE)
                                .since(SINCE)
                                .only(known, Lacking.EMPTY));
        fractions.endToEnd();
        fractions.nearest("k", "{k_final}", cut -> cut.result().length().clipToClip());
        for (ShaftEnd end : ShaftEnd.values()) {
            fractions.nearest(
                    "cut_" + end.shortWord(),
                    "{plan_cut_" + end.shortWord() + "}",
                    cut -> cut.result().plan().map(plan -> plan.cut(end).cut()).orElse(Double.NaN));
        }
        fractions.down("slack_in", "{worst_slack_in}", SideResult::leastSlackIn);
        fractions.down("slack_out", "{worst_slack_out}", SideResult::leastSlackOut);
    }

    /** The shop's step in workbooks whose unit has fractions. */
    private static Optional<InchStep> shopStep(Sizing sizing) {
        return sizing.unit() == LengthUnit.INCH
                ? InchStep.of(sizing.inputs().number("shop_increment"))
                : Optional.empty();
    }

    /** A shaft whose length is no whole number of steps must not read as one. */
    private void endToEnd() {
        String steps = StepFormula.isStep("{e_final}");
        String text = StepFormula.nearest("{e_final}");
        set.text("result_e" + SUFFIX, LABEL)
                .is(
                        "IF(" + steps + "," + text + "," + quoted(BETWEEN) + ")",
                        cut -> cut.step().exact(cut.result().length().endToEnd()).orElse(BETWEEN));
    }

    private void nearest(String result, String place, ToDoubleFunction<Cut> core) {
        set.text("result_" + result + SUFFIX, LABEL)
                .is(
                        Given.number(place, StepFormula.nearest(place)),
                        cut -> {
                            double length = core.applyAsDouble(cut);
                            return Double.isNaN(length) ? "" : cut.step().nearest(length);
                        });
    }

    /** Slack must not read as more than there is. */
    private void down(String result, String place, Function<SideResult, Binding> core) {
        set.text("result_" + result + SUFFIX, LABEL + ", rounded down")
                .is(
                        StepFormula.down(place),
                        cut -> cut.step().down(core.apply(cut.result()).value()));
    }
}
