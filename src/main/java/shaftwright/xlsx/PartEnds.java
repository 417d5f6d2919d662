package shaftwright.xlsx;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The first and last bytes of a part that passes by, to tell whether its text was cut off. Taken
 * for parts in an encoding in which markup is plain ASCII; of others nothing is said.
 */
final class PartEnds {
    /** Room for a declaration, a comment and a root's name; for an end tag and line ends. */
    private static final int LENGTH = 1024;

    private byte[] head = {};
    private byte[] tail = {};

    /** Takes the next bytes. */
    void add(byte[] bytes, int count) {
        if (head.length < LENGTH) {
            head = joined(head, bytes, Math.min(count, LENGTH - head.length));
        }
        if (count >= LENGTH) {
            tail = Arrays.copyOfRange(bytes, count - LENGTH, count);
        } else if (count > 0) {
            byte[] all = joined(tail, bytes, count);
            tail = Arrays.copyOfRange(all, Math.max(0, all.length - LENGTH), all.length);
        }
    }

    private static byte[] joined(byte[] first, byte[] second, int count) {
        byte[] all = Arrays.copyOf(first, first.length + count);
        System.arraycopy(second, 0, all, first.length, count);
        return all;
    }

    /** The end tag with which the text should end and does not; empty when all is well. */
    String missingEndTag() {
        String start = text(head);
        String root = rootName(start);
        String end = text(tail).stripTrailing();
        if (root.isEmpty() || end.endsWith("-->") || end.endsWith("?>")) {
            return "";
        }
        int last = end.lastIndexOf('<');
        String tag = last < 0 ? "" : end.substring(last);
        boolean closed =
                tag.startsWith("</" + root) && tag.substring(root.length() + 2).strip().equals(">");
        boolean whole = tag.startsWith("<" + root) && tag.endsWith("/>");
        return closed || whole ? "" : "</" + root + ">";
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** The root's name with its prefix; empty when it stands further behind or can't be told. */
    private static String rootName(String start) {
        int at = start.indexOf('<');
        while (at >= 0 && at + 1 < start.length()) {
            char next = start.charAt(at + 1);
            if (next != '?' && next != '!') {
                int end = at + 1;
                while (end < start.length() && !isNameEnd(start.charAt(end))) {
                    end++;
                }
                return end < start.length() ? start.substring(at + 1, end) : "";
            }
            int close = start.indexOf(next == '?' ? "?>" : "-->", at);
            at = close < 0 ? -1 : start.indexOf('<', close);
        }
        return "";
    }

    private static boolean isNameEnd(char sign) {
        return sign <= ' ' || sign == '>' || sign == '/';
    }
}
