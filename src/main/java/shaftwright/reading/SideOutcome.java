package shaftwright.reading;

import java.util.Optional;
import shaftwright.doubt.SlackChances;
import shaftwright.joint.MountedJoint;
import shaftwright.mockup.MockUpUse;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.PathStudy;
import shaftwright.study.ScenarioFacts;
import shaftwright.study.SideStops;
import shaftwright.study.SideStudy;
import shaftwright.study.StopsAlone;
import shaftwright.study.Verdict;
import shaftwright.travel.ClearanceRule;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.Span;
import shaftwright.travel.TravelRange;

/**
 * One side of one scenario: its set-up where the inputs are complete, and its result where a length
 * can be computed.
 */
public final class SideOutcome {
    /** Steps in which the bump limit is found. */
    public static final int BUMP_STEPS = ClearanceRule.STEPS;

    /**
     * Rows of the joint table, from 1, that a scenario picks.
     *
     * @param innerFirstAngle first angle of the inner joint's travel limits, rad
     */
    record Rows(int innerJoint, int outerJoint, double innerFirstAngle, double outerFirstAngle) {}

    /** What a side that is set up stands on. */
    private record SetUp(SideStudy study, Rows rows, SidePath path) {}

    /** What keeps it from being set up, empty when nothing does. */
    private final String notSetUp;

    /** What is known of its path where it is not set up. */
    private final Optional<PathStudy> source;

    private final Optional<SetUp> setUp;

    /** Found when first asked for. */
    private Optional<SlackChances> chances;

    private SideOutcome(String notSetUp, Optional<PathStudy> source, Optional<SetUp> setUp) {
        this.notSetUp = notSetUp;
        this.source = source;
        this.setUp = setUp;
    }

    /** A side that can't be set up. */
    static SideOutcome lacking(String trouble, Optional<PathStudy> source) {
        return new SideOutcome(trouble, source, Optional.empty());
    }

    SideOutcome(SideStudy study, Rows rows, SidePath path) {
        this("", Optional.of(study.path()), Optional.of(new SetUp(study, rows, path)));
    }

    /** The core's part of it, where it is set up. */
    public Optional<SideStudy> study() {
        return setUp.map(SetUp::study);
    }

    /** What it stands on; asked for only where it is set up. */
    private SetUp here() {
        return setUp.orElseThrow();
    }

    /** What keeps it from being computed, empty when nothing does. */
    public String trouble() {
        if (setUp.isEmpty()) {
            return notSetUp;
        }
        SideStudy study = here().study();
        if (study.lack().isPresent()) {
            return Sizing.words(study.lack().get());
        }
        return study.beyond().isEmpty() ? "" : Sizing.words(study.beyond().get().way());
    }

    /** The judgement on it. */
    Verdict verdict(ScenarioFacts scenarios) {
        return study().map(side -> side.verdict(scenarios))
                .orElseGet(() -> Verdict.lacking(notSetUp, source));
    }

    /** Whether joints, shifts and travel are known. */
    public boolean isSetUp() {
        return setUp.isPresent();
    }

    /** The result, when there is one. */
    public Optional<SideResult> result() {
        return study().flatMap(SideStudy::result);
    }

    /** What a mock-up has to do with it, empty when there is no result. */
    public Optional<MockUpUse> mockUp() {
        return study().filter(study -> study.result().isPresent()).flatMap(SideStudy::mockUp);
    }

    /** Travel that the final shaft allows, empty when there is no result. */
    public Optional<TravelRange> travelAllowed() {
        return study().flatMap(SideStudy::travelAllowed);
    }

    /** Longest travel that any shaft from the blanks allows, empty when there is none. */
    public Optional<LongestTravel> longestTravel() {
        return study().flatMap(SideStudy::longestTravel);
    }

    /** Where each thing would end the travel alone, empty when there is no result. */
    public Optional<StopsAlone> stopsAlone() {
        return study().flatMap(SideStudy::stopsAlone);
    }

    /** What dampers, straps and tubes make of it, empty when there is no result. */
    public Optional<SideStops> stops() {
        return study().flatMap(SideStudy::stops);
    }

    /**
     * How long a damper, strap or bump stop gets over the wanted travel; empty when it could not be
     * worked out, or not over all of that.
     *
     * @param row in its table, zero-based
     */
    public Optional<Span.Course> course(int row) {
        return stops().flatMap(met -> here().path().restraints().course(met, row));
    }

    /** Row of the tube that comes nearest to a boot, zero-based. */
    public int tubeRow(SideStops.Gap gap) {
        return here().path().restraints().tubeRow(gap);
    }

    /**
     * Chances of running out of travel, empty without a result or when no trials were asked for;
     * computed when first asked for.
     */
    public Optional<SlackChances> chances() {
        if (chances == null) {
            chances = study().flatMap(SideStudy::chances);
        }
        return chances;
    }

    public MountedJoint joint(ShaftEnd end) {
        return end.either(inner(), outer());
    }

    public MountedJoint inner() {
        return here().study().scenario().inner();
    }

    public MountedJoint outer() {
        return here().study().scenario().outer();
    }

    /** Row, from 1, of the joint at an end. */
    public int jointRow(ShaftEnd end) {
        return end == ShaftEnd.INNER ? here().rows().innerJoint() : here().rows().outerJoint();
    }

    /** First angle of the joint's travel limits at an end, rad. */
    public double firstAngle(ShaftEnd end) {
        return end.either(here().rows().innerFirstAngle(), here().rows().outerFirstAngle());
    }

    /** Where the inner flange is. */
    public InnerFlange flange() {
        return here().study().flange();
    }

    /** Outward, mm. */
    public double hubShift() {
        return here().study().scenario().hubShift();
    }

    public double marginInward() {
        return here().study().margins().inward();
    }

    public double marginOutward() {
        return here().study().margins().outward();
    }

    /** Travel at full droop, mm, below zero. */
    public double droop() {
        return here().study().droop();
    }

    /** Travel at full bump, mm. */
    public double bump() {
        return here().study().bump();
    }

    /** Bump limit after a step of the clearance rule, mm; the typed limit in every step else. */
    public double bumpStep(int step) {
        return here().study().bumpSteps().get(step);
    }
}
