package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which points do not go with a least-squares polynomial through all of them, one at a time.
 *
 * <p>With weighted residuals {@code e = r/σ} and hat values {@code H}, each point's standardized
 * residual is {@code z = |e|/√d} with {@code d = 1 - H}. The point of the largest z beyond {@link
 * #LIMIT} is left out, the curve is fitted again without it, and the test is made again. No fit is
 * repeated for that: leaving out point j changes the residuals along {@code u}, the column j of
 * {@code I - H} made orthogonal to those before and of length one, so that {@code e} loses {@code u
 * (u·e)} and d loses u². A point is named only while two degrees of freedom remain without it and
 * while no more than a third of the points is left out. What contradicts beyond that is seen, but
 * can't be placed.
 *
 * <p>The standardized residual and its use one at a time: N. R. Draper and H. Smith, Applied
 * Regression Analysis, 3rd ed., chapter 8 (from memory).
 */
public final class OutlierTest {
    /**
     * A standardized residual beyond this is not chance: eight such tests in a workbook should
     * alarm in fewer than 5 of 100 healthy ones (from simulation).
     */
    public static final double LIMIT = 3.5;

    /** Degrees of freedom that must remain for a point to be named. */
    public static final int LEAST_FREEDOM_LEFT = 2;

    /** One point of so many may be left out. */
    public static final int SHARE_LEFT_OUT = 3;

    /** Below this d a point decides its fitted value alone and has no residual to speak of. */
    public static final double LEAST_FREEDOM_OF_POINT = 1e-6;

    /** Decimals to which standardized residuals are compared, as cell formulas do it. */
    private static final double COMPARED = 1e6;

    private final OrthogonalBasis basis;
    private final double[] residuals;
    private final int freedom;
    private final List<OutlierRound> rounds = new ArrayList<>();

    private OutlierTest(OrthogonalBasis basis, double[] residuals) {
        this.basis = basis;
        this.residuals = residuals;
        freedom = residuals.length - basis.degree() - 1;
    }

    /**
     * Tests the residuals of a fit.
     *
     * @param basis of the fit
     * @param residuals value less curve, each divided by its standard uncertainty, without unit
     * @param mostRounds how often a point may be left out, above 0
     */
    static OutlierTest of(OrthogonalBasis basis, double[] residuals, int mostRounds) {
        OutlierTest test = new OutlierTest(basis, residuals.clone());
        while (test.rounds.size() < mostRounds && test.goesOn()) {
            test.rounds.add(test.next());
        }
        return test;
    }

    private boolean goesOn() {
        return rounds.isEmpty() || last().suspect() >= 0;
    }

    private OutlierRound last() {
        return rounds.get(rounds.size() - 1);
    }

    private OutlierRound next() {
        double[] standardised = new double[residuals.length];
        int worst = 0;
        for (int i = 0; i < residuals.length; i++) {
            standardised[i] = standardised(i);
            worst = standardised[i] > standardised[worst] ? i : worst;
        }
        double largest = standardised[worst];
        double[] influence = new double[residuals.length];
        double[] direction = new double[basis.degree() + 1];
        if (largest <= LIMIT || !mayLeaveOutAnother()) {
            return new OutlierRound(standardised, -1, largest, 0, influence, direction);
        }
        double root = Math.sqrt(freedomOf(worst));
        for (int k = 0; k < direction.length; k++) {
            direction[k] = direction(worst, k) / root;
        }
        for (int i = 0; i < influence.length; i++) {
            influence[i] = i == worst ? root : leftOut(i) ? 0 : influence(i, direction);
        }
        double size = residualOf(worst) / root;
        return new OutlierRound(standardised, worst, largest, size, influence, direction);
    }

    private boolean mayLeaveOutAnother() {
        int others = rounds.size() + 1;
        return freedom - others >= LEAST_FREEDOM_LEFT
                && SHARE_LEFT_OUT * others <= residuals.length;
    }

    private double standardised(int point) {
        double d = freedomOf(point);
        if (leftOut(point) || !(d > LEAST_FREEDOM_OF_POINT)) {
            return 0;
        }
        return Math.round(Math.abs(residualOf(point)) / Math.sqrt(d) * COMPARED) / COMPARED;
    }

    /** Weighted residual by the curve without the points left out so far. */
    private double residualOf(int point) {
        double e = residuals[point];
        for (OutlierRound round : rounds) {
            e -= round.size() * round.influence(point);
        }
        return e;
    }

    /** {@code d} by the same curve. */
    private double freedomOf(int point) {
        double d = 1 - basis.hat(point);
        for (OutlierRound round : rounds) {
            d -= round.influence(point) * round.influence(point);
        }
        return d;
    }

    private double direction(int point, int k) {
        double share = Math.sqrt(basis.weight(point)) * basis.value(k, point) / basis.norm(k);
        for (OutlierRound round : rounds) {
            share -= round.influence(point) * round.direction(k);
        }
        return share;
    }

    private double influence(int point, double[] direction) {
        double sum = 0;
        for (int k = 0; k < direction.length; k++) {
            sum += basis.value(k, point) * direction[k];
        }
        return -Math.sqrt(basis.weight(point)) * sum;
    }

    /** The rounds, each but the last of which leaves out a point; one at least. */
    List<OutlierRound> rounds() {
        return List.copyOf(rounds);
    }

    /** A round by its number, from 1; empty where there was none. */
    public Optional<OutlierRound> round(int number) {
        return number > rounds.size() ? Optional.empty() : Optional.of(rounds.get(number - 1));
    }

    /** Points less coefficients of the curve through all of them. */
    public int freedom() {
        return freedom;
    }

    /** The residuals that are tested, without unit. */
    public double residual(int point) {
        return residuals[point];
    }

    /** {@code d = 1 - H} of a point by the curve through all of them. */
    public double freedom(int point) {
        return 1 - basis.hat(point);
    }

    /** Whether this point is left out. */
    public boolean leftOut(int point) {
        for (OutlierRound round : rounds) {
            if (round.suspect() == point) {
                return true;
            }
        }
        return false;
    }

    /** How many points are left out. */
    public int leftOut() {
        return rounds.size() - (last().suspect() < 0 ? 1 : 0);
    }

    /** Whether the points that remain contradict each other and none can be named. */
    public boolean contradictsUnplaced() {
        return last().suspect() < 0 && last().largest() > LIMIT;
    }

    /**
     * What the standard uncertainty of the curve grows by when points contradict each other and
     * none can be named: {@code √(Σ e²/ν)} of those that remain, never below 1.
     */
    public double scale() {
        if (!contradictsUnplaced()) {
            return 1;
        }
        double sum = 0;
        for (double e : residuals) {
            sum += e * e;
        }
        for (OutlierRound round : rounds) {
            sum -= round.size() * round.size();
        }
        return Math.max(1, Math.sqrt(sum / (freedom - leftOut())));
    }

    /**
     * Share of the orthogonal polynomial of degree k in the curve without the points left out, less
     * its share in the curve through all; 0 above the degree.
     */
    public double shiftShare(int k) {
        double share = 0;
        if (k <= basis.degree()) {
            for (OutlierRound round : rounds) {
                share -= round.size() * round.direction(k);
            }
        }
        return share;
    }

    /** Curve without the points left out less curve through all, as polynomial in s. */
    Polynomial shift() {
        double[] shares = new double[basis.degree() + 1];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = shiftShare(k);
        }
        return basis.sum(shares);
    }
}
