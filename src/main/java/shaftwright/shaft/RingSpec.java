package shaftwright.shaft;

import shaftwright.units.Require;

/**
 * The retaining rings of a shaft and what their grooves need.
 *
 * @param ringThickness mm ({@code t_ring})
 * @param grooveWidth mm ({@code w})
 * @param grooveDepth how deep the groove is below the shaft's surface, mm
 * @param splineRunout splined length inboard of the race that does not count, mm
 */
public record RingSpec(
        double ringThickness, double grooveWidth, double grooveDepth, double splineRunout) {
    /**
     * Least land between a groove and the shaft's end, in groove depths: edge margin of retaining
     * rings after DIN 471, from memory.
     */
    public static final double LAND_IN_DEPTHS = 3;

    public RingSpec {
        Require.notNegative("ring thickness", ringThickness);
        Require.notNegative("groove width", grooveWidth);
        Require.notNegative("groove depth", grooveDepth);
        Require.notNegative("spline run-out", splineRunout);
    }

    /** Least land outside a groove, mm. */
    public double landWanted() {
        return LAND_IN_DEPTHS * grooveDepth;
    }
}
