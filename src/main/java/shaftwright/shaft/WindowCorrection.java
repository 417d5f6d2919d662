package shaftwright.shaft;

import java.util.Optional;
import shaftwright.units.Require;

/**
 * What a mock-up adds to the race spacings at which both joints bottom and at which they pull out.
 *
 * <p>An end of the window that was not read may be wrong by as much as the other one, if a datum
 * is, or not at all, if a joint's own limit is. So it follows the other end where that narrows the
 * window, and stays where it would widen it.
 *
 * @param inward of the spacing with both races fully in ({@code S_in}), empty when it was not read
 * @param outward of the spacing with both races fully out ({@code S_out}), likewise
 * @param doubt how far a corrected spacing may be off beside the path's own doubt (k = 2), mm
 */
public record WindowCorrection(
        Optional<CorrectionLine> inward, Optional<CorrectionLine> outward, double doubt) {
    /** No correction. */
    public static final WindowCorrection NONE =
            new WindowCorrection(Optional.empty(), Optional.empty(), 0);

    public WindowCorrection {
        Require.notNegative("doubt of a correction", doubt);
    }

    /** What is added to {@code S_in} at a travel in mm, mm. */
    public double addedInward(double travel) {
        return inward.isPresent()
                ? inward.get().at(travel)
                : outward.map(line -> Math.min(0, line.at(travel))).orElse(0.0);
    }

    /**
     * What is added to {@code S_out} and to the spacings of outward stops that are not hard, mm.
     */
    public double addedOutward(double travel) {
        return outward.isPresent()
                ? outward.get().at(travel)
                : inward.map(line -> Math.max(0, line.at(travel))).orElse(0.0);
    }
}
