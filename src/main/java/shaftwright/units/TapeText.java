package shaftwright.units;

import java.util.List;

/**
 * A tape text with one sign for each thing: plain spaces, single and none at the ends, one kind of
 * quote, hyphen and letter case, fractions written out.
 *
 * <p>The workbook's tape formula straightens texts by the same lists.
 */
public final class TapeText {
    /** What may stand for a space: no-break, en, em, figure, thin, hair and narrow no-break. */
    public static final String SPACES = "\u00a0\u2002\u2003\u2007\u2009\u200a\u202f";

    /** What may stand for the stroke of a fraction: fraction slash and division slash. */
    public static final String SLASHES = "\u2044\u2215";

    /** What may stand for a foot mark; two of them are an inch mark. */
    public static final String FOOT_MARKS = "\u2018\u2019\u2032";

    /** What may stand for an inch mark. */
    public static final String INCH_MARKS = "\u201c\u201d\u2033";

    /** What may stand for a hyphen or a minus: minus sign and en dash. */
    public static final String HYPHENS = "\u2212\u2013";

    /** Single signs for fractions, to which spreadsheet programs change a typed {@code 1/2}. */
    public static final List<Glyph> GLYPHS =
            List.of(
                    new Glyph('\u00bd', "1/2"),
                    new Glyph('\u00bc', "1/4"),
                    new Glyph('\u00be', "3/4"),
                    new Glyph('\u215b', "1/8"),
                    new Glyph('\u215c', "3/8"),
                    new Glyph('\u215d', "5/8"),
                    new Glyph('\u215e', "7/8"),
                    new Glyph('\u2153', "1/3"),
                    new Glyph('\u2154', "2/3"));

    /** A fraction in one sign, and the same written out. */
    public record Glyph(char sign, String fraction) {}

    private TapeText() {}

    /**
     * The text with one sign for each thing.
     *
     * @throws UnreadableLengthException if there is a line break or tab in it
     */
    public static String straightened(String written) {
        StringBuilder plain = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            char sign = written.charAt(i);
            if (sign < ' ') {
                throw new UnreadableLengthException(written, "there is a line break or tab in it");
            }
            String fraction = fraction(sign);
            if (!fraction.isEmpty()) {
                fraction(plain, fraction);
            } else {
                append(plain, straightened(sign));
            }
        }
        int last = plain.length() - 1;
        return last >= 0 && plain.charAt(last) == ' ' ? plain.substring(0, last) : plain.toString();
    }

    private static String fraction(char sign) {
        if (sign >= '\u00bc') {
            for (Glyph glyph : GLYPHS) {
                if (glyph.sign == sign) {
                    return glyph.fraction;
                }
            }
        }
        return "";
    }

    /** A glyph needs no space before it, a fraction written out does. */
    private static void fraction(StringBuilder plain, String fraction) {
        char before = plain.isEmpty() ? ' ' : plain.charAt(plain.length() - 1);
        if (before != ' ' && before != '-' && before != '+') {
            plain.append(' ');
        }
        plain.append(fraction);
    }

    private static void append(StringBuilder plain, char sign) {
        int last = plain.length() - 1;
        if (sign == ' ' && (last < 0 || plain.charAt(last) == ' ')) {
            return;
        }
        if (sign == '\'' && last >= 0 && plain.charAt(last) == '\'') {
            plain.setCharAt(last, '"');
        } else {
            plain.append(sign);
        }
    }

    private static char straightened(char sign) {
        if (sign >= 'A' && sign <= 'Z') {
            return (char) (sign + ('a' - 'A'));
        }
        if (sign <= '~') {
            return sign;
        }
        if (SPACES.indexOf(sign) >= 0) {
            return ' ';
        }
        if (SLASHES.indexOf(sign) >= 0) {
            return '/';
        }
        if (FOOT_MARKS.indexOf(sign) >= 0) {
            return '\'';
        }
        if (INCH_MARKS.indexOf(sign) >= 0) {
            return '"';
        }
        return HYPHENS.indexOf(sign) >= 0 ? '-' : sign;
    }
}
