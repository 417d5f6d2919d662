package shaftwright.study;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of the drawing of a side: the outer datum's way, and at each {@link #STANDS stand} of the
 * wheel shaft, linkage and tyre. Every line is drawn without lifting the pen, going back over
 * itself where it has to, since programs differ in what a missing point does to a chart.
 */
public enum ViewPart {
    /** The outer datum from full droop to full bump. */
    WAY(13),
    /** Inner datum, joint centres, outer datum, wheel centre. */
    CHAIN(5),
    /** From the outer datum to every hub end and along its part, and back. */
    LINKAGE(21),
    /** The tyre's outline as seen from behind. */
    TYRE_BEHIND(5),
    /** The same from above. */
    TYRE_ABOVE(5),
    /** The same from the side. */
    TYRE_SIDE(25);

    /** Full droop, ride, full bump. */
    public static final int STANDS = 3;

    /** The stand at ride. */
    public static final int RIDE = 1;

    /** Squares of the frame each way. */
    public static final int SQUARES = 8;

    private final int size;

    ViewPart(int size) {
        this.size = size;
    }

    /** Number of its points. */
    public int size() {
        return size;
    }

    /** First row of its points at a stand, among those of all parts. */
    public int first(int stand) {
        if (this == WAY) {
            return 0;
        }
        int row = WAY.size + stand * eachStand();
        for (ViewPart part : values()) {
            if (part == this) {
                break;
            }
            row += part == WAY ? 0 : part.size;
        }
        return row;
    }

    private static int eachStand() {
        int rows = 0;
        for (ViewPart part : values()) {
            rows += part == WAY ? 0 : part.size;
        }
        return rows;
    }

    /** One point: the row of a table of points. */
    public record Spot(ViewPart part, int stand, int number) {
        /** The points of all lines, by their rows. */
        public static List<Spot> all() {
            return SPOTS;
        }

        /** Of a tyre's point: how many half widths outward of the wheel's centre. */
        public double halfWidths() {
            return switch (part) {
                case TYRE_BEHIND, TYRE_ABOVE -> number == 2 || number == 3 ? -1 : 1;
                default -> 0;
            };
        }

        /** Of a tyre's point: how many radii ahead of the wheel's centre. */
        public double radiiAhead() {
            return switch (part) {
                case TYRE_ABOVE -> number == 1 || number == 2 ? -1 : 1;
                case TYRE_SIDE -> CIRCLE[number % CIRCLE.length];
                default -> 0;
            };
        }

        /** Of a tyre's point: how many radii above the wheel's centre. */
        public double radiiUp() {
            return switch (part) {
                case TYRE_BEHIND -> number == 1 || number == 2 ? -1 : 1;
                case TYRE_SIDE -> CIRCLE[(number + 3 * CIRCLE.length / 4) % CIRCLE.length];
                default -> 0;
            };
        }
    }

    private static final List<Spot> SPOTS = spots();

    private static List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        add(spots, WAY, RIDE);
        ViewPart[] parts = values();
        for (int stand = 0; stand < STANDS; stand++) {
            for (ViewPart part : parts) {
                if (part != WAY) {
                    add(spots, part, stand);
                }
            }
        }
        return List.copyOf(spots);
    }

    private static void add(List<Spot> spots, ViewPart part, int stand) {
        for (int number = 0; number < part.size; number++) {
            spots.add(new Spot(part, stand, number));
        }
    }

    /** Cosines of every 15 degrees. */
    private static final double[] CIRCLE = circle();

    private static double[] circle() {
        double[] cosines = new double[24];
        for (int i = 0; i < cosines.length; i++) {
            cosines[i] = StrictMath.rint(1e9 * StrictMath.cos(i * Math.PI / 12)) / 1e9;
        }
        return cosines;
    }
}
