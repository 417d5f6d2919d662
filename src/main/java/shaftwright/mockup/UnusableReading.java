package shaftwright.mockup;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reading that no stick can have given: it is held against nothing, and corrects nothing.
 *
 * @param reading what was typed
 * @param flaw what is wrong with it
 * @param longest the widest spacing of holes that it tells of, mm
 * @param most what the cups leave room for, mm
 */
public record UnusableReading(StickReading reading, Flaw flaw, double longest, double most) {
    /** Millimetres beyond the doubt nearer than this do not count. */
    private static final double PER_MM = 1e6;

    /** What is wrong; workbooks hold it as a number from 1, the gravest highest. */
    public enum Flaw {
        /** Fully in the holes are no further apart than fully out. */
        SWAPPED("whether in and out are swapped"),
        /** The stick would reach through the bottoms of the cups. */
        TOO_LONG("the number typed and the cups' depths");

        private final String check;

        Flaw(String check) {
            this.check = check;
        }

        /** Place in the order, 1 the least grave. */
        public int number() {
            return List.of(values()).indexOf(this) + 1;
        }

        /** What to check. */
        public String check() {
            return check;
        }
    }

    /**
     * Looks at a reading.
     *
     * @param most spacing of the holes of the longest stick that goes between the cups' bottoms, mm
     * @param allowed difference that says nothing, mm
     * @return empty when it can be used
     */
    static Optional<UnusableReading> of(StickReading reading, double most, double allowed) {
        double longest = reading.longestHoles();
        OptionalDouble in = reading.holesIn();
        OptionalDouble out = reading.holesOut();
        if (Math.rint((longest - most - allowed) * PER_MM) > 0) {
            return Optional.of(new UnusableReading(reading, Flaw.TOO_LONG, longest, most));
        }
        return in.isPresent() && out.isPresent() && in.getAsDouble() <= out.getAsDouble()
                ? Optional.of(new UnusableReading(reading, Flaw.SWAPPED, longest, most))
                : Optional.empty();
    }
}
