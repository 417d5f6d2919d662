package shaftwright.functions;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import shaftwright.ReadmeTable;

/** The README lists the functions that there are. */
class FunctionsInReadmeTest {
    @Test
    void listIsTheCatalogues() throws IOException {
        ReadmeTable.holds("functions", list());
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
