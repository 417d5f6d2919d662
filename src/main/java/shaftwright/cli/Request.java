package shaftwright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A command line that was read.
 *
 * @param command what to do
 * @param file its file
 * @param options values by option name; a flag that is set has none
 */
record Request(Command command, Path file, Map<String, List<String>> options) {
    Request {
        options = new LinkedHashMap<>(options);
    }

    /** Whether a flag or option was given. */
    boolean has(String option) {
        return options.containsKey(option);
    }

    /** The value of an option, or another when it was not given. */
    String value(String option, String otherwise) {
        List<String> values = values(option);
        return values.isEmpty() ? otherwise : values.get(0);
    }

    /** All values of an option. */
    List<String> values(String option) {
        return options.getOrDefault(option, List.of());
    }
}
