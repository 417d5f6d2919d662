package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The hub path of a linkage: solved at many heights, then put into polynomials that a table of cell
 * formulas can follow, with what they are off stated.
 *
 * @param path the curves, without doubt
 * @param pitch how far the hub has turned about its stub axis since ride, its front up, rad, over
 *     the same normalised travel
 * @param lengthError most that fore-aft offset or sideways reach is off the solved positions
 *     anywhere on a dense row of heights, mm
 * @param angleError the same for camber, toe and pitch, rad
 */
public record LinkagePath(HubPath path, Polynomial pitch, double lengthError, double angleError) {
    /** What the curves may be off the linkage, mm; more is used with a word of warning. */
    public static final double LENGTH_TOLERANCE = 0.01;

    /** The same for angles, rad. */
    public static final double ANGLE_TOLERANCE = Math.toRadians(0.001);

    /** Longer travel than any wheel's, mm. */
    private static final double LONGEST_TRAVEL = 2_000;

    /**
     * Solves a linkage.
     *
     * @param tMin lowest travel wanted, mm, below 0
     * @param tMax highest travel wanted, mm, above 0
     * @throws UnusableLinkageException if the linkage does not reach that far, with the part that
     *     ends its travel, or the travel is reversed
     */
    public static LinkagePath of(Linkage linkage, double tMin, double tMax) {
        List<LinkageRemark> problems = new ArrayList<>();
        if (!(tMin < 0 && tMax > 0 && tMax - tMin <= LONGEST_TRAVEL)) {
            problems.add(
                    LinkageRemark.of(
                            LinkageRemark.Kind.TRAVEL_REVERSED,
                            OptionalInt.empty(),
                            "travel must run from below ride to above it, 2 m at most"));
            throw new UnusableLinkageException(problems);
        }
        LinkageCurves curves = new LinkageCurves(linkage, tMin, tMax);
        if (curves.solved()) {
            return curves.fitted();
        }
        for (LinkageStop stop : stops(linkage, tMin, tMax)) {
            problems.add(LinkageRemark.of(stop));
        }
        throw new UnusableLinkageException(problems);
    }

    /** Whether the curves keep to the linkage as closely as they should. */
    public boolean isClose() {
        return lengthError <= LENGTH_TOLERANCE && angleError <= ANGLE_TOLERANCE;
    }

    /** The same path with an allowance for what tape readings say that it is off, mm. */
    public HubPath doubted(double allowance) {
        return new HubPath(
                path.tMin(),
                path.tMax(),
                path.rideRise(),
                path.foreAft(),
                path.reachSquared(),
                path.camber(),
                path.toe(),
                FitDoubt.ofAllowance(allowance));
    }

    /** The ends of travel that lie inside the travel wanted: droop, bump, both or none. */
    public static List<LinkageStop> stops(Linkage linkage, double tMin, double tMax) {
        List<LinkageStop> stops = new ArrayList<>(2);
        LinkageSolver solver = new LinkageSolver(linkage);
        for (double wanted : new double[] {tMin, tMax}) {
            solver.toRide();
            if (!solver.moveTo(wanted)) {
                stops.add(new LinkageStop(solver.stopper().name(), wanted, solver.travel()));
            }
        }
        return stops;
    }
}
