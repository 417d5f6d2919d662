package shaftwright.xlsx;

import java.util.Arrays;

/**
 * Walks the elements of one part, with exact byte offsets into its text.
 *
 * <p>A small pull reader for the XML that packages hold: elements, attributes, namespaces, text,
 * CDATA, comments, processing instructions, the five named and all numeric references (XML 1.0 and
 * Namespaces in XML 1.0). A DOCTYPE is refused, so neither external entities nor entity bombs can
 * occur. Own code because it reads 25,000 cells in a cold process in a quarter of the time that a
 * general parser takes, classes loaded; the tests hold it against one.
 */
final class PartReader {
    private static final String CDATA = "<![CDATA[";
    private static final String[] ENTITIES = {"&quot;", "&lt;", "&gt;", "&amp;", "&apos;"};

    /** What they stand for, in that order. */
    private static final String RESOLVED = "\"<>&'";

    private static final int BYTES = 256;
    private static final boolean[] NAME_BYTES = nameBytes();
    private static final int ATTRIBUTE = 5;
    private static final int LAST_COLUMN = 1 << 14;
    private static final int MOST_DIGITS = 9;

    private final PartText part;
    private final byte[] text;

    /** Where the next token starts. */
    private int at;

    private int start;
    private int end;
    private int nameStart;
    private int nameEnd;

    /** Where the local part of the name starts. */
    private int localStart;

    private boolean empty;

    /** Offsets of each attribute: name, local name, name's end, value, value's end. */
    private int[] attributes = new int[ATTRIBUTE * 8];

    private int attributeCount;

    /** Names of the open elements, as offsets in pairs. */
    private int[] open = new int[32];

    private int depth;

    /** Namespace declarations in force, innermost last. */
    private String[] prefixes = new String[8];

    private String[] namespaces = new String[8];
    private int[] declaredAt = new int[8];
    private int declarations;

    private PartReader(PartText part) {
        this.part = part;
        this.text = part.bytes();
        this.at = part.first();
    }

    /** What is done with a part's elements. */
    interface Walk {
        /** Called with the reader standing on the root's start tag. */
        void over(PartReader reader);
    }

    /**
     * Walks a part.
     *
     * @throws UnreadableBookException if it is not well-formed where it is walked, or has a DOCTYPE
     */
    static void walk(PartText part, Walk walk) {
        PartReader reader = new PartReader(part);
        if (!reader.nextChild()) {
            throw reader.broken("no element");
        }
        walk.over(reader);
    }

    /** A reader for single elements that a walk has found; none stands anywhere yet. */
    static PartReader ofElements(PartText part) {
        return new PartReader(part);
    }

    /**
     * Stands on the start tag at this place, found by a walk before. Namespaces declared around it
     * are not known.
     */
    void standOn(int place) {
        depth = 0;
        declarations = 0;
        startTag(place);
    }

    /** Steps into or along: true on a child's start tag, false on the end tag of its parent. */
    boolean nextChild() {
        if (empty) {
            leaveEmpty();
            return false;
        }
        while (true) {
            int bracket = bracketFrom(at);
            byte c = byteAt(bracket + 1);
            if (c == '/') {
                endTag(bracket);
                return false;
            }
            if (c != '!' && c != '?') {
                startTag(bracket);
                return true;
            }
            at = pastMarkup(bracket);
        }
    }

    private int bracketFrom(int from) {
        int i = from;
        int length = text.length;
        while (i < length && text[i] != '<') {
            i++;
        }
        if (i == length) {
            throw broken("its end is missing");
        }
        return i;
    }

    private void leaveEmpty() {
        empty = false;
        start = end;
        dropDeclarations();
    }

    /** Past a comment, a CDATA section or a processing instruction. */
    private int pastMarkup(int bracket) {
        if (matches("<!--", bracket)) {
            return past("-->", bracket + 4);
        }
        if (matches(CDATA, bracket)) {
            return past("]]>", bracket + CDATA.length());
        }
        if (text[bracket + 1] == '?') {
            return past("?>", bracket + 2);
        }
        throw new UnreadableBookException(
                part.title(),
                "a DOCTYPE in part " + part.part(),
                "parts without one, as every spreadsheet program writes them");
    }

    private boolean matches(String mark, int from) {
        if (from + mark.length() > text.length) {
            return false;
        }
        for (int i = 0; i < mark.length(); i++) {
            if (text[from + i] != mark.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private int past(String mark, int from) {
        int i = from;
        while (!matches(mark, i)) {
            if (++i >= text.length) {
                throw broken("\"" + mark + "\" is missing");
            }
        }
        return i + mark.length();
    }

    private void endTag(int bracket) {
        depth--;
        int from = depth < 0 ? 0 : open[depth * 2];
        int length = depth < 0 ? 0 : open[depth * 2 + 1] - from;
        int i = bracket + 2;
        int stop = i + length;
        boolean same = length > 0 && stop < text.length;
        while (same && i < stop) {
            same = text[i] == text[from++];
            i++;
        }
        i = same ? pastSpace(i) : i;
        if (!same || byteAt(i) != '>') {
            throw broken("an end tag without its start tag at byte " + bracket);
        }
        start = bracket;
        end = i + 1;
        at = end;
        dropDeclarations();
    }

    private void startTag(int bracket) {
        start = bracket;
        nameStart = bracket + 1;
        nameEnd = nameAt(nameStart);
        localStart = afterColon(nameStart, nameEnd);
        attributeCount = 0;
        int i = nameEnd;
        while (true) {
            int before = i;
            i = pastSpace(i);
            byte c = byteAt(i);
            if (c == '>') {
                empty = false;
                break;
            }
            if (c == '/' && byteAt(i + 1) == '>') {
                empty = true;
                i++;
                break;
            }
            if (i == before) {
                throw broken("a bad tag at byte " + bracket);
            }
            i = attributeAt(i);
        }
        end = i + 1;
        at = end;
        if (!empty) {
            pushOpen();
        }
    }

    private void pushOpen() {
        if (depth * 2 == open.length) {
            open = Arrays.copyOf(open, depth * 4);
        }
        open[depth * 2] = nameStart;
        open[depth * 2 + 1] = nameEnd;
        depth++;
    }

    private int attributeAt(int from) {
        int stop = nameAt(from);
        int i = pastSpace(stop);
        if (byteAt(i) != '=') {
            throw broken("an attribute without value at byte " + from);
        }
        i = pastSpace(i + 1);
        byte quote = byteAt(i);
        if (quote != '"' && quote != '\'') {
            throw broken("an attribute without quotes at byte " + from);
        }
        int close = i + 1;
        while (byteAt(close) != quote) {
            close++;
        }
        int slot = attributeCount * ATTRIBUTE;
        if (slot == attributes.length) {
            attributes = Arrays.copyOf(attributes, slot * 2);
        }
        attributes[slot] = from;
        attributes[slot + 1] = afterColon(from, stop);
        attributes[slot + 2] = stop;
        attributes[slot + 3] = i + 1;
        attributes[slot + 4] = close;
        attributeCount++;
        if (text[from] == 'x' && matches("xmlns", from)) {
            declare(from, stop, value(slot));
        }
        return close + 1;
    }

    private void declare(int from, int stop, String namespace) {
        boolean prefixed = text[from + 5] == ':';
        if (!prefixed && stop != from + 5) {
            return;
        }
        if (declarations == prefixes.length) {
            prefixes = Arrays.copyOf(prefixes, declarations * 2);
            namespaces = Arrays.copyOf(namespaces, declarations * 2);
            declaredAt = Arrays.copyOf(declaredAt, declarations * 2);
        }
        prefixes[declarations] = prefixed ? part.text(from + 6, stop) : "";
        namespaces[declarations] = namespace;
        declaredAt[declarations] = depth;
        declarations++;
    }

    private void dropDeclarations() {
        while (declarations > 0 && declaredAt[declarations - 1] >= depth) {
            declarations--;
        }
    }

    private int nameAt(int from) {
        int i = from;
        while (NAME_BYTES[byteAt(i) & (BYTES - 1)]) {
            i++;
        }
        if (i == from) {
            throw broken("no name at byte " + from);
        }
        return i;
    }

    /** Which bytes a name may have; which characters beyond ASCII are letters is not checked. */
    private static boolean[] nameBytes() {
        boolean[] named = new boolean[BYTES];
        Arrays.fill(named, ' ' + 1, BYTES, true);
        for (char other : "=>/<\"'".toCharArray()) {
            named[other] = false;
        }
        return named;
    }

    private int afterColon(int from, int to) {
        for (int i = from; i < to; i++) {
            if (text[i] == ':') {
                return i + 1;
            }
        }
        return from;
    }

    private int pastSpace(int from) {
        int i = from;
        byte c = byteAt(i);
        while (c == ' ' || c == '\n' || c == '\r' || c == '\t') {
            c = byteAt(++i);
        }
        return i;
    }

    private byte byteAt(int index) {
        if (index >= text.length) {
            throw broken("its end is missing");
        }
        return text[index];
    }

    /** Passes over the element whose start tag this stands on. */
    void skip() {
        int nested = 1;
        while (nested > 0) {
            nested += nextChild() ? 1 : -1;
        }
    }

    /** The text inside this element; leaves the reader on its end tag. */
    String text() {
        if (empty) {
            leaveEmpty();
            return "";
        }
        int from = at;
        int bracket = bracketFrom(from);
        if (byteAt(bracket + 1) == '/') {
            endTag(bracket);
            return resolved(from, bracket, false);
        }
        StringBuilder all = new StringBuilder();
        while (byteAt(bracket + 1) != '/') {
            all.append(resolved(from, bracket, false));
            if (text[bracket + 1] != '!' && text[bracket + 1] != '?') {
                throw broken("an element where only text belongs, at byte " + bracket);
            }
            from = pastMarkup(bracket);
            if (matches(CDATA, bracket)) {
                all.append(newLines(part.text(bracket + CDATA.length(), from - 3)));
            }
            bracket = bracketFrom(from);
        }
        endTag(bracket);
        return all.append(resolved(from, bracket, false)).toString();
    }

    /** A stretch with its references resolved and its line ends made one character. */
    private String resolved(int from, int to, boolean attribute) {
        for (int i = from; i < to; i++) {
            byte c = text[i];
            if (c == '&' && !attribute) {
                return withNamedEntities(from, to);
            }
            if (c == '&' || c == '\r' || (attribute && c < ' ' && c >= 0)) {
                return resolved(part.text(from, to), attribute);
            }
        }
        return part.text(from, to);
    }

    /** As {@link #resolved}, quicker where the five named entities are all there is to resolve. */
    private String withNamedEntities(int from, int to) {
        byte[] plain = new byte[to - from];
        int count = 0;
        int i = from;
        while (i < to) {
            byte c = text[i];
            if (c == '&') {
                int entity = 0;
                while (entity < ENTITIES.length && !matches(ENTITIES[entity], i)) {
                    entity++;
                }
                if (entity == ENTITIES.length) {
                    return resolved(part.text(from, to), false);
                }
                c = (byte) RESOLVED.charAt(entity);
                i += ENTITIES[entity].length();
            } else if (c == '\r') {
                return resolved(part.text(from, to), false);
            } else {
                i++;
            }
            plain[count++] = c;
        }
        return part.decoded(plain, count);
    }

    private String resolved(String raw, boolean attribute) {
        StringBuilder out = new StringBuilder(raw.length());
        int i = 0;
        while (i < raw.length()) {
            char c = raw.charAt(i);
            if (c == '&') {
                i = reference(out, raw, i);
            } else {
                boolean pair = c == '\r' && i + 1 < raw.length() && raw.charAt(i + 1) == '\n';
                i += pair ? 2 : 1;
                char line = c == '\r' ? '\n' : c;
                out.append(attribute && line < ' ' ? ' ' : line);
            }
        }
        return out.toString();
    }

    private static String newLines(String raw) {
        return raw.indexOf('\r') < 0 ? raw : raw.replace("\r\n", "\n").replace('\r', '\n');
    }

    private int reference(StringBuilder out, String raw, int from) {
        int stop = raw.indexOf(';', from);
        if (stop < 0) {
            throw broken("\"&\" without \";\" before byte " + at);
        }
        String name = raw.substring(from + 1, stop);
        switch (name) {
            case "amp" -> out.append('&');
            case "lt" -> out.append('<');
            case "gt" -> out.append('>');
            case "quot" -> out.append('"');
            case "apos" -> out.append('\'');
            default -> out.appendCodePoint(codePoint(name));
        }
        return stop + 1;
    }

    private int codePoint(String name) {
        boolean hex = name.startsWith("#x");
        int code = -1;
        if (name.startsWith("#") && name.length() < 10) {
            try {
                code = Integer.parseInt(name.substring(hex ? 2 : 1), hex ? 16 : 10);
            } catch (NumberFormatException e) {
                code = -1;
            }
        }
        if (!Character.isValidCodePoint(code)) {
            throw broken("the unknown entity \"&" + name + ";\" before byte " + at);
        }
        return code;
    }

    /** The local name of the element whose start tag this stands on. */
    String name() {
        return part.text(localStart, nameEnd);
    }

    /** The element's prefix with its colon, or "". */
    String prefix() {
        return part.text(nameStart, localStart);
    }

    /** Whether the element has this local name and this namespace. */
    boolean is(String name, String namespace) {
        return nameEnd - localStart == name.length()
                && matches(name, localStart)
                && isIn(namespace);
    }

    /** The element's local name where it is a single letter, as of all that cells have; else 0. */
    byte letter() {
        return nameEnd - localStart == 1 ? text[localStart] : 0;
    }

    /** Whether the element has this namespace. */
    boolean isIn(String namespace) {
        return namespace.equals(namespace());
    }

    /** The element's namespace, or "". */
    String namespace() {
        int length = localStart == nameStart ? 0 : localStart - nameStart - 1;
        for (int i = declarations - 1; i >= 0; i--) {
            if (prefixes[i].length() == length && matches(prefixes[i], nameStart)) {
                return namespaces[i];
            }
        }
        if (length > 0) {
            throw broken("the undeclared prefix of \"" + part.text(nameStart, nameEnd) + "\"");
        }
        return "";
    }

    /** An attribute without prefix, or null. */
    String attribute(String name) {
        return attribute(name, false);
    }

    /** An attribute that has a prefix, such as {@code r:id}, or null. */
    String prefixedAttribute(String name) {
        return attribute(name, true);
    }

    private String attribute(String name, boolean prefixed) {
        int slot = slot(name, prefixed);
        return slot < 0 ? null : value(slot);
    }

    private int slot(String name, boolean prefixed) {
        if (name.length() == 1 && !prefixed) {
            return slot(name.charAt(0));
        }
        for (int slot = 0; slot < attributeCount * ATTRIBUTE; slot += ATTRIBUTE) {
            int local = attributes[slot + 1];
            if (attributes[slot + 2] - local == name.length()
                    && matches(name, local)
                    && local > attributes[slot] == prefixed) {
                return slot;
            }
        }
        return -1;
    }

    /** The same for the names that every cell has. */
    private int slot(char name) {
        for (int slot = 0; slot < attributeCount * ATTRIBUTE; slot += ATTRIBUTE) {
            int at = attributes[slot];
            if (text[at] == name && attributes[slot + 2] == at + 1) {
                return slot;
            }
        }
        return -1;
    }

    /** Whether the element has no attributes. */
    boolean isPlain() {
        return attributeCount == 0;
    }

    /** Whether the element has this attribute, without prefix, spelled like this. */
    boolean says(String name, String value) {
        int slot = slot(name, false);
        return slot >= 0
                && attributes[slot + 4] - attributes[slot + 3] == value.length()
                && matches(value, attributes[slot + 3]);
    }

    /** Whether the element has this attribute, without prefix. */
    boolean has(String name) {
        return slot(name, false) >= 0;
    }

    /** The whole number, 0 to 999999999, that an attribute is; -1 when it is none or missing. */
    int whole(String name) {
        int slot = slot(name, false);
        if (slot < 0) {
            return -1;
        }
        int from = attributes[slot + 3];
        int to = attributes[slot + 4];
        int number = 0;
        for (int i = from; i < to; i++) {
            int digit = text[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return to > from && to - from <= MOST_DIGITS ? number : -1;
    }

    /** The zero-based column of an address attribute such as {@code r="AB12"}, or -1. */
    int addressColumn(String name) {
        int slot = slot(name, false);
        int column = 0;
        int i = attributes[slot + 3];
        while (i < attributes[slot + 4] && (text[i] & ~32) >= 'A' && (text[i] & ~32) <= 'Z') {
            column = column * 26 + (text[i] & 31);
            i++;
        }
        int length = i - attributes[slot + 3];
        return length == 0 || length > 3 || column > LAST_COLUMN ? -1 : column - 1;
    }

    private String value(int slot) {
        return resolved(attributes[slot + 3], attributes[slot + 4], true);
    }

    /** Whether the start tag closes itself. */
    boolean isEmpty() {
        return empty;
    }

    /** Where the tag that this stands on starts. */
    int start() {
        return start;
    }

    /** Where the tag that this stands on ends, its bracket included. */
    int end() {
        return end;
    }

    private UnreadableBookException broken(String what) {
        return new UnreadableBookException(
                part.title(), "part " + part.part() + " damaged: " + what, "well-formed XML");
    }

    UnreadableBookException damaged(String found, String expected) {
        return new UnreadableBookException(
                part.title(), found + " in part " + part.part(), expected);
    }
}
