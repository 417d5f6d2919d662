package shaftwright.jobs;

/**
 * Text of workbooks, which may hold anything, as it is shown: a control character, which could move
 * a cursor, hide a line or end one, as an escape such as {@code \u001b}, and so what turns the
 * direction of writing.
 */
public final class PlainText {
    private PlainText() {}

    /**
     * The text without what could do something.
     *
     * @param ends whether ends of lines inside pass
     */
    public static String shown(String text, boolean ends) {
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
