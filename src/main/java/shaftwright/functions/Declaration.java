package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Declares a function step by step; giving its rule ends the declaration.
 *
 * <p>A function that has to do with lengths gets a last argument {@code unit} by itself.
 */
final class Declaration {
    /** Joint angles end short of a right angle. */
    static final double STEEPEST = 89;

    /** Lengths where neither the call nor the workbook says what they are. */
    static final String INCHES = "in";

    final String name;
    final Topic topic;
    final String meaning;
    final List<Parameter> parameters = new ArrayList<>();
    final List<Measure> columns;
    String source = "";
    Example example;
    private String formula = "";
    private String condition = "";

    Declaration(Topic topic, String name, String meaning, Measure... columns) {
        this.topic = topic;
        this.name = name;
        this.meaning = meaning;
        this.columns = List.of(columns);
    }

    Declaration length(String name, Allowed allowed, String meaning) {
        return add(name, Measure.LENGTH, false, allowed, null, meaning);
    }

    Declaration length(String name, Allowed allowed, double otherwise, String meaning) {
        return add(name, Measure.LENGTH, false, allowed, Allowed.plain(otherwise), meaning);
    }

    Declaration lengths(String name, Allowed allowed, String meaning) {
        return add(name, Measure.LENGTH, true, allowed, null, meaning);
    }

    /** The size of an angle between shaft and axis. */
    Declaration jointAngle(String name, String meaning) {
        return add(name, Measure.ANGLE, false, Allowed.within(0, STEEPEST), null, meaning);
    }

    /** An angle with a sign. */
    Declaration angle(String name, String meaning) {
        return add(name, Measure.ANGLE, false, Allowed.within(-STEEPEST, STEEPEST), null, meaning);
    }

    /** An angle with a sign that is 0 when left out. */
    Declaration angleOrLevel(String name, String meaning) {
        return add(name, Measure.ANGLE, false, Allowed.within(-STEEPEST, STEEPEST), "0", meaning);
    }

    Declaration number(String name, Measure measure, Allowed allowed, String meaning) {
        return add(name, measure, false, allowed, null, meaning);
    }

    Declaration number(
            String name, Measure measure, Allowed allowed, double otherwise, String meaning) {
        return add(name, measure, false, allowed, Allowed.plain(otherwise), meaning);
    }

    Declaration numbers(String name, Measure measure, Allowed allowed, String meaning) {
        return add(name, measure, true, allowed, null, meaning);
    }

    Declaration text(String name, String meaning) {
        return add(name, Measure.TEXT, false, Allowed.ANY, null, meaning);
    }

    private Declaration add(
            String name,
            Measure measure,
            boolean isRange,
            Allowed allowed,
            String otherwiseOrNull,
            String meaning) {
        parameters.add(
                new Parameter(
                        name,
                        measure,
                        isRange,
                        allowed,
                        Optional.ofNullable(otherwiseOrNull),
                        meaning));
        return this;
    }

    /** The closed form, see {@link Expression}. */
    Declaration formula(String text) {
        formula = text;
        return this;
    }

    /** What the closed form must check besides each parameter's own range. */
    Declaration only(String when) {
        condition = when;
        return this;
    }

    Declaration source(String text) {
        source = text;
        return this;
    }

    /** Arguments as numbers, texts or arrays (a column of numbers), the expected result last. */
    Declaration example(String from, int decimals, Object... argumentsAndResult) {
        List<Value> values = new ArrayList<>();
        for (Object each : argumentsAndResult) {
            values.add(value(each));
        }
        Value result = values.remove(values.size() - 1);
        List<Value> expected = new ArrayList<>();
        if (result instanceof Value.Block block) {
            for (List<Value> row : block.rows()) {
                expected.addAll(row);
            }
        } else {
            expected.add(result);
        }
        example = new Example(values, expected, decimals, from);
        return this;
    }

    private static Value value(Object of) {
        if (of instanceof double[] column) {
            List<List<Value>> rows = new ArrayList<>();
            for (double number : column) {
                rows.add(List.of(Value.of(number)));
            }
            return new Value.Block(rows);
        }
        return of instanceof Number number ? Value.of(number.doubleValue()) : Value.of((String) of);
    }

    Optional<Expression> expression() {
        return formula.isEmpty()
                ? Optional.empty()
                : Optional.of(new Expression(formula, condition, parameters));
    }

    CellFunction number(Rule.OfNumber rule) {
        return finished(rule);
    }

    CellFunction text(Rule.OfText rule) {
        return finished(rule);
    }

    CellFunction block(Rule.OfBlock rule) {
        return finished(rule);
    }

    private CellFunction finished(Rule rule) {
        boolean hasLength = columns.stream().anyMatch(Measure::hasLength);
        for (Parameter parameter : parameters) {
            hasLength |= parameter.measure().hasLength();
        }
        if (hasLength) {
            add("unit", Measure.UNIT, false, Allowed.ANY, INCHES, "unit of bare lengths, in or mm");
        }
        return new CellFunction(this, rule);
    }
}
