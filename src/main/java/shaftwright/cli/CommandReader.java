package shaftwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Reads command lines, writes help and versions, and says what is wrong with the rest. */
final class CommandReader {
    private static final String HELP = "--help";
    private static final String VERSION = "--version";

    private final Terminal terminal;
    private final CommandLine commands;

    CommandReader(Terminal terminal) {
        this.terminal = terminal;
        this.commands = new CommandLine(root()).setExpandAtFiles(false);
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    }

    /**
     * The request; empty when everything that was asked for has been printed.
     *
     * @throws UsageException if it can't be read
     */
    Optional<Request> read(String[] args) {
        try {
            ParseResult result = commands.parseArgs(args);
            ParseResult last = result.hasSubcommand() ? result.subcommand() : result;
            if (last.hasMatchedOption(HELP) || args.length == 0) {
                last.commandSpec().commandLine().usage(terminal.out(), Ansi.OFF);
                return Optional.empty();
            }
            if (result.hasMatchedOption(VERSION)) {
                terminal.out().println(Version.text());
                return Optional.empty();
            }
            if (!result.hasSubcommand()) {
                throw new UsageException("a command is missing; --help lists them");
            }
            return Optional.of(request(last));
        } catch (ParameterException e) {
            throw new UsageException(message(e));
        }
    }

    private static String message(ParameterException e) {
        StringBuilder message = new StringBuilder(e.getMessage());
        if (e instanceof CommandLine.UnmatchedArgumentException unmatched) {
            List<String> near = unmatched.getSuggestions();
            if (!near.isEmpty()) {
                message.append("; near it: ").append(String.join(", ", near));
            }
        }
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        return message.append("\n").append(name).append(" --help tells more").toString();
    }

    private static Request request(ParseResult result) {
        Command command = Command.ofWordOrNull(result.commandSpec().name());
        Map<String, List<String>> options = new LinkedHashMap<>();
        for (Option option : command.options()) {
            if (result.hasMatchedOption(option.name())) {
                options.put(
                        option.name(),
                        option.use() == Option.Use.FLAG
                                ? List.of()
                                : result.matchedOption(option.name()).stringValues());
            }
        }
        List<String> words = new ArrayList<>();
        for (PositionalParamSpec parameter : result.matchedPositionals()) {
            for (String word : parameter.stringValues()) {
                if (word.isEmpty()) {
                    throw new UsageException(
                            "\"\" is no " + parameter.paramLabel().toLowerCase(Locale.ROOT));
                }
                words.add(word);
            }
        }
        return new Request(command, words, options);
    }

    private static CommandSpec root() {
        CommandSpec root = CommandSpec.create().name("shaftwright");
        root.addOption(help());
        root.addOption(
                OptionSpec.builder(VERSION)
                        .versionHelp(true)
                        .description("Show the program's version.")
                        .build());
        root.usageMessage()
                .description("Sizes half shafts in your own workbook, from tape measurements.")
                .synopsisSubcommandLabel("COMMAND")
                .footer(footer(Command.values()));
        exitCodes(root);
        for (Command command : Command.values()) {
            root.addSubcommand(command.word(), spec(command));
        }
        return root;
    }

    private static CommandSpec spec(Command command) {
        CommandSpec spec = CommandSpec.create().name(command.word());
        for (Option option : command.options()) {
            OptionSpec.Builder built =
                    OptionSpec.builder(option.name())
                            .paramLabel(option.value())
                            .description(option.description());
            switch (option.use()) {
                case FLAG -> built.type(boolean.class);
                case VALUE -> built.type(String.class);
                default -> built.type(List.class).auxiliaryTypes(String.class).arity("1");
            }
            spec.addOption(built.build());
        }
        spec.addOption(help());
        for (int i = 0; i < command.parameters().size(); i++) {
            spec.addPositional(positional(command.parameters().get(i), i));
        }
        spec.usageMessage().description(command.description()).footer(footer(command));
        exitCodes(spec);
        return spec;
    }

    private static PositionalParamSpec positional(Parameter parameter, int place) {
        boolean several = parameter.count() == Parameter.Count.SEVERAL;
        PositionalParamSpec.Builder built =
                PositionalParamSpec.builder()
                        .index(several ? place + "..*" : String.valueOf(place))
                        .arity(
                                switch (parameter.count()) {
                                    case ONE -> "1";
                                    case OPTIONAL -> "0..1";
                                    case SEVERAL -> "2..*";
                                })
                        .paramLabel(parameter.name())
                        .required(parameter.least() > 0)
                        .description(parameter.description());
        return several
                ? built.type(List.class).auxiliaryTypes(String.class).build()
                : built.type(String.class).build();
    }

    private static OptionSpec help() {
        return OptionSpec.builder("-h", HELP)
                .usageHelp(true)
                .description("Show this help.")
                .build();
    }

    private static void exitCodes(CommandSpec spec) {
        spec.usageMessage()
                .sortOptions(false)
                .width(98)
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(ExitCode.meanings());
    }

    private static String[] footer(Command... commands) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("Examples:");
        for (Command command : commands) {
            for (String example : command.examples()) {
                lines.add("  shaftwright " + example);
            }
        }
        return lines.toArray(new String[0]);
    }
}
