package shaftwright.travel;

import java.util.Optional;
import shaftwright.units.Require;

/**
 * A damper, limit strap or bump stop: a span that stops the wheel where it gets too short or too
 * long.
 *
 * @param kind what it is
 * @param shortest length to which it closes, mm, 0 when nothing stops it
 * @param longest length to which it opens, mm, infinite when nothing stops it
 */
public record Restraint(Span span, Kind kind, double shortest, double longest) {
    /** Steps in which its length is looked at, mm of travel. */
    private static final double STEP = 5;

    /** Lengths nearer than this count as equal, mm. */
    private static final double NO_LENGTH = 1e-6;

    /** What it is, and what it is called when it stops the wheel. */
    public enum Kind {
        /** Closes to its shortest length, opens to its longest. */
        DAMPER("damper", TravelStop.DAMPER_CLOSED, TravelStop.DAMPER_OPEN),
        /** Has a longest length only. */
        STRAP("strap", TravelStop.STRAP_TIGHT, TravelStop.STRAP_TIGHT),
        /** Has a shortest length only: between its seats when it is squeezed flat. */
        BUMP_STOP("bump stop", TravelStop.BUMP_STOP_FLAT, TravelStop.BUMP_STOP_FLAT);

        private final String word;
        private final TravelStop tooShort;
        private final TravelStop tooLong;

        Kind(String word, TravelStop tooShort, TravelStop tooLong) {
            this.word = word;
            this.tooShort = tooShort;
            this.tooLong = tooLong;
        }

        /** What builders call it. */
        public String word() {
            return word;
        }

        /** Whether it has a shortest length. */
        public boolean closes() {
            return this != STRAP;
        }

        /** Whether it has a longest length. */
        public boolean opens() {
            return this != BUMP_STOP;
        }
    }

    public Restraint {
        Require.notNegative("shortest length", shortest);
        if (!(longest > shortest)) {
            throw new IllegalArgumentException(
                    "longest length must be above the shortest; have "
                            + shortest
                            + " and "
                            + longest);
        }
    }

    /** A damper by the lengths to which it closes and opens, mm. */
    public static Restraint damper(Span span, double closed, double open) {
        return new Restraint(span, Kind.DAMPER, closed, open);
    }

    /** A limit strap by its length when taut, mm. */
    public static Restraint strap(Span span, double taut) {
        return new Restraint(span, Kind.STRAP, 0, taut);
    }

    /** A bump stop by the length between its seats when it is squeezed flat, mm. */
    public static Restraint bumpStop(Span span, double flat) {
        return new Restraint(span, Kind.BUMP_STOP, flat, Double.POSITIVE_INFINITY);
    }

    /** What stops the wheel at this length, empty when nothing does. */
    private Optional<TravelStop> stop(double length) {
        if (kind.closes() && length < shortest - NO_LENGTH) {
            return Optional.of(kind.tooShort);
        }
        return kind.opens() && length > longest + NO_LENGTH
                ? Optional.of(kind.tooLong)
                : Optional.empty();
    }

    /**
     * The ends of the travel with this in: those given, or nearer ones at which it stops the wheel.
     * Each way is walked from ride in steps, and the step that meets the stop is halved until the
     * end is known to {@link TravelRange#PRECISION}, on the safe side.
     *
     * @throws IllegalArgumentException if the motion does not reach the ends given
     */
    public TravelEnds within(TravelEnds ends, Motion motion) {
        Optional<TravelStop> atRide = stop(span.lengthAt(motion, 0));
        return atRide.isPresent()
                ? TravelEnds.metAtRide(atRide.get())
                : new TravelEnds(walk(ends.down(), motion), walk(ends.up(), motion));
    }

    private TravelEnds.End walk(TravelEnds.End last, Motion motion) {
        return new TravelWalk(last.travel(), STEP)
                .end(travel -> stop(span.lengthAt(motion, travel)))
                .orElse(last);
    }
}
