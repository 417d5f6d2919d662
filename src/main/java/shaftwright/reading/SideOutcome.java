package shaftwright.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.doubt.SlackChances;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.SideResult;
import shaftwright.study.PathFacts;
import shaftwright.study.ShaftFacts;
import shaftwright.study.SideFacts;
import shaftwright.study.SideStops;
import shaftwright.study.SideStudy;
import shaftwright.study.StopsAlone;
import shaftwright.study.TravelFacts;
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

    /** What keeps it from being set up, empty when nothing does. */
    private final String notSetUp;

    /** Null while it is not set up, as are rows and path. */
    private final SideStudy study;

    private final Rows rows;
    private final SidePath path;

    /** Found when first asked for: trials of many variants never do. */
    private Optional<SlackChances> chances;

    private Verdict shaftVerdict;

    private SideOutcome(String notSetUp, SideStudy study, Rows rows, SidePath path) {
        this.notSetUp = notSetUp;
        this.study = study;
        this.rows = rows;
        this.path = path;
    }

    /** A side that can't be set up. */
    static SideOutcome lacking(String trouble) {
        return new SideOutcome(trouble, null, null, null);
    }

    SideOutcome(SideStudy study, Rows rows, SidePath path) {
        this("", study, rows, path);
    }

    /** What keeps it from being computed, empty when nothing does. */
    public String trouble() {
        if (!isSetUp()) {
            return notSetUp;
        }
        if (study.lack().isPresent()) {
            return Sizing.words(study.lack().get());
        }
        return study.beyond().isEmpty() ? "" : Sizing.words(study.beyond().get().way());
    }

    /** What the shaft alone decides: of trials of many variants nothing else is asked. */
    public Verdict shaftVerdict() {
        if (shaftVerdict == null) {
            shaftVerdict = Verdict.of(SideFacts.of(pathFacts(0), shaftFacts()));
        }
        return shaftVerdict;
    }

    /** Whether it is computed, and how far its path reaches, with nothing said of its readings. */
    PathFacts pathFacts(int checks) {
        if (!isSetUp()) {
            return PathFacts.sound(checks).lacking(notSetUp);
        }
        return study.pathFacts(checks);
    }

    /** Its shaft as a verdict needs it, empty while there is none. */
    Optional<ShaftFacts> shaftFacts() {
        return isSetUp() ? study.shaftFacts() : Optional.empty();
    }

    /** Whether joints, shifts and travel are known. */
    public boolean isSetUp() {
        return study != null;
    }

    /** The result, null when there is none. */
    public SideResult resultOrNull() {
        return isSetUp() ? study.result().orElse(null) : null;
    }

    /** The core's part of it; asked for only where it is set up. */
    SideStudy study() {
        return study;
    }

    /** Ground clearance at full bump, mm; empty while it is not known. */
    OptionalDouble clearanceAtBump() {
        return isSetUp() ? study.clearanceAtBump() : OptionalDouble.empty();
    }

    /** Where its hub goes; asked for only where there is a result. */
    SidePath path() {
        return path;
    }

    /** Travel that the final shaft allows, empty when there is no result. */
    public Optional<TravelRange> travelAllowed() {
        return isSetUp() ? study.travelAllowed() : Optional.empty();
    }

    /** Longest travel that any shaft from the blanks allows, empty when there is none. */
    public Optional<LongestTravel> longestTravel() {
        return isSetUp() ? study.longestTravel() : Optional.empty();
    }

    /** Where each thing would end the travel alone, empty when there is no result. */
    public Optional<StopsAlone> stopsAlone() {
        return isSetUp() ? study.stopsAlone() : Optional.empty();
    }

    /** What dampers, straps and tubes make of it, empty when there is no result. */
    public Optional<SideStops> stops() {
        return isSetUp() ? study.stops() : Optional.empty();
    }

    /**
     * How long a damper, strap or bump stop gets over the wanted travel; empty when it could not be
     * worked out, or not over all of that.
     *
     * @param row in its table, zero-based
     */
    public Optional<Span.Course> course(int row) {
        return stops().flatMap(met -> path.restraints().course(met, row));
    }

    /** Row of the tube that comes nearest to a boot, zero-based. */
    public int tubeRow(SideStops.Gap gap) {
        return path.restraints().tubeRow(gap);
    }

    /** What else than the shaft ends its travel, as a verdict needs it. */
    TravelFacts travelFacts(OptionalDouble clearance) {
        return isSetUp() ? study.travelFacts(clearance) : TravelFacts.FREE;
    }

    /**
     * Chances of running out of travel, empty without a result or when no trials were asked for;
     * computed when first asked for.
     */
    public Optional<SlackChances> chances() {
        if (chances == null) {
            chances = isSetUp() ? study.chances() : Optional.empty();
        }
        return chances;
    }

    public MountedJoint inner() {
        return study.scenario().inner();
    }

    public MountedJoint outer() {
        return study.scenario().outer();
    }

    /** Row, from 1, of the joint at an end: {@code inner} or {@code outer}. */
    public int jointRow(String end) {
        return end.equals("inner") ? rows.innerJoint() : rows.outerJoint();
    }

    /** First angle of the joint's travel limits at an end, rad. */
    public double firstAngle(String end) {
        return end.equals("inner") ? rows.innerFirstAngle() : rows.outerFirstAngle();
    }

    /** Where the inner flange is. */
    public InnerFlange flange() {
        return study.flange();
    }

    /** Outward, mm. */
    public double hubShift() {
        return study.scenario().hubShift();
    }

    public double marginInward() {
        return study.margins().inward();
    }

    public double marginOutward() {
        return study.margins().outward();
    }

    /** Travel at full droop, mm, below zero. */
    public double droop() {
        return study.droop();
    }

    /** Travel at full bump, mm. */
    public double bump() {
        return study.bump();
    }

    /** Bump limit after a step of the clearance rule, mm; the typed limit in every step else. */
    public double bumpStep(int step) {
        return study.bumpSteps().get(step);
    }
}
