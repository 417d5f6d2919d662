package shaftwright.cli;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.function.BiFunction;

/** What a command line gave: exit code, answers, and everything on standard error. */
public record Run(int code, String out, String err) {
    public static Run of(Object... args) {
        return run(Terminal::over, args);
    }

    /** The same with somebody before the terminal who answers every question with one line. */
    static Run answering(String line, Object... args) {
        return run(
                (out, err) ->
                        Terminal.over(out, err)
                                .askedOf(new BufferedReader(new StringReader(line + "\n"))),
                args);
    }

    private static Run run(BiFunction<OutputStream, OutputStream, Terminal> over, Object... args) {
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = over.apply(out, err);
        int code = Program.run(texts, terminal);
        terminal.flush();
        return new Run(
                code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
