package shaftwright.functions;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Functions as named formulas that travel inside a workbook, for Excel 365 and programs like it.
 *
 * <p>Spelt as .xlsx files store them: {@code _xlfn.} before functions newer than the format, {@code
 * _xlpm.} before parameters, {@code _xlop.} where a parameter that may be left out is declared.
 */
public final class LambdaText {
    private LambdaText() {}

    /** Every function that has a closed form, by name, as files store it; lengths are inches. */
    public static Map<String, String> all() {
        return all('"' + Declaration.INCHES + '"');
    }

    /**
     * The same for a workbook that has a cell named {@link WorkbookUnit#NAME}: its lengths are in
     * that unit unless a call says otherwise.
     */
    public static Map<String, String> allInWorkbooksUnit() {
        return all(WorkbookUnit.NAME);
    }

    private static Map<String, String> all(String unit) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (CellFunction function : Catalogue.all()) {
            if (function.expression().isPresent()) {
                texts.put(function.name(), of(function.expression().get(), unit));
            }
        }
        return texts;
    }

    private static String of(Expression expression, String unit) {
        StringBuilder text = new StringBuilder("_xlfn.LAMBDA(");
        for (Parameter parameter : expression.parameters()) {
            text.append(parameter.isOptional() ? "_xlop." : "_xlpm.");
            text.append(name(parameter)).append(',');
        }
        return text.append(expression.with(parameter -> used(parameter, unit)))
                .append(')')
                .toString();
    }

    private static String used(Parameter parameter, String unit) {
        String name = "_xlpm." + name(parameter);
        if (!parameter.isOptional()) {
            return name;
        }
        if (parameter.measure() == Measure.UNIT) {
            // An empty cell counts as left out.
            return otherwise(name, unit, "IF(ISBLANK(" + name + ")," + unit + "," + name + ")");
        }
        return otherwise(name, parameter.otherwise().orElseThrow(), name);
    }

    private static String otherwise(String name, String leftOut, String given) {
        return "IF(_xlfn.ISOMITTED(" + name + ")," + leftOut + "," + given + ")";
    }

    /** A parameter called unit would hide the workbook's cell of that name. */
    private static String name(Parameter parameter) {
        return parameter.measure() == Measure.UNIT ? "lengthunit" : parameter.name();
    }
}
