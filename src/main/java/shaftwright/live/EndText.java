package shaftwright.live;

import java.util.Locale;
import shaftwright.formula.Pieces;
import shaftwright.shaft.ShaftEnd;

/** Names, labels and formulas that both ends of a shaft have alike. */
final class EndText {
    private static final Pieces INNER = pieces(ShaftEnd.INNER);
    private static final Pieces OUTER = pieces(ShaftEnd.OUTER);

    private EndText() {}

    /**
     * An end's words: {@code <end>} its short word, {@code <other>} the other end's, {@code
     * <inner>} its word, {@code <Inner>} the same at the beginning of a label.
     */
    static Pieces of(ShaftEnd end) {
        return end == ShaftEnd.INNER ? INNER : OUTER;
    }

    private static Pieces pieces(ShaftEnd end) {
        String word = end.word();
        return Pieces.of("end", end.shortWord())
                .and("other", end.other().shortWord())
                .and("inner", word)
                .and("Inner", word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }

    /**
     * The words of the end that a constant is about, the inner one where its name tells none, and
     * {@code <part>}, its name with the end's short word.
     */
    static Pieces of(Enum<?> constant) {
        String name = constant.name().toLowerCase(Locale.ROOT);
        return of(name.contains("outer") ? ShaftEnd.OUTER : ShaftEnd.INNER)
                .and("part", name.replace("_inner", "_in").replace("_outer", "_out"));
    }

    /** These and two more, of which the names end in {@code _in} and {@code _out}. */
    static Pieces both(Pieces pieces, String name, String text) {
        return pieces.and(name + "_in", INNER.in(text)).and(name + "_out", OUTER.in(text));
    }

    /** A name, formula or label of an end. */
    static String of(ShaftEnd end, String text) {
        return of(end).in(text);
    }
}
