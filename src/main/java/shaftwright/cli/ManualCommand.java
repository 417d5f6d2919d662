package shaftwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the manual page. */
@Command(
        name = "manual",
        description = "Prints the manual page of the program, as the program man reads it.",
        footer = "  shaftwright manual")
final class ManualCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    private final Terminal terminal;

    ManualCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.out().print(ManualPage.of(spec.root()));
        return ExitCode.SUCCESS;
    }
}
