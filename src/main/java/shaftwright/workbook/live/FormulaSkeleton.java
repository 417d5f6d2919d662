package shaftwright.workbook.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A formula without what it refers to: its functions, operators, texts and numbers in order, with
 * one mark for every reference, name or place. Two formulas with equal skeletons compute the same
 * from cells at possibly other places, so that rows, sheets and columns may be moved and the
 * formula be rewritten by another program, while an edited formula is told apart.
 *
 * <p>Blanks outside texts, {@code $}, sheet prefixes, the case of functions, prefixes such as
 * {@code _xlfn.} and the brackets of {@code TRUE()} do not count; numbers are compared as doubles
 * to 14 digits, since programs save no more.
 */
public final class FormulaSkeleton {
    private static final String REFERENCE = "@";
    private static final double TOLERANCE = 1e-14;

    private final String text;
    private final List<String> words = new ArrayList<>();
    private int at;

    private FormulaSkeleton(String text) {
        this.text = text;
        while (at < text.length()) {
            next();
        }
    }

    /** Of a cell's formula text or a declared one with places; both without the equals sign. */
    public static FormulaSkeleton of(String formula) {
        return new FormulaSkeleton(formula);
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof FormulaSkeleton that) || words.size() != that.words.size()) {
            return false;
        }
        for (int i = 0; i < words.size(); i++) {
            if (!same(words.get(i), that.words.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Numbers are left out, as equal ones may be written differently. */
    @Override
    public int hashCode() {
        return words.size();
    }

    /** The words with blanks between, for messages. */
    @Override
    public String toString() {
        return String.join(" ", words);
    }

    private static boolean same(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        if (!startsNumber(one) || !startsNumber(other)) {
            return false;
        }
        double first = Double.parseDouble(one);
        double second = Double.parseDouble(other);
        return Math.abs(first - second) <= TOLERANCE * Math.abs(first);
    }

    private static boolean startsNumber(String word) {
        char first = word.charAt(0);
        return isDigit(first) || (first == '.' && word.length() > 1);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private void next() {
        char c = text.charAt(at);
        if (c == ' ' || c == '\n' || c == '\r' || c == '\t') {
            at++;
        } else if (c == '"') {
            words.add(quoted('"'));
        } else if (c == '\'') {
            quoted('\'');
            sheetPrefix();
        } else if (isDigit(c) || (c == '.' && digitAt(at + 1))) {
            words.add(number());
        } else if (isWordPart(c)) {
            word();
        } else if (c == '{' && at + 1 < text.length() && isPlaceStart(text.charAt(at + 1))) {
            place();
        } else if (c == '#') {
            fault();
        } else {
            operator(c);
        }
    }

    /** From this mark to the next single one, doubled ones included. */
    private String quoted(char mark) {
        int start = at++;
        while (at < text.length()) {
            if (text.charAt(at++) == mark) {
                if (at >= text.length() || text.charAt(at) != mark) {
                    break;
                }
                at++;
            }
        }
        return text.substring(start, at);
    }

    private void sheetPrefix() {
        if (at < text.length() && text.charAt(at) == '!') {
            at++;
        }
    }

    private String number() {
        int start = at;
        while (at < text.length() && (digitAt(at) || text.charAt(at) == '.')) {
            at++;
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            int power = at + 1;
            if (power < text.length() && "+-".indexOf(text.charAt(power)) >= 0) {
                power++;
            }
            if (digitAt(power)) {
                at = power;
                while (digitAt(at)) {
                    at++;
                }
            }
        }
        return text.substring(start, at);
    }

    private boolean digitAt(int where) {
        return where < text.length() && isDigit(text.charAt(where));
    }

    /** A function, a truth value, a name, a reference, or a sheet's name before one. */
    private void word() {
        int start = at;
        while (at < text.length() && isWordPart(text.charAt(at))) {
            at++;
        }
        String word = text.substring(start, at);
        if (at < text.length() && text.charAt(at) == '!') {
            at++;
        } else if (word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE")) {
            words.add(word.toUpperCase(Locale.ROOT));
            skip("()");
        } else if (at < text.length() && text.charAt(at) == '(') {
            words.add(function(word));
        } else {
            reference();
        }
    }

    private void skip(String expected) {
        if (text.startsWith(expected, at)) {
            at += expected.length();
        }
    }

    private static String function(String word) {
        return word.substring(word.lastIndexOf('.') + 1).toUpperCase(Locale.ROOT);
    }

    /** Both ends of a range are one reference. */
    private void reference() {
        int last = words.size() - 1;
        if (last >= 1 && words.get(last).equals(":") && words.get(last - 1).equals(REFERENCE)) {
            words.remove(last);
        } else {
            words.add(REFERENCE);
        }
    }

    private static boolean isWordPart(char c) {
        return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '$' || c == '~';
    }

    private static boolean isPlaceStart(char c) {
        return c == ':' || (c >= 'a' && c <= 'z');
    }

    /** A place of a declared formula; the row's own number is written as a count of rows. */
    private void place() {
        int end = text.indexOf('}', at);
        if (text.startsWith("{:ordinal", at)) {
            words.add("ROWS");
            words.add("(");
            words.add(REFERENCE);
            words.add(")");
        } else {
            reference();
        }
        at = end + 1;
    }

    /** {@code #N/A}, {@code #REF!} and the like. */
    private void fault() {
        int start = at++;
        while (at < text.length() && (isWordPart(text.charAt(at)) || text.charAt(at) == '/')) {
            at++;
        }
        if (at < text.length() && "!?".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        words.add(text.substring(start, at));
    }

    private void operator(char c) {
        boolean two =
                at + 1 < text.length()
                        && (text.startsWith("<=", at)
                                || text.startsWith(">=", at)
                                || text.startsWith("<>", at));
        words.add(two ? text.substring(at, at + 2) : String.valueOf(c));
        at += two ? 2 : 1;
    }
}
