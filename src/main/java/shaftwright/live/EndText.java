package shaftwright.live;

import java.util.Locale;
import shaftwright.shaft.ShaftEnd;

/** Names, labels and formulas that both ends of a shaft have alike. */
final class EndText {
    private EndText() {}

    /**
     * A name, formula or label of an end: {@code END} stands for its short word, {@code OTHER} for
     * the other end's, {@code WORD} for its word.
     */
    static String of(ShaftEnd end, String text) {
        return text.replace("END", end.shortWord())
                .replace("OTHER", end.other().shortWord())
                .replace("WORD", end.word());
    }

    /** A label that begins with the end's word: "Inner angle". */
    static String heading(ShaftEnd end, String rest) {
        return end.word().substring(0, 1).toUpperCase(Locale.ROOT) + end.word().substring(1) + rest;
    }
}
