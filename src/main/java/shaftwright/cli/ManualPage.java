package shaftwright.cli;

import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import shaftwright.study.Cautions;

/** A manual page out of what the commands declare, in the macros of man(7). */
final class ManualPage {
    /** Columns that an indented line has on the narrowest terminals. */
    private static final int SYNOPSIS_WIDTH = 72;

    private final StringBuilder page = new StringBuilder();

    private ManualPage() {}

    /** That of the whole program. */
    static String of(CommandSpec program) {
        ManualPage manual = new ManualPage();
        manual.write(program);
        return manual.page.toString();
    }

    private void write(CommandSpec program) {
        String name = program.name();
        macro("TH", name.toUpperCase(Locale.ROOT), "1", "", program.version()[0]);
        macro("SH", "NAME");
        text(name + " - " + String.join(" ", program.usageMessage().description()));
        macro("SH", "SYNOPSIS");
        asItIs(synopsis(program.commandLine()));
        for (CommandLine command : program.subcommands().values()) {
            asItIs(synopsis(command));
        }
        macro("SH", "COMMANDS");
        for (CommandLine command : program.subcommands().values()) {
            write(command);
        }
        macro("SH", "OPTIONS");
        program.options().forEach(this::option);
        macro("SH", "EXIT STATUS");
        program.usageMessage()
                .exitCodeList()
                .forEach((code, meaning) -> term(code.strip(), meaning));
        macro("SH", "EXAMPLES");
        asItIs(String.join("\n", program.usageMessage().footer()));
        macro("SH", "CAUTIONS");
        text(Cautions.LINE);
    }

    private void write(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        macro("SS", spec.name());
        text(String.join(" ", spec.usageMessage().description()));
        for (PositionalParamSpec parameter : spec.positionalParameters()) {
            term(parameter.paramLabel(), String.join(" ", parameter.description()));
        }
        spec.options().stream().filter(option -> !option.inherited()).forEach(this::option);
        macro("PP");
        asItIs(String.join("\n", spec.usageMessage().footer()));
    }

    private void option(OptionSpec option) {
        String argument = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
        term(String.join(", ", option.names()) + argument, String.join(" ", option.description()));
    }

    private static String synopsis(CommandLine command) {
        command.setUsageHelpWidth(SYNOPSIS_WIDTH);
        return command.getHelp().synopsis(0).strip();
    }

    private void term(String term, String meaning) {
        macro("TP");
        text(term);
        text(meaning);
    }

    /** Lines that are not to be filled. */
    private void asItIs(String lines) {
        macro("nf");
        lines.lines().forEach(this::text);
        macro("fi");
    }

    /** A line of text; a point or an apostrophe at its beginning is not a macro. */
    private void text(String line) {
        String safe =
                line.replace("%n", " ").replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
        page.append(safe.startsWith(".") || safe.startsWith("'") ? "\\&" : "")
                .append(safe)
                .append('\n');
    }

    private void macro(String name, String... arguments) {
        page.append('.').append(name);
        for (String argument : List.of(arguments)) {
            page.append(" \"").append(argument).append('"');
        }
        page.append('\n');
    }
}
