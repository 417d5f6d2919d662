package shaftwright.formula;

/**
 * Pieces of formula text by name. A text says {@code <name>} where a piece stands, so that it reads
 * like the formula that it becomes; it may go over several lines, whose ends and indents vanish.
 *
 * <pre>
 * Pieces.of("row", "{rated_row_in}")
 *         .and("share", "INDEX(bolt_share,&lt;row&gt;)")
 *         .in("IF(&lt;row&gt;=0,FALSE,&lt;share&gt;&gt;0.75)")
 * </pre>
 *
 * <p>A name is made of letters, digits and underscores; any other {@code <} compares, as ever.
 */
public final class Pieces {
    /** None: for texts over several lines. */
    public static final Pieces NONE = new Pieces();

    private final Pieces others;
    private final String name;
    private final String text;

    private Pieces() {
        others = this;
        name = "";
        text = "";
    }

    private Pieces(Pieces others, String name, String text) {
        this.others = others;
        this.name = name;
        this.text = text;
    }

    public static Pieces of(String name, String text) {
        return NONE.and(name, text);
    }

    public static Pieces of(String name, double number) {
        return NONE.and(name, number);
    }

    /**
     * These and one more, which may say {@code <name>} for a piece that it is made of. It stands
     * before one of the same name.
     */
    public Pieces and(String another, String itsText) {
        return new Pieces(this, another, in(itsText));
    }

    /** These and a number. */
    public Pieces and(String another, double number) {
        return new Pieces(this, another, FormulaText.number(number));
    }

    /** These and all of others. */
    public Pieces and(Pieces more) {
        return more == NONE ? this : and(more.others).and(more.name, more.text);
    }

    /** The text in one line with these pieces in place; those of other names stay open. */
    public String in(String open) {
        return filled(open, false);
    }

    /**
     * The same of a text that has no others.
     *
     * @throws IllegalArgumentException if it names a piece that is not among these
     */
    public String whole(String open) {
        return filled(open, true);
    }

    private String filled(String open, boolean whole) {
        if (open.indexOf('<') < 0 && open.indexOf('\n') < 0) {
            return open;
        }
        StringBuilder filled = new StringBuilder(2 * open.length());
        int done = 0;
        for (int at = mark(open, 0); at < open.length(); at = mark(open, at)) {
            filled.append(open, done, at);
            done = at;
            int close = endOfName(open, at + 1);
            if (open.charAt(at) == '\n') {
                done = endOfIndent(open, at + 1);
            } else if (close > at + 1 && close < open.length() && open.charAt(close) == '>') {
                filled.append(piece(open.substring(at + 1, close), whole));
                done = close + 1;
            }
            at = Math.max(at + 1, done);
        }
        return filled.append(open, done, open.length()).toString();
    }

    /** Where the next piece or line end may be. */
    private static int mark(String text, int from) {
        int piece = text.indexOf('<', from);
        int line = text.indexOf('\n', from);
        return Math.min(piece < 0 ? text.length() : piece, line < 0 ? text.length() : line);
    }

    private static int endOfName(String text, int from) {
        int at = from;
        while (at < text.length() && isInNames(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private static boolean isInNames(char c) {
        return c == '_' || Character.isLetterOrDigit(c);
    }

    private static int endOfIndent(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    private String piece(String wanted, boolean whole) {
        for (Pieces each = this; each != NONE; each = each.others) {
            if (each.name.equals(wanted)) {
                return whole ? whole(each.text) : each.text;
            }
        }
        if (whole) {
            throw new IllegalArgumentException("no piece is called <" + wanted + ">");
        }
        return "<" + wanted + ">";
    }
}
