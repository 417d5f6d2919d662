package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Build;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Wheel;
import shaftwright.tyre.Tyre;

/** One scenario on both sides of the vehicle. */
public final class ScenarioStudy {
    private final Build build;
    private final Scenario scenario;
    private final SideStudy left;
    private final SideStudy right;

    ScenarioStudy(Study study, Build build, Scenario scenario) {
        this.build = build;
        this.scenario = scenario;
        left = side(study, build, Side.LEFT);
        right = side(study, build, Side.RIGHT);
    }

    private SideStudy side(Study study, Build build, Side side) {
        PathStudy path = study.path(scenario, side);
        return SideStudy.of(build, scenario, side, path, study.corner(path, side));
    }

    /** One of its sides. */
    public SideStudy side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** What its parts carry. */
    public StrengthStudy strength() {
        return StrengthStudy.of(
                build.loads(),
                scenario.drive(),
                scenario.wheel().tyre(),
                Optional.of(left),
                Optional.of(right));
    }

    /** What the vehicle's set costs. */
    public SetCost cost() {
        return SetCost.of(
                SetCost.shafts(scenario.costs().shaftPair(), left.result(), right.result()),
                PartPrices.of(scenario.inner()),
                PartPrices.of(scenario.outer()),
                scenario.costs().other(),
                build.market().spares());
    }

    /** What it comes to. */
    public ScenarioVerdict verdict() {
        ScenarioFacts facts =
                ScenarioFacts.of(
                        strength(),
                        Optional.of(left),
                        overallWidth(),
                        build.vehicle().widthLimit());
        return new ScenarioVerdict(left.verdict(facts), right.verdict(facts));
    }

    /** Ground clearance at full bump of the left wheel, mm; empty while it is not known. */
    public OptionalDouble clearanceAtBump() {
        return left.clearanceAtBump();
    }

    /** Distance between the wheels' centre planes at ride, mm; empty while it is not known. */
    public OptionalDouble trackWidth() {
        return trackWidth(scenario.wheel(), left, right);
    }

    /** The same of two sides that have this wheel. */
    public static OptionalDouble trackWidth(Wheel wheel, SideStudy left, SideStudy right) {
        OptionalDouble leftFace = left.hubFace();
        OptionalDouble rightFace = right.hubFace();
        return leftFace.isEmpty() || rightFace.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Tyre.trackWidth(
                                (leftFace.getAsDouble() + rightFace.getAsDouble()) / 2,
                                wheel.spacer(),
                                wheel.offset()));
    }

    /** Width over both tyres, mm; empty while it is not known. */
    public OptionalDouble overallWidth() {
        return overallWidth(scenario.wheel(), trackWidth());
    }

    /** The same of a wheel on this track, mm. */
    public static OptionalDouble overallWidth(Wheel wheel, OptionalDouble track) {
        OptionalDouble section = wheel.sectionWidth();
        return track.isEmpty() || section.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Tyre.overallWidth(track.getAsDouble(), section.getAsDouble()));
    }
}
