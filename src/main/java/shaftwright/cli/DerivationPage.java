package shaftwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.jobs.ScenarioTexts;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Derivation;
import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep;
import shaftwright.study.DerivationStep.Kind;
import shaftwright.study.DerivationStep.Topic;

/** How a scenario's lengths came about, step by step, as the sheets say it. */
final class DerivationPage {
    /** Room for the figures of a group, and of one of them. */
    private static final int GROUP = 38;

    private static final int FIGURE = GROUP / DerivationStep.FIGURES;

    private final ResultPage page;
    private final Sizing sizing;

    DerivationPage(ResultPage page, Sizing sizing) {
        this.page = page;
        this.sizing = sizing;
    }

    void print(ScenarioOutcome scenario, List<Side> sides) {
        DerivationStep.SYMBOLS.forEach(page::sentence);
        page.gap();
        for (Side side : sides) {
            ScenarioTexts texts = new ScenarioTexts(sizing, scenario);
            page.title(texts.title() + ", " + side.word());
            page.sentence(texts.verdict(side));
            if (sizing.wantsAllStates(scenario.number())) {
                page.sentence(Derivation.ALL_STATES);
            }
            page.gap();
            sizing.derivation(new Index(side, scenario.number(), 0)).ifPresent(this::print);
        }
    }

    private void print(Derivation derivation) {
        for (Topic topic : Topic.values()) {
            if (DerivationLine.of(topic).stream().anyMatch(derivation::tells)) {
                page.title(topic.title());
                if (!topic.first().isEmpty()) {
                    page.line(ResultPage.padded(topic.first(), GROUP) + topic.second());
                }
                for (DerivationLine line : DerivationLine.of(topic)) {
                    print(derivation, line);
                }
                if (topic == Topic.GIVEN && !derivation.benchRowsLeftOut().isEmpty()) {
                    page.sentence(derivation.benchRowsLeftOut());
                }
                page.gap();
            }
        }
    }

    private void print(Derivation derivation, DerivationLine line) {
        if (!derivation.tells(line)) {
            return;
        }
        if (line.row() == 0) {
            page.labelled(line.step().words(), line.step().formula());
        }
        double[] figures = derivation.figures(line);
        page.line(
                ResultPage.padded(group(figures, line, 0), GROUP)
                        + group(figures, line, DerivationStep.FIGURES));
    }

    private String group(double[] figures, DerivationLine line, int first) {
        StringBuilder group = new StringBuilder();
        IntStream.range(first, first + DerivationStep.FIGURES)
                .forEach(
                        place ->
                                group.append(
                                        ResultPage.padded(
                                                figure(figures[place], line.kind(place)), FIGURE)));
        return group.toString();
    }

    private String figure(double figure, Optional<Kind> kind) {
        return kind.isEmpty() || Double.isNaN(figure) ? "" : kind.get().text(figure, sizing.unit());
    }
}
