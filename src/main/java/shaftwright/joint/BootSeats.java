package shaftwright.joint;

import shaftwright.units.Require;

/**
 * The two circles that a boot is clamped to, and how far apart they stand with the joint at an
 * angle.
 *
 * <p>The cup's seat stays where it is, square to the cup's axis; the shaft's goes with race and
 * shaft, square to the shaft. A fibre of the boot runs from a point of one circle to the point of
 * the other that it was opposite to in the straight joint, in a straight line: what the folds
 * between make of it is not looked at.
 *
 * @param cup joint centre to the seat on the cup, along the cup's axis toward the shaft, mm ({@code
 *     b_c}); negative when it lies toward the cup's back
 * @param shaft race centre to the seat on the shaft, along the shaft, mm ({@code b_s})
 * @param cupRadius of the seat on the cup, mm
 * @param shaftRadius of the seat on the shaft, mm
 */
public record BootSeats(double cup, double shaft, double cupRadius, double shaftRadius) {
    public BootSeats {
        Require.finite("boot seat on the cup", cup);
        Require.positive("boot seat on the shaft", shaft);
        Require.notNegative("radius of the boot's seat on the cup", cupRadius);
        Require.notNegative("radius of the boot's seat on the shaft", shaftRadius);
    }

    /**
     * From the middle of one seat to the middle of the other: {@code √(b_s² + (x + b_c)² − 2 b_s (x
     * + b_c) cos β)}.
     *
     * @param inward travel of the race toward the cup's back, mm ({@code x})
     * @param angle β, rad
     */
    public double centreLine(double inward, double angle) {
        double along = inward + cup;
        double squared = shaft * shaft + along * along - 2 * shaft * along * Math.cos(angle);
        return Math.sqrt(Math.max(0, squared));
    }

    /**
     * Where a race that floats brings a boot's fibres nearest together, mm of inward travel: at the
     * end of its float that is nearer to {@code b_s cos β − R_s sin β − b_c}, or there. In that
     * place the shaft's seat stands over the cup's on the side that the shaft leans to; further in
     * the boot is turned inside out, and its fibres grow again. (On a cup's seat narrower than the
     * shaft's as it lies, it is the other side.) Of one fibre the square is a parabola over the
     * race's travel, so no other place between the ends has a shorter one, unless the shaft's seat
     * is wider than the cup's.
     *
     * @param outward place of the race at one end of its float, mm, positive toward the cup's back
     * @param inward the same at the other end
     * @param angle β, rad
     */
    public double nearest(double outward, double inward, double angle) {
        double side = cupRadius < shaftRadius * Math.cos(angle) ? -1 : 1;
        double over = shaft * Math.cos(angle) - side * shaftRadius * Math.sin(angle) - cup;
        double least = Math.min(outward, inward);
        double most = Math.max(outward, inward);
        return Math.max(least, Math.min(most, over));
    }

    /**
     * The shortest fibre, mm. With {@code V} from the cup's seat to the shaft's, {@code c} the
     * cosine of a fibre's place on the circles from the side that the shaft leans to, its square is
     * {@code V² + 2 c (V·A) + c² (A² − B²) + B²}, which is least inside, or on the side leant to.
     */
    public double shortestFibre(double inward, double angle) {
        double bend = bend(angle);
        double slope = Math.abs(slope(inward, angle));
        return Math.sqrt(
                Math.max(
                        0,
                        middle(inward, angle)
                                + (slope < bend ? -slope * slope / bend : bend - 2 * slope)));
    }

    /** The longest fibre, mm: on the side leant to, or opposite. */
    public double longestFibre(double inward, double angle) {
        return Math.sqrt(middle(inward, angle) + bend(angle) + 2 * Math.abs(slope(inward, angle)));
    }

    /**
     * A fibre of the straight boot, mm: it slants where the seats differ.
     *
     * @param length between the seats, mm
     */
    public double straightFibre(double length) {
        return Math.hypot(length, cupRadius - shaftRadius);
    }

    /** {@code V² + B²}. */
    private double middle(double inward, double angle) {
        double line = centreLine(inward, angle);
        double across = cupRadius - shaftRadius;
        return line * line + across * across;
    }

    /** {@code A² − B²}. */
    private double bend(double angle) {
        return 2 * cupRadius * shaftRadius * (1 - Math.cos(angle));
    }

    /**
     * {@code V·A}; below 0 where the seat on the cup is so much wider that the shaft leans toward
     * it.
     */
    private double slope(double inward, double angle) {
        return Math.sin(angle) * ((inward + cup) * shaftRadius - shaft * cupRadius);
    }
}
