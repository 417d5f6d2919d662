package shaftwright.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A command line that was read.
 *
 * @param command what to do
 * @param words what it takes beside options, none of them empty
 * @param options values by option name, none of them empty but in those that may be given several
 *     times; a flag that is set has none
 */
record Request(Command command, List<String> words, Map<String, List<String>> options) {
    Request {
        for (Map.Entry<String, List<String>> option : options.entrySet()) {
            Option declared = command.optionOrNull(option.getKey());
            if (declared.use() == Option.Use.VALUE && option.getValue().contains("")) {
                throw new UsageException(
                        declared.name()
                                + ": found nothing behind it; expected "
                                + declared.value());
            }
        }
        words = List.copyOf(words);
        options = new LinkedHashMap<>(options);
    }

    /**
     * Its first word as a file.
     *
     * @throws UsageException if that is no file name
     */
    Path file() {
        return Inputs.path(words.get(0));
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

    /**
     * The file that {@code --out} names, or another when it was not given.
     *
     * @throws UsageException if that is no file name
     */
    Path target(Path otherwise) {
        return has("--out") ? Inputs.path(value("--out", "")) : otherwise;
    }

    /** All values of an option. */
    List<String> values(String option) {
        return options.getOrDefault(option, List.of());
    }
}
