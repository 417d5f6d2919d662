package shaftwright.study;

import java.util.Optional;
import java.util.Set;
import shaftwright.build.MeasuringCheck;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.MeasuredQuantity;
import shaftwright.suspension.ReadingContradiction;

/**
 * What a side's verdict rests on: whether everything needed is there, and how far its hub path may
 * be trusted.
 *
 * @param missing what keeps the side from being computed, such as "choose an inner joint"; empty
 *     when nothing does
 * @param twoHeights whether the path comes from two heights only
 * @param beyond travel wanted beyond the known path
 * @param contradiction readings that contradict each other, one at least
 * @param checksOpen checks before measuring that are not ticked
 * @param unread what was never read and counts as zero
 * @param outdated whether figures of all states are asked for and were computed from other inputs:
 *     a workbook that was changed since its last fill, never what is computed here
 */
public record PathFacts(
        String missing,
        boolean twoHeights,
        Optional<Beyond> beyond,
        Optional<ReadingContradiction> contradiction,
        Set<MeasuringCheck> checksOpen,
        Unread unread,
        boolean outdated) {
    /** A path with nothing against it. */
    public static final PathFacts SOUND =
            new PathFacts(
                    "", false, Optional.empty(), Optional.empty(), Set.of(), Unread.NOTHING, false);

    public PathFacts {
        checksOpen = Set.copyOf(checksOpen);
    }

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

    /** Angles of the wheel that were never read. */
    public enum Unread {
        NOTHING,
        CAMBER,
        TOE,
        BOTH;

        /** What the readings of a path leave out. */
        public static Unread of(MeasuredPath path) {
            boolean toe = path.fit(MeasuredQuantity.TOE).isPresent();
            if (path.fit(MeasuredQuantity.CAMBER).isPresent()) {
                return toe ? NOTHING : TOE;
            }
            return toe ? CAMBER : BOTH;
        }
    }

    /** Whether there is no verdict on what rests on the path. */
    boolean silent() {
        return !missing.isEmpty() || twoHeights || beyond.isPresent();
    }

    /** The same with something missing. */
    public PathFacts lacking(String what) {
        return new PathFacts(what, twoHeights, beyond, contradiction, checksOpen, unread, outdated);
    }

    public PathFacts ofTwoHeights() {
        return new PathFacts(missing, true, beyond, contradiction, checksOpen, unread, outdated);
    }

    public PathFacts beyond(Beyond travel) {
        return new PathFacts(
                missing,
                twoHeights,
                Optional.of(travel),
                contradiction,
                checksOpen,
                unread,
                outdated);
    }

    public PathFacts contradicting(ReadingContradiction readings) {
        return new PathFacts(
                missing, twoHeights, beyond, Optional.of(readings), checksOpen, unread, outdated);
    }

    /** The same with checks before measuring open. */
    public PathFacts open(Set<MeasuringCheck> open) {
        return new PathFacts(missing, twoHeights, beyond, contradiction, open, unread, outdated);
    }

    public PathFacts without(Unread angles) {
        return new PathFacts(
                missing, twoHeights, beyond, contradiction, checksOpen, angles, outdated);
    }

    /** The same with figures of all states that are not current. */
    public PathFacts outOfDate() {
        return new PathFacts(missing, twoHeights, beyond, contradiction, checksOpen, unread, true);
    }
}
