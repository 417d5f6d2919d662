package shaftwright.template;

import java.util.Set;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.ArrayPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.ErrPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.ParenthesisPtg;
import org.apache.poi.ss.formula.ptg.PowerPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg3D;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.formula.ptg.ScalarConstantPtg;
import org.apache.poi.ss.formula.ptg.UnaryMinusPtg;
import org.apache.poi.ss.formula.ptg.ValueOperatorPtg;

/** Says of a parsed formula whether its evaluation can be relied on. */
final class FormulaTrust {
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
                    "CEILING",
                    "CHOOSE",
                    "COS",
                    "COUNT",
                    "COUNTA",
                    "DEGREES",
                    "EXP",
                    "FALSE",
                    "FLOOR",
                    "HLOOKUP",
                    "IF",
                    "IFERROR",
                    "INDEX",
                    "INT",
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
                    "MOD",
                    "NA",
                    "NOT",
                    "OR",
                    "PI",
                    "POWER",
                    "PRODUCT",
                    "RADIANS",
                    "RIGHT",
                    "ROUND",
                    "ROUNDDOWN",
                    "ROUNDUP",
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

    /** Whether the tokens stand under a name, where relative references shift with each use. */
    private final boolean named;

    private FormulaTrust(boolean named) {
        this.named = named;
    }

    /**
     * Checks a cell's formula.
     *
     * @throws UntrustedFormulaException if it cannot be relied on
     */
    static void check(Ptg[] tokens) {
        new FormulaTrust(false).look(tokens);
    }

    /**
     * Checks a name's formula.
     *
     * @throws UntrustedFormulaException if it cannot be relied on
     */
    static void checkName(Ptg[] tokens) {
        new FormulaTrust(true).look(tokens);
    }

    private void look(Ptg[] tokens) {
        Ptg previous = null;
        for (Ptg token : tokens) {
            // -A1^2: POI negates the power, spreadsheet programs square the negative.
            boolean negated = previous instanceof PowerPtg && token instanceof UnaryMinusPtg;
            if (negated || !isReliable(token)) {
                throw new UntrustedFormulaException("may be computed otherwise");
            }
            previous = token;
        }
    }

    private boolean isReliable(Ptg token) {
        if (token instanceof Pxg3D several && several.getLastSheetName() != null) {
            return false;
        }
        if (token instanceof RefPtgBase cell) {
            return !named || !(cell.isRowRelative() || cell.isColRelative());
        }
        if (token instanceof AreaPtgBase area) {
            return !named || isFixed(area);
        }
        if (token instanceof NamePtg || token instanceof NameXPxg) {
            // What a name stands for is looked at when it is asked for, a function as such.
            return true;
        }
        if (token instanceof AbstractFunctionPtg function) {
            // The name of a function that is none of the program's own is a token by itself.
            return function.isExternalFunction() || RELIABLE.contains(function.getName());
        }
        return token instanceof ValueOperatorPtg
                || token instanceof ParenthesisPtg
                || token instanceof AttrPtg
                || (token instanceof ScalarConstantPtg && !(token instanceof ErrPtg))
                || token instanceof ArrayPtg;
    }

    private static boolean isFixed(AreaPtgBase area) {
        return !area.isFirstRowRelative()
                && !area.isLastRowRelative()
                && !area.isFirstColRelative()
                && !area.isLastColRelative();
    }
}
