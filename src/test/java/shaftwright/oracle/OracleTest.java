package shaftwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shaftwright.workbook.CellValue;

/**
 * Answers of an earlier version to 200 workbooks, by key and defined name: every one stays as it
 * was, but those that the reviewed list says differ on purpose.
 */
class OracleTest {
    private static final int KEYS_SHOWN = 60;
    private static final int WORKBOOKS_SHOWN = 3;

    @Test
    void nothingDiffersButWhatIsMeantTo() {
        ReviewedDifferences reviewed = ReviewedDifferences.read();
        Map<String, List<String>> differences = new LinkedHashMap<>();
        for (Oracle.Book book : Oracle.read()) {
            Map<String, List<CellValue>> found = Answers.to(book);
            book.answers()
                    .forEach(
                            (key, wanted) ->
                                    reviewed.unmeant(book.name(), key, wanted, found.get(key))
                                            .ifPresent(
                                                    difference ->
                                                            differences
                                                                    .computeIfAbsent(
                                                                            key,
                                                                            k -> new ArrayList<>())
                                                                    .add(
                                                                            book.name()
                                                                                    + ": "
                                                                                    + difference)));
        }

        assertThat(differences.size() + " keys:" + shown(differences)).isEqualTo("0 keys:");
        assertThat(reviewed.idle()).as("entries that no difference needs").isEmpty();
    }

    private static String shown(Map<String, List<String>> differences) {
        StringBuilder shown = new StringBuilder();
        differences.entrySet().stream()
                .limit(KEYS_SHOWN)
                .forEach(
                        key -> {
                            List<String> books = key.getValue();
                            shown.append("\n" + key.getKey() + ", " + books.size() + " workbooks");
                            books.stream()
                                    .limit(WORKBOOKS_SHOWN)
                                    .forEach(book -> shown.append("\n    " + book));
                        });
        return shown.toString();
    }
}
