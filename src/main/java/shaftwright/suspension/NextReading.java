package shaftwright.suspension;

/**
 * What one more reading of the distance would tell, where it tells most.
 *
 * @param height of the outer datum to read it at, mm from the rows' reference
 * @param doubt largest U over the travel as it is, mm
 * @param doubtThen largest U over the travel with that reading, mm
 */
public record NextReading(double height, double doubt, double doubtThen) {
    /** Places over the travel that are looked at, both ends included. */
    private static final int PLACES = 49;

    /** By how much the largest doubt would come down, mm. */
    public double gain() {
        return doubt - doubtThen;
    }

    /**
     * Whether it is worth taking: a gain of less than half a graduation can't be seen.
     *
     * @param graduation of the tape, mm
     */
    public boolean tells(double graduation) {
        return gain() >= graduation / 2;
    }

    /**
     * By how much one more reading brings the doubt down at the height that it is read at: there
     * {@code k(t,z)} is {@code h(t)}, and {@code h - h²/(v + h)} is {@code hv/(v + h)}.
     *
     * @param doubt U there, mm
     * @param allowance for the curve inside that U, which no reading takes away, mm, at most U
     * @param deviation standard uncertainty of the reading, mm
     * @return mm
     * @throws IllegalArgumentException for an allowance above the doubt
     */
    public static double gainThere(double doubt, double allowance, double deviation) {
        if (allowance > doubt) {
            throw new IllegalArgumentException("the allowance is more than the whole doubt");
        }
        double fit = (doubt - allowance) / 2;
        return fit == 0 ? 0 : 2 * fit * (1 - deviation / Math.hypot(fit, deviation));
    }

    /** Standard uncertainty of one reading of the distance. */
    interface Reading {
        /**
         * At a place.
         *
         * @param t height above ride, mm
         * @return mm
         */
        double deviation(double t);
    }

    /**
     * Looks for the best place of a squared reach that is known by {@code (2Dσ)²}.
     *
     * <p>Leaving the curve's degree as it is, a reading at z with variance {@code v} takes {@code
     * k(t,z)²/(v + h(z))} off the variance {@code h(t)} of the fit, {@code k(t,z) = Σ P_k(t)
     * P_k(z)/N_k}: the update of a covariance by one row, after J. Sherman and W. J. Morrison,
     * Adjustment of an inverse matrix, Annals of Mathematical Statistics 21 (1950) 124-127.
     *
     * @param basis of the fit, its weights one over the variance of a row's squared reach, 1/mm⁴
     */
    static NextReading of(OrthogonalBasis basis, HubPath path, TapeColumns rows, Reading reading) {
        Kernel kernel = new Kernel(basis);
        double[] distances = new double[PLACES];
        double[] deviations = new double[PLACES];
        double now = 0;
        for (int at = 0; at < PLACES; at++) {
            double t = path.tMin() + (place(at) + 1) / 2 * path.travel();
            HubPoint hub = path.at(t);
            now = Math.max(now, hub.doubt());
            distances[at] = hub.distance();
            deviations[at] = 2 * distances[at] * reading.deviation(t);
        }
        double best = Double.POSITIVE_INFINITY;
        double bestPlace = 0;
        for (int z = 0; z < PLACES; z++) {
            double divisor = deviations[z] * deviations[z] + kernel.of(z, z);
            double largest = 0;
            for (int t = 0; t < PLACES; t++) {
                double together = kernel.of(t, z);
                double variance = kernel.of(t, t) - together * together / divisor;
                largest = Math.max(largest, path.doubt().with(variance, distances[t]));
            }
            if (largest < best) {
                best = largest;
                bestPlace = place(z);
            }
        }
        return new NextReading(rows.height(bestPlace), now, best);
    }

    /** Normalised travel of a place, from the lowest row to the highest. */
    private static double place(int at) {
        return 2.0 * at / (PLACES - 1) - 1;
    }

    /** {@code k(t,z)} between the places. */
    private static final class Kernel {
        private final double[][] scaled;

        Kernel(OrthogonalBasis basis) {
            scaled = new double[PLACES][basis.degree() + 1];
            for (int k = 0; k <= basis.degree(); k++) {
                Polynomial p = basis.polynomial(k);
                for (int at = 0; at < PLACES; at++) {
                    scaled[at][k] = p.at(place(at)) / Math.sqrt(basis.norm(k));
                }
            }
        }

        double of(int t, int z) {
            double sum = 0;
            for (int k = 0; k < scaled[t].length; k++) {
                sum += scaled[t][k] * scaled[z][k];
            }
            return sum;
        }
    }
}
