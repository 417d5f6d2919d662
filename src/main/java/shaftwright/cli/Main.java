package shaftwright.cli;

import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shaftwright.window.Window;

/** Entry point of the executable jar: a command, or the window where none is given. */
public final class Main {
    private static final Pattern WORKBOOK =
            Pattern.compile("[^-].*\\.xls[xm]", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    private Main() {}

    /**
     * Runs one command and ends the process with its {@link ExitCode}; without one it opens the
     * window, with the workbooks that are named, where there is a screen.
     */
    public static void main(String[] args) {
        if (Stream.of(args).allMatch(Main::isWorkbook)
                && Window.open(Stream.of(args).map(Path::of).toList())) {
            return;
        }
        Terminal terminal = Terminal.ofProcess();
        int code = Program.run(args, terminal);
        terminal.flush();
        System.exit(code);
    }

    /** As a file manager names one, whether it is there or not. */
    private static boolean isWorkbook(String word) {
        return WORKBOOK.matcher(word).matches();
    }
}
