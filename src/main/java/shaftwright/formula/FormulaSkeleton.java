package shaftwright.formula;

/**
 * A formula without what it refers to: its functions, operators, texts and numbers in order, with
 * one mark for every reference, name or place. Two formulas with equal skeletons compute the same
 * from cells at possibly other places, so that rows, sheets and columns may be moved and the
 * formula be rewritten by another program, while an edited formula is told apart.
 *
 * <p>Blanks outside texts, {@code $}, sheet prefixes, the case of functions, prefixes such as
 * {@code _xlfn.} and the brackets of {@code TRUE()} do not count; numbers are taken as floats,
 * since programs write their last digits differently. A workbook has tens of thousands of formulas,
 * so the words are not kept: a 64-bit sum over them (FNV-1a) and their number stand for them.
 */
public final class FormulaSkeleton {
    private static final long START = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    /** What a character of the first 128 is: part of a word, blank, or something of its own. */
    private static final byte[] KIND = kinds();

    private static final byte OTHER = 0;
    private static final byte WORD = 1;
    private static final byte DIGIT = 2;
    private static final byte BLANK = 3;

    private static byte[] kinds() {
        byte[] kinds = new byte[128];
        for (char c = 0; c < kinds.length; c++) {
            if (isDigit(c)) {
                kinds[c] = DIGIT;
            } else if (Character.isLetter(c) || c == '_' || c == '.' || c == '$' || c == '~') {
                kinds[c] = WORD;
            } else if (c == ' ' || c == '\n' || c == '\r' || c == '\t') {
                kinds[c] = BLANK;
            }
        }
        return kinds;
    }

    private final String text;
    private int at;
    private long sum = START;
    private int words;

    /** Whether the last word was a reference, and whether a colon after it is still held back. */
    private boolean afterReference;

    private boolean heldColon;

    private FormulaSkeleton(String text) {
        this.text = text;
        while (at < text.length()) {
            next();
        }
        releaseColon();
    }

    /** Of a cell's formula text or a declared one with places; both without the equals sign. */
    public static FormulaSkeleton of(String formula) {
        return new FormulaSkeleton(formula);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FormulaSkeleton that && sum == that.sum && words == that.words;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(sum);
    }

    private void mix(int code) {
        sum = (sum ^ code) * PRIME;
    }

    /** Ends a word whose characters were mixed in. */
    private void endWord() {
        mix(-1);
        words++;
        afterReference = false;
    }

    /** Begins a word: a colon that was held back turns out to belong to no range. */
    private void releaseColon() {
        if (heldColon) {
            heldColon = false;
            mix(':');
            endWord();
        }
    }

    private void add(int from, int to) {
        releaseColon();
        for (int i = from; i < to; i++) {
            mix(text.charAt(i));
        }
        endWord();
    }

    private void addUpper(int from, int to) {
        releaseColon();
        for (int i = from; i < to; i++) {
            mix(Character.toUpperCase(text.charAt(i)));
        }
        endWord();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private void next() {
        char c = text.charAt(at);
        byte kind = c < KIND.length ? KIND[c] : OTHER;
        if (kind == BLANK) {
            at++;
        } else if (kind == DIGIT || (c == '.' && digitAt(at + 1))) {
            number();
        } else if (kind == WORD || (c >= KIND.length && isWordPart(c))) {
            word();
        } else if (c == '"') {
            int start = at;
            skipQuoted('"');
            add(start, at);
        } else if (c == '\'') {
            skipQuoted('\'');
            sheetPrefix();
        } else if (c == '{' && at + 1 < text.length() && isPlaceStart(text.charAt(at + 1))) {
            place();
        } else if (c == '#') {
            fault();
        } else {
            operator(c);
        }
    }

    /** From this mark to the next single one, doubled ones included. */
    private void skipQuoted(char mark) {
        at++;
        while (at < text.length()) {
            if (text.charAt(at++) == mark) {
                if (at >= text.length() || text.charAt(at) != mark) {
                    break;
                }
                at++;
            }
        }
    }

    private void sheetPrefix() {
        if (at < text.length() && text.charAt(at) == '!') {
            at++;
        }
    }

    private void number() {
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
        releaseColon();
        mix(Float.floatToIntBits(value(start)));
        endWord();
    }

    /** Most numbers in formulas are short and whole. */
    private float value(int start) {
        int whole = 0;
        for (int i = start; i < at; i++) {
            if (i - start > 6 || !isDigit(text.charAt(i))) {
                return Float.parseFloat(text.substring(start, at));
            }
            whole = whole * 10 + text.charAt(i) - '0';
        }
        return whole;
    }

    private boolean digitAt(int where) {
        return where < text.length() && isDigit(text.charAt(where));
    }

    /** A function, a truth value, a name, a reference, or a sheet's name before one. */
    private void word() {
        int start = at;
        int length = text.length();
        int end = start + 1;
        while (end < length && isWordPart(text.charAt(end))) {
            end++;
        }
        at = end;
        char next = end < length ? text.charAt(end) : ' ';
        if (next == '!') {
            at++;
        } else if (is(start, "TRUE") || is(start, "FALSE")) {
            addUpper(start, at);
            skip("()");
        } else if (next == '(') {
            addUpper(afterPrefix(start), at);
        } else {
            reference();
        }
    }

    /** Where a function's own name begins, behind {@code _xlfn.} and the like. */
    private int afterPrefix(int start) {
        int from = at;
        while (from > start && text.charAt(from - 1) != '.') {
            from--;
        }
        return from;
    }

    private boolean is(int start, String word) {
        return at - start == word.length()
                && text.regionMatches(true, start, word, 0, word.length());
    }

    private void skip(String expected) {
        if (text.startsWith(expected, at)) {
            at += expected.length();
        }
    }

    /** Both ends of a range are one reference. */
    private void reference() {
        if (heldColon) {
            heldColon = false;
        } else {
            mix('@');
            endWord();
        }
        afterReference = true;
    }

    private static boolean isWordPart(char c) {
        if (c < KIND.length) {
            return KIND[c] == WORD || KIND[c] == DIGIT;
        }
        return Character.isLetterOrDigit(c);
    }

    private static boolean isPlaceStart(char c) {
        return c == ':' || (c >= 'a' && c <= 'z');
    }

    private void addWord(String word) {
        releaseColon();
        for (int i = 0; i < word.length(); i++) {
            mix(word.charAt(i));
        }
        endWord();
    }

    /** A place of a declared formula; the row's own number is written as a count of rows. */
    private void place() {
        int end = text.indexOf('}', at);
        if (text.startsWith("{:ordinal", at)) {
            addWord("ROWS");
            addWord("(");
            reference();
            addWord(")");
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
        add(start, at);
    }

    private void operator(char c) {
        if (c == ':' && afterReference && !heldColon) {
            heldColon = true;
            at++;
            return;
        }
        char next = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
        boolean two = (next == '=' && (c == '<' || c == '>')) || (next == '>' && c == '<');
        releaseColon();
        mix(c);
        if (two) {
            mix(next);
        }
        endWord();
        at += two ? 2 : 1;
    }
}
