package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.live.LiveLines;
import shaftwright.reading.Sizing;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.GrooveFlaw;
import shaftwright.shaft.GroovePlan;
import shaftwright.shaft.GrooveUse;
import shaftwright.study.Finding;
import shaftwright.study.Verdict;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/**
 * The demo with blanks whose old grooves are in the way: rings 2 mm thick, grooves 2.15 mm wide and
 * 1.5 mm deep, stubs of half an inch. A scenario each with a blank of its own.
 */
class GroovesTest {
    private static final int MEETING = 0;
    private static final int OUTBOARD = 2;
    private static final int TOO_NEAR_THE_END = 4;

    /** A row of the list. */
    private static final int OTHER_END = 3;

    @TempDir private static Path folder;

    private static Path book;
    private static Sizing sizing;

    @BeforeAll
    static void write() {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put(
                "blank_name",
                List.of("meeting", "outboard", "too near the end", "other end", "inboard"));
        typed.put("blank_length", List.of("660.4 mm", "690 mm", "690 mm", "680 mm", "700 mm"));
        typed.put("blank_spline_length_inner", List.of("3", "4", "3", "4", "4"));
        typed.put("blank_spline_length_outer", List.of("2", "2", "3", "4", "3"));
        typed.put("blank_groove_inner", List.of("29 mm", "25 mm", "3 mm", "48 mm", "50 mm"));
        typed.put("blank_groove_outer", List.of("", "", "", "", ""));
        typed.put("blank_splines_inner", List.of());
        typed.put("blank_splines_outer", List.of());
        typed.put("blank_in_stock", List.of());
        // Of blanks that are not on this list, and of no concern to grooves.
        typed.keySet()
                .removeIf(
                        name ->
                                name.startsWith("spline_")
                                        || name.startsWith("stick_")
                                        || name.equals("all_states"));
        typed.put(
                "blank_choice",
                List.of("meeting", "auto", "outboard", "inboard", "too near the end"));
        typed.put("shop_scenario", List.of("C"));
        book = DemoBook.write(folder.resolve("grooves.xlsx"), typed, DemoBook.scenarios());
        sizing = Filling.compute(XlsxBook.open(book)).sizing().orElseThrow();
    }

    private static CutPlan plan(int scenario) {
        return sizing.scenario(scenario)
                .side(Side.LEFT)
                .result()
                .orElseThrow()
                .plan()
                .orElseThrow();
    }

    private static Verdict verdict(int scenario) {
        return sizing.verdict(new Index(Side.LEFT, scenario, 0)).orElseThrow();
    }

    private static String cell(String line) {
        CellValue value = LiveLines.all().line(line).core().at(sizing, new Index(Side.LEFT, 0, 0));
        return ((CellValue.Text) value).value();
    }

    /** 660.4 less 642.9375 mm off the inner end, so the old groove of 29 mm begins at 11.5375. */
    @Test
    void aNewGrooveCutIntoAnOldOneIsFound() {
        assertThat(plan(MEETING).inner().oldGroove().orElseThrow().outer())
                .isCloseTo(11.5375, within(1e-9));
        assertThat(verdict(MEETING).text(LengthUnit.MILLIMETRE))
                .isEqualTo(
                        "Fits, but the new groove at the inner end, 10.7 mm to 12.9 mm from it, cuts"
                                + " into the old one at 11.5 mm to 13.7 mm: take another blank, or"
                                + " another stub there.");
    }

    /** The old groove's ring stands 5 mm from the end, with 3 mm of land for 4.5. */
    @Test
    void anOldGrooveTooNearTheEndIsFoundWhereItMustServe() {
        assertThat(plan(TOO_NEAR_THE_END).inner().groove()).isEqualTo(GrooveUse.EXISTING);
        assertThat(plan(TOO_NEAR_THE_END).flaw()).isEqualTo(GrooveFlaw.THIN_LAND_AT_OLD_GROOVE);
        assertThat(verdict(TOO_NEAR_THE_END).findings()).containsExactly(Finding.THIN_LAND);
    }

    /** 690 less 666.75 mm off the inner end, so the old groove of 25 mm lies at 1.75 to 3.9. */
    @Test
    void theCardSaysWhereAnOldGrooveIsLeftAndOnWhichSide() {
        assertThat(verdict(OUTBOARD).findings()).isEmpty();
        assertThat(cell("card_outboard_in")).isEqualTo("1.75 to 3.90");
        assertThat(cell("card_outboard_in_inch")).isEqualTo("0.069 in to 0.154 in");
        assertThat(cell("card_outboard_in_64")).isEqualTo("1/16 in to 5/32 in");
        assertThat(cell("card_left_in")).isEmpty();
        assertThat(cell("card_outboard_out")).isEmpty();
    }

    /** Cut at the inner end, 680 less 642.9375 mm would bring the old groove to 10.9 mm. */
    @Test
    void theEndThatKeepsGroovesApartIsCut() {
        GroovePlan bothNew =
                sizing.scenario(MEETING)
                        .side(Side.LEFT)
                        .result()
                        .orElseThrow()
                        .blankReviews()
                        .get(OTHER_END)
                        .groovePlans()
                        .get(3);
        assertThat(bothNew.plan().orElseThrow().inner().cut()).isZero();
    }

    @Test
    void theSheetOfBlanksSaysWhatIsAgainstABlanksGrooves() {
        Index row = new Index(Side.LEFT, MEETING, 0);
        assertThat(LiveLines.all().line("blank_verdict").core().at(sizing, row))
                .isEqualTo(
                        CellValue.of(
                                "CHOSEN: cut off 0.69 in, new grooves: 2; a new groove cuts into an"
                                        + " old one"));
    }

    @Test
    void formulasAndCoreAgree() throws Exception {
        try (PoiRecalculation poi = PoiRecalculation.of(book)) {
            assertThat(Agreement.of(XlsxBook.open(book), poi::value).differences()).isEmpty();
        }
    }
}
