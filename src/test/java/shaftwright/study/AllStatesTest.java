package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import shaftwright.build.AllStates;
import shaftwright.build.Build;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Vehicle;
import shaftwright.build.WheelTravel;
import shaftwright.shaft.Binding;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.Kingpin;
import shaftwright.units.LengthUnit;

/** Shafts for all states, held against every single state studied by itself. Figures invented. */
class AllStatesTest {
    private static final double LEFT = Math.toRadians(9);
    private static final double RIGHT = Math.toRadians(-8);
    private static final DriveUnitMove SHIFT = new DriveUnitMove(0, 4, 10, 0);
    private static final DriveUnitMove DRIVE = new DriveUnitMove(2, 0, 5, Math.toRadians(0.8));
    private static final DriveUnitMove OVERRUN = new DriveUnitMove(-2, 1, -2, Math.toRadians(-0.4));
    private static final AllStates BOTH =
            new AllStates(
                    Optional.of(new AllStates.Locks(LEFT, RIGHT)),
                    DriveUnitMove.NONE,
                    DRIVE,
                    OVERRUN);
    private static final AllStates MOUNTS_ALONE =
            new AllStates(Optional.empty(), DriveUnitMove.NONE, DRIVE, OVERRUN);
    private static final AllStates STEERING_ALONE =
            new AllStates(BOTH.locks(), DriveUnitMove.NONE, DriveUnitMove.NONE, DriveUnitMove.NONE);
    private static final Build BUILD =
            steered(
                    PricedBuild.with(plain()),
                    new Kingpin(Math.toRadians(12), Math.toRadians(5), 70, 8));

    private static Scenario.Builder plain() {
        return PricedBuild.scenario(PricedBuild.LARGE).driveUnit(SHIFT);
    }

    private static Build steered(Build build, Kingpin kingpin) {
        Vehicle vehicle = build.vehicle();
        return new Build(
                new Vehicle(
                        vehicle.flange(),
                        vehicle.hubFaceOffset(),
                        vehicle.clearance(),
                        vehicle.widthLimit(),
                        Optional.of(kingpin),
                        vehicle.driven()),
                build.left(),
                build.right(),
                build.stock(),
                build.loads(),
                build.market(),
                build.uncertainty(),
                build.scenarios());
    }

    private static SideResult shaft(Scenario.Builder scenario, Side side) {
        return shaft(BUILD, scenario, side);
    }

    private static SideResult shaft(Build build, Scenario.Builder scenario, Side side) {
        return Study.of(build.withScenario(scenario.build()))
                .scenario("A")
                .side(side)
                .result()
                .orElseThrow();
    }

    private static SideResult over(AllStates all, Side side) {
        return shaft(plain().allStates(Optional.of(all)), side);
    }

    /** Each state as a scenario of its own: turns by hand, mounts added by hand. */
    private static List<SideResult> oneByOne(AllStates all, Side side) {
        double[] turns = {0};
        if (all.locks().isPresent()) {
            turns =
                    new double[] {
                        RIGHT,
                        0.75 * RIGHT,
                        0.5 * RIGHT,
                        0.25 * RIGHT,
                        0,
                        0.25 * LEFT,
                        0.5 * LEFT,
                        0.75 * LEFT,
                        LEFT
                    };
        }
        List<SideResult> results = new ArrayList<>();
        for (DriveUnitMove push : List.of(DriveUnitMove.NONE, all.drive(), all.overrun())) {
            DriveUnitMove place =
                    new DriveUnitMove(
                            SHIFT.forward() + push.forward(),
                            SHIFT.left() + push.left(),
                            SHIFT.up() + push.up(),
                            push.roll());
            for (double turn : turns) {
                results.add(shaft(plain().driveUnit(place).steerAngle(turn), side));
            }
        }
        return results;
    }

    private static double least(List<SideResult> results, ToDoubleFunction<SideResult> figure) {
        return results.stream().mapToDouble(figure).min().orElseThrow();
    }

    private static double greatest(List<SideResult> results, ToDoubleFunction<SideResult> figure) {
        return results.stream().mapToDouble(figure).max().orElseThrow();
    }

    private static void sameAsOneByOne(AllStates all, Side side) {
        SideResult shaft = over(all, side);
        List<SideResult> states = oneByOne(all, side);

        assertThat(shaft.window().shortest().value())
                .isEqualTo(
                        greatest(states, state -> state.window().shortest().value()), within(1e-9));
        assertThat(shaft.window().longest().value())
                .isEqualTo(least(states, state -> state.window().longest().value()), within(1e-9));
        double spacing = shaft.length().spacing();
        assertThat(shaft.leastSlackIn().value())
                .isEqualTo(least(states, state -> slackIn(state, spacing)), within(1e-9));
        assertThat(shaft.leastSlackOut().value())
                .isEqualTo(least(states, state -> slackOut(state, spacing)), within(1e-9));
        assertThat(shaft.steepestInner().value())
                .isEqualTo(greatest(states, state -> innerAngle(state, spacing)), within(1e-9));
    }

    private static double slackIn(SideResult state, double spacing) {
        return state.positions().stream()
                .mapToDouble(row -> row.inward().spacing() - spacing)
                .min()
                .orElseThrow();
    }

    private static double slackOut(SideResult state, double spacing) {
        return state.positions().stream()
                .mapToDouble(row -> spacing - row.outward().spacing())
                .min()
                .orElseThrow();
    }

    private static double innerAngle(SideResult state, double spacing) {
        return state.positions().stream()
                .map(row -> row.line())
                .mapToDouble(line -> line.innerAngle(line.pushIn(spacing), line.pushIn(spacing)))
                .max()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void windowAndExtremesAreThoseOfEveryStateStudiedByItself(Side side) {
        sameAsOneByOne(BOTH, side);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void withoutLocksOnlyTheMountsAreVaried(Side side) {
        sameAsOneByOne(MOUNTS_ALONE, side);
        assertThat(over(MOUNTS_ALONE, side).states().orElseThrow().window().states()).hasSize(3);
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void withoutMountsThatGiveOnlyTheSteeringIsVaried(Side side) {
        sameAsOneByOne(STEERING_ALONE, side);
        assertThat(over(STEERING_ALONE, side).states().orElseThrow().window().states()).hasSize(9);
    }

    @Test
    void whereNothingVariesNothingChanges() {
        AllStates none =
                new AllStates(
                        Optional.empty(),
                        DriveUnitMove.NONE,
                        DriveUnitMove.NONE,
                        DriveUnitMove.NONE);
        SideResult one = shaft(plain(), Side.LEFT);
        SideResult all = over(none, Side.LEFT);

        assertThat(all.length()).isEqualTo(one.length());
        assertThat(all.leastSlackIn().value()).isEqualTo(one.leastSlackIn().value());
        assertThat(all.innerAtRide()).isEqualTo(one.innerAtRide());
    }

    @Test
    void theStateThatIsLookedAtDoesNotMoveTheLength() {
        SideResult straight = over(BOTH, Side.LEFT);
        AllStates pushed = new AllStates(BOTH.locks(), DRIVE, DRIVE, OVERRUN);
        SideResult turned =
                shaft(
                        plain().allStates(Optional.of(pushed))
                                .driveUnit(SHIFT.plus(DRIVE))
                                .steerAngle(LEFT),
                        Side.LEFT);

        assertThat(turned.window().shortest().value())
                .isEqualTo(straight.window().shortest().value(), within(1e-9));
        assertThat(turned.length().endToEnd())
                .isEqualTo(straight.length().endToEnd(), within(1e-9));
        assertThat(turned.atDroop().innerAngle()).isNotEqualTo(straight.atDroop().innerAngle());
    }

    @Test
    void theStateThatBindsIsNamed() {
        Scenario.Builder asked = plain().allStates(Optional.of(BOTH));
        SideStudy side = Study.of(BUILD.withScenario(asked.build())).scenario("A").side(Side.LEFT);
        Binding shortest = side.result().orElseThrow().window().shortest();

        assertThat(shortest.state()).matches("(full|steered|straight).*, (at|under) \\w+");
        assertThat(
                        Wording.at(
                                new Binding(1, 0, -60, "full left lock, under drive"),
                                LengthUnit.MILLIMETRE))
                .isEqualTo("60.0 mm droop (full left lock, under drive)");
        assertThat(side.shaftVerdict().text(LengthUnit.MILLIMETRE)).contains(shortest.state());
    }

    /** Kingpin lines and locks with which a turn inside the locks binds, or one near a lock. */
    @ParameterizedTest
    @CsvSource({
        "70, 0, 30, 33",
        "40, 10, 25, 38",
        "25, -12, 35, 22",
        "60, 14, 38, 30",
        "95, -8, 28, 36",
    })
    void turnsBetweenTheStepsAreBorneToo(double inward, double ahead, double left, double right) {
        Build build =
                steered(
                        PricedBuild.with(PricedBuild.scenario(PricedBuild.LARGE)),
                        new Kingpin(Math.toRadians(11), Math.toRadians(4), inward, ahead));
        AllStates.Locks locks = new AllStates.Locks(Math.toRadians(left), Math.toRadians(-right));
        AllStates turned =
                new AllStates(
                        Optional.of(locks),
                        DriveUnitMove.NONE,
                        DriveUnitMove.NONE,
                        DriveUnitMove.NONE);
        SideResult all =
                shaft(
                        build,
                        PricedBuild.scenario(PricedBuild.LARGE).allStates(Optional.of(turned)),
                        Side.LEFT);
        double shortest = 0;
        double longest = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= 200; step++) {
            double turn = locks.right() + step * (locks.left() - locks.right()) / 200;
            SideResult one =
                    shaft(
                            build,
                            PricedBuild.scenario(PricedBuild.LARGE).steerAngle(turn),
                            Side.LEFT);
            shortest = Math.max(shortest, one.window().shortest().value());
            longest = Math.min(longest, one.window().longest().value());
        }

        assertThat(all.window().shortest().value()).isEqualTo(shortest, within(0.03));
        assertThat(all.window().longest().value()).isEqualTo(longest, within(0.03));
    }

    @Test
    void locksWithoutAKingpinLineLackIt() {
        Build unknown = PricedBuild.with(plain().allStates(Optional.of(STEERING_ALONE)));

        assertThat(Study.of(unknown).scenario("A").side(Side.LEFT).lack()).contains(Lack.KINGPIN);
    }

    @Test
    void aSweepAsksForAllStatesToo() {
        Scenario asked = plain().allStates(Optional.of(BOTH)).build();
        SweepAxis bump = new SweepAxis(ScenarioFigure.DROOP, 60, 100, 3);
        SweepAxis up = new SweepAxis(ScenarioFigure.HUB_SHIFT, 0, 20, 2);
        Sweep sweep = Study.of(BUILD.withScenario(asked)).sweep("A", bump, up);
        Scenario last = asked.toBuilder().travel(WheelTravel.of(100, 110)).hubShift(20).build();
        ScenarioStudy anew = Study.of(BUILD.withScenario(last)).scenario("A");

        assertThat(sweep.cell(1, 2).window().getAsDouble())
                .isEqualTo(anew.narrowerWindow().getAsDouble(), within(1e-9));
        assertThat(anew.side(Side.LEFT).result().orElseThrow().states()).isPresent();
    }
}
