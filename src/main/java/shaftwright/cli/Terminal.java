package shaftwright.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Where a command writes.
 *
 * @param out answers
 * @param err errors and progress
 */
record Terminal(Printer out, Printer err) {
    /** The process's own streams. */
    static Terminal ofProcess() {
        return new Terminal(stream(FileDescriptor.out), stream(FileDescriptor.err));
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
                new Printer(out, StandardCharsets.UTF_8), new Printer(err, StandardCharsets.UTF_8));
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
