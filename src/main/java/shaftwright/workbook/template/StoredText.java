package shaftwright.workbook.template;

import java.util.Locale;

/**
 * A text as a workbook file stores it: what XML can't hold is written {@code _x0007_}, and what
 * only looks like that begins with {@code _x005F_} (ECMA-376 part 1, 22.9.2.19).
 */
final class StoredText {
    private static final int CODE = 7;

    private StoredText() {}

    static String of(String text) {
        StringBuilder stored = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '_' && looksLikeCode(text, at)) {
                stored.append("_x005F_");
            } else if (fits(text, at)) {
                stored.append(c);
            } else {
                String hex = Integer.toHexString(0x10000 | c).substring(1);
                stored.append("_x").append(hex.toUpperCase(Locale.ROOT)).append('_');
            }
        }
        return stored.toString();
    }

    private static boolean looksLikeCode(String text, int at) {
        if (at + CODE > text.length() || text.charAt(at + 1) != 'x') {
            return false;
        }
        for (int i = at + 2; i < at + CODE - 1; i++) {
            if (Character.digit(text.charAt(i), 16) < 0) {
                return false;
            }
        }
        return text.charAt(at + CODE - 1) == '_';
    }

    /** Whether XML can hold the character; halves of a pair only as a pair. */
    private static boolean fits(String text, int at) {
        char c = text.charAt(at);
        if (Character.isHighSurrogate(c)) {
            return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        }
        // A carriage return would come back as a line feed.
        return (c >= ' ' && c < '\uFFFE') || c == '\t' || c == '\n';
    }
}
