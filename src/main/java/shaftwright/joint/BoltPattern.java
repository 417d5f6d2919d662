package shaftwright.joint;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import shaftwright.units.Require;

/**
 * Where the bolts of a flange sit. What is empty is not known, and is held against nothing.
 *
 * @param circle diameter of the bolt circle, mm
 * @param count of bolts
 * @param size nominal diameter of a bolt, mm
 * @param pilot diameter of the step that centres it, mm
 * @param thread length of thread that is engaged without spacers, mm
 */
public record BoltPattern(
        OptionalDouble circle,
        OptionalInt count,
        OptionalDouble size,
        OptionalDouble pilot,
        OptionalDouble thread) {
    /** Nothing known. */
    public static final BoltPattern UNKNOWN =
            new BoltPattern(
                    OptionalDouble.empty(),
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    /** What two flanges may differ in, in the order in which it is looked at. */
    public enum Part {
        /** Clearance of bolts in their holes takes up that much; own choice. */
        CIRCLE(1, "bolt circle", 0.5),
        COUNT(2, "number of bolts", 0),
        /** Below what tells 5/16 in from 8 mm; own choice. */
        SIZE(3, "bolt size", 0.03),
        /** More play than that centres nothing; own choice. */
        PILOT(4, "pilot diameter", 0.2);

        private final int number;
        private final String words;
        private final double same;

        Part(int number, String words, double same) {
            this.number = number;
            this.words = words;
            this.same = same;
        }

        /** From 1; workbooks hold it as a number. */
        public int number() {
            return number;
        }

        /** As builders say it. */
        public String words() {
            return words;
        }

        /** How much may lie between two that count as one, mm. */
        public double same() {
            return same;
        }
    }

    public BoltPattern {
        circle.ifPresent(diameter -> Require.positive("bolt circle", diameter));
        if (count.isPresent() && count.getAsInt() < 1) {
            throw new IllegalArgumentException(
                    "bolt count must be 1 or more; have " + count.getAsInt());
        }
        size.ifPresent(diameter -> Require.positive("bolt size", diameter));
        pilot.ifPresent(diameter -> Require.positive("pilot diameter", diameter));
    }

    /** A measure of it, mm or a count; empty when not known. */
    public OptionalDouble of(Part part) {
        return switch (part) {
            case CIRCLE -> circle;
            case COUNT ->
                    count.isPresent()
                            ? OptionalDouble.of(count.getAsInt())
                            : OptionalDouble.empty();
            case SIZE -> size;
            case PILOT -> pilot;
        };
    }

    /** Whether anything is known of both, so that it was compared. */
    public boolean comparesWith(BoltPattern that) {
        for (Part part : Part.values()) {
            if (of(part).isPresent() && that.of(part).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Thread of its bolts that is engaged behind spacers, in diameters; empty while that can't be
     * told. In steel at least one diameter is wanted (common practice, no source).
     *
     * @param spacers thickness of all of them, mm
     */
    public OptionalDouble threadBehind(double spacers) {
        return thread.isEmpty() || size.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of((thread.getAsDouble() - spacers) / size.getAsDouble());
    }

    /** The first thing known of both that differs; empty when nothing does. */
    public Optional<Part> differenceTo(BoltPattern that) {
        for (Part part : Part.values()) {
            OptionalDouble here = of(part);
            OptionalDouble there = that.of(part);
            if (here.isPresent()
                    && there.isPresent()
                    && Math.abs(here.getAsDouble() - there.getAsDouble()) > part.same) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }
}
