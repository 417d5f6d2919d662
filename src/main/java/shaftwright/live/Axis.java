package shaftwright.live;

import java.util.Locale;
import shaftwright.formula.FormulaText;
import shaftwright.formula.Pieces;
import shaftwright.study.SideDrawing.Way;
import shaftwright.suspension.Vector;

/**
 * A direction of the vehicle, as names and labels of vectors' parts and points' places write it.
 */
enum Axis {
    X(Way.AHEAD, "forward", "ahead", "Rearmost", "Foremost"),
    Y(Way.OUT, "outward", "outward", "Innermost", "Outermost"),
    Z(Way.UP, "up", "up", "Lowest", "Highest");

    final Way way;

    /** In names, of a vector's part. */
    final String letter = name().toLowerCase(Locale.ROOT);

    /** In names, of a point's place. */
    final String word;

    /** In labels, of a point's place that is the least one of all. */
    final String least;

    final String most;

    /**
     * {@code <x>} the letter, {@code <way>} the word, {@code <forward>} and {@code <ahead>} in
     * labels of a vector's part and of a point's place.
     */
    final Pieces words;

    Axis(Way way, String forward, String ahead, String least, String most) {
        this.way = way;
        this.word = way.name().toLowerCase(Locale.ROOT);
        this.least = least;
        this.most = most;
        words = Pieces.of("x", letter).and("way", word).and("forward", forward).and("ahead", ahead);
    }

    double of(Vector vector) {
        return way.of(vector);
    }

    /** A formula of each axis's part, put together. */
    static String joined(String between, String formula) {
        return FormulaText.joined(between, values(), axis -> axis.words.in(formula));
    }
}
