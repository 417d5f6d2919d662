package shaftwright.cli;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a command writes, and whom it may ask.
 *
 * @param out answers
 * @param err errors and progress
 * @param user who sits before it; empty for a script
 */
record Terminal(Printer out, Printer err, Optional<BufferedReader> user) {
    /** The process's own streams. */
    static Terminal ofProcess() {
        return new Terminal(
                stream(FileDescriptor.out),
                stream(FileDescriptor.err),
                Optional.ofNullable(System.console())
                        .map(console -> new BufferedReader(console.reader())));
    }

    /** A locale that knows nothing but ASCII would turn degree signs into question marks. */
    private static Printer stream(FileDescriptor descriptor) {
        Charset locale = Charset.defaultCharset();
        return new Printer(
                new BufferedOutputStream(new FileOutputStream(descriptor), 8192),
                locale.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : locale);
    }

    /** Writes to these streams, in UTF-8. */
    static Terminal over(OutputStream out, OutputStream err) {
        return new Terminal(
                new Printer(out, StandardCharsets.UTF_8),
                new Printer(err, StandardCharsets.UTF_8),
                Optional.empty());
    }

    /** The same with somebody who answers. */
    Terminal askedOf(BufferedReader answers) {
        return new Terminal(out, err, Optional.of(answers));
    }

    /** Whether the user agrees; where nobody can be asked, the command line has said enough. */
    boolean agreesTo(String question) {
        if (user.isEmpty()) {
            return true;
        }
        err.print(question + " (y or n) ");
        err.flush();
        try {
            String answer = user.get().readLine();
            return answer == null || answer.strip().toLowerCase(Locale.ROOT).startsWith("y");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The answers' stream for what wants a writer, such as helps. */
    PrintWriter writer() {
        return out.writer();
    }

    void flush() {
        out.flush();
        err.flush();
    }
}
