package shaftwright.shaft;

import shaftwright.units.ContradictionException;

/** A shaft that no equal push of its races lets join two joint centres. */
public final class UnreachableCentresException extends ContradictionException {
    private static final long serialVersionUID = 1;

    private final double spacing;
    private final double distance;

    UnreachableCentresException(double spacing, double distance) {
        super(
                "a shaft of race spacing "
                        + spacing
                        + " mm cannot join centres "
                        + distance
                        + " mm apart at these axes");
        this.spacing = spacing;
        this.distance = distance;
    }

    /** Race-centre spacing of the shaft, mm. */
    public double spacing() {
        return spacing;
    }

    /** Distance of the two centres, mm. */
    public double distance() {
        return distance;
    }
}
