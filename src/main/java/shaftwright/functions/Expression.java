package shaftwright.functions;

import java.util.List;

/**
 * A function as a plain spreadsheet formula over its parameters, in the cells' units.
 *
 * <p>Written with functions that spreadsheet programs have had for long, parameters in small
 * letters; {@code unit_mm} stands for the millimetres of the unit argument. Around it go the checks
 * that the function makes as well: a text gives {@code #VALUE!}, a number that cannot be {@code
 * #NUM!}; an empty cell counts as 0. Lengths must be numbers here, texts are not read.
 */
public final class Expression {
    private static final String UNIT_MM = "unit_mm";

    /** What stands in for a parameter. */
    public interface Argument {
        String of(Parameter parameter);
    }

    private final String text;
    private final String condition;
    private final List<Parameter> parameters;

    Expression(String text, String condition, List<Parameter> parameters) {
        this.text = text;
        this.condition = condition;
        this.parameters = List.copyOf(parameters);
    }

    /** All of the function's parameters, also a unit of lengths on which nothing depends. */
    public List<Parameter> parameters() {
        return parameters;
    }

    /** As declared. */
    public String text() {
        return text;
    }

    /** The same with what it checks besides each parameter's own range. */
    public String guarded() {
        return condition.isEmpty() ? text : "IF(AND(" + condition + ")," + text + ",#NUM!)";
    }

    /** The formula, checks included, with these texts in place of the parameters. */
    public String with(Argument argument) {
        StringBuilder texts = new StringBuilder();
        StringBuilder bounds = new StringBuilder();
        for (Parameter parameter : parameters) {
            if (parameter.measure().isNumber()) {
                String given = argument.of(parameter);
                texts.append(texts.length() == 0 ? "" : ",");
                texts.append("ISTEXT(").append(given).append(')');
                bounds.append(bounds.length() == 0 ? "" : ",").append(bounds(parameter, given));
            }
        }
        if (!condition.isEmpty()) {
            bounds.append(',').append(replaced(condition, argument));
        }
        return "IF(OR("
                + texts
                + "),#VALUE!,IF(AND("
                + bounds
                + "),"
                + replaced(text, argument)
                + ",#NUM!))";
    }

    private static String bounds(Parameter parameter, String given) {
        Allowed allowed = parameter.allowed();
        return given
                + (allowed.open() ? ">" : ">=")
                + Allowed.plain(allowed.least())
                + ","
                + given
                + "<="
                + Allowed.plain(allowed.most());
    }

    private String replaced(String formula, Argument argument) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < formula.length()) {
            int end = at;
            while (end < formula.length() && isLetter(formula.charAt(end))) {
                end++;
            }
            if (end == at) {
                out.append(formula.charAt(at++));
            } else {
                out.append(replacement(formula.substring(at, end), argument));
                at = end;
            }
        }
        return out.toString();
    }

    private static boolean isLetter(char sign) {
        return (sign >= 'a' && sign <= 'z') || sign == '_';
    }

    private String replacement(String word, Argument argument) {
        for (Parameter parameter : parameters) {
            if (word.equals(parameter.name())) {
                return argument.of(parameter);
            }
            if (word.equals(UNIT_MM) && parameter.measure() == Measure.UNIT) {
                String unit = argument.of(parameter);
                return "IF("
                        + unit
                        + "=\"mm\",1,IF(OR("
                        + unit
                        + "=\"in\","
                        + unit
                        + "=\"inch\"),25.4,#VALUE!))";
            }
        }
        throw new IllegalArgumentException("no parameter is called " + word + ": " + text);
    }
}
