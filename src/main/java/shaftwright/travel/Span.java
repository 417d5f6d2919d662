package shaftwright.travel;

import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageSolver;
import shaftwright.units.Require;

/**
 * The straight distance between two points over the wheel's travel: a damper between its eyes, a
 * limit strap between its tabs.
 *
 * @param name the builder's
 * @param from one end
 * @param to the other
 */
public record Span(String name, CarriedPoint from, CarriedPoint to) {
    /** Travel between looks for the longest and the shortest, mm. */
    private static final double STEP = 5;

    private static final double DIFFERENCE = 0.01;
    private static final int HALVINGS = 60;

    public Span {
        Require.named("name of a span", name);
    }

    /**
     * The longest and the shortest over a travel.
     *
     * @param longest mm: what a damper must open to, at least
     * @param longestAt travel, mm
     * @param shortest mm: what a damper must close to
     * @param shortestAt travel, mm
     */
    public record Course(double longest, double longestAt, double shortest, double shortestAt) {
        /** Stroke used, mm. */
        public double stroke() {
            return longest - shortest;
        }
    }

    /**
     * Length at one travel, mm. Of a strap that is to stop the wheel there, its length when taut.
     *
     * @throws IllegalArgumentException if the linkage does not reach that travel
     */
    public double lengthAt(Linkage linkage, double travel) {
        return length(new LinkageSolver(linkage), linkage, travel);
    }

    /** Motion ratio dL/dt: change of length with the outer datum's height, mm/mm. */
    public double ratioAt(Linkage linkage, double travel) {
        LinkageSolver solver = new LinkageSolver(linkage);
        double below = length(solver, linkage, travel - DIFFERENCE);
        return (length(solver, linkage, travel + DIFFERENCE) - below) / (2 * DIFFERENCE);
    }

    /**
     * The extremes over a travel, found to 0.001 mm of length.
     *
     * @param low mm, below {@code high}
     * @param high mm
     */
    public Course over(Linkage linkage, double low, double high) {
        if (!(low < high)) {
            throw new IllegalArgumentException("travel from " + low + " to " + high);
        }
        LinkageSolver solver = new LinkageSolver(linkage);
        int steps = (int) Math.max(4, Math.ceil((high - low) / STEP));
        double longest = low;
        double shortest = low;
        double most = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double t = low + (high - low) * i / steps;
            double length = length(solver, linkage, t);
            if (length > most) {
                most = length;
                longest = t;
            }
            if (length < least) {
                least = length;
                shortest = t;
            }
        }
        double step = (high - low) / steps;
        longest =
                peak(
                        solver,
                        linkage,
                        Math.max(low, longest - step),
                        Math.min(high, longest + step),
                        1);
        shortest =
                peak(
                        solver,
                        linkage,
                        Math.max(low, shortest - step),
                        Math.min(high, shortest + step),
                        -1);
        return new Course(
                length(solver, linkage, longest),
                longest,
                length(solver, linkage, shortest),
                shortest);
    }

    /** Thirds taken off the side where the length, times a sign, is the smaller. */
    private double peak(LinkageSolver solver, Linkage linkage, double from, double to, int sign) {
        double a = from;
        double b = to;
        for (int i = 0; i < HALVINGS; i++) {
            double third = (b - a) / 3;
            double left = sign * length(solver, linkage, a + third);
            double right = sign * length(solver, linkage, b - third);
            if (left < right) {
                a += third;
            } else {
                b -= third;
            }
        }
        // An end of the travel is met exactly, not from inside.
        double inside = (a + b) / 2;
        for (double end : new double[] {from, to}) {
            if (sign * length(solver, linkage, end) >= sign * length(solver, linkage, inside)) {
                inside = end;
            }
        }
        return inside;
    }

    private double length(LinkageSolver solver, Linkage linkage, double travel) {
        if (!solver.moveTo(travel)) {
            throw new IllegalArgumentException(
                    "the linkage does not reach " + travel + " mm; it goes to " + solver.travel());
        }
        return from.at(linkage, solver.pose()).distanceTo(to.at(linkage, solver.pose()));
    }
}
