package shaftwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shaftwright.book.CellValue;

/**
 * Answers to workbooks, by key and defined name, as they were: every one stays, but those that a
 * reviewed list says differ on purpose.
 */
class OracleTest {
    private static final int KEYS_SHOWN = 60;
    private static final int WORKBOOKS_SHOWN = 3;

    @Test
    void recordedAnswersDifferOnlyWhereMeant() {
        expectNoneUnmeant(Oracle.RECORDED, "differences.txt");
    }

    /** Demos and blank workbooks, over all versions. */
    @Test
    void answersOfTheFirstVersionDifferOnlyWhereMeant() {
        expectNoneUnmeant(Oracle.FIRST_VERSION, "differences-0.1.0.txt");
    }

    private static void expectNoneUnmeant(String answers, String meant) {
        ReviewedDifferences reviewed = ReviewedDifferences.read(meant);
        Map<String, List<String>> differences = new LinkedHashMap<>();
        for (Oracle.Book book : Oracle.read(answers)) {
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
        assertThat(reviewed.idle())
                .as("entries of " + meant + " that no difference needs")
                .isEmpty();
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
