package shaftwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that has bash or zsh complete commands, options and files. */
@Command(
        name = "completion",
        description = {
            "Prints a script with which bash and zsh complete commands and options.",
            "The program must be started as shaftwright: by a script on the path, or an alias."
        },
        footer = "  shaftwright completion")
final class CompletionCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    private final Terminal terminal;

    CompletionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        CommandSpec program = spec.root();
        terminal.out().print(AutoComplete.bash(program.name(), program.commandLine()));
        return ExitCode.SUCCESS;
    }
}
