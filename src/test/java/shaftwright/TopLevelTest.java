package shaftwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Somebody new sees few names at the top, each with its purpose, and no stray file among them. */
class TopLevelTest {
    private static final Set<String> NAMES =
            Set.of(
                    ".ci",
                    ".gitignore",
                    ".mvn",
                    "DEVELOPERS.md",
                    "LICENSE",
                    "README.md",
                    "pom.xml",
                    "src",
                    "workbooks");

    @Test
    void noStrayFileIsKeptAtTheTop() throws IOException, InterruptedException {
        assumeTrue(Files.exists(Path.of(".git")), "not a clone, so what is kept can't be told");
        Process listing =
                new ProcessBuilder("git", "ls-tree", "--name-only", "HEAD")
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        String kept = new String(listing.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertEquals(0, listing.waitFor());
        assertEquals(NAMES, kept.lines().collect(Collectors.toUnmodifiableSet()));
    }
}
