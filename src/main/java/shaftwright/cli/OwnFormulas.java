package shaftwright.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.template.PoiDependentFormulas;
import shaftwright.workbook.xlsx.DependentFormulas;
import shaftwright.workbook.xlsx.FormulaBook;

/**
 * Computes the builder's own formulas anew. What does it is loaded only when a workbook has some
 * that depend on what changed: it takes as long as all the rest of a fill.
 */
final class OwnFormulas implements DependentFormulas {
    private final Progress progress;

    OwnFormulas(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Map<CellPlace, Optional<CellValue>> values(
            FormulaBook book,
            Set<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Set<CellPlace> unvalued) {
        progress.step("Computing your own formulas");
        quietLogging();
        return new PoiDependentFormulas().values(book, cells, changes, unvalued);
    }

    /** Says that some are left alone, as the beginning of a sentence. */
    static String left(List<CellPlace> cells) {
        return cells.size()
                + (cells.size() == 1
                        ? " of your own formulas is left for your spreadsheet program"
                        : " of your own formulas are left for your spreadsheet program");
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
