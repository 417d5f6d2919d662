package shaftwright.shaft;

import shaftwright.units.Require;

/**
 * A correction that runs along a straight line in travel between two travels, and is held beyond
 * them.
 *
 * @param level correction at travel 0 of the line, mm
 * @param slope mm of correction per mm of travel
 * @param from lowest travel that it is known at, mm
 * @param to highest such travel, mm
 */
public record CorrectionLine(double level, double slope, double from, double to) {
    public CorrectionLine {
        Require.finite("correction", level);
        Require.finite("slope of a correction", slope);
        Require.within("lowest travel of a correction", from, from, to);
    }

    /** Correction at a travel in mm, mm. */
    public double at(double travel) {
        return level + slope * Math.max(from, Math.min(to, travel));
    }
}
