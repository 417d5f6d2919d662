package shaftwright.cli;

/**
 * Declaration of what a command takes beside its options.
 *
 * @param name what the help calls it
 * @param count how many of them
 * @param description what it is
 */
record Parameter(String name, Count count, String description) {
    /** How many there are to be. */
    enum Count {
        ONE,
        /** One or none; only the last parameter of a command. */
        OPTIONAL,
        /** Two or more; only the last parameter of a command. */
        SEVERAL
    }

    static Parameter one(String name, String description) {
        return new Parameter(name, Count.ONE, description);
    }

    static Parameter optional(String name, String description) {
        return new Parameter(name, Count.OPTIONAL, description);
    }

    static Parameter several(String name, String description) {
        return new Parameter(name, Count.SEVERAL, description);
    }

    /** Fewest of them. */
    int least() {
        return switch (count) {
            case OPTIONAL -> 0;
            case ONE -> 1;
            case SEVERAL -> 2;
        };
    }
}
