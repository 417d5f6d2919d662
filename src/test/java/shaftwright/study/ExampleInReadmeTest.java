package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program in the README: what a Java user types, with the core alone on the class path. */
class ExampleInReadmeTest {
    private static final Pattern PROGRAM =
            Pattern.compile("```java\n(.*?)```\n\n.*?```\n(.*?)```", Pattern.DOTALL);

    @TempDir Path folder;

    private String program;
    private String printed;

    @BeforeEach
    void readTheReadme() throws IOException {
        Matcher matcher = PROGRAM.matcher(Files.readString(Path.of("README.md")));
        assertThat(matcher.find()).isTrue();
        program = matcher.group(1);
        printed = matcher.group(2);
    }

    @Test
    void programIsShort() {
        assertThat(program.lines()).hasSizeLessThanOrEqualTo(25);
    }

    @Test
    void programPrintsWhatTheReadmeSaysWithNoLibraryOnTheClassPath() throws Exception {
        Path source = Files.writeString(folder.resolve("FirstShaft.java"), program);
        String core =
                Path.of(Study.class.getProtectionDomain().getCodeSource().getLocation().toURI())
                        .toString();

        int errors =
                ToolProvider.getSystemJavaCompiler()
                        .run(
                                null,
                                null,
                                null,
                                "-Xlint:all,-path",
                                "-Werror",
                                "-cp",
                                core,
                                "-d",
                                folder.toString(),
                                source.toString());
        assertThat(errors).isZero();
        assertThat(run(core + System.getProperty("path.separator") + folder)).isEqualTo(printed);
    }

    private static String run(String classPath) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process process =
                new ProcessBuilder(List.of(java, "-cp", classPath, "FirstShaft"))
                        .redirectErrorStream(true)
                        .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return output;
    }
}
