package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The machine itself says what it compiled, and with which compiler: levels 1 to 3 are the quick
 * one's, 4 is the optimizing one's.
 */
class QuickCompilerTest {
    private static final Pattern COMPILED =
            Pattern.compile("(?m)^ +\\d+ +\\d+ [ %sb!n]+ ([1-4]) +\\S+::\\S+");

    /** What the jar's manifest opens is written in one place. */
    private static final Pattern OPENED = Pattern.compile("<Add-Opens>(.*)</Add-Opens>");

    @TempDir Path folder;

    @Test
    void optimizingCompilerIsLeftOutOfARun() throws Exception {
        Matcher opened = OPENED.matcher(Files.readString(Path.of("pom.xml")));
        assertThat(opened.find()).isTrue();
        List<String> options = new ArrayList<>();
        for (String part : opened.group(1).split(" ", -1)) {
            options.add("--add-opens=" + part + "=ALL-UNNAMED");
        }

        long without = optimized(List.of());
        long with = optimized(options);

        // Some methods are compiled before the directive comes, while the library starts up.
        assertThat(with).isLessThan(without / 2);
        assertThat(folder.resolve("temporary")).isEmptyDirectory();
    }

    /** Where the machine does not allow it, the run goes on as it would; see the other count. */
    private long optimized(List<String> options) throws IOException, InterruptedException {
        Path temporary = Files.createDirectories(folder.resolve("temporary"));
        Path said = folder.resolve("said.txt");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.add("-XX:+PrintCompilation");
        command.add("-Djava.io.tmpdir=" + temporary);
        command.add("-cp");
        command.add(System.getProperty("java.class.path"));
        command.add(Main.class.getName());
        command.addAll(List.of("check", Demo.inches(folder).toString()));
        Process process =
                new ProcessBuilder(command)
                        .redirectErrorStream(true)
                        .redirectOutput(said.toFile())
                        .start();
        process.waitFor();
        String text = Files.readString(said, StandardCharsets.UTF_8);
        assertThat(text).contains("no errors");
        return COMPILED.matcher(text).results().filter(m -> m.group(1).equals("4")).count();
    }
}
