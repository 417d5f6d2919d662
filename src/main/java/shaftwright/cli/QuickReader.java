package shaftwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a plain, complete command line. Everything else, help and mistakes above all, is left to
 * {@link FullReader}: loading its library costs a cold start about a quarter of a second.
 */
final class QuickReader {
    private QuickReader() {}

    /** The request, or null when it takes more than this to read it or to refuse it. */
    static Request readOrNull(String[] args) {
        Command command = args.length == 0 ? null : Command.ofWordOrNull(args[0]);
        if (command == null) {
            return null;
        }
        String file = null;
        Map<String, List<String>> options = new LinkedHashMap<>();
        for (int at = 1; at < args.length; at++) {
            String arg = args[at];
            if (!arg.startsWith("-")) {
                if (file != null || arg.isEmpty()) {
                    return null;
                }
                file = arg;
                continue;
            }
            int equals = arg.indexOf('=');
            Option option = command.optionOrNull(equals < 0 ? arg : arg.substring(0, equals));
            if (option == null
                    || option.use() != Option.Use.REPEATED && options.containsKey(option.name())) {
                return null;
            }
            List<String> values = options.get(option.name());
            if (values == null) {
                values = new ArrayList<>();
                options.put(option.name(), values);
            }
            if (option.use() == Option.Use.FLAG) {
                if (equals >= 0) {
                    return null;
                }
            } else if (equals >= 0) {
                values.add(arg.substring(equals + 1));
            } else if (at + 1 < args.length && !args[at + 1].startsWith("-")) {
                values.add(args[++at]);
            } else {
                return null;
            }
        }
        Path path = pathOrNull(file);
        return path == null ? null : new Request(command, path, options);
    }

    private static Path pathOrNull(String file) {
        try {
            Path path = file == null ? null : Path.of(file);
            return path == null || path.getFileName() == null ? null : path;
        } catch (InvalidPathException e) {
            return null;
        }
    }
}
