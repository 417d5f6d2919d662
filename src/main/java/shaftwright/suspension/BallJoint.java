package shaftwright.suspension;

/** Ball joints of a {@link LinkageKind#DOUBLE_WISHBONE}, about which its upright steers. */
public enum BallJoint {
    UPPER("upper wishbone, ball joint"),
    LOWER("lower wishbone, ball joint");

    private final int row;

    BallJoint(String pointName) {
        row = LinkageKind.DOUBLE_WISHBONE.pointNames().indexOf(pointName);
    }

    /** Its place in the list of the linkage's points, zero-based. */
    public int row() {
        return row;
    }
}
