package shaftwright.build;

import shaftwright.units.Require;

/**
 * Slack that a shaft must keep at every position, doubt not included.
 *
 * @param inward before it bottoms, mm
 * @param outward before it pulls apart, mm
 */
public record Margins(double inward, double outward) {
    public Margins {
        Require.notNegative("inward margin", inward);
        Require.notNegative("outward margin", outward);
    }
}
