package shaftwright.study;

import java.util.List;
import java.util.Optional;
import shaftwright.build.Build;
import shaftwright.build.Corner;
import shaftwright.build.LinkageAtRide;
import shaftwright.build.Readings;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.suspension.MeasuredPath;
import shaftwright.travel.WheelMotion;
import shaftwright.units.LengthUnit;

/**
 * What follows from a build: the hub's path on each side, and every scenario's shafts with the
 * verdict on them. A variant is a study of {@link Build#withScenario another build}.
 */
public final class Study {
    private final Build build;
    private final PathStudy left;
    private final PathStudy right;
    private final CornerStudy leftCorner;
    private final CornerStudy rightCorner;

    private Study(Build build) {
        this.build = build;
        boolean alike = build.right().equals(build.left());
        left = path(build.left());
        right = alike ? left : path(build.right());
        leftCorner = corner(build.left(), left);
        rightCorner = alike ? leftCorner : corner(build.right(), right);
    }

    /**
     * Studies a build.
     *
     * @throws shaftwright.suspension.UnusableReadingsException if a side's readings make no path,
     *     with every reason
     * @throws shaftwright.suspension.UnusableLinkageException if a side's linkage does not go as
     *     far as wanted
     */
    public static Study of(Build build) {
        return new Study(build);
    }

    private static PathStudy path(Corner corner) {
        return corner.linkage().isPresent()
                ? new PathStudy.Solved(
                        LinkageStudy.of(corner.linkage().get(), compared(corner.readings())))
                : measured(corner.readings());
    }

    private static PathStudy measured(Readings readings) {
        MeasuredPath path = fit(readings);
        return new PathStudy.Measured(path, path.contradiction(), readings.checksOpen());
    }

    /** Of a linkage nothing need have been read. */
    private static Optional<MeasuredPath> compared(Readings readings) {
        return readings.rows().isEmpty() ? Optional.empty() : Optional.of(fit(readings));
    }

    private static MeasuredPath fit(Readings readings) {
        return MeasuredPath.fit(
                readings.rows(),
                readings.rideHeight(),
                readings.innerHeight(),
                readings.settings());
    }

    private static CornerStudy corner(Corner corner, PathStudy path) {
        WheelMotion motion = path.motion(corner.readings().centreToDatum());
        return CornerStudy.of(
                corner.carrier().map(linkage -> carried(motion, linkage)).orElse(motion),
                corner.surroundings());
    }

    private static WheelMotion carried(WheelMotion motion, LinkageAtRide linkage) {
        LinkageStudy solved = LinkageStudy.of(linkage, Optional.empty());
        return motion.carriedBy(linkage.linkage(), solved.solved());
    }

    /** Where a side's wheel goes among its dampers and straps, whatever the shaft. */
    public CornerStudy corner(Side side) {
        return side == Side.LEFT ? leftCorner : rightCorner;
    }

    /** A side's corner with a path that may be a scenario's own. */
    CornerStudy corner(PathStudy path, Side side) {
        return path == path(side) ? corner(side) : corner(build.corner(side), path);
    }

    /** A side's hub path in all scenarios without pick-up points of their own. */
    public PathStudy path(Side side) {
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
        return new ScenarioStudy(
                build, scenario, course(scenario, Side.LEFT), course(scenario, Side.RIGHT));
    }

    private HubCourse course(Scenario scenario, Side side) {
        PathStudy path = path(scenario, side);
        return new HubCourse(path, corner(path, side));
    }

    /**
     * What comes of one scenario when something of it is changed.
     *
     * @throws IllegalArgumentException if the build has none of this name
     */
    public ScenarioVariants variants(String name) {
        Scenario scenario = build.scenario(name);
        return ScenarioVariants.of(
                build, scenario, course(scenario, Side.LEFT), course(scenario, Side.RIGHT));
    }

    /** What would give a scenario more room: see {@link ScenarioVariants#levers}. */
    public List<Lever> levers(String scenario, LengthUnit scale) {
        return variants(scenario).levers(scale);
    }

    /** A scenario over two of its figures: see {@link ScenarioVariants#sweep}. */
    public Sweep sweep(String scenario, SweepAxis across, SweepAxis down) {
        return variants(scenario).sweep(across, down);
    }

    /** A scenario's unbeaten variants: see {@link ScenarioVariants#tradeOffs}. */
    public List<TradeOff> tradeOffs(String scenario) {
        return variants(scenario).tradeOffs();
    }

    /** A side's hub path in a scenario. */
    PathStudy path(Scenario scenario, Side side) {
        PathStudy others = path(side);
        return others instanceof PathStudy.Solved solved && scenario.ownLinkage(side).isPresent()
                ? new PathStudy.Solved(
                        LinkageStudy.doubted(
                                scenario.ownLinkage(side).get(), solved.linkage().doubt()))
                : others;
    }
}
