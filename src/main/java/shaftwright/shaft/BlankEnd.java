package shaftwright.shaft;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * One end of a shaft blank.
 *
 * @param splines spline count; 0 when not given
 * @param splineLength splined length from the blank's end, mm
 * @param groove the blank's end to where the inboard face of a ring in its existing groove stands,
 *     the face that the race bears on, mm; empty when there is no groove
 */
public record BlankEnd(int splines, double splineLength, OptionalDouble groove) {
    public BlankEnd {
        if (splines < 0) {
            throw new IllegalArgumentException("spline count must not be negative: " + splines);
        }
        Require.notNegative("spline length of a blank", splineLength);
        if (groove.isPresent()) {
            Require.positive("groove of a blank", groove.getAsDouble());
        }
    }
}
