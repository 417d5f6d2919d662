package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.office.SpreadsheetPrograms;

/** A check finds nothing in workbooks that spreadsheet programs have saved, and what was edited. */
class SavedByProgramsTest {
    private static final String CLEAN =
            ": no errors, no warnings, no overwritten or edited formulas.";

    @TempDir private Path folder;

    @Test
    void checkGivesNoFalseAlarmAfterLibreOffice() {
        List<Path> saved =
                SpreadsheetPrograms.recalculatedByLibreOffice(
                        folder, List.of(Demo.inches(folder), Demo.millimetres(folder), edited()));

        assertThat(Run.of("check", saved.get(0)).out()).contains("forest.xlsx" + CLEAN);
        assertThat(Run.of("check", saved.get(1)).out()).contains("forest-mm.xlsx" + CLEAN);
        assertThat(Run.of("check", saved.get(2)).out())
                .contains("1 overwritten or edited formula.");
    }

    @Test
    void checkGivesNoFalseAlarmAfterGnumeric() {
        Path inches = SpreadsheetPrograms.recalculatedByGnumeric(folder, Demo.inches(folder));
        Path edited = SpreadsheetPrograms.recalculatedByGnumeric(folder, edited());

        // Gnumeric drops the drawings of the guide, and nothing else.
        assertThat(Run.of("check", inches).out())
                .contains("found no pictures;")
                .contains("forest.xlsx: no errors, 1 warning, no overwritten or edited formulas.");
        assertThat(Run.of("check", edited).out()).contains("1 overwritten or edited formula.");
    }

    @Test
    void fillingWhatLibreOfficeSavedGivesTheSameVerdicts() {
        Path file = Demo.inches(folder);
        Path saved = SpreadsheetPrograms.recalculatedByLibreOffice(folder, List.of(file)).get(0);

        assertThat(verdicts(Run.of("fill", saved).out()))
                .isEqualTo(verdicts(Run.of("fill", file).out()));
    }

    private static String verdicts(String filled) {
        return filled.substring(0, filled.lastIndexOf('\n', filled.length() - 2));
    }

    private Path edited() {
        Path file = Demo.inches(folder);
        String formula = Demo.cell(file, "result_k_left", 2).formula();
        return EditedBook.replace(
                file, folder.resolve("edited.xlsx"), "result_k_left", 2, formula + "+0.1");
    }
}
