package shaftwright.suspension;

/**
 * One round of an {@link OutlierTest}: the standardized residuals of the points that remain, and
 * the one that is left out, if any.
 */
public final class OutlierRound {
    private final double[] standardised;
    private final int suspect;
    private final double largest;
    private final double size;
    private final double[] influence;
    private final double[] direction;

    OutlierRound(
            double[] standardised,
            int suspect,
            double largest,
            double size,
            double[] influence,
            double[] direction) {
        this.standardised = standardised;
        this.suspect = suspect;
        this.largest = largest;
        this.size = size;
        this.influence = influence;
        this.direction = direction;
    }

    /**
     * z of a point, {@code |e|/√d}, to six decimals; 0 for one that was left out before and one
     * that alone decides its fitted value.
     */
    public double standardised(int point) {
        return standardised[point];
    }

    /** The largest of them. */
    public double largest() {
        return largest;
    }

    /** The point that this round leaves out, -1 when it leaves out none. */
    public int suspect() {
        return suspect;
    }

    /** {@code g = e(j)/√d(j)} of the point left out, 0 without one. */
    public double size() {
        return size;
    }

    /**
     * u of a point: what leaving out this round's suspect does to its weighted residual, per {@link
     * #size}.
     */
    public double influence(int point) {
        return influence[point];
    }

    /** The same of the point left out, 0 without one. */
    public double root() {
        return suspect < 0 ? 0 : influence[suspect];
    }

    /**
     * Share of the orthogonal polynomial of degree k in the same change of the curve; 0 above the
     * degree.
     */
    public double direction(int k) {
        return k < direction.length ? direction[k] : 0;
    }
}
