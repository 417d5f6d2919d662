package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Showing and hiding sheets from the command line. */
class SheetsCommandTest {
    @TempDir private Path folder;

    @Test
    void listsWhatIsHiddenAtFirst() {
        Run run = Run.of("sheets", Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.SUCCESS);
        assertThat(run.out().lines().filter(line -> !line.endsWith("(hidden)")))
                .containsExactly(
                        "Start",
                        "Guide",
                        "Measure",
                        "Parts",
                        "Scenarios",
                        "Tables left",
                        "Charts left",
                        "Tables right",
                        "Charts right",
                        "Parts list",
                        "Card left",
                        "Card right");
        assertThat(run.out())
                .contains("Linkage   (hidden)", "Levers   (hidden)", "Working left   (hidden)");
    }

    @Test
    void showsAndHidesInPlaceAndNothingElse() throws IOException {
        Path file = Demo.inches(folder);
        byte[] before = Files.readAllBytes(file);

        Run run = Run.of("sheets", file, "--show", "linkage", "Strength", "--hide", "Guide");

        assertThat(run.out())
                .contains("linkage, Strength shown; Guide hidden; the previous file is");
        assertThat(Files.readAllBytes(folder.resolve("forest.backup.xlsx"))).isEqualTo(before);
        assertThat(Run.of("sheets", file).out())
                .contains("Guide   (hidden)")
                .doesNotContain("Linkage   (hidden)", "Strength   (hidden)");
        assertThat(Run.of("fill", file).out()).contains("none of them changed");
        assertThat(Run.of("sheets", file, "--show", "Strength").out())
                .contains("so they are already");
    }

    @Test
    void refusesWhatCannotBe() {
        Path file = Demo.inches(folder);

        assertThat(Run.of("sheets", file, "--show", "strenght").err())
                .contains("no sheet is called \"strenght\"; near it: strength");
        assertThat(Run.of("sheets", file, "--show", "Guide", "--hide", "guide").err())
                .contains("can't be both shown and hidden");
        assertThat(Run.of("sheets", "--out", folder.resolve("copy.xlsx"), file).code())
                .isEqualTo(ExitCode.USAGE);
    }
}
