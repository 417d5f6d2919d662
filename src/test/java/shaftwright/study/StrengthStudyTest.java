package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.Drive;
import shaftwright.build.Driveline;
import shaftwright.build.Duty;
import shaftwright.build.JointRating;
import shaftwright.build.Loads;
import shaftwright.build.Margins;
import shaftwright.build.Readings;
import shaftwright.build.Running;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.SplineUse;
import shaftwright.build.Stock;
import shaftwright.build.Vehicle;
import shaftwright.build.Wheel;
import shaftwright.build.WheelLoads;
import shaftwright.build.WheelTravel;
import shaftwright.joint.BenchTable;
import shaftwright.joint.Boot;
import shaftwright.joint.Joint;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.BlankEnd;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.strength.BoltClass;
import shaftwright.strength.Differential;
import shaftwright.strength.FlangeBolts;
import shaftwright.strength.JointLife;
import shaftwright.strength.Material;
import shaftwright.strength.RatingRow;
import shaftwright.strength.ShaftMaterial;
import shaftwright.strength.SplineStrength;
import shaftwright.strength.WeakestPart;
import shaftwright.suspension.TapeSettings;
import shaftwright.units.LengthUnit;

/** Bar, splines and flange bolts of a shaft sized without a workbook. All figures invented. */
class StrengthStudyTest {
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    /** 180 N·m through 14 to 1, half of it to each side: 1134 N·m, 1701 N·m with the shock. */
    private static final Driveline ENGINE =
            new Driveline(OptionalDouble.of(180), UNKNOWN, 0.9, Differential.OPEN, 1.5);

    private static ScenarioStudy study(Loads loads, double boltTorque) {
        Readings tape =
                Readings.of(305, 318, TapeSettings.of(1, 1))
                        .and(193, 672)
                        .and(235, 665)
                        .and(276, 660)
                        .and(318, 657)
                        .and(360, 656)
                        .and(401, 658)
                        .and(443, 663);
        BenchTable bench = BenchTable.straight(50, Math.toRadians(24), 0.5);
        Joint joint =
                Joint.named("100 mm six-ball", 17, bench, Math.toRadians(24))
                        .datumOffset(2)
                        .cupBottom(44)
                        .build();
        MountedJoint end = new MountedJoint(joint, 0, 4, 8, 28, Boot.PLAIN);
        BlankEnd splined = new BlankEnd(30, 90, OptionalDouble.empty()).over(31);
        Blank blank =
                new Blank("730 mm", 730, 30, splined, splined, 90, true)
                        .of(
                                ShaftMaterial.of(
                                        new Material("steel", 1000, 206_000, 79_300, 7.85e-9),
                                        SplineStrength.Hardness.CASE.strength()));
        JointRating rating =
                new JointRating(UNKNOWN, OptionalDouble.of(600), Optional.of(bolts(boltTorque)));
        Build build =
                Build.of(
                                Vehicle.PLAIN,
                                tape,
                                new Stock(List.of(blank), new RingSpec(2, 2.2, 1.2, 3), 1))
                        .withLoads(loads)
                        .withScenario(
                                Scenario.named("A")
                                        .joints(end, end)
                                        .travel(WheelTravel.of(110, 110))
                                        .margins(new Margins(3, 3))
                                        .wheel(new Wheel(OptionalDouble.of(700), UNKNOWN, 0, 0))
                                        .drive(new Drive(OptionalDouble.of(14), rating, rating))
                                        .build());
        return Study.of(build).scenario("A");
    }

    private static FlangeBolts bolts(double torque) {
        return new FlangeBolts(
                BoltClass.ISO_10_9.thread(10, 1.5), BoltClass.ISO_10_9, 6, 86, torque, 0.2, 0.15);
    }

    private static Loads loads(Driveline driveline, Running running, RatingRow... own) {
        return new Loads(
                driveline, WheelLoads.UNKNOWN, running, SplineUse.USUAL, List.of(own), 1.5);
    }

    private static Loads loads(Driveline driveline) {
        return loads(driveline, Running.UNKNOWN);
    }

    /**
     * By hand with the elementary formulas of torsion: the bar 1000/√3·π·30³/16 = 3060.8 N·m, under
     * the teeth 1000/√3·π·28.2³/16 = 2542.2 N·m. The root lies at (N - 1.8) m (ANSI B92.1, fillet
     * root, from memory).
     */
    @Test
    void barAndRootsYieldAsRoundBarsDo() {
        ShaftStrength left = study(loads(ENGINE), 48).strength().shaft(Side.LEFT);

        assertThat(left.capacity(ShaftPart.BAR).orElseThrow()).isCloseTo(3060.8, within(0.05));
        assertThat(left.capacity(ShaftPart.ROOT_INNER).orElseThrow())
                .isCloseTo(2542.2, within(0.1));
        assertThat(left.capacity(ShaftPart.GROOVE_INNER)).isEmpty();
    }

    /**
     * Dudley, "When splines need stress control", Product Engineering, 1957, from memory: 50 ksi of
     * shear on case-hardened teeth. By hand: 344.7 MPa·π·28.2³/16 = 1518 N·m under the teeth, which
     * is less than teeth and flanks bear over 30 mm of race.
     */
    @Test
    void splineBearsWhatDudleyAllowsUnderItsTeeth() {
        ShaftStrength left = study(loads(ENGINE), 48).strength().shaft(Side.LEFT);

        assertThat(left.capacity(ShaftPart.TEETH_OUTER).orElseThrow()).isCloseTo(1518, within(0.5));
    }

    /** By hand: F = 48/(0.2·0.010) = 24 kN; 6·24000·0.15·0.043 = 928.8 N·m; over 1701: 0.546. */
    @Test
    void boltsThatSlipAreTheWeakestPartAndTheVerdictNamesThem() {
        ScenarioStudy study = study(loads(ENGINE), 48);
        WeakestPart parts = study.strength().weakest().orElseThrow();

        assertThat(study.strength().torques().needed().orElseThrow()).isCloseTo(1701, within(1e-9));
        assertThat(parts.least()).isEqualTo(new RatingRow("flange bolts, inner end", 928.8));
        assertThat(parts.factor()).isCloseTo(0.546, within(5e-4));
        assertThat(study.verdict().findings()).contains(Finding.TOO_WEAK);
        assertThat(study.verdict().left().sentence(Finding.TOO_WEAK, LengthUnit.MILLIMETRE))
                .contains("flange bolts, inner end")
                .contains("0.55")
                .contains("1.5");
    }

    /** Each side's bar, roots and teeth, and both ends' bolts. */
    @Test
    void eachPartThatIsKnownHasOneRow() {
        assertThat(study(loads(ENGINE), 48).strength().rows())
                .extracting(RatingRow::part)
                .doesNotHaveDuplicates()
                .hasSize(12)
                .contains("shaft bar, right", "spline, fatigue and wear, inner end, left");
    }

    @Test
    void aPartOfTheBuildersOwnMayBeTheWeakest() {
        Loads loads = loads(ENGINE, Running.UNKNOWN, new RatingRow("hub spline", 700));

        assertThat(study(loads, 48).strength().weakest().orElseThrow().least().part())
                .isEqualTo("hub spline");
    }

    /** ISO 898-1, from memory: M10 of class 10.9 has 48.1 kN of proof load; 80 N·m make 40 kN. */
    @Test
    void boltsTightenedTooFarAreAFindingOfTheirOwn() {
        assertThat(study(loads(ENGINE), 80).verdict().findings())
                .contains(Finding.INNER_BOLTS_TOO_TIGHT, Finding.OUTER_BOLTS_TOO_TIGHT)
                .doesNotContain(Finding.TOO_WEAK);
    }

    @Test
    void noPartIsWeakWhileNoTorqueIsKnown() {
        ScenarioStudy study = study(loads(Driveline.UNKNOWN), 48);

        assertThat(study.strength().weakest()).isEmpty();
        assertThat(study.strength().twist(Side.LEFT)).isEmpty();
        assertThat(study.verdict().findings()).doesNotContain(Finding.TOO_WEAK);
    }

    /** Palmgren and Miner: half the time each at L and at 3 L makes 1.5 L. */
    @Test
    void jointsWearOutUnderTheMixOfDuties() {
        Duty slow = new Duty(1, 1, 20);
        Duty light = new Duty(1, Math.cbrt(1 / 3.0), 20);
        ScenarioStudy both = study(loads(ENGINE, new Running(UNKNOWN, List.of(slow, light))), 48);
        double angle = both.side(Side.LEFT).result().orElseThrow().atRide().innerAngle();
        double alone = JointLife.hours(600, 1134, angle, 20_000_000 / 60.0 / (3.05 * 700));

        assertThat(both.strength().life(Side.LEFT, ShaftEnd.INNER).orElseThrow())
                .isCloseTo(1.5 * alone, within(1e-9 * alone));
    }
}
