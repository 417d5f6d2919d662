package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.filling.LiveCells;
import shaftwright.formula.NamedFormula;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/**
 * What is declared of versions, held against the workbook that program version 0.1.0 wrote and
 * against the listing of the contract that is out among builders: nobody may forget to say that an
 * input or a line is new, or that a formula was changed.
 */
class DeclaredVersionsTest {
    private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9_]*");

    private static final ReleasedContract RELEASED = ReleasedContract.listed();

    @TempDir private static Path folder;

    private static Path thenFile;
    private static Path nowFile;
    private static XlsxBook then;
    private static XlsxBook now;

    @BeforeAll
    static void workbooks() throws IOException {
        thenFile = FirstVersion.copyTo(folder.resolve("then.xlsx"));
        then = XlsxBook.open(thenFile);
        nowFile = folder.resolve("now.xlsx");
        NewBook.write(nowFile, LengthUnit.INCH, FirstVersion.SCENARIOS);
        now = XlsxBook.open(nowFile);
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
    void everyFormulaThatIsNotTheFirstVersionsSaysWhichRevisedIt() throws IOException {
        Map<String, List<LiveCells.Cell>> before = cells(then);
        Map<String, List<LiveCells.Cell>> after = cells(now);
        Map<String, String> wrong = new TreeMap<>();
        try (Texts old = new Texts(then, thenFile);
                Texts current = new Texts(now, nowFile)) {
            for (LiveLine line : LiveLines.all().lines()) {
                if (line.since() > 1) {
                    continue;
                }
                String differs =
                        difference(before.get(line.name()), after.get(line.name()), old, current);
                if (differs.isEmpty() != (line.revised() == 1)
                        || line.revised() > Contract.VERSION) {
                    wrong.put(
                            line.name() + ", said to be revised in " + line.revised(),
                            differs.isEmpty() ? "the same" : differs);
                }
            }
        }
        assertThat(wrong).as("live lines with a wrong revised(…)").isEmpty();
    }

    /** The first version's workbook says nothing of what came after it; the listing does. */
    @Test
    void everyInputThatTheReleasedContractHadNotIsSinceALaterOne() {
        Map<String, String> wrong = new TreeMap<>();
        for (Input input : Contract.inputs()) {
            ReleasedContract.Entry before = RELEASED.inputs().get(input.name());
            if (before == null ? later(input.since()) : before.since() == input.since()) {
                continue;
            }
            wrong.put(input.name(), "said to be since " + input.since() + was(before));
        }
        assertThat(wrong).as("inputs with a wrong since(…)").isEmpty();
    }

    @Test
    void everyLineThatIsNotTheReleasedContractsSaysWhichBroughtOrRevisedIt() {
        Map<String, String> wrong = new TreeMap<>();
        for (LiveLine line : LiveLines.all().lines()) {
            ReleasedContract.Entry before = RELEASED.lines().get(line.name());
            ReleasedContract.Entry after = ReleasedContract.Entry.of(line);
            if (before == null ? later(line.since()) : after.equals(before)) {
                continue;
            }
            if (before != null
                    && before.since() == line.since()
                    && !before.hash().equals(after.hash())
                    && later(line.revised())) {
                continue;
            }
            wrong.put(
                    line.name(),
                    "said to be since "
                            + line.since()
                            + ", revised in "
                            + line.revised()
                            + was(before));
        }
        assertThat(wrong).as("live lines with a wrong since(…) or revised(…)").isEmpty();
    }

    private static boolean later(int version) {
        return version > RELEASED.version() && version <= Contract.VERSION;
    }

    private static String was(ReleasedContract.Entry before) {
        return before == null
                ? ", and not in contract version " + RELEASED.version()
                : "; in contract version "
                        + RELEASED.version()
                        + " since "
                        + before.since()
                        + ", revised in "
                        + before.revised();
    }

    /** Formulas that builders wrote over them, and older workbooks, rely on them. */
    @Test
    void noNameOfTheReleasedContractIsGoneOrHasOtherCells() {
        Map<String, Integer> rows = new TreeMap<>();
        Contract.inputs().forEach(input -> rows.put(input.name(), input.grid().rows()));
        LiveLines.all().lines().forEach(line -> rows.put(line.name(), line.grid().rows()));
        Map<String, Integer> before = new TreeMap<>();
        RELEASED.inputs().forEach((name, entry) -> before.put(name, entry.rows()));
        RELEASED.lines().forEach((name, entry) -> before.put(name, entry.rows()));

        assertThat(rows).containsAllEntriesOf(before);
    }

    /** What a formula reads was not there before the version that brought it. */
    @Test
    void noFormulaIsOlderThanWhatItReads() {
        Map<String, Integer> since = new HashMap<>();
        for (Input input : Contract.inputs()) {
            since.put(input.name(), input.since());
        }
        for (LiveLine line : LiveLines.all().lines()) {
            since.put(line.name(), line.since());
        }
        Map<String, String> wrong = new TreeMap<>();
        for (LiveLine line : LiveLines.all().lines()) {
            String formula = line.isEngine() ? "" : line.formula().at(new Index(Side.LEFT, 0, 0));
            Matcher names = NAME.matcher(LITERAL.matcher(formula).replaceAll(""));
            while (names.find()) {
                int read = since.getOrDefault(names.group(), 1);
                if (read > line.revised()) {
                    wrong.put(
                            line.name() + ", said to be revised in " + line.revised(),
                            names.group() + " is since " + read);
                }
            }
        }
        assertThat(wrong).as("live lines with too low a revised(…)").isEmpty();
    }

    private static String difference(
            List<LiveCells.Cell> before, List<LiveCells.Cell> after, Texts old, Texts current) {
        if (before.size() != after.size()) {
            return before.size() + " cells, now " + after.size();
        }
        for (int i = 0; i < before.size(); i++) {
            if (!old.stored(before.get(i)).equals(current.stored(after.get(i)))) {
                // Shared among cells in one of the two, perhaps, and written out in the other.
                String was = old.full(before.get(i));
                String is = current.full(after.get(i));
                if (!was.equals(is)) {
                    return "\n  was " + was + "\n  is  " + is + "\n";
                }
            }
        }
        return "";
    }

    /** By line: its cells in order. */
    private static Map<String, List<LiveCells.Cell>> cells(XlsxBook book) {
        Map<String, Area> names = common(book);
        Map<String, List<LiveCells.Cell>> cells = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (LiveCells.Cell cell :
                LiveCells.find(
                                names,
                                book.read(LiveCells.areas(names)),
                                FirstVersion.SCENARIOS,
                                1,
                                problems)
                        .all()) {
            cells.computeIfAbsent(cell.line().name(), name -> new ArrayList<>()).add(cell);
        }
        assertThat(problems).isEmpty();
        return cells;
    }

    private static Map<String, Area> common(XlsxBook book) {
        Map<String, Area> names = new HashMap<>(book.names());
        names.keySet().retainAll(then.names().keySet());
        return names;
    }

    /** Formulas of one workbook with names for addresses. */
    private static final class Texts implements AutoCloseable {
        private final NamedFormula named;
        private final XSSFWorkbook workbook;
        private final XSSFEvaluationWorkbook parsing;

        Texts(XlsxBook book, Path file) throws IOException {
            named = new NamedFormula(common(book));
            try (InputStream in = Files.newInputStream(file)) {
                workbook = new XSSFWorkbook(in);
            }
            parsing = XSSFEvaluationWorkbook.create(workbook);
        }

        /** As the file has it: of a shared formula that of its first cell. */
        String stored(LiveCells.Cell cell) {
            return named.of(cell.content().formula(), cell.place().sheet());
        }

        /** As it stands in its cell. */
        String full(LiveCells.Cell cell) {
            CellPlace place = cell.place();
            String formula =
                    workbook.getSheet(place.sheet())
                            .getRow(place.row())
                            .getCell(place.column())
                            .getCellFormula();
            int sheet = workbook.getSheetIndex(place.sheet());
            String spelled =
                    FormulaRenderer.toFormulaString(
                            parsing,
                            FormulaParser.parse(formula, parsing, FormulaType.CELL, sheet));
            return named.of(spelled, place.sheet());
        }

        @Override
        public void close() throws IOException {
            workbook.close();
        }
    }
}
