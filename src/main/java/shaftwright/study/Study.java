package shaftwright.study;

import java.util.List;
import shaftwright.build.Build;
import shaftwright.build.Corner;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.suspension.MeasuredPath;
import shaftwright.travel.WheelMotion;

/**
 * What follows from a build: the hub's path on each side, and every scenario's shafts with the
 * verdict on them. A variant is a study of {@link Build#withScenario another build}.
 */
public final class Study {
    private final Build build;
    private final MeasuredPath left;
    private final MeasuredPath right;
    private final CornerStudy leftCorner;
    private final CornerStudy rightCorner;

    private Study(Build build) {
        this.build = build;
        left = path(build.left().readings());
        right =
                build.right().readings().equals(build.left().readings())
                        ? left
                        : path(build.right().readings());
        leftCorner = corner(build.left(), left);
        rightCorner =
                build.right().equals(build.left()) ? leftCorner : corner(build.right(), right);
    }

    /**
     * Studies a build.
     *
     * @throws shaftwright.suspension.UnusableReadingsException if a side's readings make no path,
     *     with every reason
     */
    public static Study of(Build build) {
        return new Study(build);
    }

    private static MeasuredPath path(Readings readings) {
        return MeasuredPath.fit(
                readings.rows(),
                readings.rideHeight(),
                readings.innerHeight(),
                readings.settings());
    }

    private static CornerStudy corner(Corner corner, MeasuredPath measured) {
        return CornerStudy.of(
                WheelMotion.measured(measured.path(), corner.readings().centreToDatum()),
                corner.surroundings());
    }

    /** Where a side's wheel goes among its dampers and straps, whatever the shaft. */
    public CornerStudy corner(Side side) {
        return side == Side.LEFT ? leftCorner : rightCorner;
    }

    /** A side's hub path and how far its readings can be trusted. */
    public MeasuredPath path(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /**
     * One scenario.
     *
     * @throws IllegalArgumentException if the build has none of this name
     */
    public ScenarioStudy scenario(String name) {
        return of(build.scenario(name));
    }

    /** All scenarios in their order. */
    public List<ScenarioStudy> scenarios() {
        return build.scenarios().stream().map(this::of).toList();
    }

    private ScenarioStudy of(Scenario scenario) {
        return new ScenarioStudy(this, build, scenario);
    }
}
