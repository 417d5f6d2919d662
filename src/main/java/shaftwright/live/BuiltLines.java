package shaftwright.live;

import static shaftwright.contract.Grid.AS_CUT;
import static shaftwright.contract.Grid.BUILT;

import java.util.Optional;
import java.util.function.BiFunction;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.FinishedShafts;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.TravelSteps;
import shaftwright.study.AsBuilt;
import shaftwright.study.AsBuilt.Compared;

/** The finished shafts against the plan: slack as cut, end play and angles to be expected. */
final class BuiltLines {
    private final LineSet<AsBuilt> built;
    private final LineSet<Sizing> all;

    private BuiltLines(LineSet<Sizing> all) {
        this.all = all;
        built =
                all.about(
                        (sizing, index) -> FinishedShafts.of(sizing, index.side()),
                        Lacking.EMPTY.value());
    }

    static void declare(LiveLines lines) {
        ReadLines.declare(
                lines,
                Contract.inputs(AS_CUT),
                Section.BUILT_WORK,
                AS_CUT,
                (input, index) -> input.name() + "~");
        lines.add(LiveLine.ordinal("built_row", Section.BUILT_WORK, BUILT, "Row", 1));
        ReadLines.declare(
                lines,
                Contract.inputs(BUILT),
                Section.BUILT_WORK,
                BUILT,
                (input, index) -> "INDEX(" + input.name() + "~,{built_row})");
        BuiltLines lengths = new BuiltLines(LineSet.in(lines, Section.BUILT_WORK, AS_CUT));
        lengths.planned();
        lengths.place();
        lengths.expected();
        lengths.asCut();
        lengths.shown();
        ServiceLines.declare(lines);
    }

    private static WheelPlace at(Index index) {
        return WheelPlace.of(index.row());
    }

    /** Slack of the shop scenario as planned, and how the shaft differs from that. */
    private void planned() {
        LineSet<AsBuilt> later = built.revised(2);
        later.mm("built_worst_in", "Planned slack")
                .is(
                        "IF(ISNUMBER({shop_k})," + Card.cell("worst_slack_in") + ",\"\")",
                        shaft -> shaft.planned().leastSlackIn().value());
        later.mm("built_worst_out", "Planned slack")
                .is(
                        "IF(ISNUMBER({shop_k})," + Card.cell("worst_slack_out") + ",\"\")",
                        shaft -> shaft.planned().leastSlackOut().value());
        later.mm("built_shift", "Cut longer than planned")
                .is(
                        "IF(ISNUMBER({shop_k}),IF(ISNUMBER({built_k_read}),{built_k_read}-{shop_k},"
                                + "IF(ISNUMBER({built_e_read}),{built_e_read}-{shop_e},0)),\"\")",
                        AsBuilt::shift);
    }

    private void place() {
        all.in(Section.BUILT_WORK, BUILT)
                .whole("built_place", "Row of all positions")
                .is(
                        index ->
                                "IF(ISNUMBER({built_shift#0}),(card_index-1)*"
                                        + TravelSteps.COUNT
                                        + "+"
                                        + (at(index).step() + 1)
                                        + ",0)",
                        (sizing, index) ->
                                FinishedShafts.of(sizing, index.side()).isEmpty()
                                        ? 0
                                        : sizing.shopScenario().orElseThrow() * TravelSteps.COUNT
                                                + at(index).step()
                                                + 1);
    }

    private void expected() {
        LineSet<AsBuilt> set = built.in(Section.BUILT_WORK, BUILT);
        set.mm("built_path_doubt", "Doubt of the hub path")
                .is(known(position("path_doubt")), (shaft, index) -> shaft.pathDoubt(at(index)));
        set.mm("built_play_plan", "End play expected")
                .is(
                        known(
                                "MIN("
                                        + position("slack_in")
                                        + "-{built_shift#0},"
                                        + position("slack_out")
                                        + "+{built_shift#0},"
                                        + position("last_in_in")
                                        + "+"
                                        + position("last_out_in")
                                        + ","
                                        + position("last_in_out")
                                        + "+"
                                        + position("last_out_out")
                                        + ")"),
                        (shaft, index) -> shaft.play(at(index)));
        // Of the shaft as cut; a much too short one has none.
        set.since(3)
                .mm("built_push", "Push-in, equal at both ends")
                .is(
                        known(
                                "IF("
                                        + placed(CentreFormulas.pushRoot(spacing()))
                                        + "<0,\"\","
                                        + placed(CentreFormulas.push(spacing()))
                                        + ")"),
                        (shaft, index) -> shaft.push(at(index)).orElse(Double.NaN));
        for (ShaftEnd end : ShaftEnd.values()) {
            set.revised(3)
                    .rad(
                            "built_" + end.word() + "_plan",
                            EndText.heading(end, " angle of the shaft as cut"))
                    .is(
                            joined(
                                    placed(
                                            CentreFormulas.angle(
                                                    end, "{built_push}", "{built_push}"))),
                            (shaft, index) -> angle(shaft, end, at(index)));
        }
        set.rad("built_angle_doubt", "Doubt of an angle")
                .is(
                        known(
                                "built_gauge_read+({built_path_doubt}+height_graduation_read)/"
                                        + position("centre_distance")),
                        (shaft, index) -> shaft.angleDoubt(at(index)));
    }

    private static double angle(AsBuilt shaft, ShaftEnd end, WheelPlace place) {
        return end.either(shaft.innerAngle(place), shaft.outerAngle(place)).orElse(Double.NaN);
    }

    private void asCut() {
        LineSet<AsBuilt> set = built.in(Section.BUILT_CUT, AS_CUT);
        set.shown("built_slack_in", "Least slack before bottoming")
                .is(
                        "IF(ISNUMBER({built_shift}),({built_worst_in}-{built_shift})/tape_mm,\"\")",
                        AsBuilt::slackIn);
        set.shown("built_slack_out", "Least slack before pull-out")
                .is(
                        "IF(ISNUMBER({built_shift}),({built_worst_out}+{built_shift})/tape_mm,\"\")",
                        AsBuilt::slackOut);
        sentence(
                Section.BUILT_CUT,
                AS_CUT,
                "built_says",
                "As it was cut",
                cutWords(),
                (shaft, sizing, place) -> shaft.sentence(sizing.unit()));
    }

    private void shown() {
        LineSet<AsBuilt> set = built.in(Section.BUILT_SHOWN, BUILT);
        set.shown("built_play_expected", "Expected")
                .is(known("{built_play_plan}/tape_mm"), (shaft, index) -> shaft.play(at(index)));
        set.shown("built_play_doubt", "Doubt ±")
                .is(
                        known("({built_path_doubt}+tape_graduation_read)/tape_mm"),
                        (shaft, index) -> shaft.playDoubt(at(index)));
        compared(
                "built_play_says",
                "End play",
                words(
                        "{built_play_read}",
                        "{built_play_plan}",
                        "{built_path_doubt}+tape_graduation_read",
                        true),
                AsBuilt::playCompared);
        angle(set, ShaftEnd.INNER, AsBuilt::innerAngleCompared);
        angle(set, ShaftEnd.OUTER, AsBuilt::outerAngleCompared);
        set.deg("built_angles_doubt", "Doubt of angles ±")
                .is(
                        known("DEGREES({built_angle_doubt})"),
                        (shaft, index) -> shaft.angleDoubt(at(index)));
    }

    private void angle(
            LineSet<AsBuilt> set,
            ShaftEnd end,
            BiFunction<AsBuilt, WheelPlace, Optional<Compared>> compared) {
        String plan = "{built_" + end.word() + "_plan}";
        set.revised(3)
                .deg("built_" + end.word() + "_expected", "Expected")
                .is(
                        joined("DEGREES(" + plan + ")"),
                        (shaft, index) -> angle(shaft, end, at(index)));
        compared(
                "built_" + end.word() + "_says",
                EndText.heading(end, " angle"),
                words("{built_angle_" + end.word() + "_read}", plan, "{built_angle_doubt}", false),
                compared);
    }

    /** What a measured figure makes of the expected one. */
    private void compared(
            String name,
            String label,
            String formula,
            BiFunction<AsBuilt, WheelPlace, Optional<Compared>> core) {
        sentence(
                Section.BUILT_SHOWN,
                BUILT,
                name,
                label,
                formula,
                (shaft, sizing, place) ->
                        core.apply(shaft, place).map(said -> said.sentence(sizing.unit())));
    }

    /** A sentence by the core. */
    private interface Said {
        Optional<String> of(AsBuilt shaft, Sizing sizing, WheelPlace place);
    }

    private void sentence(
            Section section, Grid grid, String name, String label, String formula, Said core) {
        all.in(section, grid)
                .revised(2)
                .text(name, label)
                .is(
                        formula,
                        (sizing, index) ->
                                FinishedShafts.of(sizing, index.side())
                                        .flatMap(shaft -> core.of(shaft, sizing, at(index)))
                                        .orElse(""));
    }

    /** A figure of the shop scenario's position table on this side. */
    private static String position(String name) {
        return "INDEX(" + name + "~,{built_place})";
    }

    /** A formula over a row of the position table, for the shop scenario's row of the place. */
    private static String placed(String formula) {
        String text = formula.replace("{centre_distance}", position("centre_distance"));
        for (String axis : new String[] {"x", "y", "z"}) {
            text = text.replace("{d_" + axis + "}", position("d_" + axis));
            text = text.replace("{n_" + axis + "}", position("n_" + axis));
            text = text.replace("{u_" + axis + "}", Card.cell("u_" + axis));
        }
        return text;
    }

    /** Race spacing of the shaft as cut. */
    private static String spacing() {
        return "(" + Card.cell("spacing_final") + "+{built_shift#0})";
    }

    /** Where a side has finished shafts. */
    private static String known(String formula) {
        return "IF({built_place}=0,\"\"," + formula + ")";
    }

    /** Where they reach from joint to joint. */
    private static String joined(String formula) {
        return known("IF({built_push}=\"\",\"\"," + formula + ")");
    }

    private static String cutWords() {
        return "IF(AND(ISNUMBER({built_shift}),COUNT({built_e_read},{built_k_read})>0),"
                + "IF({built_slack_in}<0,\""
                + AsBuilt.BOTTOMS
                + "\"&"
                + Phrases.length("0-{built_slack_in}*tape_mm")
                + ",IF({built_slack_out}<0,\""
                + AsBuilt.PULLS_OUT
                + "\"&"
                + Phrases.length("0-{built_slack_out}*tape_mm")
                + ",\""
                + AsBuilt.CLEAR
                + "\")),\"\")";
    }

    private static String words(String read, String plan, String doubt, boolean length) {
        String off = "ABS(" + read + "-" + plan + ")";
        String shown = length ? Phrases.length(off) : Phrases.angle(off);
        return "IF(COUNT("
                + read
                + ","
                + plan
                + ")<2,\"\",IF(ROUND("
                + off
                + "-("
                + doubt
                + "),6)>0,"
                + shown
                + "&IF("
                + read
                + ">"
                + plan
                + ",\""
                + Compared.MORE
                + "\",\""
                + Compared.LESS
                + "\")&\""
                + Compared.BEYOND
                + "\",\""
                + Compared.WITHIN
                + "\"))";
    }
}
