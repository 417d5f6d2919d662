package shaftwright.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in a builder's words what is wrong with a command line that can't be read. */
final class UsageMessage {
    private final CommandSpec command;
    private final List<String> words;

    private UsageMessage(CommandSpec command, List<String> words) {
        this.command = command;
        this.words = words;
    }

    /** The message and, on a line of its own, where the help is. */
    static String of(ParameterException e, List<String> words) {
        CommandSpec command = e.getCommandLine().getCommandSpec();
        return new UsageMessage(command, words).said(e)
                + "\n"
                + command.qualifiedName()
                + " --help tells more";
    }

    private String said(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (e instanceof MissingParameterException missing) {
            return missing(missing.getMissing());
        }
        if (e instanceof OverwrittenOptionException twice) {
            return named(twice.getOverwritten()) + " is given twice";
        }
        return e.getArgSpec() == null ? e.getMessage() : refused(e);
    }

    private String unmatched(UnmatchedArgumentException e) {
        List<String> unmatched = e.getUnmatched();
        String first = "\"" + unmatched.get(0) + "\"";
        if (e.isUnknownOption()) {
            String option = unmatched.get(0).replaceFirst("=.*", "");
            List<String> names = command.options().stream().map(OptionSpec::longestName).toList();
            return "unknown option " + first + NearNames.hint(option, names);
        }
        if (!command.subcommands().isEmpty()) {
            return "unknown command "
                    + first
                    + NearNames.hint(unmatched.get(0), command.subcommands().keySet());
        }
        return unmatched.size() == 1
                ? "one " + kind() + " too many: " + first + "; expected: " + form()
                : unmatched.size()
                        + " "
                        + kind()
                        + "s too many, from "
                        + first
                        + " on; expected: "
                        + form();
    }

    /** What stands on the command's line beside options. */
    private String kind() {
        List<PositionalParamSpec> taken = command.positionalParameters();
        return taken.stream().allMatch(word -> word.paramLabel().equals("FILE")) ? "file" : "word";
    }

    private String missing(List<ArgSpec> missing) {
        ArgSpec first = missing.get(0);
        if (first.isOption() && words.contains(named(first))) {
            return valueMissing(first);
        }
        List<String> names = new ArrayList<>();
        for (ArgSpec each : missing) {
            boolean file = named(each).equals("FILE");
            names.add(each.arity().min() > 1 ? "a second file" : file ? "a file" : named(each));
        }
        int last = names.size() - 1;
        String listed =
                last == 0
                        ? names.get(0) + " is missing: "
                        : String.join(", ", names.subList(0, last))
                                + " and "
                                + names.get(last)
                                + " are missing: ";
        return listed + form();
    }

    private static String valueMissing(ArgSpec option) {
        return named(option) + ": found nothing after it; expected " + option.paramLabel();
    }

    private static String refused(ParameterException e) {
        ArgSpec given = e.getArgSpec();
        if (e.getValue() != null && e.getValue().isEmpty()) {
            return given.isOption() ? valueMissing(given) : named(given) + ": found an empty text";
        }
        if (given.type() == boolean.class) {
            return named(given)
                    + ": found \""
                    + e.getValue()
                    + "\" after it; expected nothing there";
        }
        return e.getCause() instanceof TypeConversionException refusal
                ? named(given) + ": " + refusal.getMessage()
                : e.getMessage();
    }

    private static String named(ArgSpec given) {
        return given instanceof OptionSpec option ? option.longestName() : given.paramLabel();
    }

    /** What must stand on the line, and what a word there would be. */
    private String form() {
        StringBuilder form = new StringBuilder(command.qualifiedName());
        for (PositionalParamSpec word : command.positionalParameters()) {
            String label = ' ' + word.paramLabel();
            form.append(
                    word.required()
                            ? label.repeat(word.arity().min())
                            : " [" + label.strip() + "]");
            form.append(word.arity().max() > word.arity().min() && word.required() ? " …" : "");
        }
        for (OptionSpec option : command.options()) {
            form.append(option.required() ? " " + named(option) + " " + option.paramLabel() : "");
        }
        return form.toString();
    }
}
