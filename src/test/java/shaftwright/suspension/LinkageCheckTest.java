package shaftwright.suspension;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.LinkageRemark.Kind;
import shaftwright.suspension.Member.Shape;

/** What is said of points that make no linkage. All figures are invented. */
class LinkageCheckTest {
    private static final HubAtRide HUB =
            new HubAtRide(new Vector(0, 150, 0), new Vector(5, 810, -55), 0, 0);

    private static List<Vector> wishbones() {
        return new ArrayList<>(
                List.of(
                        new Vector(120, 390, 35),
                        new Vector(-150, 385, 40),
                        new Vector(-10, 750, 60),
                        new Vector(170, 330, -140),
                        new Vector(-210, 320, -135),
                        new Vector(10, 775, -165),
                        new Vector(-260, 340, -120),
                        new Vector(-150, 770, -140)));
    }

    private static List<LinkageRemark> problems(LinkageKind kind, List<Vector> points) {
        return problems(kind.members(), points, HUB);
    }

    private static List<LinkageRemark> problems(
            List<Member> members, List<Vector> points, HubAtRide hub) {
        return catchThrowableOfType(
                        UnusableLinkageException.class, () -> Linkage.of(members, points, hub))
                .problems();
    }

    private static void isOnly(List<LinkageRemark> problems, Kind kind, int point, String text) {
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).kind()).isEqualTo(kind);
        assertThat(problems.get(0).point())
                .isEqualTo(point < 0 ? OptionalInt.empty() : OptionalInt.of(point));
        assertThat(problems.get(0).text()).contains(text);
    }

    private static List<Vector> wishbonesWith(int point, Vector at) {
        List<Vector> points = wishbones();
        points.set(point, at);
        return points;
    }

    @Test
    void goodPointsAreTaken() {
        assertThat(Linkage.of(LinkageKind.DOUBLE_WISHBONE, wishbones(), HUB).members()).hasSize(3);
    }

    @Test
    void numbersThatAreNone() {
        isOnly(
                problems(
                        LinkageKind.DOUBLE_WISHBONE,
                        wishbonesWith(3, new Vector(Double.NaN, 330, -140))),
                Kind.NOT_A_NUMBER,
                3,
                "lower wishbone, front pivot has a coordinate that is not a number");
    }

    @Test
    void farAwayPoints() {
        isOnly(
                problems(
                        LinkageKind.DOUBLE_WISHBONE,
                        wishbonesWith(4, new Vector(-12_000, 320, -135))),
                Kind.TOO_FAR,
                4,
                "more than 10 m away; check the unit");
    }

    @Test
    void pointsBeyondTheCentreline() {
        isOnly(
                problems(
                        LinkageKind.DOUBLE_WISHBONE,
                        wishbonesWith(6, new Vector(-260, -340, -120))),
                Kind.WRONG_SIDE,
                6,
                "toe link, frame end lies beyond the centreline");
    }

    @Test
    void outerDatumInsideTheInner() {
        HubAtRide hub = new HubAtRide(new Vector(0, 820, 0), new Vector(5, 810, -55), 0, 0);

        isOnly(
                problems(LinkageKind.DOUBLE_WISHBONE.members(), wishbones(), hub),
                Kind.INNER_BEYOND_OUTER,
                -1,
                "outer datum must lie farther from the centreline");
    }

    @Test
    void camberInAWrongUnit() {
        HubAtRide hub = new HubAtRide(new Vector(0, 150, 0), new Vector(5, 810, -55), -0.8, 0);

        isOnly(
                problems(LinkageKind.DOUBLE_WISHBONE.members(), wishbones(), hub),
                Kind.BAD_ANGLE,
                -1,
                "between -45 and 45 degrees");
    }

    @Test
    void linkWithoutLength() {
        isOnly(
                problems(
                        LinkageKind.DOUBLE_WISHBONE, wishbonesWith(7, new Vector(-260, 340, -120))),
                Kind.SAME_PLACE,
                7,
                "toe link's frame end and hub end are in the same place");
    }

    @Test
    void wishboneWithoutWidth() {
        isOnly(
                problems(LinkageKind.DOUBLE_WISHBONE, wishbonesWith(1, new Vector(120, 390, 35))),
                Kind.SAME_PLACE,
                1,
                "upper wishbone's front pivot and rear pivot are in the same place");
    }

    @Test
    void wishboneInOneLine() {
        isOnly(
                problems(LinkageKind.DOUBLE_WISHBONE, wishbonesWith(2, new Vector(390, 395, 30))),
                Kind.IN_LINE,
                2,
                "upper wishbone's ball joint lies in line with its two pivots");
    }

    @Test
    void armLongerThanACar() {
        isOnly(
                problems(LinkageKind.TRAILING_ARM, List.of(new Vector(5_800, 500, 0))),
                Kind.TOO_LONG,
                0,
                "longer than 5 m");
    }

    @Test
    void hubOnThePivot() {
        isOnly(
                problems(LinkageKind.TRAILING_ARM, List.of(new Vector(5.3, 500, -55.4))),
                Kind.HUB_ON_PIVOT,
                0,
                "could not travel");
        isOnly(
                problems(
                        LinkageKind.SEMI_TRAILING_ARM,
                        List.of(new Vector(105, 610, -55), new Vector(55, 710, -55))),
                Kind.HUB_ON_PIVOT,
                0,
                "could not travel");
    }

    @Test
    void linkMissing() {
        List<Member> parts =
                List.of(
                        new Member("upper wishbone", Shape.WISHBONE),
                        new Member("lower wishbone", Shape.WISHBONE));

        isOnly(
                problems(parts, wishbones().subList(0, 6), HUB),
                Kind.TOO_FREE,
                -1,
                "in 4 ways where it takes five");
    }

    @Test
    void linkTooMany() {
        List<Member> parts = new ArrayList<>(LinkageKind.DOUBLE_WISHBONE.members());
        parts.add(new Member("second toe link", Shape.LINK));
        List<Vector> points = wishbones();
        points.add(new Vector(260, 340, -120));
        points.add(new Vector(150, 770, -140));

        isOnly(problems(parts, points, HUB), Kind.HELD_TOO_MUCH, -1, "in 6 ways");
    }

    @Test
    void twoLinksInOneLine() {
        List<Vector> points =
                List.of(
                        new Vector(170, 330, -140), new Vector(10, 775, -165),
                        new Vector(-210, 320, -135), new Vector(10, 775, -165),
                        new Vector(120, 390, 35), new Vector(-10, 750, 60),
                        new Vector(-150, 385, 40), new Vector(-10, 750, 60),
                        new Vector(120, 390, 35), new Vector(-10, 750, 60));

        isOnly(
                problems(LinkageKind.FIVE_LINK, points),
                Kind.PARTS_WORK_ALIKE,
                -1,
                "two of the parts hold the hub in the same way");
    }

    /** The arm stands straight up: the hub can only move fore and aft. */
    @Test
    void deadCentreAtRide() {
        isOnly(
                problems(LinkageKind.TRAILING_ARM, List.of(new Vector(5, 500, 345))),
                Kind.DEAD_CENTRE,
                -1,
                "the trailing arm keeps the hub from moving up and down");
    }

    @Test
    void everythingIsSaidAtOnce() {
        List<Vector> points = wishbones();
        points.set(0, new Vector(120, -390, 35));
        points.set(5, new Vector(10, 20_775, -165));
        points.set(6, new Vector(-260, Double.POSITIVE_INFINITY, -120));

        assertThat(problems(LinkageKind.DOUBLE_WISHBONE, points))
                .extracting(LinkageRemark::kind)
                .containsExactly(Kind.WRONG_SIDE, Kind.TOO_FAR, Kind.NOT_A_NUMBER);
    }

    @Test
    void kindsAreFoundByTheirTradeNames() {
        for (LinkageKind kind : LinkageKind.values()) {
            assertThat(LinkageKind.named(kind.tradeName().toUpperCase(java.util.Locale.ROOT)))
                    .contains(kind);
            assertThat(kind.points()).isBetween(1, LinkageKind.MOST_POINTS);
            assertThat(kind.members().stream().mapToInt(m -> m.shape().held()).sum()).isEqualTo(5);
        }
    }
}
