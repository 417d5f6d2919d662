package shaftwright.workbook.template;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;
import shaftwright.workbook.xlsx.DependentFormulas;

/**
 * Evaluates the builder's own formulas with POI, and only where it has earned trust.
 *
 * <p>A cell gets a new value only if its formula uses nothing but plain operators and functions
 * that programs agree on, and if POI, given the previous values of the changed cells, computes
 * exactly what the builder's spreadsheet program had stored there (to 1e-9 relative: some programs
 * store 15 digits). A cell that fails either, and every cell that reads such a cell, loses its
 * stored value instead: an empty cell until a program computes it, but never a wrong number. Where
 * more than 5,000 cells depend on changed ones, all of them are left to the program.
 */
public final class PoiDependentFormulas implements DependentFormulas {
    private static final double RELATIVE = 1e-9;

    /** Differences of nearly equal numbers end near zero, where a relative bound means nothing. */
    private static final double ABSOLUTE = 1e-12;

    /** Beyond this many, evaluating each twice would take longer than the rest of a fill. */
    private static final int MOST_EVALUATED = 5_000;

    @Override
    public Map<CellPlace, Optional<CellValue>> recompute(
            byte[] patchedPackage, Map<CellPlace, CellValue> before, Set<CellPlace> owned) {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(patchedPackage))) {
            PackFunctions.addTo(workbook);
            return new Evaluation(workbook, before, owned).run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The work on one workbook. */
    private static final class Evaluation {
        private final XSSFWorkbook workbook;
        private final XSSFEvaluationWorkbook parsing;
        private final Map<CellPlace, CellValue> before;
        private final Set<CellPlace> owned;
        private final FormulaGraph graph = new FormulaGraph();
        private final Map<CellPlace, Optional<CellValue>> stored = new HashMap<>();
        private final Set<CellPlace> unreliable = new HashSet<>();
        private final Map<CellPlace, Optional<CellValue>> found = new LinkedHashMap<>();

        Evaluation(XSSFWorkbook workbook, Map<CellPlace, CellValue> before, Set<CellPlace> owned) {
            this.workbook = workbook;
            this.parsing = XSSFEvaluationWorkbook.create(workbook);
            this.before = before;
            this.owned = owned;
        }

        Map<CellPlace, Optional<CellValue>> run() {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (isTable((XSSFCell) cell)) {
                            dropTable((XSSFCell) cell);
                        } else if (cell.getCellType() == CellType.FORMULA) {
                            addFormula((XSSFCell) cell);
                        }
                    }
                }
            }
            Set<CellPlace> reached = graph.readersOf(before.keySet());
            if (reached.size() > MOST_EVALUATED) {
                for (CellPlace place : reached) {
                    found.put(place, Optional.empty());
                }
                return found;
            }
            FrozenWorkbook previous = new FrozenWorkbook(parsing, reached, before);
            FrozenWorkbook now = new FrozenWorkbook(parsing, reached, Map.of());
            distrust(reached, previous);
            Set<CellPlace> poisoned = graph.readersOf(unreliable);
            WorkbookEvaluator evaluator = evaluator(now);
            for (CellPlace place : reached) {
                boolean trusted = !unreliable.contains(place) && !poisoned.contains(place);
                found.put(place, trusted ? value(evaluator, now, place) : Optional.empty());
            }
            return found;
        }

        private void addFormula(XSSFCell cell) {
            CellPlace place =
                    new CellPlace(
                            cell.getSheet().getSheetName(),
                            cell.getRowIndex(),
                            cell.getColumnIndex());
            if (owned.contains(place)) {
                return;
            }
            stored.put(place, storedValue(cell));
            if (stored.get(place).isEmpty()) {
                unreliable.add(place);
            }
            if (!addTokens(cell, place) || cell.isPartOfArrayFormulaGroup()) {
                unreliable.add(place);
            }
        }

        private boolean addTokens(XSSFCell cell, CellPlace place) {
            try {
                XSSFCell first = cell;
                if (cell.isPartOfArrayFormulaGroup()) {
                    CellRangeAddress range = cell.getArrayFormulaRange();
                    first =
                            cell.getSheet()
                                    .getRow(range.getFirstRow())
                                    .getCell(range.getFirstColumn());
                }
                return FormulaTokens.addTo(
                        graph,
                        parsing,
                        place,
                        parsing.getFormulaTokens(
                                parsing.getSheet(workbook.getSheetIndex(cell.getSheet()))
                                        .getCell(first.getRowIndex(), first.getColumnIndex())));
            } catch (RuntimeException e) {
                // A formula that POI cannot read: nobody knows what it depends on.
                graph.addReadingAnything(place);
                return false;
            }
        }

        private static boolean isTable(XSSFCell cell) {
            CTCellFormula formula = cell.getCTCell().getF();
            return formula != null && formula.getT() == STCellFormulaType.DATA_TABLE;
        }

        /** A what-if table runs other formulas with replaced inputs; its whole block is dropped. */
        private void dropTable(XSSFCell cell) {
            CellRangeAddress range = CellRangeAddress.valueOf(cell.getCTCell().getF().getRef());
            Area area =
                    new Area(
                            cell.getSheet().getSheetName(),
                            range.getFirstRow(),
                            range.getFirstColumn(),
                            range.getLastRow(),
                            range.getLastColumn());
            for (int i = 0; i < area.size(); i++) {
                if (!owned.contains(area.place(i))) {
                    found.put(area.place(i), Optional.empty());
                    unreliable.add(area.place(i));
                }
            }
        }

        /** Adds to the unreliable cells those that POI computes otherwise than the file says. */
        private void distrust(Set<CellPlace> reached, FrozenWorkbook previous) {
            WorkbookEvaluator evaluator = evaluator(previous);
            for (CellPlace place : reached) {
                if (!unreliable.contains(place)) {
                    Optional<CellValue> computed = value(evaluator, previous, place);
                    if (computed.isEmpty() || !agree(computed.get(), stored.get(place).get())) {
                        unreliable.add(place);
                    }
                }
            }
        }
    }

    private static WorkbookEvaluator evaluator(FrozenWorkbook workbook) {
        return new WorkbookEvaluator(
                workbook, IStabilityClassifier.TOTALLY_IMMUTABLE, workbook.getUDFFinder());
    }

    private static Optional<CellValue> value(
            WorkbookEvaluator evaluator, FrozenWorkbook workbook, CellPlace place) {
        try {
            return value(evaluator.evaluate(workbook.cell(place)));
        } catch (RuntimeException | StackOverflowError e) {
            // Not implemented, or chained too deep: the spreadsheet program will do it.
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
        if (result instanceof ErrorEval error && FormulaError.isValidCode(error.getErrorCode())) {
            return Optional.of(new CellValue.Fault(error.getErrorString()));
        }
        return Optional.empty();
    }

    private static Optional<CellValue> storedValue(XSSFCell cell) {
        if (cell.getRawValue() == null) {
            return Optional.empty();
        }
        return switch (cell.getCachedFormulaResultType()) {
            case NUMERIC -> Optional.of(CellValue.of(cell.getNumericCellValue()));
            case STRING -> Optional.of(CellValue.of(cell.getStringCellValue()));
            case BOOLEAN -> Optional.of(new CellValue.Truth(cell.getBooleanCellValue()));
            case ERROR -> Optional.of(new CellValue.Fault(cell.getErrorCellString()));
            default -> Optional.empty();
        };
    }

    private static boolean agree(CellValue computed, CellValue stored) {
        if (computed instanceof CellValue.Numeric a && stored instanceof CellValue.Numeric b) {
            double largest = Math.max(Math.abs(a.value()), Math.abs(b.value()));
            return Math.abs(a.value() - b.value()) <= RELATIVE * largest + ABSOLUTE;
        }
        return computed.equals(stored);
    }
}
