package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;

/**
 * A call with blocks of cells where a function takes one value: it gives one answer a row, as
 * spreadsheet programs' own functions do in an array formula.
 *
 * <p>Blocks of one row or one column go with every row or column of the others. An empty cell among
 * them is no 0 but gives {@code #VALUE!}: Calc does not tell it from a text without characters.
 */
final class WholeColumns {
    private static final Value NOTHING = Value.of("");

    private final CellFunction function;
    private final List<Value> given;
    private int height = 1;
    private int width = 1;

    private WholeColumns(CellFunction function, List<Value> given) {
        this.function = function;
        this.given = given;
    }

    /** Whether any argument is a block where one value is wanted. */
    static boolean areIn(CellFunction function, List<Value> given) {
        if (function.isBlock()) {
            return false;
        }
        for (int i = 0; i < given.size(); i++) {
            if (isSpread(function, i, given.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** A unit counts for a whole call, so it is one. */
    private static boolean isSpread(CellFunction function, int place, Value value) {
        return value instanceof Value.Block block
                && block.cells() > 1
                && place < function.parameters().size()
                && !function.parameters().get(place).isRange()
                && function.parameters().get(place).measure() != Measure.UNIT;
    }

    /**
     * One answer for each row and column of the blocks, errors among them where they belong.
     *
     * @return a block, or {@code #VALUE!} when the blocks do not go together, hold an error or are
     *     too many cells
     */
    static Value answers(CellFunction function, List<Value> given, WorkbookUnit workbook) {
        WholeColumns columns = new WholeColumns(function, given);
        return columns.measure() ? columns.answers(workbook) : Value.WRONG_SORT;
    }

    private boolean measure() {
        for (int i = 0; i < given.size(); i++) {
            if (isSpread(function, i, given.get(i))) {
                Value.Block block = (Value.Block) given.get(i);
                height = Math.max(height, block.rows().size());
                width = Math.max(width, block.rows().get(0).size());
            }
        }
        for (int i = 0; i < given.size(); i++) {
            if (isSpread(function, i, given.get(i))) {
                Value.Block block = (Value.Block) given.get(i);
                if (!fits(block) || block.hasFault()) {
                    return false;
                }
            }
        }
        return (long) height * width <= Arguments.MOST_CELLS;
    }

    private boolean fits(Value.Block block) {
        int rows = block.rows().size();
        int cells = block.rows().get(0).size();
        return (rows == 1 || rows == height) && (cells == 1 || cells == width);
    }

    private Value answers(WorkbookUnit workbook) {
        Value unit = workbook.value();
        List<List<Value>> rows = new ArrayList<>(height);
        for (int row = 0; row < height; row++) {
            List<Value> cells = new ArrayList<>(width);
            for (int column = 0; column < width; column++) {
                cells.add(function.answer(arguments(row, column), () -> unit));
            }
            rows.add(cells);
        }
        return new Value.Block(rows);
    }

    private List<Value> arguments(int row, int column) {
        List<Value> arguments = new ArrayList<>(given.size());
        for (int i = 0; i < given.size(); i++) {
            Value value = given.get(i);
            if (isSpread(function, i, value)) {
                List<List<Value>> rows = ((Value.Block) value).rows();
                List<Value> cells = rows.get(rows.size() == 1 ? 0 : row);
                value = cells.get(cells.size() == 1 ? 0 : column);
                value = value.isBlank() ? NOTHING : value;
            }
            arguments.add(value);
        }
        return arguments;
    }
}
