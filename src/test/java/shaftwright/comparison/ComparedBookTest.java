package shaftwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.filling.Filling;
import shaftwright.reading.Sizing;
import shaftwright.template.ComparisonTemplate;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.DemoBook;
import shaftwright.xlsx.XlsxBook;

/** What a comparison takes over from a workbook. */
class ComparedBookTest {
    private static final int MORE = 2;

    @TempDir private Path folder;

    @Test
    void readingsBeyondTheRowsOfANewWorkbookAreKept() throws Exception {
        ComparedBook demo = demo();
        Map<String, List<CellValue>> typed = new HashMap<>(demo.typed());
        for (Input input : Contract.inputs(Grid.READING)) {
            String name = input.definedName(Side.LEFT);
            List<CellValue> column = new ArrayList<>(typed.get(name));
            column.addAll(
                    input.name().equals("height")
                            ? List.of(CellValue.of("13 9/16"), CellValue.of("14 13/16"))
                            : List.copyOf(column.subList(0, MORE)));
            typed.put(name, column);
        }
        ComparedBook longer =
                new ComparedBook(
                        "longer", demo.unit(), demo.scenarios(), demo.used(), typed, demo.inputs());
        Path file = folder.resolve("compared.xlsx");
        ComparisonTemplate.write(file, LengthUnit.INCH, List.of(demo, longer));

        ComparisonFilling.Report report = ComparisonFilling.fill(XlsxBook.open(file));

        assertThat(report.hasErrors()).as("%s", report.allProblems()).isFalse();
        assertThat(rows(report, 1)).isEqualTo(rows(report, 0) + MORE);
    }

    @Test
    void tablesAndScenarioColumnsKeepTheirSize() {
        Map<String, List<CellValue>> typed = demo().typed();

        for (Input input : Contract.inputs(Grid.BENCH)) {
            assertThat(typed.get(input.name())).hasSize(Grid.BENCH.rows());
        }
        assertThat(typed.get("hub_shift")).hasSize(DemoBook.scenarios());
    }

    private static int rows(ComparisonFilling.Report report, int part) {
        Sizing sizing = report.parts().get(part).filling().sizing().orElseThrow();
        return sizing.readings(Side.LEFT).path().orElseThrow().rows().size();
    }

    private ComparedBook demo() {
        XlsxBook book = XlsxBook.open(DemoBook.write(folder.resolve("demo.xlsx")));
        return ComparedBook.of("demo", Filling.compute(book).sizing().orElseThrow());
    }
}
