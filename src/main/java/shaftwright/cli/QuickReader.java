package shaftwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a plain, complete command line. Everything else, help and mistakes above all, is left to
 * {@link FullReader}: loading its library costs a cold start about a quarter of a second.
 */
final class QuickReader {
    private final Command command;
    private final String[] args;
    private final Map<String, List<String>> options = new LinkedHashMap<>();
    private final List<String> words = new ArrayList<>();
    private int at = 1;

    private QuickReader(Command command, String[] args) {
        this.command = command;
        this.args = args;
    }

    /** The request, or null when it takes more than this to read it or to refuse it. */
    static Request readOrNull(String[] args) {
        Command command = args.length == 0 ? null : Command.ofWordOrNull(args[0]);
        return command == null ? null : new QuickReader(command, args).readOrNull();
    }

    private Request readOrNull() {
        while (at < args.length) {
            boolean read = args[at].startsWith("-") ? option() : word();
            if (!read) {
                return null;
            }
            at++;
        }
        return command.takes(words.size()) ? new Request(command, words, options) : null;
    }

    private boolean word() {
        words.add(args[at]);
        return !args[at].isEmpty();
    }

    private boolean option() {
        String arg = args[at];
        int equals = arg.indexOf('=');
        Option option = command.optionOrNull(equals < 0 ? arg : arg.substring(0, equals));
        if (option == null) {
            return false;
        }
        List<String> values = options.get(option.name());
        if (values == null) {
            values = new ArrayList<>();
            options.put(option.name(), values);
        } else if (option.use() != Option.Use.REPEATED) {
            return false;
        }
        if (option.use() == Option.Use.FLAG) {
            return equals < 0;
        }
        if (equals >= 0) {
            values.add(arg.substring(equals + 1));
            return true;
        }
        if (at + 1 == args.length || args[at + 1].startsWith("-")) {
            return false;
        }
        values.add(args[++at]);
        return true;
    }
}
