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

    /** Every function that has a closed form, by name, as files store it. */
    public static Map<String, String> all() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (CellFunction function : Catalogue.all()) {
            if (function.expression().isPresent()) {
                texts.put(function.name(), of(function.expression().get()));
            }
        }
        return texts;
    }

    private static String of(Expression expression) {
        StringBuilder text = new StringBuilder("_xlfn.LAMBDA(");
        for (Parameter parameter : expression.parameters()) {
            text.append(parameter.isOptional() ? "_xlop." : "_xlpm.");
            text.append(parameter.name()).append(',');
        }
        return text.append(expression.with(LambdaText::used)).append(')').toString();
    }

    private static String used(Parameter parameter) {
        String name = "_xlpm." + parameter.name();
        if (!parameter.isOptional()) {
            return name;
        }
        String otherwise = parameter.otherwise().orElseThrow();
        boolean isNumber = parameter.measure().isNumber();
        return "IF(_xlfn.ISOMITTED("
                + name
                + "),"
                + (isNumber ? otherwise : '"' + otherwise + '"')
                + ","
                + name
                + ")";
    }
}
