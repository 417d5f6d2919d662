package shaftwright.formula;

/**
 * Formulas that show something only where cells that they need hold numbers, else an empty text.
 */
public final class Given {
    private Given() {}

    /** Where all these cells do. */
    public static String all(String then, String... cells) {
        return "IF(COUNT(" + String.join(",", cells) + ")=" + cells.length + "," + then + ",\"\")";
    }

    /** Where this cell does. */
    public static String number(String cell, String then) {
        return "IF(ISNUMBER(" + cell + ")," + then + ",\"\")";
    }

    /** Where a condition holds. */
    public static String when(String condition, String then) {
        return "IF(" + condition + "," + then + ",\"\")";
    }

    /** Where the scenario is in use. */
    public static String used(String then) {
        return when("{used}=1", then);
    }

    /** Where a row of a table is not 0, which stands for none. */
    public static String row(String row, String then) {
        return "IF(" + row + "=0,\"\"," + then + ")";
    }
}
