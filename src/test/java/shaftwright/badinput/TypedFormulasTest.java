package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.xlsx.XlsxBook;

/** Formulas in typed cells: the hub shifts of two scenarios. */
class TypedFormulasTest {
    private static final String SHIFT = "hub_shift";

    @TempDir Path folder;
    private SmallBook book;
    private FileParts parts;

    @BeforeEach
    void hubOfTheFirstScenarioIsMovedByOne() {
        book = SmallBook.in(folder);
        parts = FileParts.of(book.file());
        cell(0, "<v>1</v>");
    }

    private CellPlace place(int scenario) {
        return book.place(SHIFT, scenario);
    }

    private void cell(int scenario, String content) {
        parts.cell(place(scenario), content);
    }

    /** A formula in the second scenario's cell that reads the first one's. */
    private void formula(String formula, String stored) {
        String text = formula.replace("FIRST", place(0).address());
        cell(1, "<f>" + text + "</f>" + (stored.isEmpty() ? "" : "<v>" + stored + "</v>"));
    }

    private Run run(Object... words) {
        parts.write(book.file());
        return Run.of(words);
    }

    private void filled(Object... words) {
        Run run = run(words);
        assertThat(run.code()).as(run.err()).isZero();
    }

    private CellContent shown() {
        Area area = SmallBook.area(SHIFT);
        return XlsxBook.open(book.file()).read(List.of(area)).at(place(1));
    }

    /** What the second scenario's results are when its hub shift is typed as this number. */
    private CellValue lengthWith(String typed) {
        SmallBook other = SmallBook.at(folder.resolve("other.xlsx"));
        FileParts.of(other.file())
                .cell(place(0), "<v>1</v>")
                .cell(place(1), "<v>" + typed + "</v>")
                .write(other.file());
        assertThat(Run.of("fill", other.file()).code()).isZero();
        return other.value("e_final_left", 1);
    }

    private CellValue length() {
        return book.value("e_final_left", 1);
    }

    @Test
    void formulaWithoutAValueIsComputedBeforeItIsRead() {
        formula("ROUNDUP(FIRST,0)+1", "");

        filled("fill", book.file());

        assertThat(shown().value()).isEqualTo(CellValue.of(2));
        assertThat(shown().formula()).isEqualTo("ROUNDUP(" + place(0).address() + ",0)+1");
        assertThat(length()).isEqualTo(lengthWith("2")).isNotEqualTo(lengthWith("0"));
    }

    @Test
    void formulaFollowsWhatIsTypedIntoItsSource() {
        formula("FIRST+1", "2");

        filled("fill", "--set", "hub_shift[A]=2", book.file());

        assertThat(shown().value()).isEqualTo(CellValue.of(3));
        assertThat(length()).isEqualTo(lengthWith("3"));
    }

    @Test
    void formulaFollowsThroughASheetAndARelativeName() {
        String source = "Scenarios!" + place(0).address();
        parts.addSheet("Mine", "<c r=\"A1\"><f>" + source + "*2</f><v>2</v></c>");
        formula("Mine!A1+1", "3");

        filled("fill", "--set", "hub_shift[A]=2", book.file());

        assertThat(shown().value()).isEqualTo(CellValue.of(5));
        assertThat(length()).isEqualTo(lengthWith("5"));
    }

    @Test
    void formulaThroughARelativeNameIsRefusedRatherThanRead() {
        // Relative to the cell in which it is used: the one to the left.
        parts.addName("left_of_me", "Scenarios!XFD1");
        formula("left_of_me+1", "2");

        Run run = run("fill", "--set", "hub_shift[A]=2", book.file());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains(
                        "shafts.xlsx: sheet \"Scenarios\", cell "
                                + place(1).address()
                                + " (Hub moved outward, each side, scenario B): found a formula whose value changes"
                                + " with this, and which only a spreadsheet program can compute;"
                                + " expected a typed value; or make the change in your spreadsheet"
                                + " program and save it there.");
    }

    @Test
    void formulaWithoutAValueThatNobodyHereComputesIsRefused() {
        formula("NOSUCHFUNCTION(FIRST)", "");

        Run run = run("fill", book.file());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains(
                        "cell "
                                + place(1).address()
                                + " (Hub moved outward, each side, scenario B): found a formula without a value;"
                                + " expected its value; open the workbook once in your spreadsheet"
                                + " program and save it there, or type the value.");
    }

    @Test
    void fractionAsATextUnderArithmeticIsRefused() {
        cell(0, "<v>1</v>");
        formula("FIRST+1", "2");

        Run run = run("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("cell " + place(1).address(), "found a formula");
    }

    @Test
    void storedValueStandsWhereNothingChangesIt() {
        // Nobody here can compute it, and nobody has to.
        formula("NOSUCHFUNCTION(FIRST)", "2");

        filled("fill", book.file());

        assertThat(shown().value()).isEqualTo(CellValue.of(2));
        assertThat(length()).isEqualTo(lengthWith("2"));
    }

    @Test
    void formulaOfTheOtherScenariosResultIsComputedWithItsNewValue() {
        CellPlace result = book.place("e_final_left", 0);
        String address = "'" + result.sheet() + "'!" + result.address();
        double before = ((CellValue.Numeric) book.value("e_final_left", 0)).value();
        formula("ROUND(" + address + "/100,2)", Double.toString(Math.rint(before) / 100));

        filled("fill", "--set", "hub_shift[A]=2", book.file());

        double now = ((CellValue.Numeric) book.value("e_final_left", 0)).value();
        double expected = Math.round(now) / 100.0;
        assertThat(Math.round(now)).isNotEqualTo(Math.round(before));
        assertThat(shown().value()).isEqualTo(CellValue.of(expected));
        assertThat(length()).isEqualTo(lengthWith(Double.toString(expected)));
    }

    @Test
    void formulaOfItsOwnScenariosResultThatDoesNotSettleIsRefused() {
        CellPlace result = book.place("e_final_left", 1);
        formula("'" + result.sheet() + "'!" + result.address() + "/1000", "0.5");

        Run run = run("fill", book.file());

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains(
                        "(Hub moved outward, each side, scenario B): found a formula that reads results which change"
                                + " with it, without an end; expected a typed value, or a formula"
                                + " of other cells.");
    }

    @Test
    void everyCommandComputesWithTheSameValue() {
        formula("ROUNDUP(FIRST,0)+1", "");
        Run shown = run("show", "--json", book.file());
        Run check = run("check", book.file());

        assertThat(check.out()).contains("no errors");
        formula("ROUNDUP(FIRST,0)+1", "2");
        assertThat(shown.out()).isEqualTo(run("show", "--json", book.file()).out());
        formula("NOSUCHFUNCTION(FIRST)", "");
        assertThat(run("show", book.file()).err()).contains("found a formula without a value");
        assertThat(run("check", book.file()).out()).contains("found a formula without a value");
    }

    @Test
    void inputsThatWereShownCanBeTypedOverTheFormulasThatShowThem() throws Exception {
        formula("ROUNDUP(FIRST,0)+1", "");
        Path inputs = folder.resolve("inputs.json");
        java.nio.file.Files.writeString(inputs, "{\"hub_shift\":[1,2]}");

        filled("fill", "--inputs", inputs, book.file());

        assertThat(shown().value()).isEqualTo(CellValue.of(2));
    }
}
