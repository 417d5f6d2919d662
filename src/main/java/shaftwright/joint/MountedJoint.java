package shaftwright.joint;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/**
 * A joint as it sits in one end of a side: on its flange, with its race on a shaft end, under its
 * boot.
 *
 * <p>The shaft's stub is square-ended and straight; with the joint at an angle β its end corner
 * stands {@code L cos β + (d_e/2) sin β} toward the cup back and {@code L sin β + (d_e/2) cos β}
 * off the cup's axis, {@code L} being the {@link #overhang()}.
 *
 * @param joint the catalogue entry
 * @param cupSpacer what a spacer between flange and cup adds to the datum offset, mm
 * @param counterbore how deep the ring's seat is sunk in the race, mm ({@code k}); 0 for a plain
 *     race
 * @param stub shaft beyond the face of the ring that the race bears on, to the shaft's end, mm
 *     ({@code e})
 * @param endDiameter diameter of the shaft's end, mm ({@code d_e})
 * @param boot over it
 */
public record MountedJoint(
        Joint joint,
        double cupSpacer,
        double counterbore,
        double stub,
        double endDiameter,
        Boot boot) {
    /** Travels nearer than this count as equal, mm; cells compare with six decimals too. */
    private static final double NEAR = 5e-7;

    public MountedJoint {
        Require.finite("cup spacer", cupSpacer);
        Require.noMoreThan(
                "counterbore", counterbore, "the width of the race", 2 * joint.raceHalfWidth());
        Require.notNegative("stub", stub);
        Require.notNegative("shaft end diameter", endDiameter);
    }

    /** The same under a boot of which only the change of the outward limit counts, mm. */
    public MountedJoint(
            Joint joint,
            double cupSpacer,
            double counterbore,
            double stub,
            double endDiameter,
            double bootOutwardChange) {
        this(joint, cupSpacer, counterbore, stub, endDiameter, Boot.changing(bootOutwardChange));
    }

    /** The same joint under another boot. */
    public MountedJoint under(Boot other) {
        return new MountedJoint(joint, cupSpacer, counterbore, stub, endDiameter, other);
    }

    /** Another joint in the same place, behind the same spacer. */
    public MountedJoint with(Joint other) {
        return new MountedJoint(
                other.behindSpacer(joint.spacer()),
                cupSpacer,
                counterbore,
                stub,
                endDiameter,
                boot);
    }

    /** The same behind a spacer of this thickness between joint and cup, mm. */
    public MountedJoint withJointSpacer(double thickness) {
        return new MountedJoint(
                joint.behindSpacer(thickness), cupSpacer, counterbore, stub, endDiameter, boot);
    }

    /** The same behind a spacer of this thickness between flange and cup, mm. */
    public MountedJoint withCupSpacer(double thickness) {
        return new MountedJoint(joint, thickness, counterbore, stub, endDiameter, boot);
    }

    /** The same with the ring's seat sunk this deep, mm. */
    public MountedJoint withCounterbore(double depth) {
        return new MountedJoint(joint, cupSpacer, depth, stub, endDiameter, boot);
    }

    /** The same with this much shaft beyond the ring, mm. */
    public MountedJoint withStub(double length) {
        return new MountedJoint(joint, cupSpacer, counterbore, length, endDiameter, boot);
    }

    /** The same on another end: this much of it beyond the ring, of this diameter, mm. */
    public MountedJoint withEnd(double length, double diameter) {
        return new MountedJoint(joint, cupSpacer, counterbore, length, diameter, boot);
    }

    /** Datum face to joint centre, toward the other end of the shaft, mm ({@code A}). */
    public double datumToCentre() {
        return joint.datumOffset() + cupSpacer;
    }

    /** Race centre to the ring's bearing face, toward the shaft's end, mm ({@code r − k}). */
    public double seatOffset() {
        return joint.raceHalfWidth() - counterbore;
    }

    /** Ring's bearing face to the race's inboard face, mm ({@code 2r − k}). */
    public double raceDepth() {
        return 2 * joint.raceHalfWidth() - counterbore;
    }

    /** Race centre to the shaft's end, mm ({@code L = r − k + e}). */
    public double overhang() {
        return seatOffset() + stub;
    }

    /**
     * Inward travel that the race and the shaft's end allow: {@code min(x_in(β), d_cup − L cos β −
     * (d_e/2) sin β)}.
     *
     * @param angle β between shaft and cup axis, rad
     * @return mm, negative when the race must stand outward of its middle
     */
    public double inward(double angle) {
        return Math.min(joint.bench().inward(angle), endInward(angle));
    }

    /** Inward travel at which the shaft's end meets the cup at an angle in rad, mm. */
    public double endInward(double angle) {
        return joint.cupBottom() - overhang() * Math.cos(angle) - endDiameter / 2 * Math.sin(angle);
    }

    /** Whether the shaft's end meets the cup before the race stops, or as soon. */
    public boolean endBottoms(double angle) {
        return endInward(angle) - joint.bench().inward(angle) <= NEAR;
    }

    /** Outward travel that the joint with its boot allows at an angle in rad, mm. */
    public double outward(double angle) {
        return joint.bench().outward(angle) + boot.outwardChange();
    }

    /** Whether nothing but the boot ends its outward travel. */
    public boolean hasSoftStop() {
        return joint.outwardStop() == OutwardStop.SOFT;
    }

    /** Whether the cup's bore or lip is known, so that a mouth clearance can be told. */
    public boolean hasMouth() {
        return joint.cupRadius().isPresent() || joint.lip().isPresent();
    }

    /**
     * Thread that the joint's bolts have behind the spacers, in diameters; empty while that can't
     * be told.
     */
    public OptionalDouble threadEngaged() {
        return joint.mating().bolts().threadBehind(cupSpacer + joint.spacer());
    }

    /** Whether anything of it has to be looked at over the whole float of its race. */
    public boolean asksForFloat() {
        return hasMouth() || boot.isJudged();
    }

    /**
     * Gap between the tilted shaft and the cup's bore or lip with the race at one place.
     *
     * @param travel inward travel of the race, mm ({@code X})
     * @param angle β, rad
     */
    public double mouthClearance(double travel, double angle) {
        return mouthClearance(travel, travel, angle);
    }

    /**
     * Least gap between the tilted shaft and the cup's bore or lip, the smaller, while the race
     * floats.
     *
     * <p>Bore: {@code R_mouth − (L sin β + (d_e/2) cos β)}. Lip, once the shaft's end reaches it
     * ({@code X + L cos β > z}, {@code z} its depth): {@code R_lip − (|z − X| tan β + d_e/(2 cos
     * β))}. The lip's gap is widest where the race's centre lies in its plane ({@code X = z}) and
     * falls evenly to both sides, so it is least at an end of the float, or where the shaft's end
     * just reaches the lip.
     *
     * @param outward place of the race at the outward end of its float, mm, positive toward the
     *     cup's back
     * @param inward the same at the inward end
     * @param angle greatest angle over the float, rad
     * @return mm, negative when they touch; positive infinity when the joint has neither bore nor
     *     lip given, or a lip only that the shaft does not reach
     */
    public double mouthClearance(double outward, double inward, double angle) {
        double sin = Math.sin(angle);
        double cos = Math.cos(angle);
        double clearance = Double.POSITIVE_INFINITY;
        if (joint.cupRadius().isPresent()) {
            double corner = overhang() * sin + endDiameter / 2 * cos;
            clearance = joint.cupRadius().getAsDouble() - corner;
        }
        if (joint.lip().isPresent()) {
            CupLip lip = joint.lip().get();
            double reached = lip.depth() - overhang() * cos;
            double most = Math.max(outward, inward);
            if (most > reached) {
                double least = Math.max(Math.min(outward, inward), reached);
                double off = Math.max(most - lip.depth(), lip.depth() - least);
                double edge = off * sin / cos + endDiameter / (2 * cos);
                clearance = Math.min(clearance, lip.radius() - edge);
            }
        }
        return clearance;
    }
}
