package shaftwright.workbook;

import java.util.List;
import java.util.Optional;
import shaftwright.doubt.SlackChances;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Blank;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.SideResult;
import shaftwright.study.PathFacts;
import shaftwright.study.ShaftFacts;
import shaftwright.study.SideFacts;
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

    /** A complete set-up, before anything is computed. */
    record SetUp(
            MountedJoint inner,
            MountedJoint outer,
            int innerRow,
            int outerRow,
            int innerBoot,
            int outerBoot,
            double innerFirstAngle,
            double outerFirstAngle,
            InnerFlange flange,
            double hubShift,
            double marginInward,
            double marginOutward,
            double droop,
            List<Double> bumpSteps) {}

    private final String trouble;
    private final Optional<PathFacts.Beyond> beyond;
    private final SetUp setUp;
    private final SideResult result;

    /** Both found when they are first asked for: trials of many variants never do. */
    private TravelRange allowed;

    private TravelEnds ends;
    private StopAlone boots;
    private final Doubts doubts;
    private final SidePath path;
    private SlackChances chances;
    private Verdict shaftVerdict;
    private SideStops stops;
    private final Cutting cutting;
    private Optional<LongestTravel> longest;

    /** What any shaft of a scenario is cut from, and how its length is chosen. */
    record Cutting(LengthRule rule, RingSpec ring, List<Blank> blanks) {}

    /** A side that can't be computed. */
    static SideOutcome lacking(String trouble) {
        return new SideOutcome(trouble, Optional.empty(), null, null, null, null, null);
    }

    SideOutcome(
            String trouble,
            Optional<PathFacts.Beyond> beyond,
            SetUp setUp,
            SideResult result,
            Doubts doubts,
            SidePath path,
            Cutting cutting) {
        this.trouble = trouble;
        this.beyond = beyond;
        this.setUp = setUp;
        this.result = result;
        this.doubts = doubts;
        this.path = path;
        this.cutting = cutting;
    }

    /** What keeps it from being computed, empty when nothing does. */
    public String trouble() {
        return trouble;
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
        PathFacts facts = PathFacts.sound(checks);
        if (beyond.isPresent()) {
            facts = facts.beyond(beyond.get());
        } else if (!trouble.isEmpty()) {
            facts = facts.lacking(trouble);
        }
        return path == null || path.mayGiveVerdict() ? facts : facts.ofTwoHeights();
    }

    /** Its shaft as a verdict needs it, empty while there is none. */
    Optional<ShaftFacts> shaftFacts() {
        return result == null
                ? Optional.empty()
                : Optional.of(ShaftFacts.of(result, cutting.rule()));
    }

    /** Whether joints, shifts and travel are known. */
    public boolean isSetUp() {
        return setUp != null;
    }

    /** The result, null when there is none. */
    public SideResult resultOrNull() {
        return result;
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
        if (allowed == null && result != null) {
            allowed = TravelRange.of(result, ends());
        }
        return allowed;
    }

    /**
     * Longest travel that any shaft from the blanks allows, null when there is none; computed when
     * first asked for.
     */
    public LongestTravel longestTravelOrNull() {
        if (longest == null && result != null) {
            longest =
                    LongestTravel.of(
                            result.setup(),
                            cutting.rule(),
                            cutting.ring(),
                            cutting.blanks(),
                            ends());
        }
        return longest == null ? null : longest.orElse(null);
    }

    /** What dampers, straps and tubes make of it, null when there is no result. */
    public SideStops stopsOrNull() {
        if (stops == null && result != null) {
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
        return end == BootGap.End.INNER ? setUp.innerBoot() : setUp.outerBoot();
    }

    /**
     * Chances of running out of travel, null when no trials were asked for; computed when first
     * asked for.
     */
    public SlackChances chancesOrNull() {
        if (chances == null && result != null && doubts.trialsWanted()) {
            chances = doubts.chances(result, path);
        }
        return chances;
    }

    public MountedJoint inner() {
        return setUp.inner();
    }

    public MountedJoint outer() {
        return setUp.outer();
    }

    /** Row, from 1, of the joint at an end: {@code inner} or {@code outer}. */
    public int jointRow(String end) {
        return end.equals("inner") ? setUp.innerRow() : setUp.outerRow();
    }

    /** First angle of the joint's travel limits at an end, rad. */
    public double firstAngle(String end) {
        return end.equals("inner") ? setUp.innerFirstAngle() : setUp.outerFirstAngle();
    }

    /** Where the inner flange is. */
    public InnerFlange flange() {
        return setUp.flange();
    }

    /** Outward, mm. */
    public double hubShift() {
        return setUp.hubShift();
    }

    public double marginInward() {
        return setUp.marginInward();
    }

    public double marginOutward() {
        return setUp.marginOutward();
    }

    /** Travel at full droop, mm, below zero. */
    public double droop() {
        return setUp.droop();
    }

    /** Travel at full bump, mm. */
    public double bump() {
        return setUp.bumpSteps().get(BUMP_STEPS - 1);
    }

    /** Bump limit after a step of the clearance rule, mm; the typed limit in every step else. */
    public double bumpStep(int step) {
        return setUp.bumpSteps().get(step);
    }
}
