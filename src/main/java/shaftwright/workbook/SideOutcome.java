package shaftwright.workbook;

import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.doubt.SlackChances;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.SideResult;
import shaftwright.study.PathFacts;
import shaftwright.study.ShaftFacts;
import shaftwright.study.SideFacts;
import shaftwright.study.SideStudy;
import shaftwright.study.Verdict;
import shaftwright.travel.BootGap;
import shaftwright.travel.ClearanceRule;
import shaftwright.travel.LongestTravel;
import shaftwright.travel.StopAlone;
import shaftwright.travel.TravelEnds;
import shaftwright.travel.TravelRange;
import shaftwright.travel.TravelStop;

/**
 * One side of one scenario: its set-up where the inputs are complete, and its result where a length
 * can be computed.
 */
public final class SideOutcome {
    /** Steps in which the bump limit is found. */
    public static final int BUMP_STEPS = ClearanceRule.STEPS;

    /**
     * Rows of the parts tables, from 1, that a scenario picks; 0 for no boot.
     *
     * @param innerFirstAngle first angle of the inner joint's travel limits, rad
     */
    record Rows(
            int innerJoint,
            int outerJoint,
            int innerBoot,
            int outerBoot,
            double innerFirstAngle,
            double outerFirstAngle) {}

    /** What keeps it from being set up, empty when nothing does. */
    private final String notSetUp;

    /** Null while it is not set up, as are rows, doubts and path. */
    private final SideStudy study;

    private final Rows rows;
    private final Doubts doubts;
    private final SidePath path;

    /** All found when they are first asked for: trials of many variants never do. */
    private TravelRange allowed;

    private TravelEnds ends;
    private StopAlone boots;
    private SlackChances chances;
    private Verdict shaftVerdict;
    private SideStops stops;
    private Optional<LongestTravel> longest;

    private SideOutcome(String notSetUp, SideStudy study, Rows rows, Doubts doubts, SidePath path) {
        this.notSetUp = notSetUp;
        this.study = study;
        this.rows = rows;
        this.doubts = doubts;
        this.path = path;
    }

    /** A side that can't be set up. */
    static SideOutcome lacking(String trouble) {
        return new SideOutcome(trouble, null, null, null, null);
    }

    SideOutcome(SideStudy study, Rows rows, Doubts doubts, SidePath path) {
        this("", study, rows, doubts, path);
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
    Verdict shaftVerdict() {
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
        PathFacts facts = study.pathFacts(checks);
        return path.mayGiveVerdict() ? facts : facts.ofTwoHeights();
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

    /**
     * How far the wheel could go whatever the shaft, and before a boot touches a tube; asked for
     * only where there is a result. Moves the side's linkage, which is for one thread at a time.
     */
    TravelEnds ends() {
        if (ends == null) {
            boots = stopsOrNull().bootsOrNull();
            ends =
                    boots == null
                            ? path.ends()
                            : path.ends().stoppedBy(TravelStop.BOOT_TOUCHES, boots);
        }
        return ends;
    }

    /** Where a boot would touch a tube, likewise; null when neither is known. */
    StopAlone bootsOrNull() {
        ends();
        return boots;
    }

    /** Travel that the final shaft allows, null when there is no result. */
    public TravelRange travelAllowedOrNull() {
        if (allowed == null && resultOrNull() != null) {
            allowed = TravelRange.of(resultOrNull(), ends());
        }
        return allowed;
    }

    /**
     * Longest travel that any shaft from the blanks allows, null when there is none; computed when
     * first asked for.
     */
    public LongestTravel longestTravelOrNull() {
        if (longest == null && resultOrNull() != null) {
            longest =
                    LongestTravel.of(
                            resultOrNull().setup(),
                            study.lengthRule(),
                            study.stock().ring(),
                            study.stock().blanks(),
                            ends());
        }
        return longest == null ? null : longest.orElse(null);
    }

    /** What dampers, straps and tubes make of it, null when there is no result. */
    public SideStops stopsOrNull() {
        if (stops == null && resultOrNull() != null) {
            stops = path.restraints().of(this);
        }
        return stops;
    }

    /** A size of the boot at an end from the boot table, mm, NaN when it is not known. */
    public double bootSize(String column, BootGap.End end) {
        int row = bootRow(end);
        return row == 0 ? Double.NaN : path.restraints().boot(column, row);
    }

    /** Row, from 1, of the boot at an end, 0 when there is none. */
    private int bootRow(BootGap.End end) {
        return end == BootGap.End.INNER ? rows.innerBoot() : rows.outerBoot();
    }

    /**
     * Chances of running out of travel, null when no trials were asked for; computed when first
     * asked for.
     */
    public SlackChances chancesOrNull() {
        if (chances == null && resultOrNull() != null && doubts.trialsWanted()) {
            chances = doubts.chances(resultOrNull(), path);
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
        return study.scenario().margins().inward();
    }

    public double marginOutward() {
        return study.scenario().margins().outward();
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
