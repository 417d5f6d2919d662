package shaftwright.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** What a command line gave: exit code, answers, and everything on standard error. */
public record Run(int code, String out, String err) {
    public static Run of(Object... args) {
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = Terminal.over(out, err);
        int code = Program.run(texts, terminal);
        terminal.flush();
        return new Run(
                code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
