package shaftwright.shaft;

import java.util.Optional;
import shaftwright.joint.Boot;
import shaftwright.joint.BootStretch;
import shaftwright.suspension.Vector;

/**
 * How far both races can stand off their middles at one position with a shaft in, which floats
 * until a race meets a limit.
 *
 * <p>As one race goes in the other comes out: {@code |d + a u + b n| = S} keeps {@code a cos β_i +
 * b cos β_o} the same to first order, from the equal push on. The rest, {@code (a − b)² |u − n|² /
 * 8S}, is some hundredths of a millimetre, a tenth on a hub steered hard. Angles change little
 * meanwhile, and are greatest at one end of the float or at the other.
 *
 * @param innerOut where the inner race stands when it is as far out as the float lets it, mm,
 *     positive toward its cup's back
 * @param innerIn the same when it is as far in
 * @param outerOut the same of the outer race
 * @param outerIn the same of the outer race when it is as far in
 * @param innerAngle the inner joint's greatest angle over the float, rad
 * @param outerAngle the outer joint's, rad
 */
public record EndFloat(
        double innerOut,
        double innerIn,
        double outerOut,
        double outerIn,
        double innerAngle,
        double outerAngle) {

    /**
     * The float of a shaft at one position. Of a shaft that keeps no limits it is what lies between
     * the places where one race after the other stands on its limit.
     *
     * @param push equal push of both races, mm
     * @param innerAngle the inner joint's angle at that push, rad, which its travel limits are
     *     taken at
     * @param outerAngle the outer joint's, rad
     */
    static EndFloat of(
            SideSetup setup, ShaftLine line, double push, double innerAngle, double outerAngle) {
        double innerLeast = -setup.inner().outward(innerAngle);
        double innerMost = setup.inner().inward(innerAngle);
        double outerLeast = -setup.outer().outward(outerAngle);
        double outerMost = setup.outer().inward(outerAngle);
        double perOuter = Math.cos(outerAngle) / Math.cos(innerAngle);
        double innerOut = Math.max(innerLeast, push + (push - outerMost) * perOuter);
        double innerIn = Math.min(innerMost, push + (push - outerLeast) * perOuter);
        double outerOut = Math.max(outerLeast, push + (push - innerMost) / perOuter);
        double outerIn = Math.min(outerMost, push + (push - innerLeast) / perOuter);
        Vector inward = line.between(innerIn, outerOut);
        Vector outward = line.between(innerOut, outerIn);
        return new EndFloat(
                innerOut,
                innerIn,
                outerOut,
                outerIn,
                Math.max(inward.angleTo(line.u()), outward.angleTo(line.u())),
                Math.max(inward.angleTo(line.n()), outward.angleTo(line.n())));
    }

    /** Where an end's race stands when it is as far out as the float lets it, mm. */
    public double out(ShaftEnd end) {
        return end.either(innerOut, outerOut);
    }

    /** The same when it is as far in. */
    public double in(ShaftEnd end) {
        return end.either(innerIn, outerIn);
    }

    /** An end's joint's greatest angle over the float, rad. */
    public double angle(ShaftEnd end) {
        return end.either(innerAngle, outerAngle);
    }

    /** What becomes of an end's boot; empty when there is nothing to judge it by. */
    Optional<BootStretch> boot(SideSetup setup, ShaftEnd end) {
        Boot boot = setup.joint(end).boot();
        return boot.isJudged()
                ? Optional.of(BootStretch.of(boot.seats(), out(end), in(end), angle(end)))
                : Optional.empty();
    }
}
