package shaftwright.shaft;

/**
 * An extreme value and where in the travel it stands.
 *
 * @param value mm, or rad for an angle
 * @param row row of the position table, droop is 0
 * @param travel mm; the row's own travel, or that of a parabola's vertex near it
 */
public record Binding(double value, int row, double travel) {}
