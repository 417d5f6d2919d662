package shaftwright.study;

import java.util.Optional;

/**
 * What a scenario's parts carry, as far as a verdict needs it.
 *
 * @param innerBolts flange bolts of the inner joint, when they are known
 * @param outerBolts flange bolts of the outer joint, likewise
 * @param weakest the part with the least safety factor, when there is one
 * @param factorWanted least safety factor that the builder wants
 */
public record StrengthFacts(
        Optional<Bolts> innerBolts,
        Optional<Bolts> outerBolts,
        Optional<Weakest> weakest,
        double factorWanted) {
    /** Nothing is known. */
    public static final StrengthFacts UNKNOWN =
            new StrengthFacts(Optional.empty(), Optional.empty(), Optional.empty(), 1);

    /**
     * Tightened bolts.
     *
     * @param share tension over proof load
     * @param most share that may be counted on
     * @param mostTorque tightening torque that gives it, N·m
     */
    public record Bolts(double share, double most, double mostTorque) {
        boolean tooTight() {
            return share > most;
        }
    }

    /** A part and its safety factor. */
    public record Weakest(String part, double factor) {}

    /**
     * The weakest part's factor, where it is too weak: rounded to hundredths as in tables, but
     * never up to the factor wanted.
     */
    double tooWeakFactor() {
        double factor = weakest.orElseThrow().factor();
        return Wording.rounded(factor, 2).equals(Wording.rounded(factorWanted, 2))
                ? Double.parseDouble(Wording.roundedDown(factor, 2))
                : factor;
    }

    boolean tooWeak() {
        return weakest.isPresent() && weakest.get().factor() < factorWanted;
    }
}
