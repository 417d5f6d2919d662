package shaftwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.HubPose;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.LinkageSolver;
import shaftwright.suspension.Vector;

/** The solver against the demo's own, which iterates with Hipparchus's rotations and matrices. */
class ForestSpecialPathTest {
    @Test
    void bothSolversPutTheHubInTheSamePlace() {
        ForestSpecialLinkage invented = ForestSpecialLinkage.left();
        LinkageSolver solver = new LinkageSolver(linkage(invented));
        double ride = ForestSpecialLinkage.DATUM.getZ();
        for (double t = -140; t <= 140; t += 20) {
            ForestSpecialLinkage.Pose expected = invented.at(ride + t);
            assertThat(solver.moveTo(t)).isTrue();
            HubPose pose = solver.pose();
            assertThat(vector(pose.datum()).distance(expected.datum())).isLessThan(1e-9);
            for (ForestSpecialLinkage.Link link : invented.links()) {
                Vector3D end = expected.at(link.upright(), ForestSpecialLinkage.DATUM);
                assertThat(vector(pose.carry(point(link.upright()))).distance(end))
                        .isLessThan(1e-9);
            }
        }
    }

    static Linkage linkage(ForestSpecialLinkage invented) {
        List<ForestSpecialLinkage.Link> links = invented.links();
        List<Vector> points = new ArrayList<>();
        for (int[] wishbone : new int[][] {{2, 3}, {0, 1}}) {
            points.add(point(links.get(wishbone[0]).chassis()));
            points.add(point(links.get(wishbone[1]).chassis()));
            points.add(point(links.get(wishbone[0]).upright()));
        }
        points.add(point(links.get(4).chassis()));
        points.add(point(links.get(4).upright()));
        HubAtRide hub =
                new HubAtRide(
                        new Vector(0, 149, 0),
                        point(ForestSpecialLinkage.DATUM),
                        Math.toRadians(-0.8),
                        Math.toRadians(0.3));
        return Linkage.of(LinkageKind.DOUBLE_WISHBONE, points, hub);
    }

    private static Vector point(Vector3D v) {
        return new Vector(v.getX(), v.getY(), v.getZ());
    }

    private static Vector3D vector(Vector p) {
        return new Vector3D(p.x(), p.y(), p.z());
    }
}
