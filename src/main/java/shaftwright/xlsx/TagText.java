package shaftwright.xlsx;

/** Small changes to the text of one start tag of a well-formed part. */
final class TagText {
    private TagText() {}

    /** The tag with this attribute set; a self-closing tag stays one. */
    static String withAttribute(String tag, String name, String value) {
        int at = find(tag, name);
        String written = " " + name + "=\"" + value + "\"";
        if (at >= 0) {
            return tag.substring(0, at) + written + tag.substring(attributeEnd(tag, at));
        }
        int end = tag.endsWith("/>") ? tag.length() - 2 : tag.length() - 1;
        while (isSpace(tag.charAt(end - 1))) {
            end--;
        }
        return tag.substring(0, end) + written + tag.substring(end);
    }

    /** The tag without this attribute. */
    static String withoutAttribute(String tag, String name) {
        int at = find(tag, name);
        return at < 0 ? tag : tag.substring(0, at) + tag.substring(attributeEnd(tag, at));
    }

    /** An attribute's raw value, or null. */
    static String attribute(String tag, String name) {
        int at = find(tag, name);
        if (at < 0) {
            return null;
        }
        int open = openingQuote(tag, at);
        return tag.substring(open + 1, tag.indexOf(tag.charAt(open), open + 1));
    }

    /** Where the attribute's leading white space starts, or -1. */
    private static int find(String tag, String name) {
        int at = 1;
        while (isNameCharacter(tag.charAt(at))) {
            at++;
        }
        while (true) {
            int space = at;
            while (isSpace(tag.charAt(at))) {
                at++;
            }
            if (!isNameCharacter(tag.charAt(at))) {
                return -1;
            }
            int start = at;
            while (isNameCharacter(tag.charAt(at))) {
                at++;
            }
            if (at - start == name.length() && tag.startsWith(name, start)) {
                return space;
            }
            at = attributeEnd(tag, space);
        }
    }

    private static int openingQuote(String tag, int at) {
        int open = at;
        while (tag.charAt(open) != '"' && tag.charAt(open) != '\'') {
            open++;
        }
        return open;
    }

    private static int attributeEnd(String tag, int at) {
        int open = openingQuote(tag, at);
        return tag.indexOf(tag.charAt(open), open + 1) + 1;
    }

    private static boolean isNameCharacter(char c) {
        return !isSpace(c) && c != '/' && c != '>' && c != '=';
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\t' || c == '\r';
    }
}
