package shaftwright.cli;

import java.util.List;

/**
 * The run that an image's archive of classes is made from: one archive can only be made of one run,
 * so the commands that are wanted quickest run in it one after the other.
 */
final class Training {
    private Training() {}

    /** Fills the workbook at a path after a change of a scenario, and prints the help. */
    public static void main(String[] workbook) {
        List<String[]> commands =
                List.of(
                        new String[] {"fill", "--set", "hub_shift[A]=1/2", workbook[0]},
                        new String[] {"--help"});
        for (String[] command : commands) {
            Terminal terminal = Terminal.ofProcess();
            int code = Program.run(command, terminal);
            terminal.flush();
            if (code != ExitCode.SUCCESS) {
                throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
            }
        }
    }
}
