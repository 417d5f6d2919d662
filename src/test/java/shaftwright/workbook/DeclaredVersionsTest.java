package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.live.LiveCells;
import shaftwright.workbook.live.LiveLine;
import shaftwright.workbook.live.LiveLines;
import shaftwright.workbook.template.Template;
import shaftwright.workbook.xlsx.XlsxBook;

/**
 * What is declared of versions, held against the workbook that program version 0.1.0 wrote: nobody
 * may forget to say that an input or a line is new, or that a formula was changed.
 */
class DeclaredVersionsTest {
    private static XlsxBook then;
    private static XlsxBook now;

    @BeforeAll
    static void workbooks(@TempDir Path folder) throws IOException {
        then = XlsxBook.open(FirstVersion.copyTo(folder.resolve("then.xlsx")));
        Path made = folder.resolve("now.xlsx");
        Template.write(made, LengthUnit.INCH, FirstVersion.SCENARIOS, Map.of());
        now = XlsxBook.open(made);
    }

    @Test
    void everyInputThatTheFirstVersionHadNotSaysWhichBroughtIt() {
        List<String> wrong = new ArrayList<>();
        for (Input input : Contract.inputs()) {
            boolean first = then.names().containsKey(input.definedName(Side.LEFT));
            if (first != (input.since() == 1) || input.since() > Contract.VERSION) {
                wrong.add(input.name() + ", said to be since " + input.since());
            }
        }
        assertThat(wrong).as("inputs with a wrong since(…)").isEmpty();
    }

    @Test
    void everyLineThatTheFirstVersionHadNotSaysWhichBroughtIt() {
        List<String> wrong = new ArrayList<>();
        for (LiveLine line : LiveLines.all().lines()) {
            boolean first = then.names().containsKey(line.definedName(Side.LEFT));
            if (first != (line.since() == 1) || line.since() > Contract.VERSION) {
                wrong.add(line.name() + ", said to be since " + line.since());
            }
        }
        assertThat(wrong).as("live lines with a wrong since(…)").isEmpty();
    }

    /** Formulas that builders wrote over them, and older workbooks, rely on them. */
    @Test
    void noNameOfTheFirstVersionIsGone() {
        assertThat(now.names()).containsKeys(then.names().keySet().toArray(new String[0]));
    }

    /** Else an older workbook would be said to have too few or too many cells. */
    @Test
    void noNameOfTheFirstVersionHasOtherCells() {
        Map<String, String> wrong = new TreeMap<>();
        for (String name : then.names().keySet()) {
            Area before = then.names().get(name);
            Area after = now.names().getOrDefault(name, before);
            if (before.size() != after.size()) {
                wrong.put(name, before.size() + " cells before, " + after.size() + " now");
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyFormulaThatIsNotTheFirstVersionsSaysWhichRevisedIt() {
        Map<String, List<String>> before = formulas(then);
        Map<String, List<String>> after = formulas(now);
        Map<String, String> wrong = new TreeMap<>();
        for (LiveLine line : LiveLines.all().lines()) {
            if (line.since() > 1) {
                continue;
            }
            List<String> was = before.get(line.name());
            List<String> is = after.get(line.name());
            if (is.equals(was) != (line.revised() == 1) || line.revised() > Contract.VERSION) {
                wrong.put(
                        line.name() + ", said to be revised in " + line.revised(),
                        difference(was, is));
            }
        }
        assertThat(wrong).as("live lines with a wrong revised(…)").isEmpty();
    }

    private static String difference(List<String> was, List<String> is) {
        for (int cell = 0; cell < Math.min(was.size(), is.size()); cell++) {
            if (!was.get(cell).equals(is.get(cell))) {
                return "\n  was " + was.get(cell) + "\n  is  " + is.get(cell) + "\n";
            }
        }
        return was.size() == is.size() ? "the same" : was.size() + " cells, now " + is.size();
    }

    /** By line: the formulas of its cells in order, with names for addresses. */
    private static Map<String, List<String>> formulas(XlsxBook book) {
        Map<String, Area> names = new HashMap<>(book.names());
        names.keySet().retainAll(then.names().keySet());
        NamedFormula named = new NamedFormula(names);
        Cells cells = book.read(LiveCells.areas(names));
        Map<String, List<String>> formulas = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (LiveCells.Cell cell :
                LiveCells.find(names, cells, FirstVersion.SCENARIOS, 1, problems).all()) {
            formulas.computeIfAbsent(cell.line().name(), name -> new ArrayList<>())
                    .add(named.of(cell.content().formula(), cell.place().sheet()));
        }
        assertThat(problems).isEmpty();
        return formulas;
    }
}
