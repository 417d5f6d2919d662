package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A suspension linkage by its pick-up points at ride height: one rigid hub (the upright with all
 * that is fast to it) held by parts that together take five of its six freedoms, so that what is
 * left is travel.
 *
 * <p>Every way of locating a wheel is made of three ties: a point that stays put, a point that
 * stays on an axis, a rod between a frame point and a hub point. {@link LinkageSolver} moves any of
 * them.
 */
public final class Linkage {
    private final List<Member> members;
    private final List<Vector> points;
    private final HubAtRide hub;
    private final List<Tie> ties;

    private Linkage(List<Member> members, List<Vector> points, HubAtRide hub, List<Tie> ties) {
        this.members = List.copyOf(members);
        this.points = List.copyOf(points);
        this.hub = hub;
        this.ties = List.copyOf(ties);
    }

    /**
     * A linkage of a usual kind.
     *
     * @param points in the order of {@link LinkageKind#pointNames}
     * @throws UnusableLinkageException with every reason why it can't be used
     */
    public static Linkage of(LinkageKind kind, List<Vector> points, HubAtRide hub) {
        return of(kind.members(), points, hub);
    }

    /**
     * A linkage of any parts.
     *
     * @param points of all parts one after the other, each part's in the order of its {@link
     *     Member.Shape#ends}
     * @throws UnusableLinkageException with every reason why it can't be used
     * @throws IllegalArgumentException if the number of points is not that of the parts
     */
    public static Linkage of(List<Member> members, List<Vector> points, HubAtRide hub) {
        int needed = 0;
        for (Member member : members) {
            needed += member.shape().ends().size();
        }
        if (points.size() != needed) {
            throw new IllegalArgumentException(
                    "these parts have " + needed + " points; have " + points.size());
        }
        LinkageCheck check = new LinkageCheck(members, points, hub);
        check.geometry();
        Linkage linkage = new Linkage(members, points, hub, ties(members, points, hub));
        check.freedom(new LinkageSolver(linkage));
        return linkage;
    }

    private static List<Tie> ties(List<Member> members, List<Vector> points, HubAtRide hub) {
        List<Tie> ties = new ArrayList<>();
        int first = 0;
        for (int m = 0; m < members.size(); m++) {
            int count = members.get(m).shape().ends().size();
            tie(members.get(m).shape(), m, points.subList(first, first + count), hub, ties);
            first += count;
        }
        return ties;
    }

    private static void tie(
            Member.Shape shape, int m, List<Vector> ends, HubAtRide hub, List<Tie> ties) {
        Vector first = ends.get(0);
        Vector last = ends.get(ends.size() - 1);
        switch (shape) {
            case SQUARE_PIVOT -> {
                put(m, first, hub, ties);
                guide(m, first, first.plus(hub.outerDatum().y(), ACROSS), hub, ties);
            }
            case PIVOT_AXIS -> {
                put(m, first, hub, ties);
                guide(m, first, last, hub, ties);
            }
            case BALL_PIVOT -> put(m, first, hub, ties);
            case WISHBONE -> {
                rod(m, first, last, hub, ties);
                rod(m, ends.get(1), last, hub, ties);
            }
            case LINK -> rod(m, first, last, hub, ties);
        }
    }

    private static final Vector AHEAD = new Vector(1, 0, 0);
    private static final Vector ACROSS = new Vector(0, 1, 0);
    private static final Vector UP = new Vector(0, 0, 1);

    /** The point stays put. */
    private static void put(int member, Vector point, HubAtRide hub, List<Tie> ties) {
        Vector arm = point.minus(hub.outerDatum());
        ties.add(new Tie.Plane(member, point, arm, AHEAD));
        ties.add(new Tie.Plane(member, point, arm, ACROSS));
        ties.add(new Tie.Plane(member, point, arm, UP));
    }

    /** The point stays on the line from another one through it. */
    private static void guide(
            int member, Vector from, Vector point, HubAtRide hub, List<Tie> ties) {
        Vector axis = point.minus(from).unit();
        Vector arm = point.minus(hub.outerDatum());
        Vector square = (Math.abs(axis.x()) < 0.5 ? AHEAD : UP).cross(axis).unit();
        ties.add(new Tie.Plane(member, point, arm, square));
        ties.add(new Tie.Plane(member, point, arm, axis.cross(square)));
    }

    private static void rod(int member, Vector frame, Vector end, HubAtRide hub, List<Tie> ties) {
        ties.add(new Tie.Rod(member, frame, end.minus(hub.outerDatum()), end.distanceTo(frame)));
    }

    /** The parts that hold the hub. */
    public List<Member> members() {
        return members;
    }

    /** All points at ride. */
    public List<Vector> points() {
        return points;
    }

    /** The line about which two wishbones let the hub steer; empty for other linkages. */
    public Optional<Kingpin> kingpin() {
        List<Vector> balls = new ArrayList<>();
        for (int member = 0; member < members.size(); member++) {
            if (members.get(member).shape() == Member.Shape.WISHBONE) {
                List<Vector> ends = ends(member);
                balls.add(ends.get(ends.size() - 1));
            }
        }
        if (balls.size() != 2) {
            return Optional.empty();
        }
        boolean firstAbove = balls.get(0).z() > balls.get(1).z();
        Vector upper = balls.get(firstAbove ? 0 : 1);
        Vector lower = balls.get(firstAbove ? 1 : 0);
        return Kingpin.through(lower, upper, hub.outerDatum());
    }

    /** The hub at ride. */
    public HubAtRide hub() {
        return hub;
    }

    List<Tie> ties() {
        return ties;
    }

    /** The points of one part at ride. */
    List<Vector> ends(int member) {
        int first = firstPoint(member);
        return points.subList(first, first + members.get(member).shape().ends().size());
    }

    private int firstPoint(int member) {
        int first = 0;
        for (int i = 0; i < member; i++) {
            first += members.get(i).shape().ends().size();
        }
        return first;
    }

    /** What {@link #carry} calls the vehicle itself, which stays where it is. */
    public static final String FRAME = "frame";

    /** What it calls the upright and all that is fast to it. */
    public static final String HUB = "hub";

    /**
     * Where a point goes that is fast to the frame, the hub or one of the parts. A part of one
     * piece with the hub carries it as the hub does; a wishbone turns about its bushes; a rod is
     * taken to swing without spinning about itself.
     *
     * @param part {@link #FRAME}, {@link #HUB} or the part's name
     * @throws IllegalArgumentException if no part is called so
     */
    public Vector carry(String part, Vector atRide, HubPose pose) {
        if (part.equals(FRAME)) {
            return atRide;
        }
        if (part.equals(HUB)) {
            return pose.carry(atRide);
        }
        for (int m = 0; m < members.size(); m++) {
            if (members.get(m).name().equals(part)) {
                List<Vector> ends = ends(m);
                return switch (members.get(m).shape()) {
                    case SQUARE_PIVOT, PIVOT_AXIS, BALL_PIVOT -> pose.carry(atRide);
                    case WISHBONE ->
                            Turn.about(ends.get(0), ends.get(1))
                                    .taking(ends.get(2), pose.carry(ends.get(2)))
                                    .of(atRide);
                    case LINK ->
                            Turn.swing(ends.get(0), ends.get(1), pose.carry(ends.get(1)))
                                    .of(atRide);
                };
            }
        }
        throw new IllegalArgumentException("no part is called \"" + part + "\"");
    }
}
