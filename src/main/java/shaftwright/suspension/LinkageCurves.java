package shaftwright.suspension;

import java.util.Arrays;

/**
 * A linkage's positions, and polynomials through them.
 *
 * <p>The curves are Chebyshev series through positions at Chebyshev's points, cut off where what is
 * left out no longer matters, and rewritten in powers of normalised travel. Source: L. N.
 * Trefethen, Approximation Theory and Approximation Practice, SIAM 2013, chapters 3 and 4.
 */
final class LinkageCurves {
    /** Positions that the curves run through. */
    private static final int NODES = 24;

    /**
     * Heights at which the curves are compared with the linkage, no farther apart than this, mm.
     */
    private static final double CHECK_STEP = 4;

    private static final int LEAST_CHECKS = 60;

    /** What a position gives to the path. */
    private static final int FORE_AFT = 0;

    private static final int REACH_SQUARED = 1;
    private static final int CAMBER = 2;
    private static final int TOE = 3;
    private static final int PITCH = 4;
    private static final int FIGURES = 5;

    private final HubAtRide hub;
    private final Vector stubAxis;
    private final double tMin;
    private final double tMax;
    private final double[] nodes = new double[NODES];
    private final double[] checks;
    private final double[][] atNodes = new double[FIGURES][NODES];
    private final double[][] atChecks;
    private final boolean solved;

    LinkageCurves(Linkage linkage, double tMin, double tMax) {
        hub = linkage.hub();
        stubAxis = hub.stubAxis();
        this.tMin = tMin;
        this.tMax = tMax;
        for (int j = 0; j < NODES; j++) {
            nodes[j] = -StrictMath.cos(Math.PI * (j + 0.5) / NODES);
        }
        int count = (int) Math.max(LEAST_CHECKS, Math.ceil((tMax - tMin) / CHECK_STEP));
        checks = new double[count + 1];
        atChecks = new double[FIGURES][count + 1];
        for (int i = 0; i <= count; i++) {
            checks[i] = 2.0 * i / count - 1;
        }
        solved = solve(new LinkageSolver(linkage));
    }

    /** From ride down, then from ride up, at nodes and checks in the order of their heights. */
    private boolean solve(LinkageSolver solver) {
        double ride = -(tMax + tMin) / (tMax - tMin);
        int node = firstAbove(nodes, ride);
        int check = firstAbove(checks, ride);
        boolean reached = true;
        solver.toRide();
        for (int i = node - 1, k = check - 1; reached && (i >= 0 || k >= 0); ) {
            if (k < 0 || (i >= 0 && nodes[i] > checks[k])) {
                reached = keep(solver, nodes[i], atNodes, i--);
            } else {
                reached = keep(solver, checks[k], atChecks, k--);
            }
        }
        solver.toRide();
        for (int i = node, k = check; reached && (i < NODES || k < checks.length); ) {
            if (k == checks.length || (i < NODES && nodes[i] < checks[k])) {
                reached = keep(solver, nodes[i], atNodes, i++);
            } else {
                reached = keep(solver, checks[k], atChecks, k++);
            }
        }
        return reached;
    }

    /** Whether the linkage reaches both ends of the travel; without it there are no curves. */
    boolean solved() {
        return solved;
    }

    private static int firstAbove(double[] values, double limit) {
        int first = 0;
        while (first < values.length && values[first] < limit) {
            first++;
        }
        return first;
    }

    private boolean keep(LinkageSolver solver, double s, double[][] figures, int column) {
        double t = (s * (tMax - tMin) + tMax + tMin) / 2;
        if (!solver.moveTo(Math.max(tMin, Math.min(tMax, t)))) {
            return false;
        }
        HubPose pose = solver.pose();
        double reach = pose.datum().y() - hub.innerDatum().y();
        figures[FORE_AFT][column] = pose.datum().x() - hub.innerDatum().x();
        figures[REACH_SQUARED][column] = reach * reach;
        figures[CAMBER][column] = pose.camber(stubAxis);
        figures[TOE][column] = pose.toe(stubAxis);
        figures[PITCH][column] = pose.pitch(hub);
        return true;
    }

    LinkagePath fitted() {
        Fit foreAft = fit(FORE_AFT, LinkagePath.LENGTH_TOLERANCE);
        Fit reach = fit(REACH_SQUARED, LinkagePath.LENGTH_TOLERANCE);
        Fit camber = fit(CAMBER, LinkagePath.ANGLE_TOLERANCE);
        Fit toe = fit(TOE, LinkagePath.ANGLE_TOLERANCE);
        Fit pitch = fit(PITCH, LinkagePath.ANGLE_TOLERANCE);
        HubPath path =
                new HubPath(
                        tMin,
                        tMax,
                        hub.outerDatum().z() - hub.innerDatum().z(),
                        foreAft.curve,
                        reach.curve,
                        camber.curve,
                        toe.curve,
                        FitDoubt.NONE);
        return new LinkagePath(
                path,
                pitch.curve,
                Math.max(foreAft.error, reach.error),
                Math.max(Math.max(camber.error, toe.error), pitch.error));
    }

    private record Fit(Polynomial curve, double error) {}

    /** The shortest series that keeps well inside the tolerance, else the longest there is. */
    private Fit fit(int figure, double tolerance) {
        double[] series = series(atNodes[figure]);
        Fit fit = null;
        for (int terms = 1; terms <= Polynomial.MOST_COEFFICIENTS; terms++) {
            Polynomial curve = powers(series, terms);
            fit = new Fit(curve, error(figure, curve, tolerance / 2));
            if (fit.error <= tolerance / 2) {
                break;
            }
        }
        return fit;
    }

    /** Most that a curve is off at the checks; stops looking when it is far too much. */
    private double error(int figure, Polynomial curve, double tolerance) {
        double[] solved = atChecks[figure];
        double worst = 0;
        boolean last = curve.degree() == Polynomial.MOST_COEFFICIENTS - 1;
        for (int i = 0; i < solved.length && (last || worst <= tolerance); i++) {
            double value = curve.at(checks[i]);
            double off =
                    figure == REACH_SQUARED
                            ? Math.sqrt(Math.max(0, value)) - Math.sqrt(solved[i])
                            : value - solved[i];
            worst = Math.max(worst, Math.abs(off));
        }
        return worst;
    }

    /** Chebyshev coefficients of the curve through the values at the nodes. */
    private double[] series(double[] values) {
        double[] series = new double[Polynomial.MOST_COEFFICIENTS];
        for (int j = 0; j < NODES; j++) {
            double before = 1;
            double now = nodes[j];
            series[0] += values[j] / NODES;
            for (int k = 1; k < series.length; k++) {
                series[k] += 2 * values[j] * now / NODES;
                double next = 2 * nodes[j] * now - before;
                before = now;
                now = next;
            }
        }
        return series;
    }

    /** The first terms of a Chebyshev series in powers of s: {@code T_k+1 = 2 s T_k - T_k-1}. */
    private static Polynomial powers(double[] series, int terms) {
        double[] sum = new double[terms];
        double[] before = new double[terms];
        double[] now = new double[terms];
        now[0] = 1;
        sum[0] = series[0];
        for (int k = 1; k < terms; k++) {
            double[] next = new double[terms];
            for (int power = 0; power < k; power++) {
                next[power + 1] = (k == 1 ? 1 : 2) * now[power];
            }
            for (int power = 0; power < k - 1; power++) {
                next[power] -= before[power];
            }
            before = now;
            now = next;
            for (int power = 0; power <= k; power++) {
                sum[power] += series[k] * now[power];
            }
        }
        return Polynomial.of(Arrays.copyOf(sum, terms));
    }
}
