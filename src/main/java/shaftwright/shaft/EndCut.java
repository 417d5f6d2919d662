package shaftwright.shaft;

import java.util.Optional;

/**
 * What is done to one end of a blank.
 *
 * @param groove whether the existing groove serves
 * @param cut what comes off this end, mm
 * @param trim the part of the cut that brings an existing groove to the wanted stub, mm; 0 with a
 *     new groove
 * @param stub finished stub: the ring's bearing face to the shaft's end, mm ({@code e'})
 * @param walls the ring's groove: the ring leans on its outer wall, {@code e' − t_ring} from the
 *     finished end
 * @param landWanted least land, mm
 * @param oldGroove an existing groove that is not used and not wholly cut away
 */
public record EndCut(
        GrooveUse groove,
        double cut,
        double trim,
        double stub,
        GrooveWalls walls,
        double landWanted,
        Optional<GrooveWalls> oldGroove) {

    /** An end with a groove of its own and no other, from which nothing is cut. */
    public static EndCut whole(double stub, GrooveWalls walls, double landWanted) {
        return new EndCut(GrooveUse.NEW, 0, 0, stub, walls, landWanted, Optional.empty());
    }

    public double outerWall() {
        return walls.outer();
    }

    public double innerWall() {
        return walls.inner();
    }

    /** An old groove that stays farther in than the ring's, where it carries torque. */
    public Optional<GrooveWalls> inboardGroove() {
        return oldGroove.filter(old -> old.inboardOf(walls));
    }

    /** An old groove that stays nearer the end than the ring's. */
    public Optional<GrooveWalls> outboardGroove() {
        return oldGroove.filter(old -> !old.inboardOf(walls));
    }

    /** Whether the new groove is cut into the old one. */
    public boolean meetsOldGroove() {
        return oldGroove.isPresent() && walls.meets(oldGroove.get());
    }

    /**
     * Shaft outside the groove, mm: from the end, or from an old groove that stays between and
     * leaves something between them.
     */
    public double land() {
        Optional<GrooveWalls> between = meetsOldGroove() ? Optional.empty() : outboardGroove();
        return outerWall() - between.map(GrooveWalls::inner).orElse(0.0);
    }

    /** What of the land is missing, mm; 0 or less when it is as long as wanted. */
    public double landMissing() {
        return Rounding.sixth(landWanted - land());
    }

    public boolean landHolds() {
        return landMissing() <= 0;
    }
}
