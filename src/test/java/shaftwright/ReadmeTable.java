package shaftwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A table of the README that follows from declarations, between two marks. {@code src/readme.sh}
 * writes it, by the property {@code readme.write}; else it has to be there already.
 */
public final class ReadmeTable {
    private static final Path README = Path.of("README.md");

    private ReadmeTable() {}

    /** Holds the README against a table, or writes the table into it. */
    public static void holds(String name, String table) throws IOException {
        String begin = "<!-- " + name + ": begin -->\n";
        String end = "<!-- " + name + ": end -->";
        String readme = Files.readString(README);
        int from = readme.indexOf(begin) + begin.length();
        int to = readme.indexOf(end);
        if (Boolean.getBoolean("readme.write")) {
            Files.writeString(README, readme.substring(0, from) + table + readme.substring(to));
        } else {
            assertThat(readme.substring(from, to)).as("run src/readme.sh").isEqualTo(table);
        }
    }
}
