package shaftwright.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.OperationEvaluationContext;
import org.apache.poi.ss.formula.eval.AreaEval;
import org.apache.poi.ss.formula.eval.BlankEval;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.MissingArgEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.RefEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.udf.AggregatingUDFFinder;
import org.apache.poi.ss.formula.udf.DefaultUDFFinder;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Value;
import shaftwright.functions.WorkbookUnit;

/** The pack's functions for POI's evaluator. */
public final class PackFunctions {
    private PackFunctions() {}

    /**
     * Lets a workbook's formulas use the functions. Named formulas of the same names are taken out
     * of the workbook in memory, as POI can't read them; it must not be saved afterwards.
     */
    public static void addTo(XSSFWorkbook workbook) {
        List<Name> names = new ArrayList<>(workbook.getAllNames());
        for (Name name : names) {
            if (isOne(name.getNameName())) {
                workbook.removeName(name);
            }
        }
        workbook.addToolPack(toolPack());
    }

    /** Finds the functions, and the guards that are put into formulas. */
    static UDFFinder finder() {
        Map<String, FreeRefFunction> guards = Guards.FUNCTIONS;
        UDFFinder own =
                new DefaultUDFFinder(
                        guards.keySet().toArray(new String[0]),
                        guards.values().toArray(new FreeRefFunction[0]));
        return new AggregatingUDFFinder(own, toolPack());
    }

    private static UDFFinder toolPack() {
        List<CellFunction> functions = Catalogue.all();
        String[] words = new String[functions.size()];
        FreeRefFunction[] rules = new FreeRefFunction[words.length];
        for (int i = 0; i < words.length; i++) {
            CellFunction function = functions.get(i);
            words[i] = function.name();
            rules[i] = (arguments, context) -> evaluated(function, arguments, context);
        }
        return new DefaultUDFFinder(words, rules);
    }

    static boolean isOne(String name) {
        return name.toUpperCase(Locale.ROOT).startsWith(CellFunction.PREFIX)
                && Catalogue.find(name).isPresent();
    }

    private static ValueEval evaluated(
            CellFunction function, ValueEval[] arguments, OperationEvaluationContext context) {
        List<Value> given = new ArrayList<>(arguments.length);
        for (ValueEval argument : arguments) {
            given.add(value(argument));
        }
        Value result = function.evaluate(given, () -> unit(context));
        // One cell of a block is shown where no array formula asks for more.
        return eval(result instanceof Value.Block block ? block.rows().get(0).get(0) : result);
    }

    private static Value unit(OperationEvaluationContext context) {
        EvaluationName name =
                context.getWorkbook().getName(WorkbookUnit.NAME, context.getSheetIndex());
        if (name == null) {
            return Value.BLANK;
        }
        Ptg[] formula = name.getNameDefinition();
        return formula.length == 1 && formula[0] instanceof Ref3DPxg cell
                ? value(context.getRef3DEval(cell))
                : Value.WRONG_SORT;
    }

    private static Value value(ValueEval argument) {
        if (argument instanceof RefEval cell) {
            return value(cell.getInnerValueEval(cell.getFirstSheetIndex()));
        }
        if (argument instanceof AreaEval area) {
            List<List<Value>> rows = new ArrayList<>(area.getHeight());
            for (int row = 0; row < area.getHeight(); row++) {
                List<Value> cells = new ArrayList<>(area.getWidth());
                for (int column = 0; column < area.getWidth(); column++) {
                    ValueEval cell = area.getRelativeValue(row, column);
                    cells.add(cell instanceof BlankEval ? Value.BLANK : value(cell));
                }
                rows.add(cells);
            }
            return new Value.Block(rows);
        }
        if (argument instanceof NumberEval number) {
            return Value.of(number.getNumberValue());
        }
        if (argument instanceof StringEval text) {
            return Value.of(text.getStringValue());
        }
        if (argument instanceof BoolEval truth) {
            return Value.of(truth.getNumberValue());
        }
        if (argument instanceof ErrorEval error) {
            return new Value.Fault(error.getErrorString());
        }
        return argument instanceof MissingArgEval ? Value.BLANK : Value.EMPTY_CELL;
    }

    private static ValueEval eval(Value value) {
        if (value instanceof Value.Numeric number) {
            return new NumberEval(number.number());
        }
        if (value instanceof Value.Text text) {
            return new StringEval(text.text());
        }
        return value instanceof Value.Fault fault
                ? ErrorEval.valueOf(FormulaError.forString(fault.code()).getCode())
                : ErrorEval.VALUE_INVALID;
    }
}
