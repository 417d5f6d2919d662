package shaftwright.tyre;

import shaftwright.units.Require;

/**
 * A tyre on the car.
 *
 * @param diameter of the free tyre, measured or by its size, mm
 */
public record Tyre(double diameter) {
    /** ETRTO, radial tyre: rolling circumference over free diameter, from memory. */
    public static final double ROLLING_CIRCUMFERENCE_PER_DIAMETER = 3.05;

    /** Millimetres in a kilometre. */
    public static final int MM_PER_KM = 1_000_000;

    public static final int MINUTES_PER_HOUR = 60;

    public Tyre {
        Require.positive("tyre diameter", diameter);
    }

    /** Way rolled in one turn, mm. */
    public double rollingCircumference() {
        return ROLLING_CIRCUMFERENCE_PER_DIAMETER * diameter;
    }

    /** Radius of a wheel that rolls as far in one turn, mm; a little more than the loaded one. */
    public double rollingRadius() {
        return rollingCircumference() / (2 * Math.PI);
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
        return (diameter - other.diameter) / 2;
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
