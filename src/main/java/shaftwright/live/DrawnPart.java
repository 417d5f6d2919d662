package shaftwright.live;

import java.util.Locale;

/**
 * A line of the shaft's drawing: its points as pairs of a {@link DrawnStation} and a height, by
 * their letters. The heights: {@code i o} half the end diameters, {@code j p} the floors of the
 * grooves there, {@code d} half the bar, small above and capital below the middle; {@code u v}
 * where words stand above, {@code x y} where lengths stand below; {@code 0} the middle; {@code -} a
 * gap.
 */
public enum DrawnPart {
    OUTLINE(
            "0i ai aj bj bi si sd Sd So Bo Bp Ap Ao Eo "
                    + "EO AO AP BP BO SO SD sD sI bI bJ aJ aI 0I 0i"),
    SPLINE_ENDS("si sI -- So SO"),
    CUT_OFF("0i ci cI 0I -- Eo Co CO EO"),
    DIMENSIONS("0I 0y Ey EO -- kI kx Kx KO"),
    LEADERS("bi bu -- Bo Bu -- hi hv -- Ho Hv"),
    /** The rest are single points that carry words. */
    LENGTH("my"),
    CLIPS("nx"),
    GROOVE_IN("bu"),
    GROOVE_OUT("Bu"),
    CUT_IN("hv"),
    CUT_OUT("Hv");

    private final String points;

    DrawnPart(String points) {
        this.points = points;
    }

    /** Number of points, gaps among them. */
    public int size() {
        return (points.length() + 1) / 3;
    }

    /** First row of its points among those of all parts. */
    public int first() {
        int row = 0;
        for (DrawnPart part : values()) {
            if (part == this) {
                return row;
            }
            row += part.size();
        }
        throw new IllegalStateException(name());
    }

    /** Whether it is no line but a point that carries words. */
    public boolean worded() {
        return size() == 1;
    }

    /** Name of the cells that hold its words. */
    public String words() {
        return "draw_words_" + name().toLowerCase(Locale.ROOT);
    }

    private static String point(int row) {
        int at = row;
        for (DrawnPart part : values()) {
            if (at < part.size()) {
                return part.points.substring(3 * at, 3 * at + 2);
            }
            at -= part.size();
        }
        throw new IllegalArgumentException("no point " + row);
    }

    static char station(int row) {
        return point(row).charAt(0);
    }

    static char height(int row) {
        return point(row).charAt(1);
    }
}
