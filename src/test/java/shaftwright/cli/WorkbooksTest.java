package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shaftwright.contract.Contract;
import shaftwright.contract.InputKind;

/** The workbooks kept in the folder {@code workbooks} are what the program makes today. */
class WorkbooksTest {
    private static final Path KEPT = Path.of("workbooks");
    private static final Pattern FORMULA = Pattern.compile("<f[^>]*>([^<]*)</f>");

    @TempDir private Path folder;

    /** Each kept file with the command line that makes it, as {@code src/workbooks.sh} has it. */
    enum Kept {
        FOREST_SPECIAL_INCH("forest-special-inch.xlsx", "--demo", "--unit", "inch"),
        FOREST_SPECIAL_MM("forest-special-mm.xlsx", "--demo", "--unit", "mm"),
        BLANK_INCH("blank-inch.xlsx", "--unit", "inch"),
        BLANK_MM("blank-mm.xlsx", "--unit", "mm");

        private final String file;

        private final List<String> options;

        Kept(String file, String... options) {
            this.file = file;
            this.options = List.of(options);
        }

        Path make(Path folder) {
            Path made = folder.resolve(file);
            Object[] args = new Object[options.size() + 2];
            args[0] = "new";
            for (int i = 0; i < options.size(); i++) {
                args[i + 1] = options.get(i);
            }
            args[args.length - 1] = made;
            Run run = Run.of(args);
            assertThat(run.code()).as(run.err()).isZero();
            return made;
        }
    }

    @ParameterizedTest
    @EnumSource(Kept.class)
    void keptWorkbookIsWhatIsMadeToday(Kept kept) throws IOException {
        assumeThat(KEPT).as("a source tree without its workbooks").isDirectory();
        Map<String, String> today = parts(kept.make(folder));
        Map<String, String> then = parts(KEPT.resolve(kept.file));

        assertThat(then).as("run src/workbooks.sh").containsOnlyKeys(today.keySet());
        today.forEach(
                (part, text) ->
                        assertThat(then.get(part).equals(text))
                                .as("%s of %s; run src/workbooks.sh", part, kept.file)
                                .isTrue());
    }

    @Test
    void sameInputsGiveTheSameBytes() throws IOException {
        Path first = Kept.BLANK_MM.make(Files.createDirectory(folder.resolve("first")));
        Path second = Kept.BLANK_MM.make(Files.createDirectory(folder.resolve("second")));

        assertThat(second).hasSameBinaryContentAs(first);
    }

    /**
     * Programs parse each stored formula when they open a file; these are 2,400 characters long.
     */
    @Test
    void whatReadsALengthIsStoredOnceForAllScenariosAndRows() throws IOException {
        long reading =
                parts(Kept.BLANK_MM.make(folder)).values().stream()
                        .flatMap(part -> FORMULA.matcher(part).results())
                        .filter(found -> found.group(1).contains("tape_fraction"))
                        .count();

        long lengths =
                Contract.inputs().stream()
                        .filter(input -> input.kind() == InputKind.LENGTH)
                        .mapToInt(input -> input.grid().sided() ? 2 : 1)
                        .sum();
        assertThat(reading).isBetween(lengths / 2, lengths);
    }

    private static Map<String, String> parts(Path file) throws IOException {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(
                        entry.getName(),
                        new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1));
            }
        }
        return parts;
    }
}
