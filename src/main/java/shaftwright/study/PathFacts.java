package shaftwright.study;

import java.util.List;
import java.util.Optional;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.units.LengthUnit;

/**
 * What a side's verdict rests on: whether everything needed is there, and how far its hub path may
 * be trusted.
 *
 * @param missing what keeps the side from being computed, such as "choose an inner joint"; empty
 *     when nothing does
 * @param twoHeights whether the path comes from two heights only
 * @param beyond travel wanted beyond the known path
 * @param contradiction readings that contradict each other
 * @param checksOpen checks before measuring that are not ticked
 * @param checks how many there are
 * @param unread what was never read and counts as zero
 */
public record PathFacts(
        String missing,
        boolean twoHeights,
        Optional<Beyond> beyond,
        Optional<Contradiction> contradiction,
        int checksOpen,
        int checks,
        Unread unread) {

    /** One of the two ways of the wheel. */
    public enum Way {
        BUMP,
        DROOP
    }

    /**
     * Travel wanted beyond the known path.
     *
     * @param wanted mm, 0 or more
     * @param known travel at which the path ends, mm, positive in bump
     */
    public record Beyond(Way way, double wanted, double known) {}

    /**
     * Readings that contradict each other.
     *
     * @param suspects what to measure again, such as "row 3, distance"; empty when so few readings
     *     can't show which is wrong
     * @param nextHeight where one more height tells most, such as "19 5/8 in"
     */
    public record Contradiction(List<String> suspects, String nextHeight) {
        public Contradiction {
            suspects = List.copyOf(suspects);
        }

        /** What is said of readings in the workbook's unit. */
        public static Contradiction of(ReadingContradiction found, LengthUnit unit) {
            return new Contradiction(
                    ReadingWording.listed(found, unit),
                    ReadingWording.distance(found.nextHeight(), unit));
        }
    }

    /** Angles of the wheel that were never read. */
    public enum Unread {
        NOTHING,
        CAMBER,
        TOE,
        BOTH
    }

    /** A path with nothing against it. */
    public static PathFacts sound(int checks) {
        return new PathFacts(
                "", false, Optional.empty(), Optional.empty(), 0, checks, Unread.NOTHING);
    }

    /** Whether there is no verdict on what rests on the path. */
    boolean silent() {
        return !missing.isEmpty() || twoHeights || beyond.isPresent();
    }

    /** The same with something missing. */
    public PathFacts lacking(String what) {
        return new PathFacts(what, twoHeights, beyond, contradiction, checksOpen, checks, unread);
    }

    public PathFacts ofTwoHeights() {
        return new PathFacts(missing, true, beyond, contradiction, checksOpen, checks, unread);
    }

    public PathFacts beyond(Beyond travel) {
        return new PathFacts(
                missing,
                twoHeights,
                Optional.of(travel),
                contradiction,
                checksOpen,
                checks,
                unread);
    }

    public PathFacts contradicting(Contradiction readings) {
        return new PathFacts(
                missing, twoHeights, beyond, Optional.of(readings), checksOpen, checks, unread);
    }

    /** The same with checks before measuring open. */
    public PathFacts open(int open) {
        return new PathFacts(missing, twoHeights, beyond, contradiction, open, checks, unread);
    }

    public PathFacts without(Unread angles) {
        return new PathFacts(
                missing, twoHeights, beyond, contradiction, checksOpen, checks, angles);
    }
}
