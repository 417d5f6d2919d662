package shaftwright.cli;

/** Entry point of the executable jar. */
public final class Main {
    private Main() {}

    /** Runs one command and ends the process with its {@link ExitCode}. */
    public static void main(String[] args) {
        Terminal terminal = Terminal.ofProcess();
        int code = Program.run(args, terminal);
        terminal.flush();
        System.exit(code);
    }
}
