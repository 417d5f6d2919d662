package shaftwright.travel;

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
    /** Looks for the longest and the shortest along a travel. */
    private static final int STEPS = 24;

    private static final double DIFFERENCE = 0.01;

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
    public record Course(double longest, double longestAt, double shortest, double shortestAt) {}

    /**
     * Length at one travel, mm. Of a strap that is to stop the wheel there, its length when taut.
     *
     * @throws IllegalArgumentException if the wheel does not get there
     */
    public double lengthAt(Motion motion, double travel) {
        Motion.Stance stance = motion.at(travel);
        return stance.of(from).distanceTo(stance.of(to));
    }

    /** Motion ratio dL/dt: change of length with the outer datum's height, mm/mm. */
    public double ratioAt(Motion motion, double travel) {
        double below = lengthAt(motion, travel - DIFFERENCE);
        return (lengthAt(motion, travel + DIFFERENCE) - below) / (2 * DIFFERENCE);
    }

    /**
     * The extremes over a travel: looked for in even steps, and one inside the travel at the vertex
     * of the parabola through the three lengths about it, within 0.01 mm on usual linkages.
     *
     * @param low mm, below {@code high}
     * @param high mm
     */
    public Course over(Motion motion, double low, double high) {
        if (!(low < high)) {
            throw new IllegalArgumentException("travel from " + low + " to " + high);
        }
        double[] lengths = new double[STEPS + 1];
        int longest = 0;
        int shortest = 0;
        for (int i = 0; i <= STEPS; i++) {
            lengths[i] = lengthAt(motion, low + (high - low) * i / STEPS);
            longest = lengths[i] > lengths[longest] ? i : longest;
            shortest = lengths[i] < lengths[shortest] ? i : shortest;
        }
        double most = low + (high - low) * vertex(lengths, longest) / STEPS;
        double least = low + (high - low) * vertex(lengths, shortest) / STEPS;
        return new Course(
                Math.max(lengths[longest], lengthAt(motion, most)),
                most,
                Math.min(lengths[shortest], lengthAt(motion, least)),
                least);
    }

    /** Where the parabola through a row and its neighbours turns, in rows. */
    private static double vertex(double[] lengths, int row) {
        if (row == 0 || row == lengths.length - 1) {
            return row;
        }
        double before = lengths[row - 1] - lengths[row];
        double after = lengths[row + 1] - lengths[row];
        double bend = before + after;
        return bend == 0 ? row : row + (before - after) / (2 * bend);
    }
}
