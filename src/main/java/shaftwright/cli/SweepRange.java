package shaftwright.cli;

/**
 * Values that an input takes one after the other, before the workbook tells their unit.
 *
 * @param input name of the input
 * @param from first value, as it was typed
 * @param to last value, as it was typed
 * @param count number of values
 */
record SweepRange(String input, String from, String to, int count) {
    /** Reads {@code NAME=FROM..TO/COUNT}. */
    static SweepRange parse(String typed) {
        int equals = typed.indexOf('=');
        int dots = typed.indexOf("..", equals + 1);
        int slash = typed.lastIndexOf('/');
        if (equals < 1 || dots < 0 || slash < dots) {
            throw TypedWords.refused(typed, "NAME=FROM..TO/COUNT");
        }
        try {
            return new SweepRange(
                    typed.substring(0, equals).trim(),
                    typed.substring(equals + 1, dots),
                    typed.substring(dots + 2, slash),
                    Integer.parseInt(typed.substring(slash + 1).trim()));
        } catch (NumberFormatException e) {
            throw TypedWords.refused(typed, "numbers in NAME=FROM..TO/COUNT");
        }
    }

    /** As it may be typed. */
    @Override
    public String toString() {
        return input + "=" + from + ".." + to + "/" + count;
    }
}
