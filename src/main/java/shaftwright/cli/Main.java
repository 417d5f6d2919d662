package shaftwright.cli;

import shaftwright.window.Window;

/** Entry point of the executable jar: a command, or the window where none is given. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and ends the process with its {@link ExitCode}; without one it opens the
     * window where there is a screen.
     */
    public static void main(String[] args) {
        if (args.length == 0 && Window.open()) {
            return;
        }
        Terminal terminal = Terminal.ofProcess();
        int code = Program.run(args, terminal);
        terminal.flush();
        System.exit(code);
    }
}
