package shaftwright.workbook.template;

import java.util.Set;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.ArrayPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.ErrPtg;
import org.apache.poi.ss.formula.ptg.IntersectionPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.ParenthesisPtg;
import org.apache.poi.ss.formula.ptg.PowerPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import org.apache.poi.ss.formula.ptg.Pxg3D;
import org.apache.poi.ss.formula.ptg.RangePtg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.formula.ptg.ScalarConstantPtg;
import org.apache.poi.ss.formula.ptg.UnaryMinusPtg;
import org.apache.poi.ss.formula.ptg.UnionPtg;
import org.apache.poi.ss.formula.ptg.ValueOperatorPtg;
import shaftwright.functions.WorkbookUnit;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellPlace;

/** Finds out from one parsed formula what it reads and whether its evaluation can be relied on. */
final class FormulaTokens {
    /**
     * Functions on which POI, LibreOffice and Gnumeric gave the same results in this project's
     * comparisons, or whose meaning leaves no room; anything else is left to the spreadsheet
     * program.
     */
    private static final Set<String> RELIABLE =
            Set.of(
                    "ABS",
                    "ACOS",
                    "AND",
                    "ASIN",
                    "ATAN",
                    "ATAN2",
                    "AVERAGE",
                    "CHOOSE",
                    "COS",
                    "COUNT",
                    "COUNTA",
                    "DEGREES",
                    "EXP",
                    "FALSE",
                    "HLOOKUP",
                    "IF",
                    "IFERROR",
                    "INDEX",
                    "ISBLANK",
                    "ISERROR",
                    "ISNA",
                    "ISNUMBER",
                    "ISTEXT",
                    "LARGE",
                    "LEFT",
                    "LEN",
                    "LN",
                    "LOG10",
                    "LOWER",
                    "MATCH",
                    "MAX",
                    "MEDIAN",
                    "MID",
                    "MIN",
                    "NA",
                    "NOT",
                    "OR",
                    "PI",
                    "POWER",
                    "PRODUCT",
                    "RADIANS",
                    "RIGHT",
                    "ROUND",
                    "SIGN",
                    "SIN",
                    "SMALL",
                    "SQRT",
                    "SUM",
                    "SUMPRODUCT",
                    "SUMSQ",
                    "TAN",
                    "TRIM",
                    "TRUE",
                    "UPPER",
                    "VLOOKUP");

    /** Functions that read cells which their arguments do not show. */
    private static final Set<String> READS_ANYTHING =
            Set.of("INDIRECT", "OFFSET", "CELL", "GETPIVOTDATA");

    /** Names may stand for formulas with names; deeper nesting than this is a circle. */
    private static final int DEEPEST = 20;

    private final EvaluationWorkbook workbook;
    private final FormulaGraph graph;
    private final CellPlace reader;
    private boolean reliable = true;

    private FormulaTokens(EvaluationWorkbook workbook, FormulaGraph graph, CellPlace reader) {
        this.workbook = workbook;
        this.graph = graph;
        this.reader = reader;
    }

    /**
     * Adds what a formula reads to the graph.
     *
     * @return whether its evaluation can be relied on
     */
    static boolean addTo(
            FormulaGraph graph, EvaluationWorkbook workbook, CellPlace reader, Ptg[] tokens) {
        FormulaTokens formula = new FormulaTokens(workbook, graph, reader);
        formula.look(tokens, 0);
        return formula.reliable;
    }

    private void look(Ptg[] tokens, int depth) {
        if (depth > DEEPEST) {
            readAnything();
            return;
        }
        Ptg previous = null;
        for (Ptg token : tokens) {
            if (previous instanceof PowerPtg && token instanceof UnaryMinusPtg) {
                // -A1^2: POI negates the power, spreadsheet programs square the negative.
                reliable = false;
            }
            look(token, depth);
            previous = token;
        }
    }

    private void look(Ptg token, int depth) {
        if (token instanceof RefPtgBase cell) {
            read(token, cell.getRow(), cell.getColumn(), cell.getRow(), cell.getColumn());
        } else if (token instanceof AreaPtgBase area) {
            read(
                    token,
                    area.getFirstRow(),
                    area.getFirstColumn(),
                    area.getLastRow(),
                    area.getLastColumn());
        } else if (token instanceof NamePtg name) {
            lookIntoName(workbook.getName(name), depth);
        } else if (token instanceof NameXPxg name && PackFunctions.isOne(name.getNameName())) {
            // Whether Calc and POI agree on it is tried on the stored value.
            lookIntoUnit(name.getNameName(), depth);
        } else if (token instanceof NameXPxg name && name.getExternalWorkbookNumber() <= 0) {
            int sheet =
                    name.getSheetName() == null ? -1 : workbook.getSheetIndex(name.getSheetName());
            lookIntoName(workbook.getName(name.getNameName(), sheet), depth);
        } else if (token instanceof AbstractFunctionPtg function) {
            // The name of a function that is none of the program's own is a token by itself.
            reliable &= function.isExternalFunction() || RELIABLE.contains(function.getName());
            if (READS_ANYTHING.contains(function.getName())) {
                readAnything();
            }
        } else if (token instanceof RangePtg
                || token instanceof UnionPtg
                || token instanceof IntersectionPtg) {
            readAnything();
        } else {
            reliable &=
                    token instanceof ValueOperatorPtg
                            || token instanceof ParenthesisPtg
                            || token instanceof AttrPtg
                            || (token instanceof ScalarConstantPtg && !(token instanceof ErrPtg))
                            || token instanceof ArrayPtg;
        }
    }

    private void lookIntoName(EvaluationName name, int depth) {
        if (name == null || name.isFunctionName() || !name.hasFormula()) {
            reliable = false;
        } else {
            look(name.getNameDefinition(), depth + 1);
        }
    }

    private void lookIntoUnit(String function, int depth) {
        EvaluationName unit =
                workbook.getName(WorkbookUnit.NAME, workbook.getSheetIndex(reader.sheet()));
        if (unit != null && PackFunctions.readsUnit(function)) {
            lookIntoName(unit, depth);
        }
    }

    private void readAnything() {
        reliable = false;
        graph.addReadingAnything(reader);
    }

    private void read(Ptg token, int row, int column, int lastRow, int lastColumn) {
        if (!(token instanceof Pxg sheetReference)) {
            addArea(reader.sheet(), row, column, lastRow, lastColumn);
            return;
        }
        if (sheetReference.getExternalWorkbookNumber() > 0) {
            reliable = false;
            return;
        }
        int first = workbook.getSheetIndex(sheetReference.getSheetName());
        int last = first;
        if (token instanceof Pxg3D several && several.getLastSheetName() != null) {
            last = workbook.getSheetIndex(several.getLastSheetName());
            reliable = false;
        }
        for (int sheet = Math.max(0, first); sheet <= last; sheet++) {
            addArea(workbook.getSheetName(sheet), row, column, lastRow, lastColumn);
        }
    }

    private void addArea(String sheet, int row, int column, int lastRow, int lastColumn) {
        graph.addReading(
                reader,
                new Area(
                        sheet,
                        Math.min(row, lastRow),
                        Math.min(column, lastColumn),
                        Math.max(row, lastRow),
                        Math.max(column, lastColumn)));
    }
}
