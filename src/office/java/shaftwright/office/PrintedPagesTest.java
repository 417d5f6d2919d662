package shaftwright.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ready demo workbooks as LibreOffice prints them. */
class PrintedPagesTest {
    private static final int MOST_PAGES = 36;

    /** Characters of a page with one short table; header and footer have some sixty. */
    private static final int LEAST_CHARACTERS = 250;

    private static final Pattern SPACE = Pattern.compile("\\s+");

    @TempDir Path folder;

    @Test
    void demoPrintsOnFewPagesAndNoneIsEmpty() throws IOException {
        for (String unit : List.of("inch", "mm")) {
            Path book = Path.of("workbooks/forest-special-" + unit + ".xlsx");
            Path printed = SpreadsheetPrograms.printedByLibreOffice(folder, book);
            List<String> pages = pages(printed);
            assertThat(pages).as(printed.toString()).hasSizeBetween(14, MOST_PAGES);
            List<String> thin = new ArrayList<>();
            for (int page = 0; page < pages.size(); page++) {
                if (SPACE.matcher(pages.get(page)).replaceAll("").length() < LEAST_CHARACTERS) {
                    thin.add("page " + (page + 1) + ": " + pages.get(page));
                }
            }
            assertThat(thin).as(printed.toString()).isEmpty();
        }
    }

    /** The text of each page, which pdftotext ends with a form feed. */
    private List<String> pages(Path printed) throws IOException {
        String text =
                SpreadsheetPrograms.run(folder, List.of("pdftotext", printed.toString(), "-"));
        List<String> pages = new ArrayList<>(List.of(text.split("\f", -1)));
        pages.remove(pages.size() - 1);
        return pages;
    }
}
