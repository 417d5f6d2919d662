package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.UnreadableLengthException;

/**
 * The arguments of one call, checked, in the core's units. A function's rule asks for them by name.
 */
final class Arguments {
    /** So many cells are read of a block; whole columns go beyond that. */
    static final int MOST_CELLS = 100_000;

    private final List<Parameter> parameters;
    private final List<Value> given;
    private final LengthUnit unit;

    /** Checks the number of arguments and passes on an error among them. */
    Arguments(CellFunction function, List<Value> given, WorkbookUnit workbook) {
        this.parameters = function.parameters();
        this.given = given;
        if (given.size() > parameters.size()) {
            throw wrong("too many arguments: " + given.size());
        }
        for (Value value : given) {
            passOnFault(value);
        }
        this.unit =
                function.hasUnit() ? readUnit(parameters.size() - 1, workbook) : LengthUnit.INCH;
    }

    private static void passOnFault(Value value) {
        if (value instanceof Value.Fault fault) {
            throw new NoValueException(fault, "an argument is an error");
        }
        if (value instanceof Value.Block block) {
            if (block.cells() > MOST_CELLS) {
                throw wrong("a block of " + block.cells() + " cells");
            }
            if (block.hasFault()) {
                // Calc refuses such a block before any function sees it.
                throw wrong("an error in a block");
            }
        }
    }

    private LengthUnit readUnit(int place, WorkbookUnit workbook) {
        Value value = single(place);
        if (isLeftOut(value) || value.equals(Value.EMPTY_CELL)) {
            value = workbook.value();
            if (isLeftOut(value)) {
                return LengthUnit.INCH;
            }
            passOnFault(value);
        }
        if (value instanceof Value.Text text) {
            switch (text.text().trim().toLowerCase(Locale.ROOT)) {
                case "in", "inch" -> {
                    return LengthUnit.INCH;
                }
                case "mm" -> {
                    return LengthUnit.MILLIMETRE;
                }
                default -> throw wrong("no unit of length: " + text.text());
            }
        }
        throw wrong("a unit of length is a text");
    }

    private static boolean isLeftOut(Value value) {
        return value instanceof Value.Blank;
    }

    /** The unit of bare lengths. */
    LengthUnit unit() {
        return unit;
    }

    /** A number in the core's unit. */
    double number(String name) {
        int place = place(name);
        Value value = single(place);
        return number(parameters.get(place), isLeftOut(value) ? otherwise(place) : value);
    }

    /** A whole number. */
    int whole(String name) {
        double number = number(name);
        if (number != Math.rint(number)) {
            throw impossible(name + " must be a whole number: " + number);
        }
        return (int) number;
    }

    /** A text as it was written. */
    String text(String name) {
        int place = place(name);
        Value value = single(place);
        if (isLeftOut(value)) {
            value = otherwise(place);
        }
        if (value instanceof Value.Text text) {
            return text.text();
        }
        if (value instanceof Value.Numeric number && Double.isFinite(number.number())) {
            // A strength class such as 10.9 turns into a number in most cells.
            return Allowed.plain(number.number());
        }
        throw wrong(name + " must be a text");
    }

    /** All numbers of a block, blank cells left out. */
    double[] numbers(String name) {
        double[] all = numbersAndGaps(name);
        int count = 0;
        for (double number : all) {
            if (!Double.isNaN(number)) {
                all[count++] = number;
            }
        }
        return java.util.Arrays.copyOf(all, count);
    }

    /**
     * Blocks of equally many cells that belong together, cell by cell; where all are blank they are
     * left out.
     *
     * @return one array a name, all of one length
     */
    double[][] columns(String... names) {
        double[][] columns = new double[names.length][];
        for (int i = 0; i < names.length; i++) {
            columns[i] = numbersAndGaps(names[i]);
            if (columns[i].length != columns[0].length) {
                throw wrong(names[0] + " and " + names[i] + " differ in size");
            }
        }
        int count = 0;
        for (int row = 0; row < columns[0].length; row++) {
            int blanks = 0;
            for (double[] column : columns) {
                blanks += Double.isNaN(column[row]) ? 1 : 0;
            }
            if (blanks > 0 && blanks < columns.length) {
                throw wrong("row " + (row + 1) + " is given in part");
            }
            for (double[] column : columns) {
                column[count] = column[row];
            }
            count += blanks == 0 ? 1 : 0;
        }
        for (int i = 0; i < columns.length; i++) {
            columns[i] = java.util.Arrays.copyOf(columns[i], count);
        }
        return columns;
    }

    private double[] numbersAndGaps(String name) {
        int place = place(name);
        Parameter parameter = parameters.get(place);
        List<Value> cells = cells(place);
        double[] numbers = new double[cells.size()];
        for (int i = 0; i < numbers.length; i++) {
            Value cell = cells.get(i);
            numbers[i] = cell.isBlank() ? Double.NaN : number(parameter, cell);
        }
        return numbers;
    }

    private List<Value> cells(int place) {
        if (place >= given.size() || isLeftOut(given.get(place))) {
            throw wrong(parameters.get(place).name() + " is missing");
        }
        if (!(given.get(place) instanceof Value.Block block)) {
            return List.of(given.get(place));
        }
        if (block.rows().size() > 1 && block.rows().get(0).size() > 1) {
            throw wrong(parameters.get(place).name() + " must be one row or one column");
        }
        List<Value> cells = new ArrayList<>(block.cells());
        for (List<Value> row : block.rows()) {
            cells.addAll(row);
        }
        return cells;
    }

    private double number(Parameter parameter, Value value) {
        double number;
        if (value instanceof Value.Numeric numeric) {
            number = numeric.number();
        } else if (value instanceof Value.Text text && parameter.measure() == Measure.LENGTH) {
            number = length(text.text());
        } else {
            throw wrong(parameter.name() + " must be a number");
        }
        if (!parameter.allowed().has(number)) {
            throw impossible(
                    parameter.name() + " must be " + parameter.allowed().words() + ": " + number);
        }
        return parameter.measure().fromCell(number, unit);
    }

    private double length(String text) {
        try {
            return Length.parse(text, unit).mm() / unit.mm();
        } catch (UnreadableLengthException e) {
            throw wrong(e.getMessage());
        }
    }

    private Value otherwise(int place) {
        Parameter parameter = parameters.get(place);
        if (!parameter.isOptional()) {
            throw wrong(parameter.name() + " is missing");
        }
        String otherwise = parameter.otherwise().get();
        return parameter.measure().isNumber()
                ? Value.of(Double.parseDouble(otherwise))
                : Value.of(otherwise);
    }

    /** The argument, of a block its only cell. */
    private Value single(int place) {
        if (place >= given.size()) {
            return Value.BLANK;
        }
        Value value = given.get(place);
        if (!(value instanceof Value.Block block)) {
            return value;
        }
        if (block.cells() != 1) {
            throw wrong(parameters.get(place).name() + " must be one cell");
        }
        Value cell = block.rows().get(0).get(0);
        return cell.isBlank() ? Value.EMPTY_CELL : cell;
    }

    private int place(String name) {
        for (int i = 0; i < parameters.size(); i++) {
            if (parameters.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalStateException("no parameter is called " + name);
    }

    static NoValueException wrong(String reason) {
        return new NoValueException(Value.WRONG_SORT, reason);
    }

    static NoValueException impossible(String reason) {
        return new NoValueException(Value.IMPOSSIBLE, reason);
    }
}
