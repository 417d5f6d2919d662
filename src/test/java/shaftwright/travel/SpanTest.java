package shaftwright.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shaftwright.suspension.HubAtRide;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.Vector;

/** Dampers and straps on a trailing arm, where trigonometry gives the answer. Figures invented. */
class SpanTest {
    private static final double ARM = 500;
    private static final Vector PIVOT = new Vector(ARM, 400, 300);
    private static final Linkage LINKAGE =
            Linkage.of(
                    LinkageKind.TRAILING_ARM,
                    List.of(PIVOT),
                    new HubAtRide(new Vector(0, 150, 300), new Vector(0, 700, 300), 0, 0));

    private static final Motion MOTION = new LinkageMotion(LINKAGE);

    private static final Span DAMPER =
            new Span(
                    "damper",
                    new CarriedPoint(Linkage.FRAME, new Vector(150, 450, 700)),
                    new CarriedPoint("trailing arm", new Vector(200, 450, 300)));

    /** Law of cosines in the triangle of pivot, upper eye and lower eye. */
    private static double byCosines(double travel) {
        double arm = 300;
        double upper = Math.hypot(350, 400);
        double between = Math.atan2(400, -350) - (Math.PI - Math.asin(travel / ARM));
        return Math.sqrt(arm * arm + upper * upper - 2 * arm * upper * Math.cos(between));
    }

    @Property(tries = 100)
    void lengthIsThatOfTheTriangle(@ForAll @DoubleRange(min = -250, max = 250) double travel) {
        assertThat(DAMPER.lengthAt(MOTION, travel)).isCloseTo(byCosines(travel), within(1e-9));
    }

    @Property(tries = 50)
    void motionRatioIsTheSlope(@ForAll @DoubleRange(min = -200, max = 200) double travel) {
        double arm = 300;
        double upper = Math.hypot(350, 400);
        double between = Math.atan2(400, -350) - (Math.PI - Math.asin(travel / ARM));
        double slope =
                arm
                        * upper
                        * Math.sin(between)
                        / byCosines(travel)
                        / Math.sqrt(ARM * ARM - travel * travel);
        assertThat(DAMPER.ratioAt(MOTION, travel)).isCloseTo(slope, within(1e-6));
    }

    @Test
    void opensInDroopAndClosesInBump() {
        Span.Course course = DAMPER.over(MOTION, -140, 120);

        assertThat(course.longest()).isCloseTo(byCosines(-140), within(1e-6));
        assertThat(course.longestAt()).isEqualTo(-140);
        assertThat(course.shortest()).isCloseTo(byCosines(120), within(1e-6));
        assertThat(course.shortestAt()).isEqualTo(120);
        assertThat(course.longest() - course.shortest())
                .isCloseTo(byCosines(-140) - byCosines(120), within(1e-6));
    }

    /** A strap ahead of the pivot's height is longest where pivot and its ends are in line. */
    @Test
    void longestInsideTheTravelIsFound() {
        Span strap =
                new Span(
                        "strap",
                        new CarriedPoint(Linkage.FRAME, new Vector(900, 450, 300)),
                        new CarriedPoint(Linkage.HUB, new Vector(200, 450, 300)));

        Span.Course course = strap.over(MOTION, -133, 121);

        assertThat(course.longest()).isCloseTo(700, within(0.01));
        assertThat(course.longestAt()).isCloseTo(0, within(0.2));
    }

    @Test
    void partsThatAreNotThereAndTravelOutOfReachAreRefused() {
        Span wrong = new Span("x", DAMPER.from(), new CarriedPoint("upper wishbone", PIVOT));

        assertThatThrownBy(() -> wrong.lengthAt(MOTION, 0))
                .hasMessage("no part is called \"upper wishbone\"");
        assertThatThrownBy(() -> DAMPER.lengthAt(MOTION, 520))
                .hasMessageStartingWith("the linkage does not reach 520.0 mm; it goes to ");
        assertThatThrownBy(() -> DAMPER.over(MOTION, 50, 20))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
