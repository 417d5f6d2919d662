package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shaftwright.book.Problem;
import shaftwright.cli.Run;
import shaftwright.filling.Filling;
import shaftwright.xlsx.XlsxBook;

/** Slips of English that can be told by their form, held out of all that a builder reads. */
class PlainWordsTest {
    /** Something counted "a side" where it is counted per side; two full stops; a word twice. */
    private static final List<Pattern> SLIPS =
            List.of(
                    Pattern.compile(
                            "(?i)\\b(?:one|two|three|four|five|once|twice|[0-9]+)(?: [a-z]+)? a"
                                    + " (?:side|scenario|row|variant|vehicle|column|joint|book"
                                    + "|point|share|second|minute|hour)\\b"),
                    Pattern.compile("(?<=[a-z)])\\.\\.(?![.a-z])"),
                    Pattern.compile("\\b([a-z]+) \\1\\b"));

    /** What stands between tags, and what a cell says while it is selected. */
    private static final Pattern TEXT =
            Pattern.compile(">([^<]+)<|(?:prompt|error|promptTitle|errorTitle)=\"([^\"]*)\"");

    private static final Pattern COMMAND = Pattern.compile("(?m)^  ([a-z][a-z-]+) ");

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource({"inch, --demo", "mm, --demo", "inch, --trace", "mm, --trace"})
    void workbooksSpeakPlainly(String unit, String option) throws IOException {
        Path file = folder.resolve("made.xlsx");
        assertThat(Run.of("new", option, "--unit", unit, file).code()).isZero();
        assertThat(slips(texts(file))).isEmpty();
    }

    @Test
    void findingsAndWhatIsSaidOfThemSpeakPlainly() throws IOException {
        Path found = ManyFindings.write(folder.resolve("many.xlsx"));
        Path file = folder.resolve("filled.xlsx");
        assertThat(Run.of("fill", "--out", file, found).code()).isZero();
        assertThat(slips(texts(file))).isEmpty();
        assertThat(slips(List.of(Run.of("show", "--all", found).toString()))).isEmpty();
    }

    @Test
    void problemsSpeakPlainly() {
        List<String> said = new ArrayList<>();
        for (Path file : SpoiltWorkbooks.write(folder, 0, 9)) {
            for (Problem problem : Filling.compute(XlsxBook.open(file)).problems()) {
                said.add(problem.toString());
            }
        }
        assertThat(said).isNotEmpty();
        assertThat(slips(said)).isEmpty();
    }

    @Test
    void uncheckedMeasurementsAreSaidWithOneFullStop() {
        Path file = folder.resolve("unticked.xlsx");
        Run.of("new", "--demo", "--set", "done_mounts=no", file);
        assertThat(Run.of("check", file).toString().replaceAll("\\s+", " "))
                .contains("Transaxle in place not ticked: the inner ends may still move.")
                .doesNotContain("move..");
    }

    @Test
    void helpsSpeakPlainly() {
        List<String> said = new ArrayList<>(List.of(Run.of("--help").out()));
        Matcher commands = COMMAND.matcher(said.get(0));
        while (commands.find()) {
            said.add(Run.of(commands.group(1), "--help").out());
        }
        assertThat(said).hasSizeGreaterThan(10);
        assertThat(slips(said)).isEmpty();
    }

    private static Set<String> slips(Iterable<String> texts) {
        Set<String> slips = new LinkedHashSet<>();
        for (String text : texts) {
            String line = text.replaceAll("\\s+", " ");
            for (Pattern slip : SLIPS) {
                Matcher match = slip.matcher(line);
                while (match.find()) {
                    int from = Math.max(0, match.start() - 40);
                    slips.add(line.substring(from, Math.min(line.length(), match.end() + 40)));
                }
            }
        }
        return slips;
    }

    private static Set<String> texts(Path file) throws IOException {
        Set<String> texts = new LinkedHashSet<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry part : Collections.list(zip.entries())) {
                if (!part.getName().endsWith(".xml")) {
                    continue;
                }
                try (InputStream in = zip.getInputStream(part)) {
                    Matcher match =
                            TEXT.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                    while (match.find()) {
                        texts.add(match.group(1) == null ? match.group(2) : match.group(1));
                    }
                }
            }
        }
        assertThat(texts).hasSizeGreaterThan(1000);
        return texts;
    }
}
