package shaftwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.StatesResult;
import shaftwright.strength.RatingRow;
import shaftwright.strength.WeakestPart;
import shaftwright.study.CardPrint;
import shaftwright.study.Finding;
import shaftwright.study.ListedFinding;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.Verdict;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/** What a builder wants to see of a scenario first, both sides beside each other. */
final class ResultSummary {
    private static final String NONE = "-";

    private final ResultPage page;
    private final Sizing sizing;

    ResultSummary(ResultPage page, Sizing sizing) {
        this.page = page;
        this.sizing = sizing;
    }

    /** One scenario's block. */
    void print(ScenarioOutcome scenario, List<Side> sides) {
        String title = new ScenarioTexts(sizing, scenario).title();
        page.title(sides.size() == 1 ? title + ", " + sides.get(0).word() : title);
        if (!scenario.used()) {
            page.sentence("Not used.");
            page.gap();
            return;
        }
        if (sides.size() == 1) {
            verdict(verdict(scenario, sides.get(0)));
        } else {
            verdict(sizing.verdict(scenario.number()).orElseThrow());
        }
        shafts(scenario, sides);
        scenario.strength().weakest().ifPresent(this::weakest);
        new ReturningLoads(page, scenario.strength()).summary(sides);
        page.row("cost", scenario.cost().total().words());
        page.gap();
    }

    private Verdict verdict(ScenarioOutcome scenario, Side side) {
        return sizing.verdict(new Index(side, scenario.number(), 0)).orElseThrow();
    }

    private void verdict(Verdict verdict) {
        page.sentence(verdict.heading(page.unit()));
        for (Finding finding : verdict.findings()) {
            page.item(verdict.sentence(finding, page.unit()));
        }
    }

    private void verdict(ScenarioVerdict verdict) {
        page.sentence((warning(verdict) + " " + verdict.heading(page.unit())).strip());
        for (ListedFinding finding : verdict.listed(page.unit())) {
            page.item(finding.line());
        }
    }

    /** What stands in place of lengths that nobody is to cut by. */
    private static String warning(ScenarioVerdict verdict) {
        String left = verdict.left().card().warning();
        String right = verdict.right().card().warning();
        if (left.equals(right)) {
            return left;
        }
        return ((left.isEmpty() ? "" : ScenarioVerdict.LEFT + left)
                        + " "
                        + (right.isEmpty() ? "" : ScenarioVerdict.RIGHT + right))
                .strip();
    }

    private void shafts(ScenarioOutcome scenario, List<Side> sides) {
        if (sides.stream().noneMatch(side -> scenario.side(side).result().isPresent())) {
            return;
        }
        if (sides.size() > 1) {
            page.row("", sides.stream().map(Side::word).toList());
        }
        row("end to end, E", scenario, sides, this::endToEnd);
        row("clip to clip, K", scenario, sides, this::clipToClip);
        row("window", scenario, sides, (result, card) -> window(result));
        row("E from, to", scenario, sides, this::range);
        row("before bottoming", scenario, sides, (result, card) -> slack(result.leastSlackIn()));
        row("before pull-out", scenario, sides, (result, card) -> slack(result.leastSlackOut()));
        row("worst angle", scenario, sides, (result, card) -> angle(result));
        for (Side side : sides) {
            states(scenario, side, sides.size() > 1 ? ", " + side.word() : "");
        }
    }

    private void states(ScenarioOutcome scenario, Side side, String mark) {
        scenario.side(side)
                .result()
                .flatMap(SideResult::states)
                .map(StatesResult::window)
                .ifPresent(
                        all ->
                                page.row(
                                        "all states" + mark,
                                        "shortest set "
                                                + page.at(all.shortest())
                                                + "; longest set "
                                                + page.at(all.longest())));
    }

    /** A row of what each side has, unless no side has anything of it. */
    private void row(
            String label,
            ScenarioOutcome scenario,
            List<Side> sides,
            BiFunction<SideResult, CardPrint, String> text) {
        List<String> texts = new ArrayList<>();
        for (Side side : sides) {
            Optional<SideResult> result = scenario.side(side).result();
            CardPrint card = verdict(scenario, side).card();
            texts.add(result.map(known -> text.apply(known, card)).orElse(NONE));
        }
        if (!texts.stream().allMatch(NONE::equals)) {
            page.row(label, texts);
        }
    }

    /** Lengths as far as the shop card would print them: nobody is to cut by others. */
    private String endToEnd(SideResult result, CardPrint card) {
        return card.allows(CardPrint.LENGTHS) ? bothWays(result.length().endToEnd()) : NONE;
    }

    private String clipToClip(SideResult result, CardPrint card) {
        return card.allows(CardPrint.LENGTHS) ? bothWays(result.length().clipToClip()) : NONE;
    }

    private String range(SideResult result, CardPrint card) {
        return result.window().fits() && card.allows(CardPrint.WINDOW)
                ? page.length(result.choice().shortest().endToEnd())
                        + " to "
                        + page.length(result.choice().longest().endToEnd())
                : NONE;
    }

    private String window(SideResult result) {
        double width = result.window().width();
        return result.window().fits() ? page.length(width) : "short by " + page.length(-width);
    }

    private String slack(Binding slack) {
        return page.length(slack.value()) + " " + page.at(slack.travel());
    }

    /** That of the joint which comes nearest to its limit. */
    private static String angle(SideResult result) {
        double inner = result.steepestInner().value();
        double outer = result.steepestOuter().value();
        double innerMost = result.setup().inner().joint().angleMax();
        double outerMost = result.setup().outer().joint().angleMax();
        return inner / innerMost >= outer / outerMost
                ? angle("inner", inner, innerMost)
                : angle("outer", outer, outerMost);
    }

    private static String angle(String joint, double angle, double most) {
        return joint + " " + ResultPage.angle(angle) + " of " + ResultPage.angle(most);
    }

    private void weakest(WeakestPart parts) {
        RatingRow least = parts.least();
        page.row(
                "weakest part",
                "factor "
                        + Wording.factor(parts.factor())
                        + ", "
                        + (least.part().isEmpty() ? "a part without a name" : least.part())
                        + ": "
                        + page.torque(least.capacity())
                        + " of "
                        + page.torque(parts.torque()));
    }

    private String bothWays(double mm) {
        return page.length(mm)
                + " = "
                + new Length(mm)
                        .format(
                                page.unit() == LengthUnit.INCH
                                        ? LengthStyle.SIXTY_FOURTHS
                                        : LengthStyle.DECIMAL_INCH);
    }
}
