package shaftwright.xlsx;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The text of one part, kept as bytes of an encoding in which markup is plain ASCII. Offsets into
 * it count bytes, so unchanged stretches can be copied as they are, and no large text need be
 * decoded. A part in UTF-16 is held as UTF-8 and encoded again when it is written.
 */
final class PartText {
    private static final int DECLARATION = 200;

    private static final int SIGNS = 256;

    /** The bit that tells capitals from small letters. */
    private static final int CASE = 32;

    private final String title;
    private final String part;
    private final byte[] bytes;
    private final int first;
    private final Charset charset;
    private final Charset stored;

    private PartText(
            String title, String part, byte[] bytes, int first, Charset charset, Charset stored) {
        this.title = title;
        this.part = part;
        this.bytes = bytes;
        this.first = first;
        this.charset = charset;
        this.stored = stored;
    }

    /**
     * A part's text, its encoding told by byte order mark or XML declaration (XML 1.0, appendix F).
     *
     * @throws UnreadableBookException if the encoding is not one that packages use
     */
    static PartText of(String title, String part, byte[] bytes) {
        if (starts(bytes, 0xEF, 0xBB, 0xBF)) {
            return new PartText(
                    title, part, bytes, 3, StandardCharsets.UTF_8, StandardCharsets.UTF_8);
        }
        if (starts(bytes, 0xFE, 0xFF)) {
            return transcoded(title, part, bytes, StandardCharsets.UTF_16BE);
        }
        if (starts(bytes, 0xFF, 0xFE)) {
            return transcoded(title, part, bytes, StandardCharsets.UTF_16LE);
        }
        Charset charset = declared(title, part, bytes);
        return new PartText(title, part, bytes, 0, charset, charset);
    }

    /** The mark U+FEFF stays in front, as three bytes of UTF-8, and comes back as it was. */
    private static PartText transcoded(String title, String part, byte[] bytes, Charset stored) {
        byte[] utf8 = new String(bytes, stored).getBytes(StandardCharsets.UTF_8);
        return new PartText(title, part, utf8, 3, StandardCharsets.UTF_8, stored);
    }

    private static Charset declared(String title, String part, byte[] bytes) {
        int length = Math.min(bytes.length, DECLARATION);
        String start = new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
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
        if (name.equalsIgnoreCase("UTF-8") || name.equalsIgnoreCase("US-ASCII")) {
            return StandardCharsets.UTF_8;
        }
        if (name.equalsIgnoreCase("ISO-8859-1")) {
            return StandardCharsets.ISO_8859_1;
        }
        throw new UnreadableBookException(
                title, "part " + part + " in encoding \"" + name + "\"", "UTF-8 or UTF-16");
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

    /** The file's name, for messages. */
    String title() {
        return title;
    }

    /** The part's name. */
    String part() {
        return part;
    }

    /** The text's bytes; not to be changed. */
    byte[] bytes() {
        return bytes;
    }

    /**
     * Whether this ASCII text in lower case stands anywhere, in capitals or not, with a letter
     * behind it. Skips ahead by R. N. Horspool, "Practical fast searching in strings", 1980.
     */
    boolean hasNameAfter(String lowerCase) {
        int length = lowerCase.length();
        byte[] skips = new byte[SIGNS];
        Arrays.fill(skips, (byte) length);
        for (int i = 0; i < length - 1; i++) {
            char sign = lowerCase.charAt(i);
            skips[sign] = (byte) (length - 1 - i);
            if (sign >= 'a' && sign <= 'z') {
                skips[sign ^ CASE] = skips[sign];
            }
        }
        int last = first + length - 1;
        char end = lowerCase.charAt(length - 1);
        while (last < bytes.length - 1) {
            // Most places are passed by their last sign alone; setting the case bit lets more by.
            if ((bytes[last] | CASE) == (end | CASE)
                    && standsAt(last - length + 1, lowerCase)
                    && isLetter(bytes[last + 1])) {
                return true;
            }
            last += skips[bytes[last] & (SIGNS - 1)];
        }
        return false;
    }

    private static boolean isLetter(byte sign) {
        return (sign | CASE) >= 'a' && (sign | CASE) <= 'z';
    }

    private boolean standsAt(int place, String lowerCase) {
        for (int i = 0; i < lowerCase.length(); i++) {
            byte found = bytes[place + i];
            boolean capital = found >= 'A' && found <= 'Z';
            if ((capital ? found | CASE : found) != lowerCase.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Whether some element of a sheet has a format other than the first, by its {@code s}. */
    boolean hasFormats() {
        byte[] attribute = encoded(" s=\"");
        for (int at = first; at + attribute.length < bytes.length; at++) {
            int value = at + attribute.length;
            if (Arrays.equals(bytes, at, value, attribute, 0, attribute.length)
                    && bytes[value] >= '1'
                    && bytes[value] <= '9') {
                return true;
            }
        }
        return false;
    }

    /** Where the text starts, after a byte order mark. */
    int first() {
        return first;
    }

    /** A stretch as a string. */
    String text(int from, int to) {
        return new String(bytes, from, to - from, charset);
    }

    /** The first of these bytes as a string. */
    String decoded(byte[] part, int count) {
        return new String(part, 0, count, charset);
    }

    /** Bytes of new text in this part. */
    byte[] encoded(String text) {
        return text.getBytes(charset);
    }

    /** Adds a stretch of such bytes to the part's new content, in the part's own encoding. */
    void emit(Deflated out, byte[] source, int from, int length) {
        if (stored.equals(charset)) {
            out.add(source, from, length);
        } else {
            byte[] converted = new String(source, from, length, charset).getBytes(stored);
            out.add(converted, 0, converted.length);
        }
    }
}
