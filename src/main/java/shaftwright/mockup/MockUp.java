package shaftwright.mockup;

import java.util.List;

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
}
