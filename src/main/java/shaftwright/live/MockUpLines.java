package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.STICK;
import static shaftwright.contract.Grid.STICK_READING;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.StickInputs;
import shaftwright.formula.Cases;
import shaftwright.formula.FormulaText;
import shaftwright.formula.Pieces;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.FloatStop;
import shaftwright.mockup.MockUpCheck;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.RaceStop;
import shaftwright.mockup.StickComparison;
import shaftwright.mockup.StickReading;
import shaftwright.mockup.UnusableReading;
import shaftwright.mockup.WindowEnd;
import shaftwright.reading.SideMockUp;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CorrectionLine;
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.MockUpWording;

/**
 * A side's mock-up stick: the position table once more at the heights at which it was read, for the
 * scenario that it was built as; each reading beside what that says; the lines through the
 * differences, which correct the window of scenarios that ask for it.
 */
final class MockUpLines {
    private static final int SINCE = 6;

    /** Contract version that brought readings which can't be used. */
    private static final int UNUSABLE = 7;

    /** Where a stick is compared with a scenario that has a shaft. */
    private static final Known<MockUpCheck> CHECK =
            new Known<>("{stick_ready}=1", (sizing, index) -> sizing.mockUp(index.side()).check());

    private static final Known<StickRow> ROW = new Known<>("{stick_row}=1", StickRow::of);

    /** Which ends of the window there are, as names of lines say it. */
    private enum End {
        IN(WindowEnd.IN, "in"),
        OUT(WindowEnd.OUT, "out");

        final WindowEnd end;
        final Pieces words;

        End(WindowEnd end, String word) {
            this.end = end;
            words = Pieces.of("end", word);
        }
    }

    /** How readings are judged. */
    private enum Judged {
        AS_PLANNED("excess", "diff", false),
        CORRECTED("rest", "left", true);

        final boolean corrected;
        final Pieces words;

        Judged(String excess, String off, boolean corrected) {
            this.corrected = corrected;
            words = Pieces.of("excess", excess).and("off", off);
        }
    }

    /**
     * A height at which the stick was read.
     *
     * @param row from 0
     */
    record StickRow(MockUpCheck check, int row, double travel) implements Standing {
        static Optional<StickRow> of(Sizing sizing, Index index) {
            double travel = SideMockUp.travel(sizing, index.side(), index.row());
            return sizing.mockUp(index.side())
                    .check()
                    .filter(check -> !Double.isNaN(travel) && check.knows(travel))
                    .map(check -> new StickRow(check, index.row(), travel));
        }

        @Override
        public Position before() {
            return check.position(travel);
        }

        @Override
        public MountedJoint joint(ShaftEnd end) {
            return check.stood().joint(end);
        }

        Optional<StickComparison> compared(End end) {
            return check.at(row, end.end);
        }

        /** A figure of a comparison; something else where there is none. */
        double of(End end, ToDoubleFunction<StickComparison> figure, double otherwise) {
            return compared(end).map(figure::applyAsDouble).orElse(otherwise);
        }

        OptionalDouble read(End end) {
            return reading().map(reading -> reading.holes(end.end)).orElse(OptionalDouble.empty());
        }

        Optional<StickReading> reading() {
            return check.mockUp().readings().stream()
                    .filter(reading -> reading.row() == row)
                    .findFirst();
        }

        Optional<UnusableReading> unusable() {
            return check.unusable(row);
        }

        OptionalDouble expected(End end) {
            return check.expected(end.end, travel);
        }

        double allowed() {
            return StickComparison.allowed(before().doubt(), check.tapeDeviation());
        }
    }

    private final LiveLines lines;
    private final LineSet<Sizing> sides;
    private final LineSet<Sizing> rows;

    private MockUpLines(LiveLines lines) {
        this.lines = lines;
        sides = LineSet.in(lines, Section.STICK_WORK, STICK).since(SINCE);
        rows = sides.in(Section.STICK_WORK, STICK_READING);
    }

    static void declare(LiveLines lines) {
        MockUpLines stick = new MockUpLines(lines);
        stick.typed();
        stick.side();
        stick.positions();
        stick.read();
        stick.usable();
        for (End end : End.values()) {
            stick.compared(end);
        }
        stick.rows
                .only(ROW, Lacking.ZERO)
                .mm("stick_whole", "Allowed, where something was read")
                .is(
                        "IF(COUNT({stick_known_in},{stick_known_out})>0,{stick_allowed},0)",
                        row -> counts(row) ? row.allowed() : 0);
        for (End end : End.values()) {
            stick.line(end);
        }
        stick.doubt();
        for (Judged judged : Judged.values()) {
            stick.worst(judged);
        }
        stick.use();
        stick.shown();
        stick.said();
    }

    private static boolean counts(StickRow row) {
        return row.compared(End.IN).isPresent() || row.compared(End.OUT).isPresent();
    }

    private void typed() {
        ReadLines.declare(
                lines,
                Contract.inputs(STICK),
                Section.STICK_WORK,
                STICK,
                (input, index) -> input.name() + "~");
        rows.ordinal("stick_row_number", "Row");
        ReadLines.declare(
                lines,
                Contract.inputs(STICK_READING),
                Section.STICK_WORK,
                STICK_READING,
                (input, index) -> "INDEX(" + input.name() + "~,{stick_row_number})");
    }

    private void side() {
        sides.whole("stick_typed", "In use")
                .is(
                        "IF(COUNT({stick_height_read:all})>0,1,0)",
                        (sizing, index) -> isTyped(sizing, index) ? 1 : 0);
        sides.whole("stick_column", "Scenario that it was built as, from 1")
                .is(
                        """
                        IF({stick_typed}=0,0,IF(stick_scenario~="",card_index,
                        IFERROR(MATCH(stick_scenario~,{work_letter:each},0),0)))
                        """,
                        (sizing, index) -> sizing.mockUp(index.side()).scenario().orElse(-1) + 1);
        sides.with(Pieces.of("fixed", quoted(StickInputs.FIXED)))
                .whole("stick_fixed", "Fixed stick")
                .is(
                        "IF(stick_kind~=<fixed>,1,0)",
                        (sizing, index) ->
                                SideMockUp.isFixed(sizing.inputs(), index.side()) ? 1 : 0);
        sides.text("stick_trouble", "What keeps it from being compared")
                .is(
                        new Cases()
                                .say("{stick_typed}=0", "")
                                .say("{stick_column}=0", SideMockUp.NO_SCENARIO)
                                .say(
                                        Card.inColumn("{ready:each}", "{stick_column}") + "=0",
                                        SideMockUp.NOT_COMPUTED)
                                .say(
                                        "IF({stick_fixed}=1,NOT(ISNUMBER({stick_holes_read})),FALSE)",
                                        SideMockUp.NO_HOLES)
                                .otherwise("\"\""),
                        (sizing, index) -> sizing.mockUp(index.side()).trouble());
        sides.about(CHECK.source(), Lacking.ZERO.value())
                .whole("stick_ready", "Compared")
                .is("IF({stick_typed}=1,IF({stick_trouble}=\"\",1,0),0)", check -> 1);
        sides.only(CHECK, Lacking.ZERO)
                .whole("stick_pushes", "Pushes the races in")
                .is(
                        "IF(AND("
                                + stopped(ShaftEnd.INNER)
                                + ","
                                + stopped(ShaftEnd.OUTER)
                                + "),1,0)",
                        check -> check.mockUp().stick().pushes() ? 1 : 0);
    }

    private static boolean isTyped(Sizing sizing, Index index) {
        for (int row = 0; row < STICK_READING.rows(); row++) {
            if (!Double.isNaN(sizing.inputs().number("stick_height", index.side(), row))) {
                return true;
            }
        }
        return false;
    }

    private static String stopped(ShaftEnd end) {
        RaceStop[] stops =
                Arrays.stream(RaceStop.values())
                        .filter(stop -> stop != RaceStop.NOTHING)
                        .toArray(RaceStop[]::new);
        return "OR("
                + joined(
                        ",", stops, stop -> "stick_stop_" + end.word() + "~=" + quoted(stop.word()))
                + ")";
    }

    /** The position table at the heights of the stick. */
    private void positions() {
        rows.about(ROW.source(), Lacking.ZERO.value())
                .whole("stick_row", "Height inside the path")
                .is(
                        """
                        IF({stick_ready}=0,0,IF(ISNUMBER({stick_height_read}),
                        IF(AND(ROUND({stick_height_read}-{ride_height_used}-{path_low},6)>=0,
                        ROUND({stick_height_read}-{ride_height_used}-{path_high},6)<=0),1,0),0))
                        """,
                        row -> 1);
        rows.only(ROW, Lacking.ZERO)
                .mm("stick_travel", "Travel")
                .is("{stick_height_read}-{ride_height_used}", StickRow::travel);
        LineSet<MockUpCheck> known = sides.only(CHECK, Lacking.EMPTY);
        StickPlaces places = new StickPlaces(lines);
        for (ShaftEnd end : ShaftEnd.values()) {
            end(known.at(end), end, places);
        }
        PositionLines.standing(
                rows.only(ROW, Lacking.EMPTY).of((row, index) -> (Standing) row).again(places));
        over(known, places);
        for (String name : places.copied()) {
            copy(name);
        }
    }

    /** The stick's own end in a joint. */
    private static void end(LineSet<MockUpCheck> known, ShaftEnd end, StickPlaces places) {
        known.mm("stick_overhang_<end>", "Race centre to stick's end, <inner>")
                .is(
                        places.formula(
                                EndText.of(
                                        end,
                                        """
                                        {seat_<end>}+{stick_slide_<inner>_read}
                                        +IF(ISNUMBER({stick_stub_<inner>_read}),
                                        {stick_stub_<inner>_read},{stub_<end>})
                                        """)),
                        check -> stood(check, end).overhang());
        known.mm("stick_end_radius_<end>", "Stick's end radius, <inner>")
                .is(
                        """
                        IF(ISNUMBER({stick_end_<inner>_read}),{stick_end_<inner>_read},
                        shaft_end_diameter_<inner>_read)/2
                        """,
                        check -> stood(check, end).endDiameter() / 2);
    }

    private static MountedJoint stood(MockUpCheck check, ShaftEnd end) {
        return check.stood().joint(end);
    }

    /** What the holes are further apart than the races' centres. */
    private static void over(LineSet<MockUpCheck> known, StickPlaces places) {
        String out = places.formula("{seat_in}+{seat_out}+mockup_pin_read");
        known.mm("stick_over_in", "Holes beyond race spacing, races pushed in")
                .is(
                        out + "+{stick_slide_inner_read}+{stick_slide_outer_read}",
                        check -> holes(check, WindowEnd.IN));
        known.mm("stick_over_out", "Holes beyond race spacing, races pulled out")
                .is(out, check -> holes(check, WindowEnd.OUT));
    }

    private static double holes(MockUpCheck check, WindowEnd end) {
        return check.mockUp()
                .stick()
                .holes(
                        end,
                        0,
                        check.stood().inner().seatOffset(),
                        check.stood().outer().seatOffset());
    }

    /** A line of the scenario that the stick was built as. */
    private void copy(String name) {
        LiveLine line = lines.line(name);
        sides.only(CHECK.inWorkbook(), Lacking.EMPTY)
                .of(line.quantity(), "stick_" + name, line.label())
                .cell(
                        Card.inColumn("{" + name + ":each}", "{stick_column}"),
                        (sizing, index) ->
                                line.core()
                                        .at(
                                                sizing,
                                                new Index(
                                                        index.side(),
                                                        sizing.mockUp(index.side())
                                                                .scenario()
                                                                .orElseThrow(),
                                                        0)));
    }

    /** What each height's reading tells of both ends, and what may be off. */
    private void read() {
        LineSet<StickRow> set = rows.only(ROW, Lacking.EMPTY);
        set.mm("stick_allowed", "Difference that says nothing")
                .is("SQRT({stick_path_doubt}^2+tape_graduation_read^2/3)", StickRow::allowed);
        for (End end : End.values()) {
            set.with(end.words)
                    .mm("stick_read_<end>", "Holes read, fully <end>")
                    .is(read(end), row -> row.read(end).orElse(Double.NaN));
        }
    }

    /** Whether it can be used, and the reading of a side that can be least. */
    private void usable() {
        LineSet<StickRow> set = rows.only(ROW, Lacking.ZERO).since(UNUSABLE);
        set.mm("stick_longest", "Widest holes read")
                .is(
                        """
                        MAX({stick_read_in},{stick_read_out},
                        IF({stick_fixed}=1,{stick_holes_read},0))
                        """,
                        row -> row.reading().map(StickReading::longestHoles).orElse(0.0));
        set.mm("stick_most", "Widest holes that go between the cups")
                .is(
                        """
                        {stick_centre_distance}+{stick_cup_bottom_in}+{stick_cup_bottom_out}
                        -{stick_overhang_in}-{stick_overhang_out}+{stick_over_in}
                        """,
                        row -> row.check().mostHoles(row.travel()));
        set.whole("stick_flaw", "Can't be used (1 in and out swapped, 2 too long)")
                .is(
                        """
                        IF(ROUND({stick_longest}-{stick_most}-{stick_allowed},6)>0,2,
                        IF(COUNT({stick_read_in},{stick_read_out})<2,0,
                        IF({stick_read_in}<={stick_read_out},1,0)))
                        """,
                        row -> row.unusable().map(each -> each.flaw().number()).orElse(0));
        sides.only(CHECK, Lacking.ZERO)
                .since(UNUSABLE)
                .whole("stick_flaw_row", "Row that can be used least")
                .is(
                        "IF(MAX({stick_flaw:all})=0,0,MATCH(MAX({stick_flaw:all}),{stick_flaw:all},0))",
                        check ->
                                check.leastUsable()
                                        .map(each -> each.reading().row() + 1)
                                        .orElse(0));
        sides.since(UNUSABLE)
                .text("stick_flaw_says", "Why it can't be used")
                .is(
                        Pieces.of("at", quoted(MockUpWording.AT_READING))
                                .and("after", quoted(MockUpWording.AFTER_READING))
                                .and(
                                        "unusable",
                                        unusable(
                                                line ->
                                                        "INDEX({"
                                                                + line
                                                                + ":all},{stick_flaw_row})"))
                                .in(
                                        """
                                        IF({stick_flaw_row}=0,"",
                                        <at>&FIXED({stick_flaw_row},0,1)&<after>&<unusable>)
                                        """),
                        (sizing, index) ->
                                sizing.mockUp(index.side())
                                        .check()
                                        .flatMap(MockUpCheck::leastUsable)
                                        .map(each -> MockUpWording.unusableAt(each, sizing.unit()))
                                        .orElse(""));
    }

    /** What is wrong with a reading, by its numbers. */
    private static String unusable(UnaryOperator<String> of) {
        return Pieces.of("in", Phrases.length(of.apply("stick_read_in")))
                .and("not_more", quoted(MockUpWording.IN_NOT_MORE))
                .and("out", Phrases.length(of.apply("stick_read_out")))
                .and("than_out", quoted(MockUpWording.THAN_OUT))
                .and("holes", quoted(MockUpWording.HOLES))
                .and("longest", Phrases.length(of.apply("stick_longest")))
                .and("too_far", quoted(MockUpWording.TOO_FAR))
                .and("most", Phrases.length(of.apply("stick_most")))
                .and("flaw", of.apply("stick_flaw"))
                .in(
                        "IF(<flaw>=1,<in>&<not_more>&<out>&<than_out>,<holes>&<longest>&<too_far>&<most>)");
    }

    /** A reading of an end beside what was to be expected. */
    private void compared(End end) {
        LineSet<StickRow> set = rows.only(ROW, Lacking.EMPTY).with(end.words);
        set.mm("stick_expect_<end>", "Holes expected, fully <end>")
                .is(
                        end == End.IN
                                ? "IF({stick_pushes}=1,{stick_spacing_in}+{stick_over_in},\"\")"
                                : "{stick_spacing_out}+{stick_over_out}",
                        row -> row.expected(end).orElse(Double.NaN));
        set.revised(UNUSABLE)
                .mm("stick_known_<end>", "Travel, where both are known, fully <end>")
                .is(
                        """
                        IF({stick_flaw}>0,"",
                        IF(COUNT({stick_read_<end>},{stick_expect_<end>})=2,{stick_travel},""))
                        """,
                        row -> row.of(end, each -> row.travel(), Double.NaN));
        LineSet<StickRow> numbers = rows.only(ROW, Lacking.ZERO).with(end.words);
        numbers.mm("stick_diff_<end>", "Read less expected, fully <end>")
                .is(
                        where("{stick_read_<end>}-{stick_expect_<end>}", "0"),
                        row -> row.of(end, StickComparison::difference, 0));
        numbers.mm("stick_left_<end>", "The same less the correction, fully <end>")
                .is(
                        where(
                                "{stick_diff_<end>}-{stick_level_<end>}"
                                        + "-{stick_slope_<end>}*{stick_travel}",
                                "0"),
                        row -> row.of(end, StickComparison::left, 0));
        for (Judged judged : Judged.values()) {
            numbers.with(judged.words)
                    .mm("stick_<excess>_<end>", "Beyond the doubt, fully <end>, <off>")
                    .is(
                            where("ROUND(ABS({stick_<off>_<end>})-{stick_allowed},6)", "-1"),
                            row -> row.of(end, each -> each.excess(judged.corrected), -1));
        }
    }

    private static String where(String formula, String otherwise) {
        return "IF(ISNUMBER({stick_known_<end>})," + formula + "," + otherwise + ")";
    }

    /** Spacing of the holes that tells an end: read, or told by a fixed stick's play. */
    private static String read(End end) {
        FloatStop stop = end == End.IN ? FloatStop.BOTTOM : FloatStop.PULL;
        return Pieces.of("stop", quoted(stop.word()))
                .and("sign", end == End.IN ? "+" : "-")
                .and("inboard", "INDEX(stick_inboard~,{stick_row_number})")
                .and("outboard", "INDEX(stick_outboard~,{stick_row_number})")
                .in(
                        """
                        IF({stick_fixed}=0,{stick_holes_<end>_read},IF(ISNUMBER({stick_play_read}),
                        IF(AND(<inboard>=<stop>,<outboard>=<stop>),
                        {stick_holes_read}<sign>{stick_play_read},""),""))
                        """);
    }

    /** The straight line through the differences of an end. */
    private void line(End end) {
        LineSet<MockUpCheck> set = sides.only(CHECK, Lacking.ZERO).with(end.words);
        set.whole("stick_count_<end>", "Readings, fully <end>")
                .is("COUNT({stick_known_<end>:all})", check -> count(check, end));
        set.mm("stick_mean_<end>", "Their mean travel, fully <end>")
                .is(
                        "IF({stick_count_<end>}=0,0,SUM({stick_known_<end>:all})/{stick_count_<end>})",
                        check -> mean(check, end));
        set.number("stick_spread_<end>", "Squared spread of their travels, fully <end>")
                .is(
                        "IF({stick_count_<end>}=0,0,DEVSQ({stick_known_<end>:all}))",
                        check -> spread(check, end));
        set.number("stick_slope_<end>", "Slope of the correction, fully <end>")
                .is(
                        """
                        IF({stick_spread_<end>}<0.000001,0,
                        (SUMPRODUCT({stick_travel:all},{stick_diff_<end>:all})
                        -{stick_mean_<end>}*SUM({stick_diff_<end>:all}))/{stick_spread_<end>})
                        """,
                        check -> line(check, end).map(CorrectionLine::slope).orElse(0.0));
        set.mm("stick_level_<end>", "Correction at ride, fully <end>")
                .is(
                        """
                        IF({stick_count_<end>}=0,0,SUM({stick_diff_<end>:all})/{stick_count_<end>}
                        -{stick_slope_<end>}*{stick_mean_<end>})
                        """,
                        check -> line(check, end).map(CorrectionLine::level).orElse(0.0));
        set.mm("stick_low_<end>", "Lowest travel read, fully <end>")
                .is(
                        "IF({stick_count_<end>}=0,0,MIN({stick_known_<end>:all}))",
                        check -> line(check, end).map(CorrectionLine::from).orElse(0.0));
        set.mm("stick_high_<end>", "Highest travel read, fully <end>")
                .is(
                        "IF({stick_count_<end>}=0,0,MAX({stick_known_<end>:all}))",
                        check -> line(check, end).map(CorrectionLine::to).orElse(0.0));
    }

    private static Optional<CorrectionLine> line(MockUpCheck check, End end) {
        return end == End.IN ? check.correction().inward() : check.correction().outward();
    }

    private static int count(MockUpCheck check, End end) {
        return (int) check.comparisons().stream().filter(each -> each.end() == end.end).count();
    }

    private static double mean(MockUpCheck check, End end) {
        return travels(check, end).average().orElse(0);
    }

    private static DoubleStream travels(MockUpCheck check, End end) {
        return check.comparisons().stream()
                .filter(each -> each.end() == end.end)
                .mapToDouble(each -> each.reading().travel());
    }

    private static double spread(MockUpCheck check, End end) {
        double mean = mean(check, end);
        return travels(check, end).map(travel -> (travel - mean) * (travel - mean)).sum();
    }

    private void doubt() {
        sides.only(CHECK, Lacking.ZERO)
                .mm("stick_doubt", "Doubt of the correction")
                .is(
                        "MAX(" + scatter(End.IN) + "," + scatter(End.OUT) + ")",
                        check -> check.correction().doubt());
    }

    /** Scatter about the line, no less than a tape's own; the whole doubt where nothing is free. */
    private static String scatter(End end) {
        return end.words
                .and("free", "({stick_count_<end>}-IF({stick_spread_<end>}<0.000001,1,2))")
                .in(
                        """
                        IF({stick_count_<end>}=0,0,IF(<free><=0,MAX({stick_whole:all}),
                        MAX(2*SQRT(SUMSQ({stick_left_<end>:all})/<free>),tape_graduation_read/SQRT(3))))
                        """);
    }

    /** The reading that contradicts most. */
    private void worst(Judged judged) {
        LineSet<MockUpCheck> set = sides.only(CHECK, Lacking.ZERO).with(judged.words);
        for (End end : End.values()) {
            set.with(end.words)
                    .whole(
                            "stick_<excess>_row_<end>",
                            "Row that contradicts most, fully <end>, <off>")
                    .is(
                            """
                            IF(MAX({stick_<excess>_<end>:all})>0,
                            MATCH(MAX({stick_<excess>_<end>:all}),{stick_<excess>_<end>:all},0),0)
                            """,
                            check ->
                                    check.worst(end.end, judged.corrected)
                                            .map(each -> each.reading().row() + 1)
                                            .orElse(0));
        }
        set.whole("stick_<excess>_end", "End that contradicts most (1 in, 2 out), <off>")
                .is(
                        """
                        IF({stick_<excess>_row_in}+{stick_<excess>_row_out}=0,0,
                        IF(MAX({stick_<excess>_in:all})>=MAX({stick_<excess>_out:all}),1,2))
                        """,
                        check ->
                                check.worst(judged.corrected)
                                        .map(each -> each.end() == WindowEnd.IN ? 1 : 2)
                                        .orElse(0));
        figure(
                set,
                judged,
                "stick_<excess>_by",
                "Difference there, <off>",
                "stick_<off>",
                each -> each.off(judged.corrected));
        set.mm("stick_<excess>_at", "Travel there, <off>")
                .is(
                        at(
                                "INDEX({stick_travel:all},{stick_<excess>_row_in})",
                                "INDEX({stick_travel:all},{stick_<excess>_row_out})"),
                        check ->
                                check.worst(judged.corrected)
                                        .map(each -> each.reading().travel())
                                        .orElse(0.0));
        set.whole("stick_<excess>_check", "What to check, <off>")
                .is(
                        """
                        IF({stick_<excess>_end}=0,0,
                        IF({stick_<excess>_row_in}*{stick_<excess>_row_out}>0,
                        IF(INDEX({stick_<off>_in:all},{stick_<excess>_row_in})
                        *INDEX({stick_<off>_out:all},{stick_<excess>_row_out})<0,2,1),
                        IF({stick_<excess>_row_in}>0,3,4)))
                        """,
                        check ->
                                check.worst(judged.corrected).isEmpty()
                                        ? 0
                                        : number(check.suspicion(judged.corrected)));
    }

    private static void figure(
            LineSet<MockUpCheck> set,
            Judged judged,
            String name,
            String label,
            String column,
            ToDoubleFunction<StickComparison> core) {
        set.mm(name, label)
                .is(
                        at(
                                "INDEX({" + column + "_in:all},{stick_<excess>_row_in})",
                                "INDEX({" + column + "_out:all},{stick_<excess>_row_out})"),
                        check ->
                                check.worst(judged.corrected).map(core::applyAsDouble).orElse(0.0));
    }

    private static String at(String in, String out) {
        return "IF({stick_<excess>_end}=0,0,IF({stick_<excess>_end}=1," + in + "," + out + "))";
    }

    private static int number(Suspicion suspicion) {
        return Arrays.asList(Suspicion.values()).indexOf(suspicion) + 1;
    }

    /** What a side of each scenario has to do with the mock-up. */
    private void use() {
        LineSet<Sizing> columns = sides.in(Section.SIDE_WORK, SCENARIO_SIDE);
        columns.with(Pieces.of("yes", quoted(StickInputs.YES)))
                .whole("stick_use", "Mock-up (1 built as it, 2 corrected by it)")
                .is(
                        """
                        IF({stick_ready}*{ready}=0,0,IF({stick_corrects}=<yes>,2,
                        IF(MATCH({work_letter},{work_letter:each},0)={stick_column},1,0)))
                        """,
                        (sizing, index) -> use(sizing, index).map(MockUpLines::number).orElse(0));
        Fingerprint print =
                new Fingerprint(lines)
                        .measured("stick_level_in", "stick_slope_in", "stick_low_in")
                        .measured("stick_high_in", "stick_level_out", "stick_slope_out")
                        .measured("stick_low_out", "stick_high_out", "stick_doubt")
                        .measured("stick_count_in", "stick_count_out");
        sides.only(CHECK.inWorkbook(), Lacking.ZERO)
                .print("stick_print", "Fingerprint of the correction", print, 0);
        columns.whole("stick_used_print", "Fingerprint of its correction")
                .is(
                        "IF({stick_use}=2,{stick_print},0)",
                        (sizing, index) ->
                                use(sizing, index).filter(MockUpUse::corrects).isPresent()
                                        ? print.of(sizing, new Index(index.side(), 0, 0), 0)
                                        : 0);
    }

    private static int number(MockUpUse use) {
        return use.corrects() ? 2 : 1;
    }

    private static Optional<MockUpUse> use(Sizing sizing, Index index) {
        return sizing.result(index).isEmpty()
                ? Optional.empty()
                : SideLines.outcome(sizing, index)
                        .study()
                        .flatMap(study -> study.scenario().mockUp(index.side()));
    }

    /** Beside the typed readings. */
    private void shown() {
        LineSet<StickRow> set =
                rows.in(Section.STICK_SHOWN, STICK_READING).only(ROW, Lacking.EMPTY);
        set.shown("stick_travel_shown", "Travel, bump +")
                .is("{stick_travel}/tape_mm", StickRow::travel);
        for (End end : End.values()) {
            LineSet<StickRow> ends = set.with(end.words);
            String played =
                    end == End.IN
                            ? "{stick_expect_in}-{stick_holes_read}"
                            : "{stick_holes_read}-{stick_expect_out}";
            ends.with(Pieces.of("played", played))
                    .shown("stick_expected_<end>", "Expected, fully <end>")
                    .is(
                            """
                            IF(ISNUMBER({stick_expect_<end>}),
                            IF({stick_fixed}=1,<played>,{stick_expect_<end>})/tape_mm,"")
                            """,
                            row -> expected(row, end));
            ends.with(Pieces.of("sign", end == End.IN ? "1" : "(1-2*{stick_fixed})"))
                    .shown("stick_off_<end>", "Read less expected, fully <end>")
                    .is(
                            where("<sign>*{stick_diff_<end>}/tape_mm", "\"\""),
                            row -> row.of(end, MockUpLines::shownOff, Double.NaN));
        }
        set.shown("stick_allowed_shown", "Allowed ±")
                .is("{stick_allowed}/tape_mm", StickRow::allowed);
    }

    /** As it is read: holes apart, or the play of a fixed stick. */
    private static double expected(StickRow row, End end) {
        double expected = row.expected(end).orElse(Double.NaN);
        OptionalDouble fixed =
                row.reading().map(StickReading::fixedHoles).orElse(OptionalDouble.empty());
        if (fixed.isEmpty()) {
            return expected;
        }
        double longer = expected - fixed.getAsDouble();
        return end == End.IN ? longer : -longer;
    }

    /** A stick that is pulled out sooner has less play. */
    private static double shownOff(StickComparison each) {
        boolean less = each.end() == WindowEnd.OUT && each.reading().fixedHoles().isPresent();
        return less ? -each.difference() : each.difference();
    }

    private void said() {
        rows.in(Section.STICK_SHOWN, STICK_READING)
                .revised(UNUSABLE)
                .text("stick_says", "What it says")
                .is(rowWords(), MockUpLines::rowWords);
        LineSet<Sizing> texts = sides.in(Section.STICK_SAID, STICK);
        texts.revised(UNUSABLE)
                .text("stick_summary", "Readings and plan")
                .is(summaryWords(), MockUpLines::summaryWords);
        texts.text("stick_correction", "Correction, where asked for")
                .is(
                        correctionWords(),
                        (sizing, index) ->
                                sizing.mockUp(index.side())
                                        .check()
                                        .map(
                                                check ->
                                                        MockUpWording.correction(
                                                                check, sizing.unit()))
                                        .orElse(""));
        texts.in(Section.SHOP_CARD, SIDE)
                .text("card_correction", "Corrected by a mock-up")
                .is(
                        "IF(" + Card.cellOr("0", "stick_use") + "=2,{stick_correction},\"\")",
                        (sizing, index) ->
                                Card.scenario(sizing, index)
                                        .flatMap(shop -> use(sizing, shop))
                                        .filter(MockUpUse::corrects)
                                        .map(
                                                use ->
                                                        MockUpWording.correction(
                                                                use.check(), sizing.unit()))
                                        .orElse(""));
    }

    private static String rowWords(Sizing sizing, Index index) {
        Optional<MockUpCheck> check = sizing.mockUp(index.side()).check();
        double travel = SideMockUp.travel(sizing, index.side(), index.row());
        if (check.isEmpty() || Double.isNaN(travel)) {
            return "";
        }
        Optional<StickRow> row = StickRow.of(sizing, index);
        if (row.isEmpty()) {
            return MockUpWording.OUTSIDE;
        }
        if (row.get().unusable().isPresent()) {
            return MockUpWording.NOT_USED
                    + MockUpWording.unusable(row.get().unusable().get(), sizing.unit());
        }
        String in = words(row.get(), End.IN, sizing);
        String out = words(row.get(), End.OUT, sizing);
        if (in.isEmpty() && row.get().read(End.IN).isPresent()) {
            in = MockUpWording.NOT_PUSHED;
        }
        if (in.isEmpty() && out.isEmpty() && isStroke(sizing, index)) {
            return MockUpWording.ONE_STROKE;
        }
        return in + (in.isEmpty() || out.isEmpty() ? "" : MockUpWording.BETWEEN) + out;
    }

    private static String words(StickRow row, End end, Sizing sizing) {
        return row.compared(end).map(each -> MockUpWording.said(each, sizing.unit())).orElse("");
    }

    private static boolean isStroke(Sizing sizing, Index index) {
        Optional<FloatStop> inboard =
                SideMockUp.met(sizing.inputs(), "stick_inboard", index.side(), index.row());
        Optional<FloatStop> outboard =
                SideMockUp.met(sizing.inputs(), "stick_outboard", index.side(), index.row());
        return SideMockUp.isFixed(sizing.inputs(), index.side())
                && inboard.isPresent()
                && outboard.isPresent()
                && inboard.get() != outboard.get();
    }

    private static String rowWords() {
        return Pieces.of("outside", quoted(MockUpWording.OUTSIDE))
                .and("in", words(End.IN, MockUpWording.BOTTOMS, "<"))
                .and("out", words(End.OUT, MockUpWording.PULLS_OUT, ">"))
                .and("not_pushed", quoted(MockUpWording.NOT_PUSHED))
                .and("stroke", quoted(MockUpWording.ONE_STROKE))
                .and("between", quoted(MockUpWording.BETWEEN))
                .and("bottom", quoted(FloatStop.BOTTOM.word()))
                .and("pull", quoted(FloatStop.PULL.word()))
                .and("met", "INDEX(stick_inboard~,{stick_row_number})")
                .and("then", "INDEX(stick_outboard~,{stick_row_number})")
                .and("not_used", quoted(MockUpWording.NOT_USED))
                .and("unusable", unusable(line -> "{" + line + "}"))
                .and(
                        "mixed",
                        """
                        IF({stick_fixed}=0,FALSE,OR(AND(<met>=<bottom>,<then>=<pull>),
                        AND(<met>=<pull>,<then>=<bottom>)))
                        """)
                .in(
                        """
                        IF({stick_ready}=0,"",IF(NOT(ISNUMBER({stick_height_read})),"",
                        IF({stick_row}=0,<outside>,IF({stick_flaw}>0,<not_used>&<unusable>,
                        IF(COUNT({stick_known_in},{stick_read_in},{stick_known_out})=0,
                        IF(<mixed>,<stroke>,""),
                        IF(ISNUMBER({stick_known_in}),<in>,
                        IF(ISNUMBER({stick_read_in}),<not_pushed>,""))
                        &IF(AND(ISNUMBER({stick_read_in}),ISNUMBER({stick_known_out})),<between>,"")
                        &IF(ISNUMBER({stick_known_out}),<out>,""))))))
                        """);
    }

    /** What one reading says; an end comes sooner at a shorter stick, or at a longer one. */
    private static String words(End end, String does, String sooner) {
        return end.words
                .and("does", quoted(does))
                .and("by", Phrases.excess("ABS({stick_diff_<end>})"))
                .and("is_sooner", "{stick_diff_<end>}" + sooner + "0")
                .and("sooner", quoted(MockUpWording.SOONER))
                .and("later", quoted(MockUpWording.LATER))
                .and("within", quoted(MockUpWording.WITHIN))
                .in(
                        """
                        <does>&IF({stick_excess_<end>}>0,<by>&IF(<is_sooner>,<sooner>,<later>),<within>)
                        """);
    }

    private static String summaryWords(Sizing sizing, Index index) {
        SideMockUp mockUp = sizing.mockUp(index.side());
        return mockUp.trouble().isEmpty()
                ? mockUp.check().map(MockUpWording::summary).orElse("")
                : MockUpWording.NOT_COMPARED + mockUp.trouble() + ".";
    }

    private static String summaryWords() {
        String[] checks =
                Arrays.stream(Suspicion.values()).map(Suspicion::words).toArray(String[]::new);
        return Pieces.of("not_compared", quoted(MockUpWording.NOT_COMPARED))
                .and("nothing", quoted(MockUpWording.NOTHING_READ))
                .and("of", quoted(MockUpWording.OF))
                .and("agree", quoted(MockUpWording.AGREE))
                .and("check", quoted(MockUpWording.CHECK))
                .and("checks", joined(",", checks, FormulaText::quoted))
                .and("none_used", quoted(MockUpWording.NONE_USED))
                .and("some_unused", quoted(MockUpWording.SOME_UNUSED))
                .and("all", "({stick_count_in}+{stick_count_out})")
                .and(
                        "against",
                        "(COUNTIF({stick_excess_in:all},\">0\")+COUNTIF({stick_excess_out:all},\">0\"))")
                .in(
                        """
                        IF({stick_typed}=0,"",IF({stick_ready}=0,<not_compared>&{stick_trouble}&".",
                        IF(<all>=0,IF({stick_flaw_row}=0,<nothing>,<none_used>),FIXED(<all>-<against>,0,1)&<of>&FIXED(<all>,0,1)&<agree>
                        &IF(<against>=0,"",<check>&CHOOSE({stick_excess_check},<checks>)&".")
                        &IF({stick_flaw_row}=0,"",<some_unused>))))
                        """);
    }

    private static String correctionWords() {
        return Pieces.of("in", quoted(MockUpWording.IN))
                .and("out", quoted(MockUpWording.OUT))
                .and("between", quoted(MockUpWording.BETWEEN))
                .and("line_in", lineWords(End.IN))
                .and("line_out", lineWords(End.OUT))
                .and("doubt", Phrases.length("{stick_doubt}"))
                .and("more", quoted(MockUpWording.MORE_DOUBT))
                .in(
                        """
                        IF({stick_count_in}+{stick_count_out}=0,"",
                        <in>&<line_in>&<between>&<out>&<line_out>&<between>&<doubt>&<more>)
                        """);
    }

    private static String lineWords(End end) {
        return end.words
                .and("low", at("{stick_low_<end>}"))
                .and("high", at("{stick_high_<end>}"))
                .and("unread", quoted(MockUpWording.UNREAD))
                .and("to", quoted(MockUpWording.TO))
                .in(
                        """
                        IF({stick_count_<end>}=0,<unread>,<low>
                        &IF(ROUND({stick_high_<end>}-{stick_low_<end>},6)=0,"",<to>&<high>))
                        """);
    }

    private static String at(String travel) {
        return Phrases.length("{stick_level_<end>}+{stick_slope_<end>}*" + travel)
                + "&"
                + quoted(MockUpWording.AT)
                + "&"
                + Phrases.travel(travel);
    }
}
