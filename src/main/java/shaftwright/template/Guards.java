package shaftwright.template;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.formula.FormulaRenderingWorkbook;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.WorkbookDependentFormula;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.EvaluationException;
import org.apache.poi.ss.formula.eval.OperandResolver;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.AddPtg;
import org.apache.poi.ss.formula.ptg.AttrPtg;
import org.apache.poi.ss.formula.ptg.DividePtg;
import org.apache.poi.ss.formula.ptg.MultiplyPtg;
import org.apache.poi.ss.formula.ptg.OperationPtg;
import org.apache.poi.ss.formula.ptg.ParenthesisPtg;
import org.apache.poi.ss.formula.ptg.PercentPtg;
import org.apache.poi.ss.formula.ptg.PowerPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.SubtractPtg;
import org.apache.poi.ss.formula.ptg.UnaryMinusPtg;
import org.apache.poi.ss.formula.ptg.UnaryPlusPtg;

/**
 * Functions put around operands on which programs differ, so that such a case is met when a formula
 * is computed and its value not relied on.
 *
 * <ul>
 *   <li>A text where a number is wanted: {@code 1/2} is a date in one program and an error in
 *       another, {@code 2.5} depends on the language. A text of digits only is the same number
 *       everywhere.
 *   <li>A number next to a step of ROUNDUP, INT and their like: some programs look at 15 digits
 *       first, others at all.
 * </ul>
 */
final class Guards {
    private static final String NUMBER = "SHAFTWRIGHT_NUMBER";
    private static final String STEP = "SHAFTWRIGHT_STEP";

    /** The functions by name. */
    static final Map<String, FreeRefFunction> FUNCTIONS =
            Map.of(NUMBER, Guards::number, STEP, Guards::besideSteps);

    /** Functions of numbers only. */
    private static final Set<String> OF_NUMBERS =
            Set.of(
                    "ABS", "ACOS", "ASIN", "ATAN", "ATAN2", "COS", "DEGREES", "EXP", "LN", "LOG10",
                    "POWER", "RADIANS", "ROUND", "SIGN", "SIN", "SQRT", "TAN");

    /** Functions that take steps: of one, of a power of ten, or of their second argument. */
    private static final Set<String> STEPS_OF_ONE = Set.of("INT");

    private static final Set<String> STEPS_OF_TEN = Set.of("ROUNDUP", "ROUNDDOWN");
    private static final Set<String> STEPS = Set.of("MOD", "CEILING", "FLOOR");

    /** Programs agree on what is so near to a step, relative to its number, that it lies on it. */
    private static final double ON_STEP = 1e-9;

    private static final String DIGITS = "[0-9]{0,15}";

    private Guards() {}

    /** Whether there is an operand to put one around. */
    static boolean areNeeded(Ptg[] tokens) {
        for (Ptg token : tokens) {
            if (isArithmetic(token) || takesNumbers(token)) {
                return true;
            }
        }
        return false;
    }

    private static boolean takesNumbers(Ptg token) {
        if (!(token instanceof AbstractFunctionPtg function)) {
            return false;
        }
        String name = function.getName();
        return OF_NUMBERS.contains(name)
                || STEPS_OF_ONE.contains(name)
                || STEPS_OF_TEN.contains(name)
                || STEPS.contains(name);
    }

    private static boolean isArithmetic(Ptg token) {
        return token instanceof AddPtg
                || token instanceof SubtractPtg
                || token instanceof MultiplyPtg
                || token instanceof DividePtg
                || token instanceof PowerPtg
                || token instanceof PercentPtg
                || token instanceof UnaryMinusPtg
                || token instanceof UnaryPlusPtg;
    }

    /** A formula's text with guards around its operands. */
    static String around(FormulaRenderingWorkbook workbook, Ptg[] tokens) {
        Deque<String> texts = new ArrayDeque<>();
        for (Ptg token : tokens) {
            if (token instanceof ParenthesisPtg) {
                texts.push("(" + texts.pop() + ")");
            } else if (token instanceof WorkbookDependentFormula reference) {
                texts.push(reference.toFormulaString(workbook));
            } else if (token instanceof OperationPtg operation && !isControl(token)) {
                texts.push(around(operation, texts));
            } else if (!isControl(token)) {
                texts.push(token.toFormulaString());
            }
        }
        return texts.pop();
    }

    private static boolean isControl(Ptg token) {
        return token instanceof AttrPtg attribute && !attribute.isSum();
    }

    private static String around(OperationPtg operation, Deque<String> texts) {
        String[] operands = new String[operation.getNumberOfOperands()];
        for (int i = operands.length - 1; i >= 0; i--) {
            operands[i] = texts.pop();
        }
        if (isArithmetic(operation) || takesNumbers(operation)) {
            for (int i = 0; i < operands.length; i++) {
                operands[i] = isNumber(operands[i]) ? operands[i] : call(NUMBER, operands[i]);
            }
        }
        if (operation instanceof AbstractFunctionPtg function) {
            String name = function.getName();
            if (STEPS_OF_ONE.contains(name)) {
                operands[0] = call(STEP, operands[0] + ",1");
            } else if (STEPS_OF_TEN.contains(name)) {
                operands[0] = call(STEP, operands[0] + ",10^-" + operands[1]);
            } else if (STEPS.contains(name)) {
                operands[0] = call(STEP, operands[0] + "," + operands[1]);
            }
        }
        return operation.toFormulaString(operands);
    }

    private static String call(String function, String arguments) {
        return function + "(" + arguments + ")";
    }

    private static boolean isNumber(String text) {
        return text.matches("[0-9.]+");
    }

    private static ValueEval number(ValueEval[] arguments, OperationEvaluationContext context) {
        try {
            return single(arguments[0], context);
        } catch (EvaluationException e) {
            return e.getErrorEval();
        }
    }

    private static ValueEval single(ValueEval argument, OperationEvaluationContext context)
            throws EvaluationException {
        ValueEval value =
                OperandResolver.getSingleValue(
                        argument, context.getRowIndex(), context.getColumnIndex());
        if (value instanceof StringEval text && !text.getStringValue().matches(DIGITS)) {
            throw new UntrustedFormulaException("takes a text for a number");
        }
        return value;
    }

    /** The first argument, if it lies on a step of the second or clearly between two. */
    private static ValueEval besideSteps(
            ValueEval[] arguments, OperationEvaluationContext context) {
        try {
            ValueEval value = single(arguments[0], context);
            double number = OperandResolver.coerceValueToDouble(value);
            double step = OperandResolver.coerceValueToDouble(single(arguments[1], context));
            double steps = step == 0 ? 0 : number / step;
            double off = Math.abs(steps - Math.rint(steps));
            if (off > 0 && off <= ON_STEP * Math.max(1, Math.abs(steps))) {
                throw new UntrustedFormulaException("rounds a number beside a step");
            }
            return value;
        } catch (EvaluationException e) {
            ErrorEval error = e.getErrorEval();
            return error;
        }
    }
}
