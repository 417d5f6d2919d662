package shaftwright.suspension;

/**
 * A reading that the others speak against.
 *
 * @param row number of the row as typed, from 1
 * @param quantity what was read
 * @param repeat which of the row's readings of the distance is mistyped, from 1; 0 when it is the
 *     row's reading as a whole
 * @param read what was read, mm or rad
 * @param expected what the others expect, mm or rad
 */
public record SuspectReading(
        int row, MeasuredQuantity quantity, int repeat, double read, double expected) {
    /** Whether it is one of several readings of the same distance. */
    public boolean isRepeat() {
        return repeat > 0;
    }
}
