package shaftwright.build;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.tyre.Tyre;
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

    /** Its tyre, when the diameter is known. */
    public Optional<Tyre> tyre() {
        return diameter.stream().mapToObj(Tyre::new).findAny();
    }
}
