package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.study.Severity;
import shaftwright.study.Verdict;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** The demo with splines, flanges and boots that do not go together. Their figures are invented. */
class MatingTest {
    private static final String BLANK = "31-spline blank 26 9/16 in, 45° splines";

    @TempDir static Path folder;

    private static Path book;
    private static Sizing sizing;

    @BeforeAll
    static void write() {
        Map<String, List<String>> typed = DemoBook.typed();
        // The right side's readings contradict each other, which weighs less and ranks higher.
        List<String> distances = new ArrayList<>(typed.get("distance_first_right"));
        distances.set(3, "26 15/16");
        typed.put("distance_first_right", distances);
        typed.put("flange_inner_circle", List.of("87 mm"));
        typed.put("flange_inner_pilot", List.of("60 mm"));
        typed.put("bolt_pilot", List.of("60 mm", "60 mm", "", ""));
        typed.put("flange_outer_bolts", List.of("6"));
        typed.put("flange_outer_bolt_size", List.of("3/8"));
        typed.put("blank_choice", List.of("auto", "auto", BLANK, "auto", "auto"));
        typed.put("boot_outer", standardBut("long-travel boot"));
        typed.put("boot_inner", standardBut("short heavy boot"));
        typed.put("boot_shortest", List.of("30 mm", "60 mm", ""));
        typed.put("boot_longest", List.of("80 mm", "", "120 mm"));
        typed.put("boot_angle", List.of("", "", "10"));
        book = DemoBook.write(folder.resolve("mating.xlsx"), typed, DemoBook.scenarios());
        sizing = Filling.compute(XlsxBook.open(book)).sizing().orElseThrow();
    }

    private static List<String> standardBut(String last) {
        return List.of("standard boot", "standard boot", "standard boot", "standard boot", last);
    }

    @Test
    void everyFormulaGivesWhatTheCoreGives() throws Exception {
        try (PoiRecalculation poi = PoiRecalculation.of(book)) {
            assertThat(Agreement.of(XlsxBook.open(book), poi::value).differences()).isEmpty();
        }
    }

    @Test
    void readingsThatContradictLeadBeforeWhatDoesNotMate() {
        Verdict right = sizing.verdict(new Index(Side.RIGHT, 0, 0)).orElseThrow();
        assertThat(right.severity()).isEqualTo(Severity.MEASURE_AGAIN);
        assertThat(right.findings()).contains(Finding.OUTER_FLANGE_UNMATED);
    }

    /** A 3/8 in hole does not take the 10 mm bolts of the joint. */
    @Test
    void boltsOfAnotherSizeWantAnAdapter() {
        assertThat(sentence(0, Finding.OUTER_FLANGE_UNMATED))
                .isEqualTo(
                        "The outer joint does not bolt to the hub's flange: bolt size 0.3937 in"
                                + " against 0.3750 in. An adapter is wanted; type its thickness as"
                                + " that end's cup spacer.");
        assertThat(findings(0)).doesNotContain(Finding.INNER_FLANGE_UNMATED);
    }

    /**
     * The fifth variant's joint has another circle, and a cup spacer that is taken for an adapter.
     */
    @Test
    void aCupSpacerIsTakenForTheAdapter() {
        assertThat(findings(1)).contains(Finding.INNER_FLANGE_UNMATED);
        assertThat(findings(4)).doesNotContain(Finding.INNER_FLANGE_UNMATED);
    }

    @Test
    void theOnlyBlankThatWouldServeDoesNotMate() {
        assertThat(sentence(2, Finding.BLANK_UNMATED))
                .startsWith(
                        "The inner spline of blank "
                                + BLANK
                                + " does not mate with the joint:"
                                + " pressure angle 45.0°, the joint's 30.0°");
        assertThat(findings(2)).doesNotContain(Finding.NO_BLANK);
    }

    @Test
    void bootsAreTooShortTooLongOrBentTooFar() {
        assertThat(sentence(0, Finding.INNER_BOOT_STRAINED)).contains("boot is too short by");
        assertThat(sentence(4, Finding.OUTER_BOOT_STRAINED)).contains("boot is too long by");
        assertThat(sentence(4, Finding.INNER_BOOT_STRAINED)).contains("boot is bent too far by");
    }

    private static List<Finding> findings(int scenario) {
        return sizing.verdict(new Index(Side.LEFT, scenario, 0)).orElseThrow().findings();
    }

    private static String sentence(int scenario, Finding finding) {
        return sizing.verdict(new Index(Side.LEFT, scenario, 0))
                .orElseThrow()
                .sentence(finding, LengthUnit.INCH);
    }
}
