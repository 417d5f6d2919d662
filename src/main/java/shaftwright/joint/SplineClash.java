package shaftwright.joint;

import java.util.Optional;

/**
 * Two splines that do not mate.
 *
 * @param property what they differ in first
 * @param blank the shaft's
 * @param joint the race's
 */
public record SplineClash(SplineForm.Property property, SplineForm blank, SplineForm joint) {
    /** What keeps a shaft from a race; empty when nothing that is known of both does. */
    public static Optional<SplineClash> of(SplineForm blank, SplineForm joint) {
        return blank.differenceTo(joint).map(property -> new SplineClash(property, blank, joint));
    }
}
