package shaftwright.study;

import java.util.Optional;

/**
 * What a scenario's parts carry, as far as a verdict needs it.
 *
 * @param innerBolts flange bolts of the inner joint, when they are known
 * @param outerBolts flange bolts of the outer joint, likewise
 * @param weakest the part with the least safety factor, when there is one
 * @param factorWanted least safety factor that the builder wants
 * @param returning what is known of loads that come back
 */
public record StrengthFacts(
        Optional<Bolts> innerBolts,
        Optional<Bolts> outerBolts,
        Optional<Weakest> weakest,
        double factorWanted,
        ReturningFacts returning) {
    /** Of parts whose wear and fatigue are not looked at. */
    public StrengthFacts(
            Optional<Bolts> innerBolts,
            Optional<Bolts> outerBolts,
            Optional<Weakest> weakest,
            double factorWanted) {
        this(innerBolts, outerBolts, weakest, factorWanted, ReturningFacts.NONE);
    }

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
        return below(weakest.orElseThrow().factor(), factorWanted);
    }

    /** A factor below the one wanted, to hundredths in which it is still below. */
    static double below(double factor, double wanted) {
        return Wording.rounded(factor, 2).equals(Wording.rounded(wanted, 2))
                ? Double.parseDouble(Wording.roundedDown(factor, 2))
                : factor;
    }

    boolean tooWeak() {
        return weakest.isPresent() && weakest.get().factor() < factorWanted;
    }
}
