package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.BumpRule;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.Margins;
import shaftwright.build.Scenario;
import shaftwright.build.Wheel;
import shaftwright.build.WheelTravel;
import shaftwright.joint.MountedJoint;

/** Sweeps of a build without a workbook, held against builds studied from their readings on. */
class SweepTest {
    private static final Scenario START = PricedBuild.scenario(PricedBuild.LARGE).build();
    private static final Build BUILD = PricedBuild.with(START.toBuilder());

    private static Sweep sweep(Build build, SweepAxis across, SweepAxis down) {
        return Study.of(build).sweep("A", across, down);
    }

    private static void same(SweepCell cell, Scenario scenario) {
        ScenarioStudy anew = Study.of(BUILD.withScenario(scenario)).scenario("A");
        assertThat(cell.fits()).isEqualTo(anew.verdict().holds());
        assertThat(cell.obstacle()).isEqualTo(anew.verdict().obstacle());
        assertThat(cell.window().isPresent()).isEqualTo(anew.narrowerWindow().isPresent());
        if (cell.window().isPresent()) {
            assertThat(cell.window().getAsDouble())
                    .isEqualTo(anew.narrowerWindow().getAsDouble(), within(1e-9));
        }
    }

    @Test
    void aCellIsTheScenarioWithBothValues() {
        SweepAxis droop = new SweepAxis(ScenarioFigure.DROOP, 60, 180, 5);
        SweepAxis hubs = new SweepAxis(ScenarioFigure.HUB_SHIFT, -40, 60, 3);
        Sweep sweep = sweep(BUILD, droop, hubs);

        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 5; column++) {
                same(
                        sweep.cell(row, column),
                        START.toBuilder()
                                .travel(WheelTravel.of(60 + 30 * column, 110))
                                .hubShift(-40 + 50 * row)
                                .build());
            }
        }
        assertThat(sweep.cell(0, 4).beyondHeights()).isTrue();
        assertThat(sweep.cell(0, 4).window()).isEmpty();
    }

    @Test
    void theGroundEndsTheTravelOfALargerTyreLater() {
        Scenario byGround =
                START.toBuilder().travel(new WheelTravel(110, new BumpRule.Clearance(150))).build();
        Sweep sweep =
                sweep(
                        BUILD.withScenario(byGround),
                        new SweepAxis(ScenarioFigure.TYRE_DIAMETER, 700, 780, 3),
                        new SweepAxis(ScenarioFigure.CLEARANCE, 140, 180, 2));

        same(
                sweep.cell(1, 2),
                byGround.toBuilder()
                        .wheel(new Wheel(OptionalDouble.of(780), OptionalDouble.empty(), 0, 0))
                        .travel(new WheelTravel(110, new BumpRule.Clearance(180)))
                        .build());
        assertThat(sweep.cell(0, 0).window()).isNotEqualTo(sweep.cell(1, 0).window());
        assertThat(sweep.cell(0, 0).window()).isNotEqualTo(sweep.cell(0, 1).window());
    }

    /** The race is 34 mm wide. */
    @Test
    void sizesThatContradictEachOtherGiveNoWindow() {
        Sweep sweep =
                sweep(
                        BUILD,
                        new SweepAxis(ScenarioFigure.OUTER_COUNTERBORE, 4, 40, 2),
                        new SweepAxis(ScenarioFigure.HUB_SHIFT, 0, 5, 2));

        assertThat(sweep.cell(0, 0).window()).isPresent();
        assertThat(sweep.cell(0, 1))
                .isEqualTo(new SweepCell(Optional.of(Finding.INCOMPLETE), OptionalDouble.empty()));
    }

    /** Said of each figure by its own accessor; nothing else of the scenario changes. */
    @Test
    void aFigureSetIsTheFigureReadAgain() {
        MountedJoint end = START.inner();
        assertThat(ScenarioFigure.TYRE_WIDTH.set(START, 240).wheel())
                .isEqualTo(new Wheel(OptionalDouble.of(740), OptionalDouble.of(240), 0, 0));
        assertThat(ScenarioFigure.WHEEL_OFFSET.set(START, 12).wheel().offset()).isEqualTo(12);
        assertThat(ScenarioFigure.WHEEL_SPACER.set(START, 12).wheel().spacer()).isEqualTo(12);
        assertThat(ScenarioFigure.STEER_ANGLE.set(START, 0.2).steerAngle()).isEqualTo(0.2);
        assertThat(ScenarioFigure.DRIVE_UNIT_FORWARD.set(START, 7).driveUnit())
                .isEqualTo(new DriveUnitMove(7, 0, 0, 0));
        assertThat(ScenarioFigure.DRIVE_UNIT_LEFT.set(START, 7).driveUnit())
                .isEqualTo(new DriveUnitMove(0, 7, 0, 0));
        assertThat(ScenarioFigure.DRIVE_UNIT_UP.set(START, 7).driveUnit())
                .isEqualTo(new DriveUnitMove(0, 0, 7, 0));
        assertThat(ScenarioFigure.INNER_CUP_SPACER.set(START, 3))
                .isEqualTo(START.toBuilder().joints(end.withCupSpacer(3), end).build());
        assertThat(ScenarioFigure.OUTER_CUP_SPACER.set(START, 3))
                .isEqualTo(START.toBuilder().joints(end, end.withCupSpacer(3)).build());
        assertThat(ScenarioFigure.INNER_STUB.set(START, 3).inner().stub()).isEqualTo(3);
        assertThat(ScenarioFigure.OUTER_STUB.set(START, 3).outer().stub()).isEqualTo(3);
        assertThat(ScenarioFigure.INNER_COUNTERBORE.set(START, 3).inner().counterbore())
                .isEqualTo(3);
        assertThat(ScenarioFigure.OUTER_JOINT_SPACER.set(START, 3).outer().joint())
                .isEqualTo(PricedBuild.LARGE.behindSpacer(3));
        assertThat(ScenarioFigure.INNER_JOINT_SPACER.set(START, 3).inner().datumToCentre())
                .isEqualTo(end.datumToCentre() + 3);
        assertThat(ScenarioFigure.BUMP.set(START, 90).travel()).isEqualTo(WheelTravel.of(110, 90));
        assertThat(ScenarioFigure.MARGIN_INWARD.set(START, 5).margins())
                .isEqualTo(new Margins(5, 3));
        assertThat(ScenarioFigure.MARGIN_OUTWARD.set(START, 5).margins())
                .isEqualTo(new Margins(3, 5));
        assertThat(ScenarioFigure.LENGTH_PREFERENCE.set(START, 1).bias()).isEqualTo(1);
    }

    @Test
    void aStopTakesNoTravelFromTheGround() {
        Scenario byGround =
                START.toBuilder().travel(new WheelTravel(110, new BumpRule.Clearance(150))).build();

        assertThat(ScenarioFigure.BUMP.set(byGround, 90)).isEqualTo(byGround);
    }

    @Test
    void sweepsThatMakeNoSenseAreRefused() {
        SweepAxis droop = new SweepAxis(ScenarioFigure.DROOP, 60, 90, 2);

        assertThatThrownBy(() -> new SweepAxis(ScenarioFigure.DROOP, 2, 2, 3))
                .hasMessageContaining("upward");
        assertThatThrownBy(() -> new SweepAxis(ScenarioFigure.DROOP, 1, 2, 1))
                .hasMessageContaining("2 values or more");
        assertThatThrownBy(() -> sweep(BUILD, droop, droop)).hasMessageContaining("DROOP twice");
    }
}
