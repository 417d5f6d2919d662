package shaftwright.template;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.FormulaError;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.xlsx.DependentFormulas;
import shaftwright.xlsx.FormulaBook;
import shaftwright.xlsx.UnreadableBookException;

/**
 * Evaluates the builder's own formulas with POI's evaluator, and only where it has earned trust.
 *
 * <p>A cell gets a new value only if its formula uses nothing but plain operators and functions
 * that programs agree on, and if POI, given what changed cells held before, computes exactly what
 * the builder's spreadsheet program had stored there (to 1e-9 relative: some programs store 15
 * digits). A cell that fails either, and every cell that reads such a cell, has no value that is
 * known. Where more than 100,000 cells depend on changed ones, none of them is computed.
 */
public final class PoiDependentFormulas implements DependentFormulas {
    private static final double RELATIVE = 1e-9;

    /** Differences of nearly equal numbers end near zero, where a relative bound means nothing. */
    private static final double ABSOLUTE = 1e-12;

    /** Beyond this many, evaluating each twice takes longer than a builder likes to wait. */
    private static final int MOST_EVALUATED = 100_000;

    /** Bytes of stack, for cells that read each other in a long chain. */
    private static final long DEEP = 1L << 29;

    @Override
    public Map<CellPlace, Optional<CellValue>> values(
            FormulaBook book,
            Set<CellPlace> cells,
            Map<CellPlace, CellValue> changes,
            Set<CellPlace> unvalued) {
        Map<CellPlace, Optional<CellValue>> found = new LinkedHashMap<>();
        for (CellPlace place : cells) {
            found.put(place, Optional.empty());
        }
        if (cells.size() <= MOST_EVALUATED) {
            onDeepStack(() -> evaluate(book, changes, unvalued, found));
        }
        return found;
    }

    /** What goes wrong there goes wrong here. */
    private static void onDeepStack(Runnable work) {
        FutureTask<Void> task = new FutureTask<>(work, null);
        new Thread(null, task, "builder's formulas", DEEP).start();
        try {
            task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) e.getCause();
        }
    }

    private static void evaluate(
            FormulaBook book,
            Map<CellPlace, CellValue> changes,
            Set<CellPlace> unvalued,
            Map<CellPlace, Optional<CellValue>> found) {
        TrustedFormulas formulas = new TrustedFormulas(book);
        StoredWorkbook before =
                new StoredWorkbook(
                        book, formulas, found.keySet(), Map.of(), PackFunctions.finder());
        WorkbookEvaluator evaluator = evaluator(before);
        for (CellPlace place : found.keySet()) {
            if (!unvalued.contains(place) && !isAsStored(evaluator, before, book, place)) {
                formulas.distrust(place);
            }
        }
        StoredWorkbook now =
                new StoredWorkbook(book, formulas, found.keySet(), changes, PackFunctions.finder());
        WorkbookEvaluator again = evaluator(now);
        found.replaceAll((place, unknown) -> value(again, now, place));
    }

    private static boolean isAsStored(
            WorkbookEvaluator evaluator, StoredWorkbook before, FormulaBook book, CellPlace place) {
        Optional<CellValue> computed = value(evaluator, before, place);
        try {
            return computed.isPresent() && agree(computed.get(), book.value(place));
        } catch (UnreadableBookException e) {
            return false;
        }
    }

    private static WorkbookEvaluator evaluator(StoredWorkbook workbook) {
        return new WorkbookEvaluator(
                workbook, IStabilityClassifier.TOTALLY_IMMUTABLE, workbook.getUDFFinder());
    }

    private static Optional<CellValue> value(
            WorkbookEvaluator evaluator, StoredWorkbook workbook, CellPlace place) {
        try {
            return value(evaluator.evaluate(workbook.cell(place)));
        } catch (RuntimeException | StackOverflowError e) {
            // Not trusted, not implemented, not to be parsed, or chained too deep: the library has
            // many ways to say so.
            return Optional.empty();
        }
    }

    private static Optional<CellValue> value(ValueEval result) {
        if (result instanceof NumberEval number) {
            double value = number.getNumberValue();
            return Double.isFinite(value) ? Optional.of(CellValue.of(value)) : Optional.empty();
        }
        if (result instanceof StringEval text) {
            return Optional.of(CellValue.of(text.getStringValue()));
        }
        if (result instanceof BoolEval truth) {
            return Optional.of(new CellValue.Truth(truth.getBooleanValue()));
        }
        if (result instanceof ErrorEval error
                && error != ErrorEval.CIRCULAR_REF_ERROR
                && FormulaError.isValidCode(error.getErrorCode())) {
            return Optional.of(new CellValue.Fault(error.getErrorString()));
        }
        return Optional.empty();
    }

    private static boolean agree(CellValue computed, CellValue stored) {
        if (computed instanceof CellValue.Numeric a && stored instanceof CellValue.Numeric b) {
            double largest = Math.max(Math.abs(a.value()), Math.abs(b.value()));
            return Math.abs(a.value() - b.value()) <= RELATIVE * largest + ABSOLUTE;
        }
        return computed.equals(stored);
    }
}
