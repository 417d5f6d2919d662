package shaftwright.suspension;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import shaftwright.suspension.Member.Shape;

/** The linkages that can be solved: which parts hold the hub, hence which points are needed. */
public enum LinkageKind {
    TRAILING_ARM("trailing arm", new Member("trailing arm", Shape.SQUARE_PIVOT)),
    SEMI_TRAILING_ARM("semi-trailing arm", new Member("semi-trailing arm", Shape.PIVOT_AXIS)),
    TRAILING_ARM_AND_LATERAL_LINKS(
            "trailing arm with two lateral links",
            new Member("trailing arm", Shape.BALL_PIVOT),
            new Member("lateral link 1", Shape.LINK),
            new Member("lateral link 2", Shape.LINK)),
    DOUBLE_WISHBONE(
            "double wishbone with toe link",
            new Member("upper wishbone", Shape.WISHBONE),
            new Member("lower wishbone", Shape.WISHBONE),
            new Member("toe link", Shape.LINK)),
    FIVE_LINK(
            "five-link",
            new Member("link 1", Shape.LINK),
            new Member("link 2", Shape.LINK),
            new Member("link 3", Shape.LINK),
            new Member("link 4", Shape.LINK),
            new Member("link 5", Shape.LINK));

    /** The most points that any kind needs. */
    public static final int MOST_POINTS = 10;

    private final String tradeName;
    private final List<Member> members;
    private final List<String> pointNames;

    LinkageKind(String tradeName, Member... members) {
        this.tradeName = tradeName;
        this.members = List.of(members);
        pointNames = Member.pointNames(this.members);
    }

    /** What builders call it. */
    public String tradeName() {
        return tradeName;
    }

    /** The parts that hold the hub. */
    public List<Member> members() {
        return members;
    }

    /** What its points are called, part by part, in the order in which they are given. */
    public List<String> pointNames() {
        return pointNames;
    }

    /** Number of points that it needs. */
    public int points() {
        return pointNames.size();
    }

    /** The kind of this trade name, capitals not counting; empty when there is none. */
    public static Optional<LinkageKind> named(String tradeName) {
        String wanted = tradeName.toLowerCase(Locale.ROOT);
        return Stream.of(values()).filter(kind -> kind.tradeName.equals(wanted)).findFirst();
    }
}
