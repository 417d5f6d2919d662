package shaftwright.joint;

/**
 * Two splines that do not mate.
 *
 * @param property what they differ in first
 * @param blank the shaft's
 * @param joint the race's
 */
public record SplineClash(SplineForm.Property property, SplineForm blank, SplineForm joint) {}
