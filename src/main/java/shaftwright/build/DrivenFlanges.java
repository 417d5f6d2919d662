package shaftwright.build;

import shaftwright.joint.BoltPattern;
import shaftwright.shaft.ShaftEnd;

/**
 * The flanges that the joints bolt to, as far as they are known.
 *
 * @param inner of the transaxle
 * @param outer of the hub
 */
public record DrivenFlanges(BoltPattern inner, BoltPattern outer) {
    /** Nothing known. */
    public static final DrivenFlanges UNKNOWN =
            new DrivenFlanges(BoltPattern.UNKNOWN, BoltPattern.UNKNOWN);

    /** The flange at an end. */
    public BoltPattern at(ShaftEnd end) {
        return end.either(inner, outer);
    }
}
