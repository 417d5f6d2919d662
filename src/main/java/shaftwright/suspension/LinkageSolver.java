package shaftwright.suspension;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Moves a linkage from ride through its travel.
 *
 * <p>Unknown are the turn of the hub and the place of its outer datum in plan; its height is given,
 * being the travel. Newton's method with the exact derivatives solves the ties, starting from the
 * last position and going on in small steps, so that of all ways to put the linkage together it
 * stays with the one that stood at ride. A position counts only when the equations still turn the
 * same way round (the sign of their determinant): past a dead centre they would not.
 */
public final class LinkageSolver {
    /** Ties that hold a hub with one freedom left. */
    static final int TIES = 5;

    /** Errors of a tie that count as none, mm. */
    private static final double CLOSED = 1e-11;

    private static final int MOST_ROUNDS = 40;

    /** Longest step of travel, mm; a wheel turns and shifts little in one. */
    private static final double LONGEST_STEP = 10;

    /** The end of the travel is found at least so closely, mm. */
    private static final double SHORTEST_STEP = 1e-3;

    /** More than this in one step is a jump to another way of putting the linkage together. */
    private static final double LARGEST_TURN = 0.2;

    private static final double LARGEST_SHIFT = 50;

    /** A usual arm, mm: puts turns beside shifts on equal terms. */
    private static final double ARM = 300;

    /** Singular value of equations with rows near length one; below it parts work alike. */
    private static final double LEAST_STRENGTH = 1e-6;

    private final Linkage linkage;
    private final List<Tie> ties;
    private final Vector start;
    private final double[][] rows = new double[TIES][TIES];
    private final double[] right = new double[TIES];
    private final double[] turn = new double[9];
    private double rideSign;
    private double[] spin = {1, 0, 0, 0};
    private double x;
    private double y;
    private double travel;

    /** A linkage at ride. */
    public LinkageSolver(Linkage linkage) {
        this.linkage = linkage;
        ties = linkage.ties();
        start = linkage.hub().outerDatum();
        toRide();
    }

    /** Goes back to ride. */
    public void toRide() {
        spin = new double[] {1, 0, 0, 0};
        x = start.x();
        y = start.y();
        travel = 0;
        if (ties.size() == TIES) {
            turnMatrix();
            equations();
            rideSign = Math.signum(decomposed().getDeterminant());
        }
    }

    /** Where the hub stands now. */
    public HubPose pose() {
        turnMatrix();
        return new HubPose(start, new Vector(x, y, start.z() + travel), turn);
    }

    /** The travel at which it stands, mm. */
    public double travel() {
        return travel;
    }

    /**
     * Moves the hub from where it stands.
     *
     * @param to travel, mm
     * @return whether it got there; if not, it stands where it stopped, within 0.01 mm of its end
     */
    public boolean moveTo(double to) {
        double step = Math.min(LONGEST_STEP, Math.abs(to - travel));
        while (travel != to) {
            double left = Math.abs(to - travel);
            double next = left <= step ? to : travel + Math.copySign(step, to - travel);
            if (tryStep(next)) {
                step = Math.min(LONGEST_STEP, 2 * step);
            } else {
                step = Math.min(step, left) / 2;
                if (step < SHORTEST_STEP) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean tryStep(double to) {
        double[] oldSpin = spin.clone();
        double oldX = x;
        double oldY = y;
        double oldTravel = travel;
        travel = to;
        boolean near =
                close()
                        && turnSince(oldSpin) <= LARGEST_TURN
                        && Math.hypot(x - oldX, y - oldY) <= LARGEST_SHIFT
                        && y > linkage.hub().innerDatum().y();
        if (!near) {
            spin = oldSpin;
            x = oldX;
            y = oldY;
            travel = oldTravel;
        }
        return near;
    }

    private double turnSince(double[] before) {
        double cosine = 0;
        for (int i = 0; i < 4; i++) {
            cosine += spin[i] * before[i];
        }
        return 2 * Math.acos(Math.min(1, Math.abs(cosine)));
    }

    /** Newton's method at the travel wanted. */
    private boolean close() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            turnMatrix();
            double worst = equations();
            LUDecomposition step = decomposed();
            if (worst < CLOSED) {
                return step.getDeterminant() * rideSign > 0;
            }
            if (!(Math.abs(step.getDeterminant()) > 0)
                    || !apply(step.getSolver().solve(new ArrayRealVector(right, false)))) {
                return false;
            }
        }
        return false;
    }

    /** The equations' matrix; only one without any inverse counts as singular. */
    private LUDecomposition decomposed() {
        return new LUDecomposition(new Array2DRowRealMatrix(rows, false), Double.MIN_VALUE);
    }

    /** Takes a step; a wild one means that there is nothing to be found. */
    private boolean apply(RealVector step) {
        double a = -step.getEntry(0) / ARM;
        double b = -step.getEntry(1) / ARM;
        double c = -step.getEntry(2) / ARM;
        double angle = Math.sqrt(a * a + b * b + c * c);
        if (!(angle < 1) || !(Math.hypot(step.getEntry(3), step.getEntry(4)) < 4 * LARGEST_SHIFT)) {
            return false;
        }
        x -= step.getEntry(3);
        y -= step.getEntry(4);
        double half = angle > 0 ? StrictMath.sin(angle / 2) / angle : 0.5;
        spinBy(StrictMath.cos(angle / 2), half * a, half * b, half * c);
        return true;
    }

    private void spinBy(double w, double i, double j, double k) {
        double[] p = spin;
        double[] q = {
            w * p[0] - i * p[1] - j * p[2] - k * p[3],
            w * p[1] + i * p[0] + j * p[3] - k * p[2],
            w * p[2] - i * p[3] + j * p[0] + k * p[1],
            w * p[3] + i * p[2] - j * p[1] + k * p[0]
        };
        double norm = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
        for (int n = 0; n < 4; n++) {
            q[n] /= norm;
        }
        spin = q;
    }

    private void turnMatrix() {
        double w = spin[0];
        double i = spin[1];
        double j = spin[2];
        double k = spin[3];
        turn[0] = 1 - 2 * (j * j + k * k);
        turn[1] = 2 * (i * j - w * k);
        turn[2] = 2 * (i * k + w * j);
        turn[3] = 2 * (i * j + w * k);
        turn[4] = 1 - 2 * (i * i + k * k);
        turn[5] = 2 * (j * k - w * i);
        turn[6] = 2 * (i * k - w * j);
        turn[7] = 2 * (j * k + w * i);
        turn[8] = 1 - 2 * (i * i + j * j);
    }

    /**
     * Fills the equations of a Newton step: a small turn ω and shift v move a tied point by {@code
     * ω × r + v}, r its arm, and its tie's error by {@code (r × g)·ω + g·v}, g the tie's pull.
     *
     * @return the largest error, mm
     */
    private double equations() {
        double worst = 0;
        for (int n = 0; n < TIES; n++) {
            Tie tie = ties.get(n);
            Vector r = arm(tie);
            Vector at = new Vector(x + r.x(), y + r.y(), start.z() + travel + r.z());
            Vector g = tie.pull(at);
            row(rows[n], r, g);
            right[n] = tie.error(at);
            worst = Math.max(worst, Math.abs(right[n]));
        }
        return worst;
    }

    private Vector arm(Tie tie) {
        Vector a = tie.arm();
        return new Vector(
                turn[0] * a.x() + turn[1] * a.y() + turn[2] * a.z(),
                turn[3] * a.x() + turn[4] * a.y() + turn[5] * a.z(),
                turn[6] * a.x() + turn[7] * a.y() + turn[8] * a.z());
    }

    private static void row(double[] row, Vector r, Vector g) {
        row[0] = (r.y() * g.z() - r.z() * g.y()) / ARM;
        row[1] = (r.z() * g.x() - r.x() * g.z()) / ARM;
        row[2] = (r.x() * g.y() - r.y() * g.x()) / ARM;
        row[3] = g.x();
        row[4] = g.y();
    }

    /** Whether the ties at ride are all needed: none follows from the others. */
    boolean everyTieHolds() {
        double[][] full = new double[ties.size()][TIES + 1];
        for (int n = 0; n < full.length; n++) {
            Vector r = ties.get(n).arm();
            Vector g = ties.get(n).pull(start.plus(r));
            row(full[n], r, g);
            full[n][TIES] = g.z();
            normalise(full[n]);
        }
        return independent(full);
    }

    /** Whether the outer datum can be moved up and down where it stands. */
    boolean movesUpAndDown() {
        turnMatrix();
        equations();
        for (double[] row : rows) {
            normalise(row);
        }
        return independent(rows);
    }

    private static boolean independent(double[][] rows) {
        double[] strengths = decomposed(rows).getSingularValues();
        return rows.length <= rows[0].length && strengths[rows.length - 1] > LEAST_STRENGTH;
    }

    private static SingularValueDecomposition decomposed(double[][] rows) {
        return new SingularValueDecomposition(new Array2DRowRealMatrix(rows, false));
    }

    private static void normalise(double[] row) {
        double sum = 0;
        for (double term : row) {
            sum += term * term;
        }
        double norm = Math.sqrt(sum);
        for (int i = 0; norm > 0 && i < row.length; i++) {
            row[i] /= norm;
        }
    }

    /**
     * The part that ends the travel where the linkage stands at its end: the one whose ties take
     * the largest share of the forces that a push in the travel's direction can't overcome (the
     * left singular vector of the equations at their least singular value).
     */
    Member stopper() {
        turnMatrix();
        equations();
        double[] force = decomposed(rows).getU().getColumn(TIES - 1);
        double[] shares = new double[linkage.members().size()];
        int most = 0;
        for (int n = 0; n < TIES; n++) {
            int member = ties.get(n).member();
            shares[member] += force[n] * force[n];
        }
        for (int m = 1; m < shares.length; m++) {
            // Parts that share alike are named in the order of the list.
            most = shares[m] > shares[most] + 1e-6 ? m : most;
        }
        return linkage.members().get(most);
    }
}
