package shaftwright.tyre;

import java.util.OptionalDouble;

/**
 * A tyre on the car: its size and, when somebody put a tape to it, its measured diameter.
 *
 * @param size as moulded on the sidewall
 * @param measuredDiameter free diameter, mm, which then counts instead of the size's
 */
public record Tyre(TyreSize size, OptionalDouble measuredDiameter) {
    /** ETRTO, radial tyre: rolling circumference over free diameter, from memory. */
    public static final double ROLLING_CIRCUMFERENCE_PER_DIAMETER = 3.05;

    /** Millimetres in a kilometre. */
    public static final int MM_PER_KM = 1_000_000;

    public static final int MINUTES_PER_HOUR = 60;

    public Tyre {
        if (measuredDiameter.isEmpty() && size.freeDiameter().isEmpty()) {
            throw new IllegalArgumentException("tyre size " + size + " states no diameter");
        }
        if (measuredDiameter.isPresent()) {
            double diameter = measuredDiameter.getAsDouble();
            if (!(diameter > size.rimDiameter() && diameter < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "measured tyre diameter must be more than the rim's "
                                + size.rimDiameter()
                                + " mm; have "
                                + diameter);
            }
        }
    }

    /**
     * A tyre that nobody measured yet.
     *
     * @throws IllegalArgumentException if the size states no diameter
     */
    public static Tyre of(TyreSize size) {
        return new Tyre(size, OptionalDouble.empty());
    }

    /** A tyre of this size and free diameter as measured, mm. */
    public static Tyre of(TyreSize size, double diameter) {
        return new Tyre(size, OptionalDouble.of(diameter));
    }

    /** The same tyre with its diameter as measured, mm. */
    public Tyre measured(double diameter) {
        return of(size, diameter);
    }

    /** Free diameter, mm: measured if it was, else the size's. */
    public double diameter() {
        return measuredDiameter.orElseGet(() -> size.freeDiameter().orElseThrow());
    }

    /** Way rolled in one turn, mm. */
    public double rollingCircumference() {
        return ROLLING_CIRCUMFERENCE_PER_DIAMETER * diameter();
    }

    /** Turns of wheel and half shaft in rpm at a road speed in km/h, without slip. */
    public double wheelSpeed(double kilometresPerHour) {
        return kilometresPerHour * MM_PER_KM / MINUTES_PER_HOUR / rollingCircumference();
    }

    /**
     * Ground clearance gained over another tyre: half the difference of the diameters, mm, negative
     * when this one is smaller.
     */
    public double clearanceGainOver(Tyre other) {
        return (diameter() - other.diameter()) / 2;
    }

    /**
     * Track width, between the wheels' centre planes.
     *
     * @param hubFace wheel mounting face to the vehicle's centre plane at ride height, mm
     * @param spacer thickness between hub and wheel, mm
     * @param offset wheel offset, mm, positive when the mounting face lies outboard of the wheel's
     *     centre plane
     * @return mm
     */
    public static double trackWidth(double hubFace, double spacer, double offset) {
        return 2 * (hubFace + spacer - offset);
    }

    /** Width over both tyres, mm, from track width and section width. */
    public static double overallWidth(double trackWidth, double sectionWidth) {
        return trackWidth + sectionWidth;
    }
}
