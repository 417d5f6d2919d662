package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.geometry.euclidean.threed.Line;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.shaft.ShaftEnd;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Steer;
import shaftwright.suspension.Vector;

/** Gaps between straight pieces, and a boot beside a tube. Figures invented. */
class BootGapTest {
    /** Against Hipparchus's distance of two lines, where their closest points lie on the pieces. */
    @Property(tries = 300)
    void crossingPiecesAreAsFarApartAsTheirLines(
            @ForAll @Size(8) List<@DoubleRange(min = -1, max = 1) Double> u,
            @ForAll @DoubleRange(min = 1, max = 100) double apart) {
        Vector a1 = new Vector(-100 + 20 * u.get(0), 30 * u.get(1), 0);
        Vector a2 = new Vector(100 + 20 * u.get(2), 30 * u.get(3), 10 * u.get(4));
        Vector b1 = new Vector(30 * u.get(5), -100 + 20 * u.get(6), apart + 20);
        Vector b2 = new Vector(30 * u.get(7), 100, apart + 20);
        double lines =
                new Line(vector(a1), vector(a2), 1e-10)
                        .distance(new Line(vector(b1), vector(b2), 1e-10));

        double gap = new Capsule(a1, a2, 2).to(new Capsule(b1, b2, 3)).gap();

        assertThat(gap).isCloseTo(lines - 5, within(1e-9));
    }

    /** Against a search: projecting to and fro between two convex pieces ends at the closest. */
    @Property(tries = 200)
    void anyPiecesAreAsFarApartAsASearchFinds(
            @ForAll @Size(12) List<@DoubleRange(min = -100, max = 100) Double> u) {
        Vector[] p = new Vector[4];
        for (int i = 0; i < 4; i++) {
            p[i] = new Vector(u.get(3 * i), u.get(3 * i + 1), u.get(3 * i + 2));
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 2000; i++) {
            Vector q = p[0].plus(i / 2000.0, p[1].minus(p[0]));
            best = Math.min(best, toPiece(q, p[2], p[3]));
        }

        Capsule.Gap gap = new Capsule(p[0], p[1], 0).to(new Capsule(p[2], p[3], 0));

        assertThat(gap.gap()).isBetween(best - 0.2, best + 1e-9);
        Vector where = p[0].plus(gap.along(), p[1].minus(p[0]));
        assertThat(toPiece(where, p[2], p[3])).isCloseTo(gap.gap(), within(1e-9));
    }

    private static double toPiece(Vector q, Vector a, Vector b) {
        Vector3D d = vector(b).subtract(vector(a));
        double squared = d.getNormSq();
        double t = squared > 0 ? vector(q).subtract(vector(a)).dotProduct(d) / squared : 0;
        return vector(q).distance(vector(a).add(Math.max(0, Math.min(1, t)), d));
    }

    @Test
    void parallelAndPointlikePieces() {
        Vector o = new Vector(0, 0, 0);
        Capsule along = new Capsule(o, new Vector(10, 0, 0), 1);

        assertThat(along.to(new Capsule(new Vector(20, 0, 3), new Vector(5, 0, 3), 0)).gap())
                .isCloseTo(2, within(1e-12));
        assertThat(along.to(new Capsule(new Vector(13, 4, 0), new Vector(13, 4, 0), 0)).gap())
                .isCloseTo(4, within(1e-12));
        assertThat(
                        new Capsule(o, o, 0)
                                .to(new Capsule(new Vector(3, 4, 0), new Vector(3, 4, 0), 1))
                                .gap())
                .isCloseTo(4, within(1e-12));
    }

    /**
     * The arm carries a tube 60 mm below the level shaft; in bump the shaft's outer end rises with
     * it.
     */
    @Test
    void bootComesClosestToTheTubeInDroopAtItsInnerEnd() {
        Linkage linkage =
                Linkage.of(
                        LinkageKind.TRAILING_ARM,
                        List.of(new Vector(500, 400, 0)),
                        new HubAtRide(new Vector(0, 150, 0), new Vector(0, 700, 0), 0, 0));
        BootGap.Tube tube =
                new BootGap.Tube(
                        new CarriedPoint(Linkage.FRAME, new Vector(-200, 210, -60)),
                        new CarriedPoint(Linkage.FRAME, new Vector(200, 210, -60)),
                        15);
        BootGap.Boot boot = new BootGap.Boot(ShaftEnd.INNER, 90, 35);
        BootGap.Centres centres = centres(Steer.STRAIGHT);

        BootGap least = BootGap.least(new LinkageMotion(linkage), centres, boot, tube, -100, 100);

        // In the plane of y and z the shaft falls 100 mm from y = 180 to y = 670; the tube's axis
        // lies 30 mm outward and 60 mm below its inner joint.
        double slope = Math.atan2(100, 490);
        double expected = 60 * Math.cos(slope) - 30 * Math.sin(slope) - 50;
        assertThat(least.travel()).isEqualTo(-100);
        assertThat(least.gap()).isCloseTo(expected, within(0.5));
        assertThat(least.along())
                .isCloseTo(30 * Math.cos(slope) + 60 * Math.sin(slope), within(2.0));
    }

    /**
     * Steered about an upright line 60 mm in from the datum, the joint's centre swings round it.
     */
    @Test
    void steeredHubTakesTheShaftsOuterEndAlong() {
        Linkage linkage =
                Linkage.of(
                        LinkageKind.TRAILING_ARM,
                        List.of(new Vector(500, 400, 0)),
                        new HubAtRide(new Vector(0, 150, 0), new Vector(0, 700, 0), 0, 0));
        HubPoint straight = new HubPoint(0, 0, 0, 1, 1, 0, 0, 0, 0);
        Steer steer = Steer.of(new Kingpin(0, 0, 60, 0), 0.5, straight);

        Vector outer = centres(steer).outer(new LinkageMotion(linkage).at(0));

        // What is fast to the hub swings as well, what is not stays.
        Motion.Stance ride = new LinkageMotion(linkage).at(0);
        Vector onHub = new Vector(0, 690, 40);
        assertThat(centres(steer).of(new CarriedPoint(Linkage.HUB, onHub), ride).y())
                .isCloseTo(640 + 50 * Math.cos(0.5), within(1e-9));
        assertThat(centres(steer).of(new CarriedPoint(Linkage.FRAME, onHub), ride))
                .isEqualTo(onHub);
        // The centre, 30 mm in from the datum, lies 30 mm out from the line at y = 640.
        assertThat(outer.x()).isCloseTo(-30 * Math.sin(0.5), within(1e-9));
        assertThat(outer.y()).isCloseTo(640 + 30 * Math.cos(0.5), within(1e-9));
        assertThat(outer.z()).isCloseTo(0, within(1e-9));
    }

    /** Where the least gap is nothing, and not before. */
    @Test
    void bootTouchesWhereTheGapIsUsedUp() {
        Linkage linkage =
                Linkage.of(
                        LinkageKind.TRAILING_ARM,
                        List.of(new Vector(500, 400, 0)),
                        new HubAtRide(new Vector(0, 150, 0), new Vector(0, 700, 0), 0, 0));
        Motion motion = new LinkageMotion(linkage);
        BootGap.Tube tube =
                new BootGap.Tube(
                        new CarriedPoint(Linkage.FRAME, new Vector(-200, 210, -60)),
                        new CarriedPoint(Linkage.FRAME, new Vector(200, 210, -60)),
                        15);
        BootGap.Boot boot = new BootGap.Boot(ShaftEnd.INNER, 90, 42);
        BootGap.Centres centres = centres(Steer.STRAIGHT);

        double down = BootGap.clearUpTo(motion, centres, boot, tube, -100);

        assertThat(down).isBetween(5.0, 99.0);
        assertThat(BootGap.at(motion, centres, boot, tube, -down).gap()).isBetween(0.0, 0.001);
        assertThat(BootGap.clearUpTo(motion, centres, boot, tube, 100)).isInfinite();
        BootGap.Boot fat = new BootGap.Boot(ShaftEnd.INNER, 90, 80);
        assertThat(BootGap.clearUpTo(motion, centres, fat, tube, 100)).isZero();
    }

    private static BootGap.Centres centres(Steer steer) {
        return new BootGap.Centres(new Vector(0, 180, 0), 30, 0, steer);
    }

    private static Vector3D vector(Vector p) {
        return new Vector3D(p.x(), p.y(), p.z());
    }
}
