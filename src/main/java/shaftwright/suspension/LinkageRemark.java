package shaftwright.suspension;

import java.util.OptionalInt;

/**
 * A reason why a linkage can't be used.
 *
 * @param kind what it is about
 * @param point which of the linkage's points to look at first, empty when it is about the whole
 * @param text a sentence for the builder, without place and value
 */
public record LinkageRemark(Kind kind, OptionalInt point, String text) {
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
