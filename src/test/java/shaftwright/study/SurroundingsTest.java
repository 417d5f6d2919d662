package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.BumpRule;
import shaftwright.build.Corner;
import shaftwright.build.DrivenFlanges;
import shaftwright.build.GroundClearance;
import shaftwright.build.Margins;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Stock;
import shaftwright.build.Surroundings;
import shaftwright.build.Vehicle;
import shaftwright.build.WheelTravel;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Boot;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.RingSpec;
import shaftwright.suspension.Linkage;
import shaftwright.suspension.TapeSettings;
import shaftwright.suspension.Vector;
import shaftwright.travel.BootGap.Tube;
import shaftwright.travel.CarriedPoint;
import shaftwright.travel.Restraint;
import shaftwright.travel.Span;
import shaftwright.travel.TravelRange;
import shaftwright.travel.TravelStop;
import shaftwright.units.LengthUnit;

/**
 * A build with a strap, a damper and a tube, without a workbook. Neither camber nor toe was read,
 * so the upright rises and falls without turning. Figures invented.
 */
class SurroundingsTest {
    private static final Readings TAPE =
            Readings.of(305, 318, TapeSettings.of(1, 1))
                    .withCentreToDatum(150)
                    .and(193, 672)
                    .and(235, 665)
                    .and(276, 660)
                    .and(318, 657)
                    .and(360, 656)
                    .and(401, 658)
                    .and(443, 663);

    /** Upright at ride, 300 mm long. */
    private static final Span ABOVE_THE_HUB =
            new Span(
                    "above the hub",
                    new CarriedPoint(Linkage.FRAME, new Vector(0, 780, 313)),
                    new CarriedPoint(Linkage.HUB, new Vector(0, 780, 13)));

    /** Across the vehicle's length, 60 mm above the inner joint's centre and 98 mm outboard. */
    private static final Tube ACROSS_THE_SHAFT =
            new Tube(
                    new CarriedPoint(Linkage.FRAME, new Vector(-200, 250, 60)),
                    new CarriedPoint(Linkage.FRAME, new Vector(200, 250, 60)),
                    10);

    /** Of how much higher the hub is than a vertical span was long, less than this is sideways. */
    private static final double SIDEWAYS = 0.3;

    private static MountedJoint joint() {
        BenchTable bench = BenchTable.straight(50, Math.toRadians(24), 0.5);
        Joint joint =
                Joint.named("100 mm six-ball", 17, bench, Math.toRadians(24))
                        .datumOffset(2)
                        .cupBottom(44)
                        .build();
        return new MountedJoint(joint, 0, 4, 8, 28, 0);
    }

    private static Scenario.Builder scenario() {
        return Scenario.named("A")
                .joints(joint(), joint())
                .travel(WheelTravel.of(110, 110))
                .margins(new Margins(3, 3));
    }

    private static ScenarioStudy study(
            Vehicle vehicle, Surroundings surroundings, Scenario.Builder scenario) {
        BlankEnd splined = new BlankEnd(30, 90, OptionalDouble.empty());
        Blank blank = new Blank("730 mm", 730, 30, splined, splined, 90, true);
        Stock stock = new Stock(List.of(blank), new RingSpec(2, 2.2, 1.2, 3), 1);
        Build build =
                Build.of(vehicle, Corner.of(TAPE).with(surroundings), stock)
                        .withScenario(scenario.build());
        return Study.of(build).scenario("A");
    }

    private static ScenarioStudy study(Surroundings surroundings, Scenario.Builder scenario) {
        return study(Vehicle.PLAIN, surroundings, scenario);
    }

    private static List<Finding> findings(ScenarioStudy study) {
        return study.verdict().left().findings();
    }

    /** A vertical strap of 300 mm that is taut at 380 lets the hub fall 80. */
    @Test
    void aStrapEndsDroopEarly() {
        ScenarioStudy study =
                study(Surroundings.NONE.and(Restraint.strap(ABOVE_THE_HUB, 380)), scenario());

        assertThat(findings(study))
                .contains(Finding.DROOP_ENDS_EARLY)
                .doesNotContain(Finding.BUMP_ENDS_EARLY);
        TravelFacts.EarlyEnd end = study.verdict().left().side().travel().droop().orElseThrow();
        assertThat(end.stop()).isEqualTo(TravelStop.STRAP_TIGHT);
        assertThat(end.at()).isCloseTo(-80, within(SIDEWAYS));
        assertThat(study.verdict().text(LengthUnit.MILLIMETRE))
                .contains("droop ends 30.0 mm early, at 80.0 mm droop (strap tight)");
    }

    /** The same as a damper that closes to 220 mm lets the hub rise 80. */
    @Test
    void aDamperBottoms() {
        ScenarioStudy study =
                study(Surroundings.NONE.and(Restraint.damper(ABOVE_THE_HUB, 220, 500)), scenario());

        assertThat(findings(study))
                .contains(Finding.BUMP_ENDS_EARLY)
                .doesNotContain(Finding.DROOP_ENDS_EARLY);
        TravelRange allowed = study.side(Side.LEFT).travelAllowed().orElseThrow();
        assertThat(allowed.upStop()).isEqualTo(TravelStop.DAMPER_CLOSED);
        assertThat(allowed.up()).isCloseTo(80, within(SIDEWAYS));
    }

    @Test
    void aBumpStopThatIsLowEnoughIsNoFinding() {
        ScenarioStudy study =
                study(Surroundings.NONE.and(Restraint.bumpStop(ABOVE_THE_HUB, 180)), scenario());

        assertThat(findings(study)).containsExactly(Finding.ANGLES_UNREAD);
        assertThat(alone(study, StopsAlone.Thing.RESTRAINT)).isCloseTo(120, within(SIDEWAYS));
    }

    /**
     * Boot and tube are 10 mm short of 60 apart at the joint's height; in bump the shaft rises to
     * the tube.
     */
    @Test
    void aBootTouchesATube() {
        Scenario.Builder booted = scenario().joints(joint().under(Boot.ofSize(100, 80)), joint());
        ScenarioStudy study = study(Surroundings.NONE.and(ACROSS_THE_SHAFT), booted);

        assertThat(findings(study))
                .contains(Finding.INNER_BOOT_TOUCHES)
                .doesNotContain(Finding.OUTER_BOOT_TOUCHES);
        TravelRange allowed = study.side(Side.LEFT).travelAllowed().orElseThrow();
        assertThat(allowed.upStop()).isEqualTo(TravelStop.BOOT_TOUCHES);
        assertThat(alone(study, StopsAlone.Thing.BOOT)).isEqualTo(allowed.up());
        double along = 98 / Math.hypot(653, 13 + allowed.up());
        assertThat(along * (13 + allowed.up())).isCloseTo(60 - 40 - 10, within(0.5));
    }

    @Test
    void aBootOfUnknownSizeTouchesNothing() {
        ScenarioStudy study =
                study(
                        Surroundings.NONE.and(ACROSS_THE_SHAFT),
                        scenario().joints(joint().under(Boot.changing(-1)), joint()));

        assertThat(findings(study)).doesNotContain(Finding.INNER_BOOT_TOUCHES);
        assertThat(study.side(Side.LEFT).stopsAlone().orElseThrow().of(StopsAlone.Thing.BOOT))
                .isEmpty();
    }

    /** 200 mm at ride less 110 of bump are 90; 150 are left at 50. */
    @Test
    void aBumpStopBelowTheClearanceWantedIsTooLow() {
        Vehicle vehicle =
                new Vehicle(
                        Vehicle.PLAIN.flange(),
                        OptionalDouble.empty(),
                        new GroundClearance(OptionalDouble.of(200), OptionalDouble.empty()),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        DrivenFlanges.UNKNOWN);
        WheelTravel travel = new WheelTravel(110, new BumpRule.Stop(110, OptionalDouble.of(150)));
        ScenarioStudy study = study(vehicle, Surroundings.NONE, scenario().travel(travel));

        assertThat(findings(study)).contains(Finding.TOO_LOW);
        assertThat(alone(study, StopsAlone.Thing.GROUND)).isCloseTo(50, within(1e-9));
    }

    private static double alone(ScenarioStudy study, StopsAlone.Thing thing) {
        return study.side(Side.LEFT).stopsAlone().orElseThrow().of(thing).orElseThrow().up();
    }

    @Test
    void nothingCanBePlacedWhileTheCentrePlaneIsUnknown() {
        Readings placeless = Readings.of(305, 318, TapeSettings.of(1, 1));
        Surroundings strap = Surroundings.NONE.and(Restraint.strap(ABOVE_THE_HUB, 380));

        assertThatThrownBy(() -> Corner.of(placeless).with(strap))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("centre plane");
    }
}
