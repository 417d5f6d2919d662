package shaftwright.travel;

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

    /** What stops the wheel at this length, null when nothing does. */
    private TravelStop stopOrNull(double length) {
        if (kind.closes() && length < shortest - NO_LENGTH) {
            return kind.tooShort;
        }
        return kind.opens() && length > longest + NO_LENGTH ? kind.tooLong : null;
    }

    /**
     * The ends of the travel with this in: those given, or nearer ones at which it stops the wheel.
     * Each way is walked from ride in steps, and the step that meets the stop is halved until the
     * end is known to {@link TravelRange#PRECISION}, on the safe side.
     *
     * @throws IllegalArgumentException if the motion does not reach the ends given
     */
    public TravelEnds within(TravelEnds ends, Motion motion) {
        TravelStop atRide = stopOrNull(span.lengthAt(motion, 0));
        if (atRide != null) {
            return TravelEnds.metAtRide(atRide);
        }
        return ends.nearer(walk(ends.low(), motion), walk(ends.high(), motion));
    }

    private TravelEnds.End walk(double limit, Motion motion) {
        return new TravelWalk(limit, STEP)
                .endOrNull(
                        new TravelWalk.Stops() {
                            @Override
                            public TravelStop stopOrNull(double travel) {
                                return Restraint.this.stopOrNull(span.lengthAt(motion, travel));
                            }
                        });
    }
}
