package shaftwright.cli;

import java.util.concurrent.Callable;
import shaftwright.workbook.Ahead;
import shaftwright.workbook.Filling;

/** Entry point of the executable jar. */
public final class Main {
    private Main() {}

    /** Runs one command and ends the process with its {@link ExitCode}. */
    public static void main(String[] args) {
        boolean command = args.length > 0 && !args[0].startsWith("-");
        if (command) {
            Filling.prepare();
            Ahead.begin(
                    "quick compiler",
                    new Callable<Boolean>() {
                        @Override
                        public Boolean call() {
                            return QuickCompiler.only();
                        }
                    });
        }
        Terminal terminal = Terminal.ofProcess();
        int code = Program.run(args, terminal);
        terminal.flush();
        System.exit(code);
    }
}
