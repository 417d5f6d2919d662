package shaftwright.cli;

/**
 * Declaration of one option.
 *
 * @param name with both hyphens
 * @param use how often it may stand, and whether a value follows
 * @param value what the help calls its value, empty for a flag
 * @param description what it does
 */
record Option(String name, Use use, String value, String description) {
    /** How an option is used. */
    enum Use {
        FLAG,
        VALUE,
        REPEATED
    }

    static Option flag(String name, String description) {
        return new Option(name, Use.FLAG, "", description);
    }

    static Option value(String name, String value, String description) {
        return new Option(name, Use.VALUE, value, description);
    }

    static Option repeated(String name, String value, String description) {
        return new Option(name, Use.REPEATED, value, description);
    }
}
