package shaftwright.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.SharedFormula;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumericValueEval;
import org.apache.poi.ss.formula.eval.StringValueEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.BaseXSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/**
 * A workbook's formulas computed by Apache POI's evaluator, whatever values the file holds.
 *
 * <p>Left to itself POI walks the list of all defined names for every name in every formula, and
 * writes out and parses again a shared formula for every cell that shares it; that is most of its
 * time on these workbooks. Here names are looked up once, and a shared formula is parsed once.
 */
public final class PoiRecalculation implements AutoCloseable {
    private final XSSFWorkbook workbook;
    private final Formulas formulas;
    private final WorkbookEvaluator evaluator;

    private PoiRecalculation(XSSFWorkbook workbook) {
        this.workbook = workbook;
        formulas = new Formulas(workbook);
        evaluator = new WorkbookEvaluator(formulas, IStabilityClassifier.TOTALLY_IMMUTABLE, null);
    }

    /** Opens a file; nothing is computed yet. */
    public static PoiRecalculation of(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new PoiRecalculation(new XSSFWorkbook(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a formula cell comes to. */
    public CellValue value(CellPlace place) {
        EvaluationSheet sheet = formulas.getSheet(formulas.getSheetIndex(place.sheet()));
        ValueEval value = evaluator.evaluate(sheet.getCell(place.row(), place.column()));
        if (value instanceof NumericValueEval number && !(value instanceof BoolEval)) {
            return CellValue.of(number.getNumberValue());
        }
        if (value instanceof StringValueEval text) {
            return CellValue.of(text.getStringValue());
        }
        if (value instanceof ErrorEval error) {
            return new CellValue.Fault(error.getErrorString());
        }
        return value instanceof BoolEval truth
                ? new CellValue.Truth(truth.getBooleanValue())
                : CellValue.BLANK;
    }

    /** Types into a cell; everything is computed anew from there on. */
    public void type(CellPlace place, CellValue value) {
        XSSFCell cell =
                workbook.getSheet(place.sheet())
                        .getRow(place.row())
                        .getCell(place.column(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        if (value instanceof CellValue.Numeric number) {
            cell.setCellValue(number.value());
        } else if (value instanceof CellValue.Text text) {
            // Over an inline text POI would leave what is read of the cell as it was.
            cell.setBlank();
            cell.setCellValue(text.value());
        } else {
            cell.setBlank();
        }
        evaluator.clearAllCachedResultValues();
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }

    /** POI's own view of the workbook, with names and shared formulas remembered. */
    private static final class Formulas extends BaseXSSFEvaluationWorkbook {
        private final XSSFEvaluationWorkbook plain;
        private final SharedFormula shift;
        private final Map<String, EvaluationName> byName = new HashMap<>();
        private final Map<Integer, EvaluationName> byNumber = new HashMap<>();
        private final Map<String, Shared> shared = new HashMap<>();

        @SuppressWarnings("ArrayRecordComponent") // the library hands them on as an array
        private record Shared(Ptg[] tokens, int row, int column) {}

        Formulas(XSSFWorkbook workbook) {
            super(workbook);
            plain = XSSFEvaluationWorkbook.create(workbook);
            shift = new SharedFormula(getSpreadsheetVersion());
        }

        @Override
        public EvaluationName getName(String name, int sheet) {
            if (!byName.containsKey(name)) {
                byName.put(name, super.getName(name, sheet));
            }
            return byName.get(name);
        }

        @Override
        public EvaluationName getName(NamePtg name) {
            return byNumber.computeIfAbsent(
                    name.getIndex(), number -> new Remembered(super.getName(name)));
        }

        @Override
        public int getSheetIndex(EvaluationSheet sheet) {
            return plain.getSheetIndex(sheet);
        }

        @Override
        public EvaluationSheet getSheet(int index) {
            return plain.getSheet(index);
        }

        @Override
        public Ptg[] getFormulaTokens(EvaluationCell cell) {
            int sheet = plain.getSheetIndex(cell.getSheet());
            XSSFCell own =
                    _uBook.getSheetAt(sheet)
                            .getRow(cell.getRowIndex())
                            .getCell(cell.getColumnIndex());
            CTCellFormula formula = own.getCTCell().getF();
            if (!formula.isSetSi()) {
                return parse(formula.getStringValue(), cell, sheet);
            }
            String key = sheet + " " + formula.getSi();
            if (formula.isSetRef()) {
                shared.putIfAbsent(
                        key,
                        new Shared(
                                parse(formula.getStringValue(), cell, sheet),
                                cell.getRowIndex(),
                                cell.getColumnIndex()));
            }
            Shared first = shared.get(key);
            if (first == null) {
                return plain.getFormulaTokens(cell);
            }
            return shift.convertSharedFormulas(
                    first.tokens(),
                    cell.getRowIndex() - first.row(),
                    cell.getColumnIndex() - first.column());
        }

        private Ptg[] parse(String text, EvaluationCell cell, int sheet) {
            return FormulaParser.parse(text, this, FormulaType.CELL, sheet, cell.getRowIndex());
        }
    }

    /** A name whose definition is parsed once. */
    private static final class Remembered implements EvaluationName {
        private final EvaluationName name;
        private Ptg[] definition;

        Remembered(EvaluationName name) {
            this.name = name;
        }

        @Override
        public String getNameText() {
            return name.getNameText();
        }

        @Override
        public boolean isFunctionName() {
            return name.isFunctionName();
        }

        @Override
        public boolean hasFormula() {
            return name.hasFormula();
        }

        @Override
        public Ptg[] getNameDefinition() {
            if (definition == null) {
                definition = name.getNameDefinition();
            }
            return definition;
        }

        @Override
        public boolean isRange() {
            return name.isRange();
        }

        @Override
        public NamePtg createPtg() {
            return name.createPtg();
        }
    }
}
