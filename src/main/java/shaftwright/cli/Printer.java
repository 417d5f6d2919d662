package shaftwright.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;

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
        super.print(shown(String.valueOf(text), true));
    }

    @Override
    public void print(Object object) {
        print(String.valueOf(object));
    }

    @Override
    public void println(String line) {
        synchronized (this) {
            super.print(shown(String.valueOf(line), false));
            super.println();
        }
    }

    @Override
    public void println(Object object) {
        println(String.valueOf(object));
    }

    private static String shown(String text, boolean ends) {
        int clean = 0;
        while (clean < text.length() && isPlain(text.charAt(clean), ends)) {
            clean++;
        }
        if (clean == text.length()) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 16).append(text, 0, clean);
        for (int i = clean; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (isPlain(sign, ends)) {
                shown.append(sign);
            } else {
                shown.append(sign == '\n' ? "\\n" : String.format("\\u%04x", (int) sign));
            }
        }
        return shown.toString();
    }

    private static boolean isPlain(char sign, boolean ends) {
        if (sign < ' ') {
            return sign == '\t' || (ends && (sign == '\n' || sign == '\r'));
        }
        boolean control = sign >= 0x7f && sign < 0xa0;
        boolean line = sign == '\u2028' || sign == '\u2029';
        boolean direction =
                (sign >= '\u202a' && sign <= '\u202e') || (sign >= '\u2066' && sign <= '\u2069');
        return !control && !line && !direction;
    }
}
