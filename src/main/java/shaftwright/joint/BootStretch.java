package shaftwright.joint;

import java.util.Optional;

/**
 * What becomes of a boot at one position over the float of its race.
 *
 * @param shortest of all fibres, mm; positive infinity while its seats are not known
 * @param longest of all fibres, mm; negative infinity while its seats are not known
 * @param angle greatest of its joint, rad
 */
public record BootStretch(double shortest, double longest, double angle) {
    /**
     * A boot over the float. The longest fibre is one at an end of the float, the shortest one
     * where the seats come {@linkplain BootSeats#nearest nearest}. All places are taken with the
     * greatest angle, which is that of one end: where the angle changes by a degree over the float,
     * fibres elsewhere are off by less than a fiftieth of the seats' radius. By brute force that is
     * at most a tenth of a millimetre to the side that is not safe, half of one where the boot is
     * turned inside out.
     *
     * @param outward place of the race at the outward end of its float, mm, positive toward the
     *     cup's back
     * @param inward the same at the inward end
     * @param angle greatest over the float, rad
     */
    public static BootStretch of(
            Optional<BootSeats> seats, double outward, double inward, double angle) {
        return seats.map(
                        known ->
                                new BootStretch(
                                        known.shortestFibre(
                                                known.nearest(outward, inward, angle), angle),
                                        Math.max(
                                                known.longestFibre(outward, angle),
                                                known.longestFibre(inward, angle)),
                                        angle))
                .orElse(new BootStretch(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, angle));
    }
}
