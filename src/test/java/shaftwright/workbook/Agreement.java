package shaftwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.OpenBook;
import shaftwright.book.Problem;
import shaftwright.contract.Contract;
import shaftwright.filling.Filling;
import shaftwright.filling.LiveCells;
import shaftwright.reading.Sizing;

/**
 * A workbook's live cells, as some program computed them, beside what the core makes of the same
 * typed cells. Numbers must agree to {@link #TOLERANCE} of their size, absolutely below 1; texts
 * and errors exactly; an empty text and a blank cell count as the same.
 */
public final class Agreement {
    /** Relative for numbers above 1, absolute below. */
    public static final double TOLERANCE = 1e-9;

    private static final int SHOWN = 12;

    private static final Set<String> SQUARES =
            Set.of("row_squared", "row_centred", "term_reach", "coef_reach_squared");

    private final List<String> differences = new ArrayList<>();
    private final Map<String, Integer> byLine = new TreeMap<>();
    private int cells;

    private Agreement() {}

    /** Compares the values that stand in the book. */
    public static Agreement ofSaved(OpenBook book) {
        return of(book, null);
    }

    /** Compares the values in a copy that some program computed and saved, nothing moved. */
    public static Agreement ofSaved(OpenBook book, OpenBook saved) {
        Cells cells = saved.read(LiveCells.areas(saved.names()));
        return of(book, place -> cells.at(place).value());
    }

    /** Compares values computed elsewhere for the book's cells. */
    public static Agreement of(OpenBook book, Function<CellPlace, CellValue> computed) {
        Filling.Report report = Filling.compute(book);
        assertThat(report.problems().stream().filter(Problem::isError))
                .as("what keeps %s from being filled", book.title())
                .isEmpty();
        Sizing sizing = report.sizing().orElseThrow();
        Agreement agreement = new Agreement();
        for (LiveCells.Cell cell : liveCells(book, sizing.inputs().scenarios())) {
            if (cell.content().hasFormula()) {
                CellValue got =
                        computed == null ? cell.content().value() : computed.apply(cell.place());
                agreement.compare(cell, cell.line().core().at(sizing, cell.index()), got);
            }
        }
        return agreement;
    }

    /** All live cells of a book, with what stands in them. */
    public static List<LiveCells.Cell> liveCells(OpenBook book, int scenarios) {
        Map<String, Area> names = book.names();
        Collection<Area> areas = LiveCells.areas(names);
        List<Problem> problems = new ArrayList<>();
        List<LiveCells.Cell> cells =
                LiveCells.find(names, book.read(areas), scenarios, Contract.VERSION, problems)
                        .all();
        assertThat(problems).as("live cells of %s", book.title()).isEmpty();
        return cells;
    }

    private void compare(LiveCells.Cell cell, CellValue core, CellValue got) {
        cells++;
        if (same(core, got, scale(cell.line().name()))) {
            return;
        }
        byLine.merge(cell.line().name(), 1, Integer::sum);
        if (byLine.get(cell.line().name()) == 1 && differences.size() < SHOWN) {
            String formula = cell.content().formula();
            differences.add(
                    cell.place()
                            + ", "
                            + cell.line().name()
                            + ", "
                            + cell.index()
                            + ": core "
                            + core
                            + ", cell "
                            + got
                            + " by "
                            + formula.substring(0, Math.min(200, formula.length())));
        }
    }

    /** Where numbers cancel out: a squared reach off by 1000e-9 mm² is a reach off by 1e-9 mm. */
    private static double scale(String line) {
        return SQUARES.contains(line) ? 1_000 : 1;
    }

    private static boolean same(CellValue core, CellValue got, double least) {
        if (core instanceof CellValue.Numeric wanted && got instanceof CellValue.Numeric found) {
            double size = Math.max(least, Math.abs(wanted.value()));
            return Math.abs(wanted.value() - found.value()) <= TOLERANCE * size;
        }
        if (core instanceof CellValue.Text text && text.value().isEmpty()) {
            return got instanceof CellValue.Blank || got.equals(core);
        }
        return core.equals(got);
    }

    /** Cells that were compared. */
    public int cells() {
        return cells;
    }

    /** Names of the lines that differ somewhere. */
    public Set<String> lines() {
        return byLine.keySet();
    }

    /** What differs, empty when all agree. */
    public String differences() {
        return differences.isEmpty() ? "" : byLine + "\n  " + String.join("\n  ", differences);
    }
}
