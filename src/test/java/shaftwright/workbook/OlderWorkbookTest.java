package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.xlsx.XlsxBook;

/** A workbook that an earlier version of the program made. */
class OlderWorkbookTest {
    @TempDir private Path folder;

    private XlsxBook older() {
        return XlsxBook.open(FirstVersion.copyTo(folder.resolve("older.xlsx")));
    }

    @Test
    void isFilledAsFarAsItsOwnLinesGo() {
        Filling.Report report = Filling.fill(older());

        assertThat(report.problems()).noneMatch(Problem::isError);
        assertThat(report.sizing()).isPresent();
        assertThat(report.written()).isPositive();
    }

    @Test
    void hasNoFormulaThatIsTakenForAnEditedOne() {
        assertThat(Filling.check(older()).strayed()).isZero();
    }

    @Test
    void nameThatItsOwnVersionHadAndThatIsGoneIsAnError() {
        assertThat(Filling.compute(without("boot_name")).problems())
                .filteredOn(Problem::isError)
                .extracting(Problem::subject)
                .containsExactly("the defined name boot_name");
        assertThat(Filling.compute(without("verdict")).problems())
                .filteredOn(Problem::isError)
                .extracting(Problem::subject)
                .containsExactly("the defined name verdict");
    }

    private OpenBook without(String name) {
        return new Lacking(older(), name);
    }

    /** A book as if a name were deleted in it. */
    private record Lacking(OpenBook whole, String name) implements OpenBook {
        @Override
        public String title() {
            return whole.title();
        }

        @Override
        public Map<String, Area> names() {
            Map<String, Area> names = new HashMap<>(whole.names());
            names.remove(name);
            return names;
        }

        @Override
        public Cells read(Collection<Area> areas) {
            return whole.read(areas);
        }

        @Override
        public Map<CellPlace, String> formulasCalling(String prefix) {
            return whole.formulasCalling(prefix);
        }

        @Override
        public void write(List<CellWrite> writes) {
            whole.write(writes);
        }
    }
}
