package shaftwright.live;

import static shaftwright.contract.Grid.SCENARIO_SIDE;
import static shaftwright.contract.Grid.STICK;
import static shaftwright.contract.Grid.STICK_READING;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.contract.Index;
import shaftwright.contract.StickInputs;
import shaftwright.formula.Cases;
import shaftwright.formula.Pieces;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.DifferenceLine;
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
import shaftwright.shaft.Position;
import shaftwright.shaft.ShaftEnd;

/**
 * A side's mock-up stick: the position table once more at the heights at which it was read, for the
 * scenario that it was built as; each reading beside what that says; the lines through the
 * differences, which correct the window of scenarios that ask for it.
 */
final class MockUpLines {
    static final int SINCE = 6;

    /** Contract version that brought readings which can't be used. */
    static final int UNUSABLE = 7;

    /** Where a stick is compared with a scenario that has a shaft. */
    static final Known<MockUpCheck> CHECK =
            new Known<>("{stick_ready}=1", (sizing, index) -> sizing.mockUp(index.side()).check());

    private static final Known<StickRow> ROW =
            new Known<>(
                    "{stick_row}=1",
                    (sizing, index) -> StickRow.of(sizing, index).filter(StickRow::isKnown));

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

    /** A height at which the stick was read. */
    record StickRow(MockUpCheck check, StickReading reading) implements Standing {
        static Optional<StickRow> of(Sizing sizing, Index index) {
            return sizing.mockUp(index.side())
                    .check()
                    .flatMap(
                            check ->
                                    check.mockUp()
                                            .reading(index.row())
                                            .map(reading -> new StickRow(check, reading)));
        }

        boolean isKnown() {
            return check.knows(reading);
        }

        double travel() {
            return reading.travel();
        }

        @Override
        public Position before() {
            return check.position(travel());
        }

        @Override
        public MountedJoint joint(ShaftEnd end) {
            return check.stood().joint(end);
        }

        Optional<StickComparison> compared(WindowEnd end) {
            return check.at(reading.row(), end);
        }

        boolean isCompared() {
            return compared(WindowEnd.IN).isPresent() || compared(WindowEnd.OUT).isPresent();
        }

        OptionalDouble expected(WindowEnd end) {
            return check.expected(end, travel());
        }

        double allowed() {
            return check.allowed(travel());
        }
    }

    private final LiveLines lines;
    private final LineSet<Sizing> sides;
    private final LineSet<MockUpCheck> checks;
    private final LineSet<Sizing> rows;

    private MockUpLines(LiveLines lines) {
        this.lines = lines;
        sides = LineSet.in(lines, Section.STICK_WORK, STICK).since(SINCE);
        checks = sides.only(CHECK, Lacking.ZERO);
        rows = sides.in(Section.STICK_WORK, STICK_READING);
    }

    static void declare(LiveLines lines) {
        MockUpLines stick = new MockUpLines(lines);
        stick.typed();
        stick.side();
        stick.positions();
        stick.read();
        stick.usable();
        for (WindowEnd end : WindowEnd.values()) {
            stick.compared(end);
        }
        stick.rows
                .only(ROW, Lacking.ZERO)
                .mm("stick_whole", "Allowed, where something was read")
                .is(
                        "IF(COUNT({stick_known_in},{stick_known_out})>0,{stick_allowed},0)",
                        row -> row.isCompared() ? row.allowed() : 0);
        for (WindowEnd end : WindowEnd.values()) {
            stick.line(end);
        }
        stick.doubt();
        for (Judged judged : Judged.values()) {
            stick.worst(judged);
        }
        stick.use();
        stick.shown();
        MockUpWordLines.declare(stick.rows, stick.sides);
    }

    /** Names, labels and formulas that both ends of the window have alike. */
    static Pieces words(WindowEnd end) {
        return Pieces.of("end", end.word());
    }

    private void typed() {
        ReadLines.declare(
                LineSet.in(lines, Section.STICK_WORK, STICK),
                STICK,
                (input, index) -> input.name() + "~");
        rows.ordinal("stick_row_number", "Row");
        ReadLines.declare(
                LineSet.in(lines, Section.STICK_WORK, STICK_READING),
                STICK_READING,
                (input, index) -> "INDEX(" + input.name() + "~,{stick_row_number})");
    }

    private void side() {
        LineSet<SideMockUp> mockUps = sides.of((sizing, index) -> sizing.mockUp(index.side()));
        mockUps.whole("stick_typed", "In use")
                .yes("IF(COUNT({stick_height_read:all})>0,1,0)", mockUp -> mockUp.isTyped());
        mockUps.whole("stick_column", "Scenario that it was built as, from 1")
                .is(
                        """
                        IF({stick_typed}=0,0,IF(stick_scenario~="",card_index,
                        IFERROR(MATCH(stick_scenario~,{work_letter:each},0),0)))
                        """,
                        mockUp -> mockUp.scenario().orElse(-1) + 1);
        sides.with(Pieces.of("fixed", quoted(StickInputs.FIXED)))
                .whole("stick_fixed", "Fixed stick")
                .yes(
                        "IF(stick_kind~=<fixed>,1,0)",
                        (sizing, index) -> SideMockUp.isFixed(sizing.inputs(), index.side()));
        mockUps.text("stick_trouble", "What keeps it from being compared")
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
                        SideMockUp::trouble);
        sides.about(CHECK.source(), Lacking.ZERO.value())
                .whole("stick_ready", "Compared")
                .is("IF({stick_typed}=1,IF({stick_trouble}=\"\",1,0),0)", check -> 1);
        checks.whole("stick_pushes", "Pushes the races in")
                .yes(
                        "IF(AND(" + joined(",", ShaftEnd.values(), MockUpLines::stopped) + "),1,0)",
                        check -> check.mockUp().stick().pushes());
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
        StickPlaces places = new StickPlaces(lines);
        LineSet<MockUpCheck> known = sides.only(CHECK, Lacking.EMPTY).again(places);
        for (ShaftEnd end : ShaftEnd.values()) {
            end(known.at(end).of((check, index) -> check.stood().joint(end)));
        }
        PositionLines.standing(
                rows.only(ROW, Lacking.EMPTY).of((row, index) -> (Standing) row).again(places));
        over(known);
        for (String name : places.copied()) {
            copy(name);
        }
    }

    /** The stick's own end in a joint. */
    private static void end(LineSet<MountedJoint> stood) {
        stood.mm("overhang_<end>", "Race centre to stick's end, <inner>")
                .is(
                        """
                        {seat_<end>}+{stick_slide_<inner>_read}
                        +IF(ISNUMBER({stick_stub_<inner>_read}),
                        {stick_stub_<inner>_read},{stub_<end>})
                        """,
                        MountedJoint::overhang);
        stood.mm("end_radius_<end>", "Stick's end radius, <inner>")
                .is(
                        """
                        IF(ISNUMBER({stick_end_<inner>_read}),{stick_end_<inner>_read},
                        shaft_end_diameter_<inner>_read)/2
                        """,
                        joint -> joint.endDiameter() / 2);
    }

    /** What the holes are further apart than the races' centres. */
    private static void over(LineSet<MockUpCheck> known) {
        String out = "{seat_in}+{seat_out}+mockup_pin_read";
        known.mm("over_in", "Holes beyond race spacing, races pushed in")
                .is(
                        out + "+{stick_slide_inner_read}+{stick_slide_outer_read}",
                        check -> check.holesOver(WindowEnd.IN));
        known.mm("over_out", "Holes beyond race spacing, races pulled out")
                .is(out, check -> check.holesOver(WindowEnd.OUT));
    }

    /** A line of the scenario that the stick was built as. */
    private void copy(String name) {
        LiveLine line = lines.line(name);
        sides.only(CHECK.inWorkbook(), Lacking.EMPTY)
                .of(line.quantity(), "stick_" + name, line.label())
                .cell(
                        Card.inColumn("{" + name + ":each}", "{stick_column}"),
                        (sizing, index) -> {
                            int scenario = sizing.mockUp(index.side()).scenario().orElseThrow();
                            return line.core().at(sizing, new Index(index.side(), scenario, 0));
                        });
    }

    /** What each height's reading tells of both ends, and what may be off. */
    private void read() {
        LineSet<StickRow> set = rows.only(ROW, Lacking.EMPTY);
        set.mm("stick_allowed", "Difference that says nothing")
                .is("SQRT({stick_path_doubt}^2+tape_graduation_read^2/3)", StickRow::allowed);
        for (WindowEnd end : WindowEnd.values()) {
            set.with(words(end))
                    .mm("stick_read_<end>", "Holes read, fully <end>")
                    .ifKnown(read(end), row -> row.reading().holes(end));
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
                        row -> row.reading().longestHoles());
        set.mm("stick_most", "Widest holes that go between the cups")
                .is(
                        """
                        {stick_centre_distance}+{stick_cup_bottom_in}+{stick_cup_bottom_out}
                        -{stick_overhang_in}-{stick_overhang_out}+{stick_over_in}
                        """,
                        row -> row.check().mostHoles(row.travel()));
        set.ofAny((row, index) -> row.check().unusable(index.row()), Lacking.ZERO)
                .whole("stick_flaw", "Can't be used (1 in and out swapped, 2 too long)")
                .is(
                        """
                        IF(ROUND({stick_longest}-{stick_most}-{stick_allowed},6)>0,2,
                        IF(COUNT({stick_read_in},{stick_read_out})<2,0,
                        IF({stick_read_in}<={stick_read_out},1,0)))
                        """,
                        unusable -> unusable.flaw().number());
        LineSet<UnusableReading> least =
                checks.since(UNUSABLE).ofAny((check, index) -> check.leastUsable(), Lacking.ZERO);
        least.whole("stick_flaw_row", "Row that can be used least")
                .is(
                        "IF(MAX({stick_flaw:all})=0,0,MATCH(MAX({stick_flaw:all}),{stick_flaw:all},0))",
                        unusable -> unusable.reading().row() + 1);
        MockUpWordLines.unusable(sides.since(UNUSABLE));
    }

    /** A reading of an end beside what was to be expected. */
    private void compared(WindowEnd end) {
        LineSet<StickRow> set = rows.only(ROW, Lacking.EMPTY).with(words(end));
        set.mm("stick_expect_<end>", "Holes expected, fully <end>")
                .ifKnown(
                        end.either(
                                "IF({stick_pushes}=1,{stick_spacing_in}+{stick_over_in},\"\")",
                                "{stick_spacing_out}+{stick_over_out}"),
                        row -> row.expected(end));
        set.revised(UNUSABLE)
                .ofAny((row, index) -> row.compared(end), Lacking.EMPTY)
                .mm("stick_known_<end>", "Travel, where both are known, fully <end>")
                .is(
                        """
                        IF({stick_flaw}>0,"",
                        IF(COUNT({stick_read_<end>},{stick_expect_<end>})=2,{stick_travel},""))
                        """,
                        known -> known.reading().travel());
        LineSet<StickRow> numbers = rows.only(ROW, Lacking.ZERO).with(words(end));
        LineSet<StickComparison> compared =
                numbers.ofAny((row, index) -> row.compared(end), Lacking.ZERO);
        compared.mm("stick_diff_<end>", "Read less expected, fully <end>")
                .is(
                        where("{stick_read_<end>}-{stick_expect_<end>}", "0"),
                        StickComparison::difference);
        compared.mm("stick_left_<end>", "The same less the correction, fully <end>")
                .is(
                        where(
                                "{stick_diff_<end>}-{stick_level_<end>}"
                                        + "-{stick_slope_<end>}*{stick_travel}",
                                "0"),
                        StickComparison::left);
        for (Judged judged : Judged.values()) {
            numbers.with(judged.words)
                    .mm("stick_<excess>_<end>", "Beyond the doubt, fully <end>, <off>")
                    .is(
                            where("ROUND(ABS({stick_<off>_<end>})-{stick_allowed},6)", "-1"),
                            row ->
                                    row.compared(end)
                                            .map(each -> each.excess(judged.corrected))
                                            .orElse(-1.0));
        }
    }

    private static String where(String formula, String otherwise) {
        return "IF(ISNUMBER({stick_known_<end>})," + formula + "," + otherwise + ")";
    }

    /** Spacing of the holes that tells an end: read, or told by a fixed stick's play. */
    private static String read(WindowEnd end) {
        return Pieces.of("stop", quoted(end.either(FloatStop.BOTTOM, FloatStop.PULL).word()))
                .and("sign", end.either("+", "-"))
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
    private void line(WindowEnd end) {
        LineSet<DifferenceLine> set =
                checks.with(words(end)).ofAny((check, index) -> check.line(end), Lacking.ZERO);
        set.whole("stick_count_<end>", "Readings, fully <end>")
                .is("COUNT({stick_known_<end>:all})", DifferenceLine::count);
        set.mm("stick_mean_<end>", "Their mean travel, fully <end>")
                .is(
                        ofRead("SUM({stick_known_<end>:all})/{stick_count_<end>}"),
                        DifferenceLine::meanTravel);
        set.number("stick_spread_<end>", "Squared spread of their travels, fully <end>")
                .is(ofRead("DEVSQ({stick_known_<end>:all})"), DifferenceLine::spread);
        set.number("stick_slope_<end>", "Slope of the correction, fully <end>")
                .is(
                        """
                        IF({stick_spread_<end>}<0.000001,0,
                        (SUMPRODUCT({stick_travel:all},{stick_diff_<end>:all})
                        -{stick_mean_<end>}*SUM({stick_diff_<end>:all}))/{stick_spread_<end>})
                        """,
                        read -> read.line().slope());
        set.mm("stick_level_<end>", "Correction at ride, fully <end>")
                .is(
                        ofRead(
                                "SUM({stick_diff_<end>:all})/{stick_count_<end>}"
                                        + "-{stick_slope_<end>}*{stick_mean_<end>}"),
                        read -> read.line().level());
        set.mm("stick_low_<end>", "Lowest travel read, fully <end>")
                .is(ofRead("MIN({stick_known_<end>:all})"), read -> read.line().from());
        set.mm("stick_high_<end>", "Highest travel read, fully <end>")
                .is(ofRead("MAX({stick_known_<end>:all})"), read -> read.line().to());
    }

    private static String ofRead(String formula) {
        return "IF({stick_count_<end>}=0,0," + formula + ")";
    }

    private void doubt() {
        checks.mm("stick_doubt", "Doubt of the correction")
                .is(
                        "MAX(" + joined(",", WindowEnd.values(), MockUpLines::scatter) + ")",
                        check -> check.correction().doubt());
    }

    /** Scatter about the line, no less than a tape's own; the whole doubt where nothing is free. */
    private static String scatter(WindowEnd end) {
        return words(end)
                .and("free", "({stick_count_<end>}-IF({stick_spread_<end>}<0.000001,1,2))")
                .in(
                        """
                        IF({stick_count_<end>}=0,0,IF(<free><=0,MAX({stick_whole:all}),
                        MAX(2*SQRT(SUMSQ({stick_left_<end>:all})/<free>),tape_graduation_read/SQRT(3))))
                        """);
    }

    /** The reading that contradicts most. */
    private void worst(Judged judged) {
        LineSet<MockUpCheck> set = checks.with(judged.words);
        for (WindowEnd end : WindowEnd.values()) {
            set.with(words(end))
                    .ofAny((check, index) -> check.worst(end, judged.corrected), Lacking.ZERO)
                    .whole(
                            "stick_<excess>_row_<end>",
                            "Row that contradicts most, fully <end>, <off>")
                    .is(
                            """
                            IF(MAX({stick_<excess>_<end>:all})>0,
                            MATCH(MAX({stick_<excess>_<end>:all}),{stick_<excess>_<end>:all},0),0)
                            """,
                            worst -> worst.reading().row() + 1);
        }
        LineSet<StickComparison> both =
                set.ofAny((check, index) -> check.worst(judged.corrected), Lacking.ZERO);
        both.whole("stick_<excess>_end", "End that contradicts most (1 in, 2 out), <off>")
                .is(
                        """
                        IF({stick_<excess>_row_in}+{stick_<excess>_row_out}=0,0,
                        IF(MAX({stick_<excess>_in:all})>=MAX({stick_<excess>_out:all}),1,2))
                        """,
                        worst -> worst.end().either(1, 2));
        both.mm("stick_<excess>_by", "Difference there, <off>")
                .is(
                        there("{stick_<off>_in:all}", "{stick_<off>_out:all}"),
                        worst -> worst.off(judged.corrected));
        both.mm("stick_<excess>_at", "Travel there, <off>")
                .is(
                        there("{stick_travel:all}", "{stick_travel:all}"),
                        worst -> worst.reading().travel());
        set.ofAny(
                        (check, index) ->
                                check.worst(judged.corrected)
                                        .map(worst -> check.suspicion(judged.corrected)),
                        Lacking.ZERO)
                .whole("stick_<excess>_check", "What to check, <off>")
                .is(
                        """
                        IF({stick_<excess>_end}=0,0,
                        IF({stick_<excess>_row_in}*{stick_<excess>_row_out}>0,
                        IF(INDEX({stick_<off>_in:all},{stick_<excess>_row_in})
                        *INDEX({stick_<off>_out:all},{stick_<excess>_row_out})<0,2,1),
                        IF({stick_<excess>_row_in}>0,3,4)))
                        """,
                        Suspicion::number);
    }

    private static String there(String in, String out) {
        return Pieces.of("in", in)
                .and("out", out)
                .in(
                        """
                        IF({stick_<excess>_end}=0,0,IF({stick_<excess>_end}=1,
                        INDEX(<in>,{stick_<excess>_row_in}),INDEX(<out>,{stick_<excess>_row_out})))
                        """);
    }

    /** What a side of each scenario has to do with the mock-up. */
    private void use() {
        LineSet<MockUpUse> columns =
                sides.in(Section.SIDE_WORK, SCENARIO_SIDE)
                        .about(MockUpLines::use, Lacking.ZERO.value());
        columns.with(Pieces.of("yes", quoted(StickInputs.YES)))
                .whole("stick_use", "Mock-up (1 built as it, 2 corrected by it)")
                .is(
                        """
                        IF({stick_ready}*{ready}=0,0,IF({stick_corrects}=<yes>,2,
                        IF(MATCH({work_letter},{work_letter:each},0)={stick_column},1,0)))
                        """,
                        use -> use.corrects() ? 2 : 1);
        Fingerprint print =
                new Fingerprint(lines)
                        .measured("stick_level_in", "stick_slope_in", "stick_low_in")
                        .measured("stick_high_in", "stick_level_out", "stick_slope_out")
                        .measured("stick_low_out", "stick_high_out", "stick_doubt")
                        .measured("stick_count_in", "stick_count_out");
        sides.only(CHECK.inWorkbook(), Lacking.ZERO)
                .print("stick_print", "Fingerprint of the correction", print, 0);
        sides.in(Section.SIDE_WORK, SCENARIO_SIDE)
                .whole("stick_used_print", "Fingerprint of its correction")
                .is(
                        "IF({stick_use}=2,{stick_print},0)",
                        (sizing, index) ->
                                use(sizing, index).filter(MockUpUse::corrects).isPresent()
                                        ? print.of(sizing, new Index(index.side(), 0, 0), 0)
                                        : 0);
    }

    static Optional<MockUpUse> use(Sizing sizing, Index index) {
        return SideLines.outcome(sizing, index).mockUp();
    }

    /** Beside the typed readings. */
    private void shown() {
        LineSet<StickRow> set =
                rows.in(Section.STICK_SHOWN, STICK_READING).only(ROW, Lacking.EMPTY);
        set.shown("stick_travel_shown", "Travel, bump +")
                .is("{stick_travel}/tape_mm", StickRow::travel);
        for (WindowEnd end : WindowEnd.values()) {
            LineSet<StickRow> ends =
                    set.with(words(end))
                            .with(
                                    Pieces.of(
                                            "played",
                                            end.either(
                                                    "{stick_expect_in}-{stick_holes_read}",
                                                    "{stick_holes_read}-{stick_expect_out}")))
                            .with(Pieces.of("sign", end.either("1", "(1-2*{stick_fixed})")));
            ends.shown("stick_expected_<end>", "Expected, fully <end>")
                    .is(
                            """
                            IF(ISNUMBER({stick_expect_<end>}),
                            IF({stick_fixed}=1,<played>,{stick_expect_<end>})/tape_mm,"")
                            """,
                            row -> row.reading().asRead(end, row.expected(end).orElse(Double.NaN)));
            ends.ofAny((row, index) -> row.compared(end), Lacking.EMPTY)
                    .shown("stick_off_<end>", "Read less expected, fully <end>")
                    .is(
                            where("<sign>*{stick_diff_<end>}/tape_mm", "\"\""),
                            StickComparison::differenceRead);
        }
        set.shown("stick_allowed_shown", "Allowed ±")
                .is("{stick_allowed}/tape_mm", StickRow::allowed);
    }
}
