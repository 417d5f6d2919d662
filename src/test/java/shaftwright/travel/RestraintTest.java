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
import shaftwright.suspension.LinkagePath;
import shaftwright.suspension.Vector;
import shaftwright.travel.Restraint.Kind;

/**
 * Dampers, straps and bump stops on a trailing arm, where the law of cosines says at which travel a
 * length is reached. Figures invented.
 */
class RestraintTest {
    private static final double ARM = 500;
    private static final double LOWER = 300;
    private static final double UPPER = Math.hypot(350, 400);
    private static final Linkage LINKAGE =
            Linkage.of(
                    LinkageKind.TRAILING_ARM,
                    List.of(new Vector(ARM, 400, 300)),
                    new HubAtRide(new Vector(0, 150, 300), new Vector(0, 700, 300), 0, 0));
    private static final TravelEnds ENDS =
            TravelEnds.ofLinkage(LinkagePath.of(LINKAGE, -200, 200).path());
    private static final Span SPAN =
            new Span(
                    "damper",
                    new CarriedPoint(Linkage.FRAME, new Vector(150, 450, 700)),
                    new CarriedPoint("trailing arm", new Vector(200, 450, 300)));

    /** Travel at which the eyes are so far apart: the triangle's angle at the pivot gives it. */
    private static double travelAt(double length) {
        double between =
                Math.acos((LOWER * LOWER + UPPER * UPPER - length * length) / (2 * LOWER * UPPER));
        return ARM * Math.sin(Math.PI - Math.atan2(400, -350) - between);
    }

    @Property(tries = 30)
    void aDamperStopsTheWheelWhereTheTriangleSays(
            @ForAll @DoubleRange(min = 310, max = 395) double shortest,
            @ForAll @DoubleRange(min = 410, max = 500) double longest) {
        TravelEnds ends =
                new Restraint(SPAN, Kind.DAMPER, shortest, longest)
                        .within(ENDS, new LinkageMotion(LINKAGE));

        assertThat(ends.up().stop()).isEqualTo(TravelStop.DAMPER_CLOSED);
        assertThat(ends.high())
                .isBetween(travelAt(shortest) - TravelRange.PRECISION, travelAt(shortest) + 1e-5);
        assertThat(ends.down().stop()).isEqualTo(TravelStop.DAMPER_OPEN);
        assertThat(ends.low())
                .isBetween(travelAt(longest) - 1e-5, travelAt(longest) + TravelRange.PRECISION);
    }

    @Test
    void aStrapEndsDroopOnlyAndABumpStopEndsBumpOnly() {
        TravelEnds strap =
                new Restraint(SPAN, Kind.STRAP, 395, 450).within(ENDS, new LinkageMotion(LINKAGE));
        TravelEnds bumpStop =
                new Restraint(SPAN, Kind.BUMP_STOP, 350, 405)
                        .within(ENDS, new LinkageMotion(LINKAGE));

        assertThat(strap.down().stop()).isEqualTo(TravelStop.STRAP_TIGHT);
        assertThat(strap.low()).isCloseTo(travelAt(450), within(TravelRange.PRECISION));
        assertThat(strap.up()).isEqualTo(new TravelEnds.End(200, TravelStop.LINKAGE));
        assertThat(bumpStop.up().stop()).isEqualTo(TravelStop.BUMP_STOP_FLAT);
        assertThat(bumpStop.down()).isEqualTo(new TravelEnds.End(-200, TravelStop.LINKAGE));
    }

    @Test
    void theNearerOfTwoCountsWhicheverComesFirst() {
        Restraint strap = new Restraint(SPAN, Kind.STRAP, 0, 450);
        Restraint damper = new Restraint(SPAN, Kind.DAMPER, 350, 470);
        Motion motion = new LinkageMotion(LINKAGE);

        TravelEnds one = damper.within(strap.within(ENDS, motion), motion);
        TravelEnds other = strap.within(damper.within(ENDS, motion), motion);

        assertThat(one.down().stop()).isEqualTo(TravelStop.STRAP_TIGHT);
        assertThat(other.down().stop()).isEqualTo(TravelStop.STRAP_TIGHT);
        assertThat(other.up()).isEqualTo(one.up());
        assertThat(one.low()).isCloseTo(other.low(), within(TravelRange.PRECISION));
    }

    @Test
    void oneThatIsTooShortAtRideLeavesNoTravel() {
        TravelEnds ends =
                new Restraint(SPAN, Kind.STRAP, 0, 390).within(ENDS, new LinkageMotion(LINKAGE));

        assertThat(ends.metAtRide()).isTrue();
        assertThat(ends.up().stop()).isEqualTo(TravelStop.STRAP_TIGHT);
    }

    @Test
    void lengthsThatContradictAreRefused() {
        assertThatThrownBy(() -> new Restraint(SPAN, Kind.DAMPER, 500, 400))
                .hasMessage("longest length must be above the shortest; have 500.0 and 400.0");
    }
}
