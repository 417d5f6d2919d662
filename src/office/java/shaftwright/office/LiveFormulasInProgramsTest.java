package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.scenario.Finding;
import shaftwright.workbook.Agreement;
import shaftwright.workbook.DemoBook;
import shaftwright.workbook.Filling;
import shaftwright.workbook.PoiRecalculation;
import shaftwright.workbook.RandomWorkbooks;
import shaftwright.workbook.ScenarioOutcome;
import shaftwright.workbook.Side;
import shaftwright.workbook.xlsx.XlsxBook;

/**
 * Two computations, one answer: the demo and 60 random workbooks, typed cells only, are computed by
 * LibreOffice and by Gnumeric; every live cell shows what the core makes of the same inputs. Apache
 * POI, which takes longest, computes each fifth of them.
 */
class LiveFormulasInProgramsTest {
    private static final int WORKBOOKS = 60;
    private static final int SHARE = 5;
    private static final long FIRST_SEED = 1;

    @TempDir static Path folder;

    private static final List<Path> BOOKS = new ArrayList<>();

    @BeforeAll
    static void writeWorkbooks() {
        BOOKS.add(DemoBook.write(folder.resolve("demo.xlsx")));
        RandomWorkbooks random = new RandomWorkbooks(folder, FIRST_SEED);
        BOOKS.addAll(random.next(WORKBOOKS));
        assertThat(random.refused()).as("seeds that contradict themselves").isLessThan(WORKBOOKS);
    }

    @Test
    void libreOfficeAgreesWithTheCore() {
        List<Path> saved = SpreadsheetPrograms.recalculatedByLibreOffice(folder, BOOKS);
        Differences differences = new Differences();
        for (int i = 0; i < BOOKS.size(); i++) {
            differences.add(BOOKS.get(i), saved.get(i));
        }
        differences.expectNone();
    }

    @Test
    void gnumericAgreesWithTheCore() {
        Differences differences = new Differences();
        for (Path book : BOOKS) {
            differences.add(book, SpreadsheetPrograms.recalculatedByGnumeric(folder, book));
        }
        differences.expectNone();
    }

    @Test
    void poiAgreesWithTheCore() throws Exception {
        Differences differences = new Differences();
        for (int i = 1; i < BOOKS.size(); i += SHARE) {
            try (PoiRecalculation poi = PoiRecalculation.of(BOOKS.get(i))) {
                XlsxBook book = XlsxBook.open(BOOKS.get(i));
                differences.add(BOOKS.get(i), Agreement.of(book, poi::value));
            }
        }
        differences.expectNone();
    }

    /** A set of workbooks that all say the same would prove little. */
    @Test
    void nearlyEveryKindOfVerdictOccurs() {
        Map<Finding, Integer> sides = new EnumMap<>(Finding.class);
        for (Path book : BOOKS) {
            Filling.Report report = Filling.compute(XlsxBook.open(book));
            for (ScenarioOutcome scenario : report.sizing().orElseThrow().scenarios()) {
                for (Side side : Side.values()) {
                    sides.merge(scenario.side(side).finding(), 1, Integer::sum);
                }
            }
        }
        assertThat(sides.keySet())
                .containsAll(EnumSet.complementOf(EnumSet.of(Finding.OUTER_ANGLE)));
    }

    private static final class Differences {
        private static final int SHOWN = 10;

        private final List<String> found = new ArrayList<>();
        private int cells;
        private int books;

        void add(Path book, Path saved) {
            add(book, Agreement.ofSaved(XlsxBook.open(book), XlsxBook.open(saved)));
        }

        void add(Path book, Agreement agreement) {
            books++;
            cells += agreement.cells();
            if (!agreement.differences().isEmpty()) {
                found.add(book.getFileName() + ": " + agreement.differences());
            }
        }

        void expectNone() {
            assertThat(found.subList(0, Math.min(SHOWN, found.size())))
                    .as(found.size() + " of " + books + " workbooks differ")
                    .isEmpty();
            assertThat(cells).as("cells looked at").isGreaterThan(5_000 * books);
        }
    }
}
