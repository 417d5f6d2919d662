package shaftwright.live;

import static shaftwright.formula.FormulaText.quoted;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
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

    private FractionLines() {}

    static void declare(LiveLines lines) {
        LineSet.in(lines, Section.BOOK_WORK, Grid.BOOK)
                .since(SINCE)
                .whole("shop_sixtyfourths", "Shop step in sixty-fourths of an inch (0: in none)")
                .is(
                        StepFormula.sixtyFourths("shop_increment_read"),
                        sizing -> shopStep(sizing).map(InchStep::sixtyFourths).orElse(0));
        LineSet<Cut> set =
                LineSet.in(lines, Section.FRACTIONS, Grid.SCENARIO_SIDE)
                        .since(SINCE)
                        .only(new Known<>("{ready}*shop_sixtyfourths>0", Cut::of), Lacking.EMPTY);
        // A shaft whose length is no whole number of steps must not read as one.
        set.with(
                        Pieces.of("is_step", StepFormula.isStep("{e_final}"))
                                .and("fraction", StepFormula.nearest("{e_final}"))
                                .and("between", quoted(BETWEEN)))
                .text("result_e_fraction", LABEL)
                .is(
                        "IF(<is_step>,<fraction>,<between>)",
                        cut -> cut.step().exact(cut.result().length().endToEnd()).orElse(BETWEEN));
        nearest(set, "k", "{k_final}", cut -> cut.result().length().clipToClip());
        for (ShaftEnd end : ShaftEnd.values()) {
            nearest(
                    set.at(end),
                    "cut_<end>",
                    "{plan_cut_<end>}",
                    cut -> cut.result().plan().map(plan -> plan.cut(end).cut()).orElse(Double.NaN));
        }
        down(set, "slack_in", SideResult::leastSlackIn);
        down(set, "slack_out", SideResult::leastSlackOut);
    }

    /** The shop's step in workbooks whose unit has fractions. */
    private static Optional<InchStep> shopStep(Sizing sizing) {
        return sizing.unit() == LengthUnit.INCH
                ? InchStep.of(sizing.inputs().number("shop_increment"))
                : Optional.empty();
    }

    private static void nearest(
            LineSet<Cut> set, String result, String place, ToDoubleFunction<Cut> core) {
        set.given(place)
                .text("result_" + result + "_fraction", LABEL)
                .is(
                        StepFormula.nearest(place),
                        cut -> {
                            double length = core.applyAsDouble(cut);
                            return Double.isNaN(length) ? "" : cut.step().nearest(length);
                        });
    }

    /** Slack must not read as more than there is. */
    private static void down(LineSet<Cut> set, String slack, Function<SideResult, Binding> core) {
        set.text("result_" + slack + "_fraction", LABEL + ", rounded down")
                .is(
                        StepFormula.down("{worst_" + slack + "}"),
                        cut -> cut.step().down(core.apply(cut.result()).value()));
    }
}
