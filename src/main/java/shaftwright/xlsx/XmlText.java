package shaftwright.xlsx;

/**
 * Texts as spreadsheet parts spell them: XML escapes, and {@code _xHHHH_} for characters that XML
 * cannot carry (ECMA-376 part 1, 22.9.2.19, ST_Xstring).
 */
public final class XmlText {
    private static final int CODE_LENGTH = 7;

    private XmlText() {}

    /** Resolves {@code _xHHHH_}. */
    static String decode(String text) {
        int at = text.indexOf("_x");
        if (at < 0) {
            return text;
        }
        StringBuilder decoded = new StringBuilder(text.length());
        int from = 0;
        while (at >= 0) {
            int code = codeAt(text, at);
            if (code >= 0) {
                decoded.append(text, from, at).append((char) code);
                from = at + CODE_LENGTH;
            }
            at = text.indexOf("_x", code >= 0 ? from : at + 1);
        }
        return decoded.append(text, from, text.length()).toString();
    }

    private static int codeAt(String text, int at) {
        if (at + CODE_LENGTH > text.length() || text.charAt(at + CODE_LENGTH - 1) != '_') {
            return -1;
        }
        int code = 0;
        for (int i = at + 2; i < at + CODE_LENGTH - 1; i++) {
            int digit = Character.digit(text.charAt(i), 16);
            if (digit < 0) {
                return -1;
            }
            code = code * 16 + digit;
        }
        return code;
    }

    /** Appends a text as element content. */
    public static void encode(StringBuilder out, String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '&') {
                out.append("&amp;");
            } else if (c == '<') {
                out.append("&lt;");
            } else if (c == '>') {
                out.append("&gt;");
            } else {
                store(out, text, i);
            }
        }
    }

    /**
     * A text for a library that writes XML escapes itself: what XML cannot carry is spelled {@code
     * _xHHHH_}, and what only looks like that begins with {@code _x005F_}.
     */
    public static String stored(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            store(out, text, i);
        }
        return out.toString();
    }

    private static void store(StringBuilder out, String text, int i) {
        char c = text.charAt(i);
        if (c == '_' && text.startsWith("_x", i) && codeAt(text, i) >= 0) {
            out.append("_x005F_");
        } else if (needsCode(text, i)) {
            out.append("_x");
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.append(Character.toUpperCase(Character.forDigit(c >> shift & 15, 16)));
            }
            out.append('_');
        } else {
            out.append(c);
        }
    }

    private static boolean needsCode(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 >= text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
        }
        return (c < ' ' && c != '\t' && c != '\n') || c == 0xFFFE || c == 0xFFFF;
    }

    /** The plain text of a shared or inline string: its runs, without phonetic hints. */
    static String richText(PartReader reader) {
        String first = "";
        StringBuilder more = null;
        while (reader.nextChild()) {
            String piece = "";
            if (reader.name().equals("t")) {
                piece = reader.text();
            } else if (reader.name().equals("r")) {
                piece = runText(reader);
            } else {
                reader.skip();
            }
            if (first.isEmpty()) {
                first = piece;
            } else if (!piece.isEmpty()) {
                more = more == null ? new StringBuilder(first) : more;
                more.append(piece);
            }
        }
        return decode(more == null ? first : more.toString());
    }

    private static String runText(PartReader reader) {
        String text = "";
        while (reader.nextChild()) {
            if (reader.name().equals("t")) {
                text = reader.text();
            } else {
                reader.skip();
            }
        }
        return text;
    }
}
