package shaftwright.live;

import static shaftwright.contract.Grid.SIDE;
import static shaftwright.contract.Grid.STICK;
import static shaftwright.contract.Grid.STICK_READING;
import static shaftwright.formula.FormulaText.joined;
import static shaftwright.formula.FormulaText.quoted;

import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.mockup.FloatStop;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.MockUpUse;
import shaftwright.mockup.WindowEnd;
import shaftwright.reading.SideMockUp;
import shaftwright.reading.Sizing;
import shaftwright.study.MockUpWording;

/** What is said of a side's mock-up stick, as {@link MockUpWording} has it. */
final class MockUpWordLines {
    private MockUpWordLines() {}

    static void declare(LineSet<Sizing> rows, LineSet<Sizing> sides) {
        rows.in(Section.STICK_SHOWN, STICK_READING)
                .revised(MockUpLines.UNUSABLE)
                .about(MockUpLines.StickRow::of, Lacking.EMPTY.value())
                .text("stick_says", "What it says")
                .inUnit(row(), (row, unit) -> MockUpWording.row(row.check(), row.reading(), unit));
        LineSet<Sizing> texts = sides.in(Section.STICK_SAID, STICK);
        texts.revised(MockUpLines.UNUSABLE)
                .text("stick_summary", "Readings and plan")
                .is(summary(), (sizing, index) -> summary(sizing.mockUp(index.side())));
        texts.about(MockUpLines.CHECK.source(), Lacking.EMPTY.value())
                .text("stick_correction", "Correction, where asked for")
                .inUnit(correction(), MockUpWording::correction);
        texts.in(Section.SHOP_CARD, SIDE)
                .about(
                        (sizing, index) ->
                                Card.scenario(sizing, index)
                                        .flatMap(shop -> MockUpLines.use(sizing, shop))
                                        .filter(MockUpUse::corrects),
                        Lacking.EMPTY.value())
                .text("card_correction", "Corrected by a mock-up")
                .inUnit(
                        "IF(" + Card.cellOr("0", "stick_use") + "=2,{stick_correction},\"\")",
                        (use, unit) -> MockUpWording.correction(use.check(), unit));
    }

    /** Why the reading that can be used least can't be. */
    static void unusable(LineSet<Sizing> sides) {
        sides.about(MockUpLines.CHECK.source(), Lacking.EMPTY.value())
                .ofAny((check, index) -> check.leastUsable(), Lacking.EMPTY)
                .text("stick_flaw_says", "Why it can't be used")
                .inUnit(
                        Given.row(
                                "{stick_flaw_row}",
                                Phrases.said(
                                        MockUpWording.AT_READING,
                                        "FIXED({stick_flaw_row},0,1)",
                                        unusable("INDEX({%s:all},{stick_flaw_row})"))),
                        MockUpWording::unusableAt);
    }

    /**
     * What is wrong with a reading, by its numbers.
     *
     * @param cell a line's cell, with {@code %s} for the line
     */
    private static String unusable(String cell) {
        return Pieces.of("flaw", cell.formatted("stick_flaw"))
                .and(
                        "swapped",
                        Phrases.said(
                                MockUpWording.SWAPPED,
                                Phrases.length(cell.formatted("stick_read_in")),
                                Phrases.length(cell.formatted("stick_read_out"))))
                .and(
                        "too_long",
                        Phrases.said(
                                MockUpWording.TOO_LONG,
                                Phrases.length(cell.formatted("stick_longest")),
                                Phrases.length(cell.formatted("stick_most"))))
                .in("IF(<flaw>=1,<swapped>,<too_long>)");
    }

    private static String row() {
        return Pieces.of("outside", quoted(MockUpWording.OUTSIDE))
                .and("in", words(WindowEnd.IN, MockUpWording.BOTTOMS, "<"))
                .and("out", words(WindowEnd.OUT, MockUpWording.PULLS_OUT, ">"))
                .and("not_pushed", quoted(MockUpWording.NOT_PUSHED))
                .and("stroke", quoted(MockUpWording.ONE_STROKE))
                .and("between", quoted(MockUpWording.BETWEEN))
                .and("bottom", quoted(FloatStop.BOTTOM.word()))
                .and("pull", quoted(FloatStop.PULL.word()))
                .and("met", "INDEX(stick_inboard~,{stick_row_number})")
                .and("then", "INDEX(stick_outboard~,{stick_row_number})")
                .and("not_used", quoted(MockUpWording.NOT_USED))
                .and("unusable", unusable("{%s}"))
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
    private static String words(WindowEnd end, String does, String sooner) {
        return MockUpLines.words(end)
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

    private static String summary(SideMockUp mockUp) {
        return mockUp.trouble().isEmpty()
                ? mockUp.check().map(MockUpWording::summary).orElse("")
                : MockUpWording.NOT_COMPARED.formatted(mockUp.trouble());
    }

    private static String summary() {
        String checks = joined(",", Suspicion.values(), each -> quoted(each.words()));
        return Pieces.of("all", "({stick_count_in}+{stick_count_out})")
                .and(
                        "against",
                        "(COUNTIF({stick_excess_in:all},\">0\")+COUNTIF({stick_excess_out:all},\">0\"))")
                .and("not_compared", Phrases.said(MockUpWording.NOT_COMPARED, "{stick_trouble}"))
                .and("nothing", quoted(MockUpWording.NOTHING_READ))
                .and(
                        "agree",
                        Phrases.said(
                                MockUpWording.AGREE,
                                "FIXED(<all>-<against>,0,1)",
                                "FIXED(<all>,0,1)"))
                .and(
                        "check",
                        Phrases.said(
                                MockUpWording.CHECK, "CHOOSE({stick_excess_check}," + checks + ")"))
                .and("none_used", quoted(MockUpWording.NONE_USED))
                .and("some_unused", quoted(MockUpWording.SOME_UNUSED))
                .in(
                        """
                        IF({stick_typed}=0,"",IF({stick_ready}=0,<not_compared>,
                        IF(<all>=0,IF({stick_flaw_row}=0,<nothing>,<none_used>),<agree>
                        &IF(<against>=0,"",<check>)
                        &IF({stick_flaw_row}=0,"",<some_unused>))))
                        """);
    }

    private static String correction() {
        return Pieces.of("in", Phrases.said(MockUpWording.IN, line(WindowEnd.IN)))
                .and("out", Phrases.said(MockUpWording.OUT, line(WindowEnd.OUT)))
                .and(
                        "more",
                        Phrases.said(MockUpWording.MORE_DOUBT, Phrases.length("{stick_doubt}")))
                .in("IF({stick_count_in}+{stick_count_out}=0,\"\",<in>&<out>&<more>)");
    }

    private static String line(WindowEnd end) {
        return MockUpLines.words(end)
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
        return Phrases.said(
                MockUpWording.AT,
                Phrases.length("{stick_level_<end>}+{stick_slope_<end>}*" + travel),
                Phrases.travel(travel));
    }
}
