package shaftwright.strength;

import shaftwright.units.Require;

/**
 * Thread of a bolt. Stress areas are worked from diameter and pitch, as the standards' tables are.
 *
 * @param diameter nominal, mm
 * @param pitch mm
 * @param stressArea mm² ({@code A_s})
 */
public record BoltThread(double diameter, double pitch, double stressArea) {
    static final double MM_PER_INCH = 25.4;

    /** ISO 898-1: {@code A_s = π/4 (d - 0.9382 P)²}. */
    public static final double ISO_PITCHES = 0.9382;

    /** ASME B1.1: {@code A_s = 0.7854 (D - 0.9743/n)²}. */
    public static final double INCH_PITCHES = 0.9743;

    public BoltThread {
        Require.positive("bolt diameter", diameter);
        Require.positive("thread pitch", pitch);
        Require.positive("stress area", stressArea);
    }

    /** ISO metric thread, such as M10 with a pitch of 1.5 mm. */
    public static BoltThread metric(double diameter, double pitch) {
        return of(diameter, pitch, ISO_PITCHES);
    }

    /** Unified inch thread, such as 3/8 (0.375) with 24 threads an inch. */
    public static BoltThread inch(double diameterInches, double threadsPerInch) {
        Require.positive("threads per inch", threadsPerInch);
        return of(diameterInches * MM_PER_INCH, MM_PER_INCH / threadsPerInch, INCH_PITCHES);
    }

    private static BoltThread of(double diameter, double pitch, double pitches) {
        Require.positive("bolt diameter", diameter);
        Require.positive("thread pitch", pitch);
        Require.moreThan("bolt diameter", diameter, "the depth of its thread", pitches * pitch);
        double core = diameter - pitches * pitch;
        return new BoltThread(diameter, pitch, Math.PI / 4 * core * core);
    }

    /** Engaged thread in bolt diameters, from lengths in mm. */
    public static double engagedDiameters(double engagement, double diameter) {
        return Require.notNegative("thread engagement", engagement)
                / Require.positive("bolt diameter", diameter);
    }
}
