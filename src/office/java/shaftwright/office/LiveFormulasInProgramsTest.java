package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Finding;
import shaftwright.workbook.Agreement;
import shaftwright.workbook.DemoBook;
import shaftwright.workbook.LinkageSourceTest;
import shaftwright.workbook.ManyFindings;
import shaftwright.workbook.MockUpBook;
import shaftwright.workbook.PoiRecalculation;
import shaftwright.workbook.RandomWorkbooks;
import shaftwright.workbook.SpoiltWorkbooks;
import shaftwright.xlsx.XlsxBook;

/**
 * Two computations, one answer: the demo and random workbooks, typed cells only, are computed by
 * spreadsheet programs; every live cell shows what the core makes of the same inputs.
 *
 * <p>LibreOffice and Gnumeric compute all, Apache POI the demo and each twelfth. More of them than
 * a few minutes allow with {@code -Drandom.workbooks=200}, which takes a quarter of an hour; by POI
 * as well with {@code -Drandom.poi.share=1}.
 */
class LiveFormulasInProgramsTest {
    private static final int WORKBOOKS = Integer.getInteger("random.workbooks", 24);
    private static final int POI_SHARE = Integer.getInteger("random.poi.share", 12);
    private static final int SPOILT_SHARE = 22;
    private static final long FIRST_SEED = 1;

    @TempDir static Path folder;

    private static final List<Path> BOOKS = new ArrayList<>();
    private static final List<Path> SPOILT = new ArrayList<>();

    /** What it saved of all, the spoilt ones last. */
    private static CompletableFuture<List<Path>> byLibreOffice;

    @BeforeAll
    static void writeWorkbooks() {
        BOOKS.add(DemoBook.write(folder.resolve("demo.xlsx")));
        BOOKS.add(
                DemoBook.write(
                        folder.resolve("linkage.xlsx"),
                        LinkageSourceTest.byLinkage(),
                        DemoBook.scenarios()));
        BOOKS.add(ManyFindings.write(folder.resolve("many.xlsx")));
        BOOKS.add(MockUpBook.write(folder.resolve("mock-up.xlsx"), MockUpBook.corrected()));
        RandomWorkbooks random = new RandomWorkbooks(folder, FIRST_SEED);
        BOOKS.addAll(random.next(WORKBOOKS));
        assertThat(random.refused()).as("seeds that contradict themselves").isLessThan(WORKBOOKS);
        SPOILT.addAll(SpoiltWorkbooks.write(folder, 3, SPOILT_SHARE));
        SPOILT.removeIf(file -> file.getFileName().toString().startsWith("true "));
        List<Path> all = new ArrayList<>(BOOKS);
        all.addAll(SPOILT);
        // The slowest program works while the other tests run.
        byLibreOffice =
                CompletableFuture.supplyAsync(
                        () -> SpreadsheetPrograms.recalculatedByLibreOffice(folder, all));
    }

    @Test
    void libreOfficeAgreesWithTheCore() {
        List<Path> saved = byLibreOffice.join();
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
        for (int i = 0; i < BOOKS.size(); i += POI_SHARE) {
            Path book = BOOKS.get(i);
            try (PoiRecalculation poi = PoiRecalculation.of(book)) {
                differences.add(book, Agreement.of(XlsxBook.open(book), poi::value));
            }
        }
        differences.expectNone();
    }

    /**
     * A slip of the keyboard ends in a sentence, never in an error value. Truth values are left
     * out: typed into LibreOffice they are texts in these cells, loaded from a file numbers.
     */
    @Test
    void slipsEndInASentence() {
        List<String> complaints = new ArrayList<>();
        for (int i = 0; i < SPOILT.size(); i++) {
            Path file = SPOILT.get(i);
            for (Path saved :
                    List.of(
                            byLibreOffice.join().get(BOOKS.size() + i),
                            SpreadsheetPrograms.recalculatedByGnumeric(folder, file))) {
                complaints.addAll(SpoiltWorkbooks.complaintsOfSaved(file, XlsxBook.open(saved)));
            }
        }
        assertThat(complaints).isEmpty();
        assertThat(SPOILT).hasSizeGreaterThan(5);
    }

    /** Hardly met by chance, not yet found in a workbook, or never in one just filled. */
    private static final EnumSet<Finding> RARE =
            EnumSet.of(
                    Finding.STATES_OUT_OF_DATE,
                    Finding.OUTER_ANGLE,
                    Finding.SUSPECT_READINGS,
                    Finding.READINGS_CONTRADICT,
                    Finding.BLANK_UNMATED,
                    Finding.INNER_FLANGE_UNMATED,
                    Finding.OUTER_FLANGE_UNMATED,
                    Finding.GROOVES_MEET);

    /** A set of workbooks that all say the same would prove little. */
    @Test
    void nearlyEveryKindOfVerdictOccurs() {
        Map<Finding, Integer> found = new EnumMap<>(Finding.class);
        for (Path book : BOOKS) {
            Filling.Report report = Filling.compute(XlsxBook.open(book));
            Sizing sizing = report.sizing().orElseThrow();
            for (ScenarioOutcome scenario : sizing.scenarios()) {
                sizing.verdict(scenario.number())
                        .ifPresent(
                                verdict ->
                                        verdict.findings()
                                                .forEach(f -> found.merge(f, 1, Integer::sum)));
            }
        }
        assertThat(found.keySet()).containsAll(EnumSet.complementOf(RARE));
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
