package shaftwright.study;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Build;
import shaftwright.build.Loads;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Wheel;
import shaftwright.tyre.Tyre;

/** One scenario on both sides of the vehicle. */
public final class ScenarioStudy {
    private final Loads loads;
    private final Scenario scenario;
    private final SideStudy left;
    private final SideStudy right;

    ScenarioStudy(Study study, Build build, Scenario scenario) {
        loads = build.loads();
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
                loads,
                scenario.drive(),
                scenario.wheel().tyre(),
                Optional.of(left),
                Optional.of(right));
    }

    /** What it comes to. */
    public ScenarioVerdict verdict() {
        StrengthFacts strength = strength().facts();
        return new ScenarioVerdict(verdict(left, strength), verdict(right, strength));
    }

    private Verdict verdict(SideStudy side, StrengthFacts strength) {
        PathFacts path = side.path().said(side.pathFacts(0));
        return Verdict.of(
                SideFacts.of(path, side.shaftFacts())
                        .with(strength)
                        .with(side.travelFacts(clearanceAtBump())));
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
        OptionalDouble track = trackWidth();
        OptionalDouble section = scenario.wheel().sectionWidth();
        return track.isEmpty() || section.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Tyre.overallWidth(track.getAsDouble(), section.getAsDouble()));
    }
}
