package shaftwright.calc;

import com.sun.star.beans.XPropertySet;
import com.sun.star.uno.Any;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Value;

/** Calls of cell functions by Calc: values in, value out, errors as cells show them. */
final class Call {
    /** Calc reads an error from the low bits of a NaN. */
    private static final long NOT_A_NUMBER = 0x7FF8_0000_0000_0000L;

    private static final int WRONG_SORT = 519;
    private static final int IMPOSSIBLE = 503;
    private static final int NOT_AVAILABLE = 32767;
    private static final int DIVISION_BY_ZERO = 532;

    private static final Map<String, CellFunction> FUNCTIONS = functions();

    private final DocumentUnits units;

    Call(DocumentUnits units) {
        this.units = units;
    }

    private static Map<String, CellFunction> functions() {
        Map<String, CellFunction> functions = new HashMap<>();
        for (CellFunction function : Catalogue.all()) {
            functions.put(function.shortName(), function);
        }
        return functions;
    }

    /** With the document that the cell stands in, if the function has to do with lengths. */
    Object of(String function, XPropertySet documentOrNull, Object... arguments) {
        try {
            List<Value> given = new ArrayList<>(arguments.length);
            for (Object argument : arguments) {
                given.add(value(argument));
            }
            return result(FUNCTIONS.get(function).evaluate(given, units.of(documentOrNull)));
        } catch (RuntimeException e) {
            // A fault of the program must not stop a recalculation; the cell shows an error.
            return error(WRONG_SORT);
        }
    }

    private static Value value(Object argument) {
        Object plain = argument instanceof Any any ? any.getObject() : argument;
        if (plain instanceof Double number) {
            return faultIn(number);
        }
        if (plain instanceof String text) {
            return Value.of(text);
        }
        if (plain instanceof Object[][] cells) {
            List<List<Value>> rows = new ArrayList<>(cells.length);
            for (Object[] row : cells) {
                List<Value> values = new ArrayList<>(row.length);
                for (Object cell : row) {
                    values.add(value(cell));
                }
                rows.add(values);
            }
            return new Value.Block(rows);
        }
        if (plain instanceof Number number) {
            return Value.of(number.doubleValue());
        }
        if (plain instanceof Boolean truth) {
            return Value.of(truth ? 1 : 0);
        }
        return Value.BLANK;
    }

    private static Value faultIn(double number) {
        if (!Double.isNaN(number)) {
            return Value.of(number);
        }
        return switch ((int) Double.doubleToRawLongBits(number)) {
            case NOT_AVAILABLE -> Value.NO_ANSWER;
            case DIVISION_BY_ZERO -> new Value.Fault("#DIV/0!");
            case WRONG_SORT -> Value.WRONG_SORT;
            default -> Value.IMPOSSIBLE;
        };
    }

    private static Object result(Value value) {
        if (value instanceof Value.Numeric number) {
            return number.number();
        }
        if (value instanceof Value.Text text) {
            return text.text();
        }
        if (value instanceof Value.Block block) {
            Object[][] cells = new Object[block.rows().size()][];
            for (int row = 0; row < cells.length; row++) {
                List<Value> values = block.rows().get(row);
                cells[row] = new Object[values.size()];
                for (int column = 0; column < values.size(); column++) {
                    cells[row][column] = result(values.get(column));
                }
            }
            return cells;
        }
        return value instanceof Value.Fault fault
                ? error(code(fault.code()))
                : error(NOT_AVAILABLE);
    }

    private static int code(String fault) {
        return switch (fault) {
            case "#NUM!" -> IMPOSSIBLE;
            case "#N/A" -> NOT_AVAILABLE;
            case "#DIV/0!" -> DIVISION_BY_ZERO;
            default -> WRONG_SORT;
        };
    }

    private static Double error(int code) {
        return Double.longBitsToDouble(NOT_A_NUMBER | code);
    }
}
