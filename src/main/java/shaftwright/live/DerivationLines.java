package shaftwright.live;

import static shaftwright.contract.Grid.READING_SLOT;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.formula.FormulaText.quoted;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Pieces;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Derivation;
import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep;
import shaftwright.study.DerivationStep.Topic;

/**
 * How the length of the card's scenario came about, {@link DerivationStep} by step: one line a
 * place of figures, one row a {@link DerivationLine} of the topic.
 */
public final class DerivationLines {
    private static final int SINCE = 6;

    /** How far an empty reading is from everything, mm. */
    private static final int FAR = 1_000_000;

    private DerivationLines() {}

    static void declare(LiveLines lines) {
        LineSet.in(lines, Section.DERIVATION, SIDE)
                .since(SINCE)
                .with(
                        Pieces.of("no_scenario", quoted(Derivation.NO_SCENARIO))
                                .and("all_asked", Card.cell("states_asked"))
                                .and("all_states", quoted(" " + Derivation.ALL_STATES)))
                .text("how_says", "Scenario on the shop cards")
                .is(
                        """
                        IF(card_index=0,<no_scenario>,{card_name}&": "&{card_verdict}
                        &IF(<all_asked>=1,<all_states>,""))
                        """,
                        DerivationLines::said);
        LineSet.in(lines, Section.DERIVATION, SIDE)
                .since(7)
                .ofAny(DerivationLines::derivation)
                .with(
                        Pieces.of("inner", leftOut(ShaftEnd.INNER))
                                .and("outer", leftOut(ShaftEnd.OUTER))
                                .and("says", quoted(Derivation.LEFT_OUT))
                                .and("says_outer", quoted(Derivation.LEFT_OUT_OUTER))
                                .and("where", quoted(Derivation.LEFT_OUT_WHERE)))
                .text("how_bench_left_out", "Bench rows not shown")
                .is(
                        """
                        IF(ISNUMBER({shop_e}),IF(<inner>+<outer>=0,"",
                        <says>&<inner>&<says_outer>&<outer>&<where>),"")
                        """,
                        (how, index) -> how.benchRowsLeftOut());
        LineSet<Sizing> readings =
                LineSet.in(lines, Section.PATH_WORK, READING_SLOT)
                        .since(SINCE)
                        .with(Pieces.of("far", FAR));
        off(readings, "how_off_first", "Height off the longest shaft's", true);
        off(readings, "how_off_second", "Height off the shortest shaft's", false);
        for (Topic topic : Topic.values()) {
            LineSet<Sizing> figures =
                    LineSet.in(lines, Section.DERIVATION, grid(topic)).since(SINCE);
            places(topic).forEach(place -> figures(figures, topic, place));
        }
    }

    private static String said(Sizing sizing, Index index) {
        return Card.scenario(sizing, index)
                .map(
                        shop ->
                                (sizing.inputs().text("scenario_name", shop) + ": ")
                                        + sizing.verdict(shop)
                                                .map(v -> v.text(sizing.unit()))
                                                .orElse("")
                                        + (sizing.wantsAllStates(shop.scenario())
                                                ? " " + Derivation.ALL_STATES
                                                : ""))
                .orElse(Derivation.NO_SCENARIO);
    }

    private static String leftOut(ShaftEnd end) {
        return Pieces.of("joint", Card.cell("joint_row_" + end.shortWord()))
                .and("shown", DerivationStep.BENCH_ROWS)
                .in("MAX(0,COUNTIF(limit_joint,<joint>)-<shown>)");
    }

    private static Optional<Derivation> derivation(Sizing sizing, Index index) {
        return Card.scenario(sizing, index).flatMap(sizing::derivation);
    }

    /** How far each reading's height is from that of a position. */
    private static void off(LineSet<Sizing> set, String name, String label, boolean first) {
        String height = new StepFigures(Topic.POSITIONS, first).cell(DerivationStep.OUTER_HEIGHT);
        set.with(Pieces.of("height", height))
                .mm(name, label)
                .is(
                        """
                        IF({row_present}*ISNUMBER(<height>)>0,
                        ABS({row_height}-<height>*tape_mm),<far>)
                        """,
                        (sizing, index) -> off(sizing, index, first));
    }

    private static double off(Sizing sizing, Index index, boolean first) {
        Optional<ReadRow> row = ReadRow.of(sizing, index);
        Optional<Derivation> how = derivation(sizing, index);
        return row.isEmpty() || how.isEmpty()
                ? FAR
                : Math.abs(row.get().fitted().row().height() - how.get().outerHeight(first));
    }

    private static void figures(LineSet<Sizing> set, Topic topic, int place) {
        List<DerivationLine> rows = DerivationLine.of(topic);
        StepFigures formulas = new StepFigures(topic, DerivationLine.isFirst(place));
        int at = place % DerivationStep.FIGURES;
        set.number(name(topic, place), topic.title())
                .is(
                        index -> {
                            DerivationLine line = rows.get(index.row());
                            return line.kind(place)
                                    .map(kind -> formulas.formula(line, at, kind))
                                    .orElse("\"\"");
                        },
                        (sizing, index) -> shown(sizing, index, rows.get(index.row()), place));
    }

    private static double shown(Sizing sizing, Index index, DerivationLine line, int place) {
        return derivation(sizing, index)
                .map(how -> how.figures(line)[place])
                .flatMap(figure -> line.kind(place).map(kind -> kind.shown(figure, sizing.unit())))
                .orElse(Double.NaN);
    }

    /** The grid of a topic's lines. */
    public static Grid grid(Topic topic) {
        return switch (topic) {
            case GIVEN -> Grid.HOW_GIVEN;
            case POSITIONS -> Grid.HOW_POSITIONS;
            case CHOICE -> Grid.HOW_CHOICE;
        };
    }

    /** Places at which a topic ever has a figure. */
    public static List<Integer> places(Topic topic) {
        return IntStream.range(0, DerivationLine.PLACES)
                .filter(
                        place ->
                                DerivationLine.of(topic).stream()
                                        .anyMatch(line -> line.kind(place).isPresent()))
                .boxed()
                .toList();
    }

    /** The live line of the figures at a place of a topic's lines. */
    public static String name(Topic topic, int place) {
        return name(topic, DerivationLine.isFirst(place), place % DerivationStep.FIGURES);
    }

    /** The same by its place in a group. */
    static String name(Topic topic, boolean first, int at) {
        return "how_"
                + topic.name().toLowerCase(Locale.ROOT)
                + (first ? "_first_" : "_second_")
                + (at + 1);
    }
}
