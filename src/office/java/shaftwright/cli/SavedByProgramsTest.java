package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.office.SpreadsheetPrograms;

/** A check finds nothing in workbooks that spreadsheet programs have saved, and what was edited. */
class SavedByProgramsTest {
    private static final String CLEAN =
            ": no errors, no warnings, no overwritten or edited formulas.";

    @TempDir private static Path folder;

    private static Path inches;
    private static Path edited;

    /** The demo in inches, in millimetres, and with a formula edited. */
    private static List<Path> byLibreOffice;

    @BeforeAll
    static void save() {
        inches = Demo.inches(folder);
        edited = edited();
        byLibreOffice =
                SpreadsheetPrograms.recalculatedByLibreOffice(
                        folder, List.of(inches, Demo.millimetres(folder), edited));
    }

    @Test
    void checkGivesNoFalseAlarmAfterLibreOffice() {
        List<Path> saved = byLibreOffice;

        assertThat(Run.of("check", saved.get(0)).out()).contains("forest.xlsx" + CLEAN);
        assertThat(Run.of("check", saved.get(1)).out()).contains("forest-mm.xlsx" + CLEAN);
        assertThat(Run.of("check", saved.get(2)).out())
                .contains("1 overwritten or edited formula.");
    }

    @Test
    void checkGivesNoFalseAlarmAfterGnumeric() {
        Path saved = SpreadsheetPrograms.recalculatedByGnumeric(folder, inches);
        Path savedEdited = SpreadsheetPrograms.recalculatedByGnumeric(folder, edited);

        // Gnumeric drops the drawings of the guide, and nothing else.
        assertThat(Run.of("check", saved).out())
                .contains("found no pictures;")
                .contains("forest.xlsx: no errors, 1 warning, no overwritten or edited formulas.");
        assertThat(Run.of("check", savedEdited).out()).contains("1 overwritten or edited formula.");
    }

    @Test
    void fillingWhatLibreOfficeSavedGivesTheSameVerdicts() {
        assertThat(filled(byLibreOffice.get(0))).isEqualTo(filled(inches));
    }

    private static String filled(Path file) {
        String filled = Run.of("fill", "--out", file.resolveSibling("filled.xlsx"), file).out();
        return filled.substring(0, filled.lastIndexOf('\n', filled.length() - 2));
    }

    private static Path edited() {
        String formula = Demo.cell(inches, "result_k_left", 2).formula();
        return EditedBook.replace(
                inches, folder.resolve("edited.xlsx"), "result_k_left", 2, formula + "+0.1");
    }
}
