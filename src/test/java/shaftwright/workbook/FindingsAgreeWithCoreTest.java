package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.Study;
import shaftwright.xlsx.XlsxBook;

/** Findings of a workbook with much against it: found by the core, and said by its formulas. */
class FindingsAgreeWithCoreTest {
    @TempDir static Path folder;

    private static Path book;

    @BeforeAll
    static void write() {
        book = ManyFindings.write(folder.resolve("many.xlsx"));
    }

    @Test
    void whatStandsAgainstAShaftIsFound() {
        Sizing sizing = Filling.compute(XlsxBook.open(book)).sizing().orElseThrow();
        Set<Finding> found = EnumSet.noneOf(Finding.class);
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            found.addAll(sizing.verdict(scenario.number()).orElseThrow().findings());
        }

        assertThat(found)
                .contains(
                        Finding.INNER_BOLTS_TOO_TIGHT,
                        Finding.OUTER_BOLTS_TOO_TIGHT,
                        Finding.TOO_WEAK,
                        Finding.TOO_TIRED,
                        Finding.BUMP_ENDS_EARLY,
                        Finding.DROOP_ENDS_EARLY,
                        Finding.INNER_BOOT_TOUCHES,
                        Finding.OUTER_BOOT_TOUCHES,
                        Finding.INNER_BENCH_ENDS,
                        Finding.OUTER_BENCH_ENDS,
                        Finding.THIN_LAND,
                        Finding.CUTS_CASE,
                        Finding.TOO_WIDE,
                        Finding.INNER_RUNS_STEEP,
                        Finding.INNER_RUNS_HOT,
                        Finding.OUTER_RUNS_HOT,
                        Finding.CHECKS_OPEN,
                        Finding.ANGLES_UNREAD);
    }

    @Test
    void studyOfTheSameBuildSaysTheSame() {
        Sizing sizing = Filling.compute(XlsxBook.open(book)).sizing().orElseThrow();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            Scenario column = scenario.side(Side.LEFT).study().orElseThrow().scenario();
            ScenarioVerdict alone =
                    Study.of(sizing.build().withScenario(column)).scenario(column.name()).verdict();

            assertThat(alone.listed(sizing.unit()))
                    .isEqualTo(
                            sizing.verdict(scenario.number()).orElseThrow().listed(sizing.unit()));
        }
    }

    @Test
    void formulasSayTheSameWhereNoBlankWasTyped() throws Exception {
        Map<String, List<String>> typed = DemoBook.typed();
        typed.put("blank_name", List.of());
        typed.put("blank_choice", List.of());
        Path file = DemoBook.write(folder.resolve("none.xlsx"), typed, DemoBook.scenarios());
        XlsxBook none = XlsxBook.open(file);
        Sizing sizing = Filling.compute(none).sizing().orElseThrow();
        String said =
                sizing.verdict(new Index(Side.LEFT, 0, 0))
                        .orElseThrow()
                        .sentence(Finding.NO_BLANK, sizing.unit());

        assertThat(said).startsWith("No blank with its lengths is typed on Parts to give ");
        try (PoiRecalculation poi = PoiRecalculation.of(file)) {
            assertThat(poi.value(none.names().get("find_no_blank_left").place(0)))
                    .isEqualTo(CellValue.of(said));
        }
    }

    @Test
    void formulasSayTheSame() throws Exception {
        try (PoiRecalculation poi = PoiRecalculation.of(book)) {
            assertThat(Agreement.of(XlsxBook.open(book), poi::value).differences()).isEmpty();
        }
    }
}
