package shaftwright.build;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.doubt.Combined;
import shaftwright.doubt.Contribution;

/**
 * What may move the joints beside what a side's hub path is uncertain by, and what follows from it.
 *
 * @param contributions each along the shaft and independent of the others
 * @param margins whether margins are built up from them
 * @param trials to count chances with, empty for none
 */
public record Uncertainty(
        List<Contribution> contributions, MarginChoice margins, Optional<Trials> trials) {
    /** Nothing is known of; margins are the scenarios' own. */
    public static final Uncertainty NONE =
            new Uncertainty(List.of(), MarginChoice.TYPED, Optional.empty());

    public Uncertainty {
        contributions = List.copyOf(contributions);
    }

    /** All contributions together. */
    public Combined combined() {
        return Combined.of(contributions);
    }

    /** The margin built up, mm; empty while typed ones count or nothing is there to build from. */
    public OptionalDouble builtUp() {
        if (contributions.isEmpty()) {
            return OptionalDouble.empty();
        }
        return switch (margins) {
            case TYPED -> OptionalDouble.empty();
            case ROOT_SUM_SQUARE -> OptionalDouble.of(combined().rootSumSquare());
            case WORST_CASE -> OptionalDouble.of(combined().worst());
        };
    }

    /** The margins that count, of a scenario that has these. */
    public Margins counting(Margins typed) {
        OptionalDouble both = builtUp();
        return both.isPresent() ? new Margins(both.getAsDouble(), both.getAsDouble()) : typed;
    }
}
