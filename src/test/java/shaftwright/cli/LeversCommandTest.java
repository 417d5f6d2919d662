package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;

/** What would give a scenario more room, in the terminal. */
class LeversCommandTest {
    @TempDir private Path folder;

    @Test
    void costsAreTheBuildersOrNotPriced() {
        Run run = Run.of("levers", "--scenario", "B", Demo.inches(folder));

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .containsPattern("\\+34\\.00  fits +limit strap 2 in less droop")
                .containsPattern("not priced  fits +transaxle 1/2 in lower")
                .doesNotContain("+0.00")
                .doesNotContain("margin 1/16")
                .endsWith("not room gained.\n\n");
    }

    @Test
    void aColumnWithoutANameIsRefusedByItsLetter() {
        Run run = Run.of("levers", "--scenario", "H", Demo.inches(folder));

        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("scenario H has no name");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void aScenarioWithoutAResultIsNotSaidToHaveNoRoom() {
        Path file = Demo.inches(folder);
        Demo.type(file, "joint_inner", 0, CellValue.of(""));
        Run run = Run.of("levers", "--scenario", "A", file);

        assertThat(run.out())
                .contains("no change was tried: both sides need a result first")
                .doesNotContain("gives more room");
    }

    @Test
    void aTotalThatLacksTheShaftsIsNoNumber() {
        Path file = Demo.inches(folder);
        for (int row = 0; row < 9; row++) {
            Demo.type(file, "blank_in_stock", row, CellValue.of("no"));
        }

        assertThat(Run.of("show", "--scenario", "A", file).out())
                .containsPattern("cost +622\\.00 without shafts\n");
        assertThat(Run.of("show", "--all", "--scenario", "A", file).out())
                .contains("622.00 without shafts: shafts no blank, joints 512.00, boots");
        assertThat(Run.of("show", "--json", "--scenario", "A", file).out())
                .containsPattern("\"total\" : null,\\s+\"spares\" : null,\\s+\"not_priced\" : \\[")
                .contains("\"shafts\" : null");
    }
}
