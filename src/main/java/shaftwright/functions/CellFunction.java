package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.tyre.UnreadableTyreSizeException;
import shaftwright.units.ContradictionException;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;

/** One function of the pack. */
public final class CellFunction {
    /** What all names begin with. */
    public static final String PREFIX = "SHAFT.";

    private final String name;
    private final Topic topic;
    private final String meaning;
    private final List<Parameter> parameters;
    private final List<Measure> columns;
    private final boolean isBlock;
    private final Optional<Expression> expression;
    private final String source;
    private final Example example;
    private final Rule rule;

    CellFunction(Declaration declared, Rule rule) {
        name = declared.name;
        topic = declared.topic;
        meaning = declared.meaning;
        parameters = List.copyOf(declared.parameters);
        columns = List.copyOf(declared.columns);
        isBlock = rule instanceof Rule.OfBlock;
        expression = declared.expression();
        source = declared.source;
        example = declared.example;
        this.rule = rule;
    }

    /** The name in a cell, such as {@code SHAFT.REACH}. */
    public String name() {
        return PREFIX + name;
    }

    /** The name behind the dot. */
    public String shortName() {
        return name;
    }

    public Topic topic() {
        return topic;
    }

    /** What it answers, one sentence. */
    public String meaning() {
        return meaning;
    }

    public List<Parameter> parameters() {
        return parameters;
    }

    /** What the result is; of a block, what each column is. */
    public List<Measure> columns() {
        return columns;
    }

    /** Whether the result is a block of cells, to be entered as an array formula. */
    public boolean isBlock() {
        return isBlock;
    }

    /** The same as a plain spreadsheet formula, where there is a closed form. */
    public Optional<Expression> expression() {
        return expression;
    }

    /** Where the formula comes from. */
    public String source() {
        return source;
    }

    public Example example() {
        return example;
    }

    /** What the worked example gives, with its unit where that does not depend on lengths. */
    public String exampleResult() {
        Measure measure = columns.get(0);
        boolean hasUnit = measure.isNumber() && !measure.hasLength() && !measure.unit().isEmpty();
        return example.shown() + (hasUnit ? ' ' + measure.unit() : "");
    }

    /** Whether it has to do with lengths; the unit is then its last argument. */
    public boolean hasUnit() {
        return !parameters.isEmpty()
                && parameters.get(parameters.size() - 1).measure() == Measure.UNIT;
    }

    /** Name and arguments, {@code [those in brackets]} may be left out. */
    public String signature() {
        StringBuilder text = new StringBuilder(name()).append('(');
        for (int i = 0; i < parameters.size(); i++) {
            Parameter parameter = parameters.get(i);
            text.append(i == 0 ? "" : ", ");
            text.append(parameter.isOptional() ? "[" : "").append(parameter.name());
            text.append(parameter.isOptional() ? "]" : "");
        }
        return text.append(')').toString();
    }

    /** Computes it in a workbook that says nothing of units: lengths are inches unless told. */
    public Value evaluate(List<Value> given) {
        return evaluate(given, WorkbookUnit.NONE);
    }

    /**
     * Computes it. An argument that is an error comes out as it went in; otherwise an argument of a
     * wrong sort and an error inside a block give {@code #VALUE!}, numbers that cannot be give
     * {@code #NUM!}, a question without an answer gives {@code #N/A}. With blocks of cells where it
     * takes one value it gives a block, one answer a row.
     *
     * @param given arguments in order; those at the end may be missing
     * @param workbook asked for the unit of lengths when no argument gives it
     * @return never an infinite number, never an exception
     */
    public Value evaluate(List<Value> given, WorkbookUnit workbook) {
        return WholeColumns.areIn(this, given)
                ? WholeColumns.answers(this, given, workbook)
                : answer(given, workbook);
    }

    /** One answer. */
    Value answer(List<Value> given, WorkbookUnit workbook) {
        try {
            Arguments arguments = new Arguments(this, given, workbook);
            if (rule instanceof Rule.OfText text) {
                return Value.of(text.text(arguments));
            }
            if (rule instanceof Rule.OfNumber number) {
                return cell(number.number(arguments), 0, arguments.unit());
            }
            return block(((Rule.OfBlock) rule).block(arguments), arguments.unit());
        } catch (NoValueException e) {
            return e.fault();
        } catch (UnreadableLengthException | UnreadableTyreSizeException e) {
            return Value.WRONG_SORT;
        } catch (ContradictionException e) {
            return Value.IMPOSSIBLE;
        }
    }

    private Value block(double[][] numbers, LengthUnit unit) {
        List<List<Value>> rows = new ArrayList<>(numbers.length);
        for (double[] row : numbers) {
            List<Value> cells = new ArrayList<>(row.length);
            for (int column = 0; column < row.length; column++) {
                cells.add(cell(row[column], Math.min(column, columns.size() - 1), unit));
            }
            rows.add(List.copyOf(cells));
        }
        return new Value.Block(rows);
    }

    private Value cell(double number, int column, LengthUnit unit) {
        double shown = columns.get(column).toCell(number, unit);
        return Double.isFinite(shown) ? Value.of(shown) : Value.IMPOSSIBLE;
    }

    @Override
    public String toString() {
        return signature();
    }
}
