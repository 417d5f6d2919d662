package shaftwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.office.SpreadsheetPrograms;
import shaftwright.xlsx.XlsxBook;

/** A comparison recalculated by spreadsheet programs gives what the core gives. */
class ComparisonInProgramsTest {
    @TempDir static Path folder;

    private static Path filled;
    private static Path edited;

    /** Both, as LibreOffice saves them. */
    private static List<Path> byLibreOffice;

    @BeforeAll
    static void compareTheDemoInBothUnits() {
        Path inches = folder.resolve("inches.xlsx");
        Path millimetres = folder.resolve("millimetres.xlsx");
        assertThat(Run.of("new", "--demo", inches).code()).isZero();
        assertThat(Run.of("new", "--demo", "--unit", "mm", millimetres).code()).isZero();
        filled = folder.resolve("compared.xlsx");
        assertThat(Run.of("compare", inches, millimetres, "--out", filled).code()).isZero();
        // The same with a tyre and a joint's limit changed, as the programs find it and as filled.
        edited = folder.resolve("edited.xlsx");
        XlsxBook book = XlsxBook.open(filled);
        book.write(
                java.util.Map.of(
                        book.names().get("book2_tyre_measured").place(0),
                        CellValue.of("700 mm"),
                        book.names().get("book1_hub_shift").place(1),
                        CellValue.of("1 1/2")));
        book.save(edited);
        byLibreOffice =
                SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(filled, edited));
    }

    @Test
    void libreOfficeAgreesWithTheCore() {
        agrees(byLibreOffice.get(0));
    }

    @Test
    void gnumericAgreesWithTheCore() {
        agrees(SpreadsheetPrograms.recalculatedByGnumeric(folder, filled));
    }

    /** What a friend sees who types into the comparison, with nothing installed. */
    @Test
    void changesAreFollowedWithoutAFill() {
        Path followed = byLibreOffice.get(1);
        Path wanted = folder.resolve("wanted.xlsx");
        assertThat(Run.of("fill", edited, "--out", wanted).code()).isZero();

        XlsxBook got = XlsxBook.open(followed);
        XlsxBook core = XlsxBook.open(wanted);
        for (String name :
                List.of(
                        "compare_result_e_left",
                        "compare_verdict",
                        "compare_result_tyre",
                        "compare_hub_shift",
                        "comparison_mark")) {
            assertThat(texts(got, name)).as(name).isEqualTo(texts(core, name));
        }
        assertThat(texts(core, "compare_result_tyre"))
                .isNotEqualTo(texts(XlsxBook.open(filled), "compare_result_tyre"));
    }

    /** The columns of all books beside each other on long pages, what is the same in all folded. */
    @Test
    void twoWorkbooksArePrintedOnFewPagesLongSideAcross() throws IOException {
        byte[] print = Files.readAllBytes(SpreadsheetPrograms.printedByLibreOffice(folder, filled));
        String pdf = new String(print, StandardCharsets.ISO_8859_1);

        long pages = Pattern.compile("/Type */Page[^s]").matcher(pdf).results().count();
        long across = Pattern.compile("/MediaBox *\\[0 0 792 612]").matcher(pdf).results().count();

        assertThat(pages).isBetween(10L, 28L);
        assertThat(across).isGreaterThanOrEqualTo(pages);
    }

    /** Numbers to nine places, since programs write the last digits differently. */
    private static List<String> texts(XlsxBook book, String name) {
        var area = book.names().get(name);
        var cells = book.read(List.of(area));
        return java.util.stream.IntStream.range(0, area.size())
                .mapToObj(area::place)
                .filter(place -> !cells.at(place).isEmpty())
                .map(place -> cells.at(place).value())
                .map(
                        value ->
                                value instanceof CellValue.Numeric number
                                        ? String.format("%.9f", number.value())
                                        : value.toString())
                .toList();
    }

    private static void agrees(Path saved) {
        ComparisonAgreement agreement = ComparisonAgreement.ofSaved(filled, saved);
        assertThat(agreement.differences()).isEmpty();
        assertThat(agreement.pageCells()).isGreaterThan(4_000);
        assertThat(agreement.bookCells()).isGreaterThan(40_000);
    }
}
