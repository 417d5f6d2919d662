package shaftwright.shaft;

/**
 * An extreme value and where it stands.
 *
 * @param value mm, or rad for an angle
 * @param row row of the position table, droop is 0
 * @param travel mm; the row's own travel, or that of a parabola's vertex near it
 * @param state name of the state in which it is met, where several are asked for at once; empty
 *     where there is but one
 */
public record Binding(double value, int row, double travel, String state) {
    /** One of the only state. */
    public Binding(double value, int row, double travel) {
        this(value, row, travel, "");
    }

    /** The same in a state of this name. */
    Binding in(String other) {
        return new Binding(value, row, travel, other);
    }
}
