package shaftwright.shaft;

import java.util.OptionalDouble;

/**
 * What is done to one end of a blank.
 *
 * @param groove whether the existing groove serves
 * @param cut what comes off this end, mm
 * @param trim the part of the cut that brings an existing groove to the wanted stub, mm; 0 with a
 *     new groove
 * @param stub finished stub: the ring's bearing face to the shaft's end, mm ({@code e'})
 * @param outerWall the groove's outer wall, which the ring leans on, from the finished end, mm:
 *     {@code e' − t_ring}; also the land outside the groove
 * @param innerWall the groove's inner wall from the finished end, mm
 * @param landWanted least land, mm
 * @param leftoverGroove an existing groove that stays inboard of the ring, where it carries torque,
 *     from the finished end, mm; empty when there is none
 */
public record EndCut(
        GrooveUse groove,
        double cut,
        double trim,
        double stub,
        double outerWall,
        double innerWall,
        double landWanted,
        OptionalDouble leftoverGroove) {

    /** Shaft between its end and the groove, mm. */
    public double land() {
        return outerWall;
    }

    /** Whether the land is at least as long as wanted. */
    public boolean landHolds() {
        return outerWall >= landWanted;
    }
}
