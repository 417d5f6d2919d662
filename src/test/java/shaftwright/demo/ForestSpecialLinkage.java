package shaftwright.demo;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Rear suspension of the invented forest special: double wishbone with a toe link, one side. The
 * upright is a rigid body held by five links of fixed length (each wishbone is two), the sixth
 * freedom is given by the height of its flange face. All figures are invented.
 *
 * <p>Origin on the vehicle's centre plane, at the inner output flange's fore-aft and height.
 */
final class ForestSpecialLinkage {
    /** A link from a chassis point to a point of the upright, both at ride. */
    record Link(Vector3D chassis, Vector3D upright) {
        double length() {
            return Vector3D.distance(chassis, upright);
        }
    }

    /** The upright at one height: its flange face and stub axis. */
    record Pose(Rotation turn, Vector3D datum) {
        Vector3D at(Vector3D atRide, Vector3D datumAtRide) {
            return datum.add(turn.applyTo(atRide.subtract(datumAtRide)));
        }

        Vector3D axis() {
            return turn.applyTo(stubAxis(RIDE_CAMBER, RIDE_TOE));
        }

        double camber() {
            return Math.asin(-axis().getZ());
        }

        double toe() {
            return Math.atan2(axis().getX(), axis().getY());
        }
    }

    /** Centre of the outer flange face at ride. */
    static final Vector3D DATUM = new Vector3D(6, 812, -55.5);

    private static final double RIDE_CAMBER = Math.toRadians(-0.8);
    private static final double RIDE_TOE = Math.toRadians(0.3);

    private static final double LARGEST_STEP = 20;
    private static final double CLOSE_ENOUGH = 1e-11;
    private static final int MOST_ITERATIONS = 30;

    private final List<Link> links;

    private ForestSpecialLinkage(List<Link> links) {
        this.links = links;
    }

    static ForestSpecialLinkage left() {
        return withUpperArm(0);
    }

    /** The right side came out of the jig with upper arms 1.5 mm shorter. */
    static ForestSpecialLinkage right() {
        return withUpperArm(1.5);
    }

    private static ForestSpecialLinkage withUpperArm(double shorter) {
        Vector3D lower = new Vector3D(8, 778, -165.5);
        Vector3D upper = new Vector3D(-14, 752, 60.5);
        return new ForestSpecialLinkage(
                List.of(
                        new Link(new Vector3D(175, 330, -139.5), lower),
                        new Link(new Vector3D(-215, 318, -131.5), lower),
                        new Link(new Vector3D(120, 392 + shorter, 34.5), upper),
                        new Link(new Vector3D(-150, 384 + shorter, 38.5), upper),
                        new Link(
                                new Vector3D(-262, 338, -121.5), new Vector3D(-148, 770, -139.5))));
    }

    /** {@code n = (sin δ cos γ, cos δ cos γ, -sin γ)}. */
    static Vector3D stubAxis(double camber, double toe) {
        return new Vector3D(
                Math.sin(toe) * Math.cos(camber),
                Math.cos(toe) * Math.cos(camber),
                -Math.sin(camber));
    }

    List<Link> links() {
        return links;
    }

    /** The upright with its flange face at this height above the inner output flange, mm. */
    Pose at(double height) {
        Pose pose = new Pose(Rotation.IDENTITY, DATUM);
        int steps = (int) Math.ceil(Math.abs(height - DATUM.getZ()) / LARGEST_STEP);
        for (int i = 1; i <= steps; i++) {
            pose = solve(pose, DATUM.getZ() + (height - DATUM.getZ()) * i / steps);
        }
        return pose;
    }

    /** Newton's iteration on link lengths and height, from a pose nearby. */
    private Pose solve(Pose start, double height) {
        Pose pose = start;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            RealMatrix slopes = new Array2DRowRealMatrix(6, 6);
            RealVector errors = new ArrayRealVector(6);
            for (int k = 0; k < links.size(); k++) {
                equation(pose, links.get(k), k, slopes, errors);
            }
            slopes.setEntry(5, 2, 1);
            errors.setEntry(5, height - pose.datum().getZ());
            if (errors.getLInfNorm() < CLOSE_ENOUGH) {
                return pose;
            }
            pose = moved(pose, new LUDecomposition(slopes).getSolver().solve(errors));
        }
        throw new IllegalStateException("the linkage does not reach height " + height);
    }

    private static void equation(
            Pose pose, Link link, int row, RealMatrix slopes, RealVector errors) {
        Vector3D arm = pose.turn().applyTo(link.upright().subtract(DATUM));
        Vector3D along = pose.datum().add(arm).subtract(link.chassis());
        double length = along.getNorm();
        Vector3D direction = along.scalarMultiply(1 / length);
        Vector3D moment = arm.crossProduct(direction);
        slopes.setRow(
                row,
                new double[] {
                    direction.getX(), direction.getY(), direction.getZ(),
                    moment.getX(), moment.getY(), moment.getZ()
                });
        errors.setEntry(row, link.length() - length);
    }

    private static Pose moved(Pose pose, RealVector step) {
        Vector3D shift = new Vector3D(step.getEntry(0), step.getEntry(1), step.getEntry(2));
        Vector3D turn = new Vector3D(step.getEntry(3), step.getEntry(4), step.getEntry(5));
        double angle = turn.getNorm();
        Rotation rotation =
                angle == 0
                        ? Rotation.IDENTITY
                        : new Rotation(turn, angle, RotationConvention.VECTOR_OPERATOR);
        return new Pose(rotation.applyTo(pose.turn()), pose.datum().add(shift));
    }
}
