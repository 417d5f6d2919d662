package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;

/** The travel that a shaft allows, in the terminal and under a check. */
class TravelAllowedTest {
    @TempDir private Path folder;

    @Test
    void showSaysHowFarTheWheelMayGoAndWhatEndsIt() {
        Path file = Demo.inches(folder);

        assertThat(Run.of("show", "--all", "--scenario", "d", "--side", "left", file).out())
                .containsPattern("shaft allows +5\\.\\d+ in up \\(damper closed\\), ")
                .containsPattern("in down \\(boot\\s+too\\s+short");
        assertThat(Run.of("show", "--json", "--scenario", "d", "--side", "left", file).out())
                .contains("\"travel_down_stop\" : \"BOOT_LIMIT\"")
                .contains("\"travel_up_mm\" : ");
    }

    @Test
    void checkTakesFiguresOfAnEngineBlockForWhatTheyAre() {
        Path file = Demo.inches(folder);
        Demo.type(file, "travel_up_left", 0, CellValue.of(1));

        assertThat(Run.of("check", file).out()).contains("no overwritten or edited formulas.");
        Run.of("fill", file);
        assertThat(Demo.cell(file, "travel_up_left", 0).value()).isNotEqualTo(CellValue.of(1));
    }

    @Test
    void checkFindsAFormulaInAnEngineBlock() {
        Path file = Demo.inches(folder);
        Path edited =
                EditedBook.replace(file, folder.resolve("edited.xlsx"), "travel_up_left", 0, "2+3");

        assertThat(Run.of("check", edited).out())
                .contains("a formula in place of a figure")
                .contains("1 overwritten or edited formula.");
    }
}
