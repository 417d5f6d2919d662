package shaftwright.build;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.tyre.Tyre;
import shaftwright.tyre.TyreSize;
import shaftwright.units.Require;

/**
 * A wheel with its tyre.
 *
 * @param diameter of the free tyre, mm, empty when it is not known
 * @param sectionWidth of the tyre, mm, empty when it is not known
 * @param offset of the rim, mm, positive when its mounting face lies outboard of its centre plane
 * @param spacer between hub and rim, mm
 */
public record Wheel(
        OptionalDouble diameter, OptionalDouble sectionWidth, double offset, double spacer) {
    /** A wheel of which nothing matters. */
    public static final Wheel UNKNOWN =
            new Wheel(OptionalDouble.empty(), OptionalDouble.empty(), 0, 0);

    /**
     * A wheel by the size of its tyre, before which what was measured counts.
     *
     * @param size when it is known
     * @param diameter measured by a tape, mm, empty when it was not
     * @param sectionWidth measured likewise
     */
    public static Wheel of(
            Optional<TyreSize> size,
            OptionalDouble diameter,
            OptionalDouble sectionWidth,
            double offset,
            double spacer) {
        return new Wheel(
                either(diameter, size.map(TyreSize::freeDiameter).orElse(OptionalDouble.empty())),
                either(
                        sectionWidth,
                        size.map(stated -> OptionalDouble.of(stated.sectionWidth()))
                                .orElse(OptionalDouble.empty())),
                offset,
                spacer);
    }

    private static OptionalDouble either(OptionalDouble measured, OptionalDouble stated) {
        return measured.isPresent() ? measured : stated;
    }

    public Wheel {
        if (diameter.isPresent()) {
            Require.positive("tyre diameter", diameter.getAsDouble());
        }
        if (sectionWidth.isPresent()) {
            Require.positive("section width of a tyre", sectionWidth.getAsDouble());
        }
        Require.finite("wheel offset", offset);
        Require.finite("wheel spacer", spacer);
    }

    /** The same with a tyre of this diameter, mm. */
    public Wheel withDiameter(double other) {
        return new Wheel(OptionalDouble.of(other), sectionWidth, offset, spacer);
    }

    /** The same with a tyre of this section width, mm. */
    public Wheel withSectionWidth(double other) {
        return new Wheel(diameter, OptionalDouble.of(other), offset, spacer);
    }

    /** The same on a rim of this offset, mm. */
    public Wheel withOffset(double other) {
        return new Wheel(diameter, sectionWidth, other, spacer);
    }

    /** The same on a spacer of this thickness, mm. */
    public Wheel withSpacer(double other) {
        return new Wheel(diameter, sectionWidth, offset, other);
    }

    /** Its tyre, when the diameter is known. */
    public Optional<Tyre> tyre() {
        return diameter.stream().mapToObj(Tyre::new).findAny();
    }
}
