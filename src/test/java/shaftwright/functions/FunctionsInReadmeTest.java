package shaftwright.functions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The README lists the functions that there are. */
class FunctionsInReadmeTest {
    private static final String BEGIN = "<!-- functions: begin -->\n";
    private static final String END = "<!-- functions: end -->";

    /** When this fails, put the expected text between the two marks of the README. */
    @Test
    void listIsTheCatalogues() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        int begin = readme.indexOf(BEGIN) + BEGIN.length();

        assertThat(readme.substring(begin, readme.indexOf(END))).isEqualTo(list());
    }

    /** Functions with a closed form in plain letters, the others slanted. */
    private static String list() {
        StringBuilder text = new StringBuilder("| about | `SHAFT.` and |\n|---|---|\n");
        for (Topic topic : Topic.values()) {
            text.append("| ").append(topic.title()).append(" |");
            String gap = " ";
            for (CellFunction function : Catalogue.all()) {
                if (function.topic() == topic) {
                    String mark = function.expression().isPresent() ? "" : "*";
                    text.append(gap).append(mark).append(function.shortName()).append(mark);
                    gap = ", ";
                }
            }
            text.append(" |\n");
        }
        return text.toString();
    }
}
