package shaftwright.cli;

import shaftwright.filling.Filling;

/** Entry point of the executable jar. */
public final class Main {
    private Main() {}

    /** Runs one command and ends the process with its {@link ExitCode}. */
    public static void main(String[] args) {
        Command command = args.length == 0 ? null : Command.ofWordOrNull(args[0]);
        if (command != null && command.computes()) {
            Filling.prepare();
        }
        Terminal terminal = Terminal.ofProcess();
        int code = Program.run(args, terminal);
        terminal.flush();
        System.exit(code);
    }
}
