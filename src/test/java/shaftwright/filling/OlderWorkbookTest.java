package shaftwright.filling;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellWrite;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.reading.InputReader;
import shaftwright.reading.InputValues;
import shaftwright.reading.Sizing;
import shaftwright.workbook.FirstVersion;
import shaftwright.xlsx.XlsxBook;

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

    /** No input came after version 0, so a book of version 0 lacks whatever is taken out of it. */
    @Test
    void inputThatCameLaterReadsAsIfItWereLeftEmpty() {
        XlsxBook book = older();
        Map<String, Area> names = new HashMap<>(book.names());
        List.of("length_bias", "boot_name").forEach(names::remove);
        List<Problem> problems = new ArrayList<>();

        InputValues inputs = read(book, names, problems, 0);

        assertThat(problems).noneMatch(Problem::isError);
        assertThat(inputs.number("length_bias", new Index(Side.LEFT, 0, 0))).isEqualTo(0.25);
        assertThat(inputs.typed("boot_name")).isEmpty();
        assertThat(inputs.rows("boot_name", Side.LEFT))
                .isEqualTo(inputs.rows("boot_length", Side.LEFT));
        assertThat(inputs.complete()).isTrue();
    }

    private static InputValues read(
            OpenBook book, Map<String, Area> names, List<Problem> problems, int version) {
        return new InputReader(names, book.read(InputReader.areas(names)), problems, version)
                .read();
    }

    @Test
    void whatCameLaterIsSaidInOneLine() {
        Map<String, Area> names = new HashMap<>(older().names());
        List.of("length_bias", "boot_name", "wheel_spacer", "hub_shift", "verdict")
                .forEach(names::remove);

        assertThat(BookAge.of(0, names).problem().map(Problem::toString).orElse(""))
                .startsWith("the workbook: found contract version 0, which lacks ")
                .containsPattern("lacks [0-9]+ inputs \\(boot_name, ")
                .containsPattern(" …\\) and [0-9]+ figures \\(")
                .contains(") that came later; expected version ")
                .endsWith("the command renew makes a current workbook of it.");
    }

    /** In an open document the older formulas compute fingerprints that no fill can meet. */
    @Test
    void stampsThatNoFillRenewsAreSaidInTheSameLine() {
        assertThat(BookAge.of(1, older().names()).problem().map(Problem::toString).orElse(""))
                .contains("so a recalculation shows older figures, and stamps may stay out of date")
                .endsWith("the command renew makes a current workbook of it.");
    }

    @Test
    void typingIntoAnInputThatCameLaterIsRefusedByName() {
        XlsxBook book = older();
        Map<String, Area> names = new HashMap<>(book.names());
        names.remove("hub_shift");
        List<Problem> problems = new ArrayList<>();
        TypedColumn typed = new TypedColumn("hub_shift", new TreeMap<>(Map.of(0, "1/2")), false);

        TypedCells.of(List.of(typed), names, book.read(InputReader.areas(names)), problems, 0);

        assertThat(problems)
                .singleElement()
                .matches(Problem::isError)
                .hasToString(
                        "hub_shift: found no cell for it in a workbook of contract version 0;"
                                + " expected version 1; the command renew makes a current workbook"
                                + " of it.");
    }

    @Test
    void takingSaysWhatAnOlderWorkbookHasNoCellFor() {
        XlsxBook book = older();
        Map<String, Area> names = new HashMap<>(book.names());
        names.remove("transaxle_up");
        List<Problem> problems = new ArrayList<>();
        InputValues lacking = read(book, names, problems, 0);
        Sizing source =
                Sizing.of(
                        read(book, book.names(), problems, 1)
                                .with("transaxle_up", new Index(Side.LEFT, 0, 0), 12),
                        problems);

        Taking.Plan plan = Taking.plan(source, 0, Sizing.of(lacking, problems), 7);

        assertThat(plan.columns())
                .extracting(TypedColumn::definedName)
                .contains("hub_shift")
                .doesNotContain("transaxle_up");
        assertThat(plan.different())
                .anyMatch(
                        line ->
                                line.startsWith("Transaxle moved up: ")
                                        && line.endsWith("in theirs, no cell for it in yours"));
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
