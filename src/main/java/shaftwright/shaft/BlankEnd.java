package shaftwright.shaft;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.joint.SplineForm;
import shaftwright.strength.Spline;
import shaftwright.units.Require;

/**
 * One end of a shaft blank.
 *
 * @param splines spline count; 0 when not given
 * @param splineLength splined length from the blank's end, mm
 * @param groove the blank's end to where the inboard face of a ring in its existing groove stands,
 *     the face that the race bears on, mm; empty when there is no groove
 * @param outside diameter over the teeth, mm, when it is known
 * @param measuredRoot diameter under the teeth, mm, when it was measured
 * @param form how its teeth are shaped, as far as that is known
 */
public record BlankEnd(
        int splines,
        double splineLength,
        OptionalDouble groove,
        OptionalDouble outside,
        OptionalDouble measuredRoot,
        SplineForm form) {
    public BlankEnd {
        if (splines < 0) {
            throw new IllegalArgumentException("spline count must not be negative: " + splines);
        }
        Require.notNegative("spline length of a blank", splineLength);
        groove.ifPresent(place -> Require.positive("groove of a blank", place));
        outside.ifPresent(diameter -> Require.positive("spline outside diameter", diameter));
        measuredRoot.ifPresent(diameter -> Require.positive("spline root diameter", diameter));
    }

    /** An end of whose splines no diameter is known. */
    public BlankEnd(int splines, double splineLength, OptionalDouble groove) {
        this(
                splines,
                splineLength,
                groove,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                SplineForm.UNKNOWN);
    }

    /** The same with teeth of this shape. */
    public BlankEnd of(SplineForm teeth) {
        return new BlankEnd(splines, splineLength, groove, outside, measuredRoot, teeth);
    }

    /** The same end with a diameter over its teeth, mm. */
    public BlankEnd over(double teeth) {
        return new BlankEnd(
                splines, splineLength, groove, OptionalDouble.of(teeth), measuredRoot, form);
    }

    /** Module of a standard spline of this size, mm; empty while count or diameter is missing. */
    public OptionalDouble module() {
        return splines < Spline.LEAST_TEETH || outside.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Spline.module(splines, outside.getAsDouble()));
    }

    /** Diameter at the roots, mm: measured, or that of a standard spline; empty without either. */
    public OptionalDouble root() {
        OptionalDouble module = module();
        return measuredRoot.isPresent() || module.isEmpty()
                ? measuredRoot
                : OptionalDouble.of(Spline.rootDiameter(splines, module.getAsDouble()));
    }

    /**
     * Its spline in a race; empty while a size is missing, or when the sizes make none.
     *
     * @param engaged length of the race's teeth, mm
     * @param bore of the shaft, mm
     */
    public Optional<Spline> spline(double engaged, double bore) {
        OptionalDouble root = root();
        if (module().isEmpty() || !(engaged > 0) || root.getAsDouble() <= bore) {
            return Optional.empty();
        }
        Spline standard = Spline.ofOutside(splines, outside.getAsDouble(), engaged);
        return root.getAsDouble() < standard.pitchDiameter()
                ? Optional.of(standard.on(root.getAsDouble(), bore))
                : Optional.empty();
    }

    /**
     * Diameter in a groove that is left in its teeth, mm; empty while the teeth's is not known.
     *
     * @param depth of the groove, mm
     */
    public OptionalDouble neck(double depth) {
        return outside.isEmpty() ? outside : OptionalDouble.of(outside.getAsDouble() - 2 * depth);
    }
}
