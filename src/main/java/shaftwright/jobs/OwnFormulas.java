package shaftwright.jobs;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.template.PoiDependentFormulas;
import shaftwright.xlsx.DependentFormulas;
import shaftwright.xlsx.FormulaBook;
import shaftwright.xlsx.SaveReport;

/**
 * Computes the builder's own formulas anew. What does it is loaded only when a workbook has some
 * that depend on what changed: it takes as long as all the rest of a fill.
 */
final class OwnFormulas implements DependentFormulas {
    private final Journal journal;

    OwnFormulas(Journal journal) {
        this.journal = journal;
    }

    @Override
    public Map<CellPlace, Optional<CellValue>> values(
            FormulaBook book,
            Set<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Set<CellPlace> unvalued) {
        journal.step("Computing your own formulas");
        quietLogging();
        return new PoiDependentFormulas().values(book, cells, changes, unvalued);
    }

    /** Goes on in a line that says what was written. */
    static String said(SaveReport saved) {
        return (saved.recomputed() == 0
                        ? ""
                        : "; " + saved.recomputed() + " of your own formulas computed anew")
                + (saved.dropped().isEmpty() ? "" : "; " + left(saved.dropped()));
    }

    /** Says which are left without a value. */
    static String left(List<CellPlace> cells) {
        return cells.size()
                + " of your own formulas "
                + (cells.size() == 1 ? "is" : "are")
                + " left for your spreadsheet program to compute when it opens the file ("
                + CellList.of(cells)
                + ")";
    }

    /**
     * POI says on standard error that it found no logging set-up, unless it is given the plain one
     * before its first class is loaded.
     */
    static void quietLogging() {
        System.setProperty(
                "log4j2.loggerContextFactory",
                "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
    }
}
