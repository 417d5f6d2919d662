package shaftwright.live;

import static shaftwright.contract.Grid.AS_CUT;
import static shaftwright.contract.Grid.BUILT;
import static shaftwright.live.Quantity.DEGREE;
import static shaftwright.live.Quantity.MILLIMETRE;
import static shaftwright.live.Quantity.RADIAN;
import static shaftwright.live.Quantity.SHOWN_LENGTH;
import static shaftwright.live.Quantity.TEXT;
import static shaftwright.live.Quantity.WHOLE;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.book.CellValue;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.FinishedShafts;
import shaftwright.reading.Sizing;
import shaftwright.shaft.Binding;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.shaft.TravelSteps;
import shaftwright.study.AsBuilt;
import shaftwright.study.AsBuilt.Compared;

/** The finished shafts against the plan: slack as cut, end play and angles to be expected. */
enum BuiltLines implements LiveLine.Formula, LiveLine.Core {
    SHIFT(
            "built_shift",
            "Cut longer than planned",
            MILLIMETRE,
            Section.BUILT_WORK,
            AS_CUT,
            "IF(ISNUMBER({shop_k}),IF(ISNUMBER({built_k_read}),{built_k_read}-{shop_k},"
                    + "IF(ISNUMBER({built_e_read}),{built_e_read}-{shop_e},0)),\"\")"),
    PLACE(
            "built_place",
            "Row of all positions",
            WHOLE,
            Section.BUILT_WORK,
            BUILT,
            "IF(ISNUMBER({built_shift#0}),(card_index-1)*25+"),
    PATH_DOUBT(
            "built_path_doubt",
            "Doubt of the hub path",
            MILLIMETRE,
            Section.BUILT_WORK,
            BUILT,
            position("path_doubt")),
    PLAY(
            "built_play_plan",
            "End play expected",
            MILLIMETRE,
            Section.BUILT_WORK,
            BUILT,
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
    /** Of the shaft as cut; a much too short one has none. */
    PUSH(
            "built_push",
            "Push-in, equal at both ends",
            MILLIMETRE,
            Section.BUILT_WORK,
            BUILT,
            "IF("
                    + placed(CentreFormulas.pushRoot(spacing()))
                    + "<0,\"\","
                    + placed(CentreFormulas.push(spacing()))
                    + ")"),
    ANGLE_IN(
            "built_inner_plan",
            "Inner angle of the shaft as cut",
            RADIAN,
            Section.BUILT_WORK,
            BUILT,
            joined(placed(CentreFormulas.angle(ShaftEnd.INNER, "{built_push}", "{built_push}")))),
    ANGLE_OUT(
            "built_outer_plan",
            "Outer angle of the shaft as cut",
            RADIAN,
            Section.BUILT_WORK,
            BUILT,
            joined(placed(CentreFormulas.angle(ShaftEnd.OUTER, "{built_push}", "{built_push}")))),
    ANGLE_DOUBT(
            "built_angle_doubt",
            "Doubt of an angle",
            RADIAN,
            Section.BUILT_WORK,
            BUILT,
            "built_gauge_read+({built_path_doubt}+height_graduation_read)/"
                    + position("centre_distance")),
    SLACK_IN(
            "built_slack_in",
            "Least slack before bottoming",
            SHOWN_LENGTH,
            Section.BUILT_CUT,
            AS_CUT,
            "({built_worst_in}-{built_shift})/tape_mm"),
    SLACK_OUT(
            "built_slack_out",
            "Least slack before pull-out",
            SHOWN_LENGTH,
            Section.BUILT_CUT,
            AS_CUT,
            "({built_worst_out}+{built_shift})/tape_mm"),
    SAYS("built_says", "As it was cut", TEXT, Section.BUILT_CUT, AS_CUT, ""),
    PLAY_SHOWN(
            "built_play_expected",
            "Expected",
            SHOWN_LENGTH,
            Section.BUILT_SHOWN,
            BUILT,
            "{built_play_plan}/tape_mm"),
    PLAY_DOUBT(
            "built_play_doubt",
            "Doubt ±",
            SHOWN_LENGTH,
            Section.BUILT_SHOWN,
            BUILT,
            "({built_path_doubt}+tape_graduation_read)/tape_mm"),
    PLAY_SAYS("built_play_says", "End play", TEXT, Section.BUILT_SHOWN, BUILT, ""),
    INNER_SHOWN(
            "built_inner_expected",
            "Expected",
            DEGREE,
            Section.BUILT_SHOWN,
            BUILT,
            joined("DEGREES({built_inner_plan})")),
    INNER_SAYS("built_inner_says", "Inner angle", TEXT, Section.BUILT_SHOWN, BUILT, ""),
    OUTER_SHOWN(
            "built_outer_expected",
            "Expected",
            DEGREE,
            Section.BUILT_SHOWN,
            BUILT,
            joined("DEGREES({built_outer_plan})")),
    OUTER_SAYS("built_outer_says", "Outer angle", TEXT, Section.BUILT_SHOWN, BUILT, ""),
    ANGLES_DOUBT(
            "built_angles_doubt",
            "Doubt of angles ±",
            DEGREE,
            Section.BUILT_SHOWN,
            BUILT,
            "DEGREES({built_angle_doubt})");

    private final String name;
    private final String label;
    private final Quantity quantity;
    private final Section section;
    private final Grid grid;
    private final String formula;

    BuiltLines(
            String name,
            String label,
            Quantity quantity,
            Section section,
            Grid grid,
            String formula) {
        this.name = name;
        this.label = label;
        this.quantity = quantity;
        this.section = section;
        this.grid = grid;
        this.formula = formula;
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
            text = text.replace("{u_" + axis + "}", chosen("u_" + axis));
        }
        return text;
    }

    /** Race spacing of the shaft as cut. */
    private static String spacing() {
        return "(" + chosen("spacing_final") + "+{built_shift#0})";
    }

    /** A figure of the shop scenario's column on this side. */
    private static String chosen(String name) {
        return Card.cell(name);
    }

    private static String joined(String formula) {
        return "IF({built_push}=\"\",\"\"," + formula + ")";
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
        for (Worst worst : Worst.values()) {
            lines.add(
                    new LiveLine(
                            worst.name,
                            Section.BUILT_WORK,
                            AS_CUT,
                            "Planned slack",
                            MILLIMETRE,
                            worst,
                            worst));
        }
        for (BuiltLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            line.section,
                            line.grid,
                            line.label,
                            line.quantity,
                            line,
                            line));
        }
        ServiceLines.declare(lines);
    }

    /** Least slack of the shop scenario as planned. */
    private enum Worst implements LiveLine.Formula, LiveLine.Core {
        IN("built_worst_in", "worst_slack_in"),
        OUT("built_worst_out", "worst_slack_out");

        private final String name;
        private final String source;

        Worst(String name, String source) {
            this.name = name;
            this.source = source;
        }

        @Override
        public int revised() {
            return 2;
        }

        @Override
        public String at(Index index) {
            return "IF(ISNUMBER({shop_k})," + chosen(source) + ",\"\")";
        }

        @Override
        public CellValue at(Sizing sizing, Index index) {
            return ReadLines.shown(
                    FinishedShafts.of(sizing, index.side())
                            .map(AsBuilt::planned)
                            .map(this == IN ? SideResult::leastSlackIn : SideResult::leastSlackOut)
                            .map(Binding::value)
                            .orElse(Double.NaN));
        }
    }

    @Override
    public int since() {
        return this == PUSH ? 3 : 1;
    }

    @Override
    public int revised() {
        return switch (this) {
            case SHIFT, SAYS -> 2;
            case PLAY_SAYS, INNER_SAYS, OUTER_SAYS -> 4;
            case ANGLE_IN, ANGLE_OUT, INNER_SHOWN, OUTER_SHOWN -> 3;
            default -> since();
        };
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case SHIFT -> formula;
            case PLACE -> formula + (WheelPlace.of(index.row()).step() + 1) + ",0)";
            case SLACK_IN, SLACK_OUT -> "IF(ISNUMBER({built_shift})," + formula + ",\"\")";
            case SAYS -> cutWords();
            case PLAY_SAYS ->
                    words(
                            "{built_play_read}",
                            "{built_play_plan}",
                            "{built_path_doubt}+tape_graduation_read",
                            true);
            case INNER_SAYS ->
                    words(
                            "{built_angle_inner_read}",
                            "{built_inner_plan}",
                            "{built_angle_doubt}",
                            false);
            case OUTER_SAYS ->
                    words(
                            "{built_angle_outer_read}",
                            "{built_outer_plan}",
                            "{built_angle_doubt}",
                            false);
            default -> "IF({built_place}=0,\"\"," + formula + ")";
        };
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

    @Override
    public CellValue at(Sizing sizing, Index index) {
        WheelPlace place = WheelPlace.of(index.row());
        Optional<AsBuilt> built = FinishedShafts.of(sizing, index.side());
        if (this == PLACE) {
            return CellValue.of(
                    built.isEmpty()
                            ? 0
                            : sizing.shopScenario().orElseThrow() * TravelSteps.COUNT
                                    + place.step()
                                    + 1);
        }
        return built.map(shaft -> value(sizing, shaft, place)).orElse(CellValue.of(""));
    }

    private CellValue value(Sizing sizing, AsBuilt built, WheelPlace place) {
        return switch (this) {
            case SAYS -> CellValue.of(built.sentence(sizing.unit()).orElse(""));
            case PLAY_SAYS -> says(sizing, built.playCompared(place));
            case INNER_SAYS -> says(sizing, built.innerAngleCompared(place));
            case OUTER_SAYS -> says(sizing, built.outerAngleCompared(place));
            default -> number(sizing, core(built, place).orElse(Double.NaN));
        };
    }

    private static CellValue says(Sizing sizing, Optional<AsBuilt.Compared> compared) {
        return CellValue.of(compared.map(said -> said.sentence(sizing.unit())).orElse(""));
    }

    private CellValue number(Sizing sizing, double value) {
        return ReadLines.shown(
                switch (quantity) {
                    case SHOWN_LENGTH -> value / sizing.unit().mm();
                    case DEGREE -> Math.toDegrees(value);
                    default -> value;
                });
    }

    private OptionalDouble core(AsBuilt built, WheelPlace place) {
        return switch (this) {
            case PUSH -> built.push(place);
            case ANGLE_IN, INNER_SHOWN -> built.innerAngle(place);
            case ANGLE_OUT, OUTER_SHOWN -> built.outerAngle(place);
            default -> OptionalDouble.of(known(built, place));
        };
    }

    private double known(AsBuilt built, WheelPlace place) {
        return switch (this) {
            case SHIFT -> built.shift();
            case PATH_DOUBT -> built.pathDoubt(place);
            case PLAY, PLAY_SHOWN -> built.play(place);
            case ANGLE_DOUBT, ANGLES_DOUBT -> built.angleDoubt(place);
            case SLACK_IN -> built.slackIn();
            case SLACK_OUT -> built.slackOut();
            case PLAY_DOUBT -> built.playDoubt(place);
            default -> throw new IllegalStateException(name + " is no figure of every shaft");
        };
    }
}
