package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import shaftwright.suspension.LinkageRemark.Kind;

/** Collects what is wrong with a linkage's points before it is moved. */
final class LinkageCheck {
    /** No point of a car's suspension is farther from its origin in one direction, mm. */
    static final double FARTHEST = 10_000;

    /** No arm is longer than a car, mm. */
    static final double LONGEST_ARM = 5_000;

    /** Points closer than this are one, mm. */
    static final double SAME_PLACE = 1;

    /** Beyond this a camber or toe was surely typed in a wrong unit, rad. */
    private static final double STEEPEST_ANGLE = Math.toRadians(45);

    private final List<Member> members;
    private final List<Vector> points;
    private final HubAtRide hub;
    private final List<LinkageRemark> problems = new ArrayList<>();

    LinkageCheck(List<Member> members, List<Vector> points, HubAtRide hub) {
        this.members = members;
        this.points = points;
        this.hub = hub;
    }

    /** Everything that can be seen from the points alone; throws when something is wrong. */
    void geometry() {
        List<String> names = Member.pointNames(members);
        for (int i = 0; i < points.size(); i++) {
            place(names.get(i), OptionalInt.of(i), points.get(i));
        }
        place("the inner datum", OptionalInt.empty(), hub.innerDatum());
        place("the outer datum", OptionalInt.empty(), hub.outerDatum());
        if (!(hub.outerDatum().y() > hub.innerDatum().y())) {
            add(
                    Kind.INNER_BEYOND_OUTER,
                    OptionalInt.empty(),
                    "the outer datum must lie farther from the centreline than the inner one");
        }
        if (!(Math.abs(hub.camber()) <= STEEPEST_ANGLE && Math.abs(hub.toe()) <= STEEPEST_ANGLE)) {
            add(
                    Kind.BAD_ANGLE,
                    OptionalInt.empty(),
                    "camber and toe lie between -45 and 45 degrees");
        }
        count();
        if (problems.isEmpty()) {
            parts();
        }
        stopIfWrong();
    }

    private void place(String name, OptionalInt point, Vector at) {
        if (!at.isFinite()) {
            add(Kind.NOT_A_NUMBER, point, name + " has a coordinate that is not a number");
        } else if (Math.abs(at.x()) > FARTHEST
                || Math.abs(at.y()) > FARTHEST
                || Math.abs(at.z()) > FARTHEST) {
            add(Kind.TOO_FAR, point, name + " is more than 10 m away; check the unit");
        } else if (at.y() < 0) {
            add(
                    Kind.WRONG_SIDE,
                    point,
                    name + " lies beyond the centreline; give its distance without a minus sign");
        }
    }

    private void count() {
        int held = 0;
        for (Member member : members) {
            held += member.shape().held();
        }
        if (held < LinkageSolver.TIES) {
            add(
                    Kind.TOO_FREE,
                    OptionalInt.empty(),
                    "the parts hold the hub in "
                            + held
                            + " ways where it takes five: the hub is not fully located; add a link");
        } else if (held > LinkageSolver.TIES) {
            add(
                    Kind.HELD_TOO_MUCH,
                    OptionalInt.empty(),
                    "the parts hold the hub in "
                            + held
                            + " ways where five leave it free to travel: it would bind; take a link"
                            + " away");
        }
    }

    private void parts() {
        int first = 0;
        for (Member member : members) {
            int count = member.shape().ends().size();
            part(member, first, points.subList(first, first + count));
            first += count;
        }
    }

    private void part(Member member, int first, List<Vector> ends) {
        switch (member.shape()) {
            case SQUARE_PIVOT -> {
                Vector pivot = ends.get(0);
                arm(member, first, hub.outerDatum(), pivot);
                double fromAxis =
                        Math.hypot(
                                hub.outerDatum().x() - pivot.x(), hub.outerDatum().z() - pivot.z());
                onAxis(member, first, fromAxis);
            }
            case PIVOT_AXIS -> {
                if (apart(member, first, ends, 0, 1)) {
                    arm(member, first, hub.outerDatum(), ends.get(0));
                    onAxis(
                            member,
                            first,
                            hub.outerDatum().distanceFromLine(ends.get(0), ends.get(1)));
                }
            }
            case BALL_PIVOT -> arm(member, first, hub.outerDatum(), ends.get(0));
            case WISHBONE -> wishbone(member, first, ends);
            case LINK -> {
                if (apart(member, first, ends, 0, 1)) {
                    arm(member, first, ends.get(1), ends.get(0));
                }
            }
        }
    }

    private void wishbone(Member member, int first, List<Vector> ends) {
        boolean wide = apart(member, first, ends, 0, 1);
        boolean longFront = apart(member, first, ends, 0, 2);
        boolean longRear = apart(member, first, ends, 1, 2);
        if (!(wide && longFront && longRear)) {
            return;
        }
        arm(member, first, ends.get(2), ends.get(0));
        arm(member, first, ends.get(2), ends.get(1));
        if (ends.get(2).distanceFromLine(ends.get(0), ends.get(1)) < SAME_PLACE) {
            add(
                    Kind.IN_LINE,
                    OptionalInt.of(first + 2),
                    "the "
                            + member.name()
                            + "'s ball joint lies in line with its two pivots: it could not swing");
        }
    }

    private boolean apart(Member member, int first, List<Vector> ends, int i, int j) {
        if (ends.get(i).distanceTo(ends.get(j)) >= SAME_PLACE) {
            return true;
        }
        add(
                Kind.SAME_PLACE,
                OptionalInt.of(first + j),
                "the "
                        + member.name()
                        + "'s "
                        + member.shape().ends().get(i)
                        + " and "
                        + member.shape().ends().get(j)
                        + " are in the same place");
        return false;
    }

    private void arm(Member member, int first, Vector outer, Vector inner) {
        if (outer.distanceTo(inner) > LONGEST_ARM) {
            add(
                    Kind.TOO_LONG,
                    OptionalInt.of(first),
                    "the " + member.name() + " is longer than 5 m; check the unit");
        }
    }

    private void onAxis(Member member, int first, double distance) {
        if (distance < SAME_PLACE) {
            add(
                    Kind.HUB_ON_PIVOT,
                    OptionalInt.of(first),
                    "the hub lies on the " + member.name() + "'s pivot and could not travel");
        }
    }

    /** What only the equations at ride can show; throws when something is wrong. */
    void freedom(LinkageSolver solver) {
        if (!solver.everyTieHolds()) {
            add(
                    Kind.PARTS_WORK_ALIKE,
                    OptionalInt.empty(),
                    "two of the parts hold the hub in the same way, so that it is free in another:"
                            + " check for points typed twice and for links in one line");
        } else if (!solver.movesUpAndDown()) {
            add(
                    Kind.DEAD_CENTRE,
                    OptionalInt.empty(),
                    "the linkage stands at a dead centre at ride: the "
                            + solver.stopper().name()
                            + " keeps the hub from moving up and down");
        }
        stopIfWrong();
    }

    private void add(Kind kind, OptionalInt point, String text) {
        problems.add(LinkageRemark.of(kind, point, text));
    }

    private void stopIfWrong() {
        if (!problems.isEmpty()) {
            throw new UnusableLinkageException(problems);
        }
    }
}
