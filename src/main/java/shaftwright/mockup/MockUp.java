package shaftwright.mockup;

import java.util.List;
import java.util.Optional;

/**
 * A stick in the place of a side's shaft, and what was read of it.
 *
 * @param stick that was in
 * @param readings one a wheel height
 */
public record MockUp(Stick stick, List<StickReading> readings) {
    public MockUp {
        readings = List.copyOf(readings);
    }

    /** The reading of a row of the builder's table; empty when no height is typed there. */
    public Optional<StickReading> reading(int row) {
        return readings.stream().filter(each -> each.row() == row).findFirst();
    }
}
