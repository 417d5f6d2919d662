package shaftwright.functions;

import java.util.List;

/** What a cell function is given or gives: the content of a cell, or a block of cells. */
public sealed interface Value {
    /** An argument that was left out, or an empty cell of a block. */
    record Blank() implements Value {
        @Override
        public boolean isBlank() {
            return true;
        }
    }

    /** A number; what a program calls TRUE comes as 1. */
    record Numeric(double number) implements Value {
        @Override
        public boolean isBlank() {
            return false;
        }
    }

    /** A text. One without characters counts as blank in a block: Calc has empty cells so. */
    record Text(String text) implements Value {
        @Override
        public boolean isBlank() {
            return text.isEmpty();
        }
    }

    /** An error as a cell shows it, such as {@code #N/A}. */
    record Fault(String code) implements Value {
        @Override
        public boolean isBlank() {
            return false;
        }
    }

    /** A block of cells, row by row, all rows of one length. */
    record Block(List<List<Value>> rows) implements Value {
        public Block {
            rows = List.copyOf(rows);
        }

        @Override
        public boolean isBlank() {
            return false;
        }

        /** Rows times columns. */
        public int cells() {
            return rows.isEmpty() ? 0 : rows.size() * rows.get(0).size();
        }

        /** Whether any cell shows an error. */
        boolean hasFault() {
            for (List<Value> row : rows) {
                for (Value cell : row) {
                    if (cell instanceof Fault) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    Value BLANK = new Blank();

    /**
     * A single empty cell. Calc hands it over as 0, like its own arithmetic does, and does not tell
     * it from a typed 0; so it counts as 0 in every program.
     */
    Value EMPTY_CELL = new Numeric(0);

    /** The argument is of the wrong sort: a text where a number belongs, a block of other shape. */
    Fault WRONG_SORT = new Fault("#VALUE!");

    /** A number that cannot be: a negative diameter, an infinite result. */
    Fault IMPOSSIBLE = new Fault("#NUM!");

    /** There is no answer, such as a length in an empty window. */
    Fault NO_ANSWER = new Fault("#N/A");

    static Value of(double number) {
        return new Numeric(number);
    }

    static Value of(String text) {
        return new Text(text);
    }

    /** Whether there is nothing in it; a block is never blank. */
    boolean isBlank();
}
