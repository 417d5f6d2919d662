package shaftwright.suspension;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A reason why a linkage can't be used.
 *
 * @param kind what it is about
 * @param point which of the linkage's points to look at first, empty when it is about the whole
 * @param stop where its travel ends, of a linkage that is {@link Kind#OUT_OF_REACH}
 * @param text a clause for the builder, without place and value
 */
public record LinkageRemark(Kind kind, OptionalInt point, Optional<LinkageStop> stop, String text) {
    static LinkageRemark of(Kind kind, OptionalInt point, String text) {
        return new LinkageRemark(kind, point, Optional.empty(), text);
    }

    static LinkageRemark of(LinkageStop stop) {
        return new LinkageRemark(
                Kind.OUT_OF_REACH, OptionalInt.empty(), Optional.of(stop), stop.words());
    }

    /** What a remark is about. */
    public enum Kind {
        NOT_A_NUMBER,
        TOO_FAR,
        WRONG_SIDE,
        INNER_BEYOND_OUTER,
        BAD_ANGLE,
        SAME_PLACE,
        IN_LINE,
        TOO_LONG,
        HUB_ON_PIVOT,
        TOO_FREE,
        HELD_TOO_MUCH,
        PARTS_WORK_ALIKE,
        DEAD_CENTRE,
        TRAVEL_REVERSED,
        OUT_OF_REACH
    }
}
