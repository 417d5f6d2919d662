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

    ScenarioStudy(Build build, Scenario scenario, HubCourse left, HubCourse right) {
        this.build = build;
        this.scenario = scenario;
        this.left = SideStudy.of(build, scenario, Side.LEFT, left.path(), left.corner());
        this.right = SideStudy.of(build, scenario, Side.RIGHT, right.path(), right.corner());
    }

    /** What is studied. */
    public Scenario scenario() {
        return scenario;
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

    /** What the shafts alone decide, whatever else stands against them. */
    public ScenarioVerdict shaftVerdict() {
        return new ScenarioVerdict(left.shaftVerdict(), right.shaftVerdict());
    }

    /** Whether a shaft fits on both sides that can be cut from a blank of the list. */
    public boolean fits() {
        return shaftVerdict().holds();
    }

    /** Length window of the tighter side, mm, negative when no shaft fits; empty without one. */
    public OptionalDouble narrowerWindow() {
        return left.result().isEmpty() || right.result().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Math.min(
                                left.result().get().window().width(),
                                right.result().get().window().width()));
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
