package shaftwright.workbook.xlsx;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A part decoded so that every stretch of it encodes back to the very bytes it came from. */
final class PartText {
    private static final byte[] NO_MARK = {};
    private static final int DECLARATION = 200;

    private final String part;
    private final String text;
    private final Charset charset;
    private final byte[] mark;

    private PartText(String part, String text, Charset charset, byte[] mark) {
        this.part = part;
        this.text = text;
        this.charset = charset;
        this.mark = mark;
    }

    /**
     * Decodes by byte order mark or XML declaration; XML 1.0 appendix F.
     *
     * @throws UnreadableBookException if the bytes are no valid text in that encoding
     */
    static PartText decode(String title, String part, byte[] bytes) {
        Charset charset;
        int skip = 0;
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            charset = StandardCharsets.UTF_8;
            skip = 3;
        } else if (starts(bytes, 0xFE, 0xFF)) {
            charset = StandardCharsets.UTF_16BE;
            skip = 2;
        } else if (starts(bytes, 0xFF, 0xFE)) {
            charset = StandardCharsets.UTF_16LE;
            skip = 2;
        } else {
            charset = declared(title, part, bytes);
        }
        String text = new String(bytes, skip, bytes.length - skip, charset);
        byte[] mark = skip == 0 ? NO_MARK : Arrays.copyOf(bytes, skip);
        PartText decoded = new PartText(part, text, charset, mark);
        if (text.indexOf('\uFFFD') >= 0 && !decoded.encodesTo(bytes)) {
            throw new UnreadableBookException(
                    title, "part " + part + " with broken characters", ZipSnapshot.A_WORKBOOK);
        }
        return decoded;
    }

    private boolean encodesTo(byte[] bytes) {
        byte[] encoded = text.getBytes(charset);
        return Arrays.equals(
                encoded,
                0,
                encoded.length,
                bytes,
                Math.min(mark.length, bytes.length),
                bytes.length);
    }

    private static Charset declared(String title, String part, byte[] bytes) {
        String start =
                new String(
                        bytes, 0, Math.min(bytes.length, DECLARATION), StandardCharsets.ISO_8859_1);
        int end = start.indexOf("?>");
        int at = start.indexOf("encoding");
        if (!start.startsWith("<?xml") || at < 0 || at > end) {
            return StandardCharsets.UTF_8;
        }
        int open = at + "encoding".length();
        while (open < end && start.charAt(open) != '"' && start.charAt(open) != '\'') {
            open++;
        }
        int close = start.indexOf(start.charAt(open), open + 1);
        String name = close < 0 ? "" : start.substring(open + 1, close);
        if (name.equalsIgnoreCase("UTF-8")) {
            return StandardCharsets.UTF_8;
        }
        if (name.equalsIgnoreCase("US-ASCII") || name.equalsIgnoreCase("ISO-8859-1")) {
            return StandardCharsets.ISO_8859_1;
        }
        throw new UnreadableBookException(
                title, "part " + part + " in encoding \"" + name + "\"", "UTF-8 or UTF-16");
    }

    /** The part's name. */
    String part() {
        return part;
    }

    /** The characters, without byte order mark. */
    String text() {
        return text;
    }

    /** How the characters are encoded. */
    Charset charset() {
        return charset;
    }

    /** The byte order mark's bytes, possibly none. */
    byte[] mark() {
        return mark;
    }

    private static boolean starts(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }
}
