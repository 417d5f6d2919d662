package shaftwright.strength;

import shaftwright.units.Require;

/**
 * What one part of the torque path can take: worked out, or the builder's own figure.
 *
 * @param part as the table names it; empty when a builder gave no name
 * @param capacity N·m
 */
public record RatingRow(String part, double capacity) {
    public RatingRow {
        Require.notNegative("capacity", capacity);
    }

    /**
     * Capacity over torque; 1 is just enough.
     *
     * @param torque N·m
     */
    public double factor(double torque) {
        return capacity / Require.positive("torque", torque);
    }
}
