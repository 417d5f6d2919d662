package shaftwright.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import shaftwright.jobs.PlainText;

/**
 * Prints text for people. Texts of workbooks may hold anything: a control character, which could
 * move the cursor, hide a line or end one, is shown as an escape such as {@code \u001b}, and so is
 * what turns the direction of writing. A line that is printed as one stays one.
 */
final class Printer extends PrintStream {
    private final Charset charset;

    Printer(OutputStream out, Charset charset) {
        super(out, false, charset);
        this.charset = charset;
    }

    /** Writes to this, texts of our own only: nothing is shown as an escape. */
    PrintWriter writer() {
        return new PrintWriter(this, true, charset);
    }

    /** Ends of lines inside pass, as of a help text. */
    @Override
    public void print(String text) {
        super.print(PlainText.shown(String.valueOf(text), true));
    }

    @Override
    public void print(Object object) {
        print(String.valueOf(object));
    }

    @Override
    public void println(String line) {
        synchronized (this) {
            super.print(PlainText.shown(String.valueOf(line), false));
            super.println();
        }
    }

    @Override
    public void println(Object object) {
        println(String.valueOf(object));
    }
}
