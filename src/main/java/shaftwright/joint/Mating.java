package shaftwright.joint;

import java.util.Objects;

/**
 * What a joint must meet: the spline of a shaft, the flange of transaxle or hub.
 *
 * @param spline how its race's teeth are shaped
 * @param bolts of its body
 */
public record Mating(SplineForm spline, BoltPattern bolts) {
    /** Nothing known. */
    public static final Mating UNKNOWN = new Mating(SplineForm.UNKNOWN, BoltPattern.UNKNOWN);

    public Mating {
        Objects.requireNonNull(spline);
        Objects.requireNonNull(bolts);
    }
}
