package shaftwright.study;

import static shaftwright.study.CardPrint.ALL;
import static shaftwright.study.CardPrint.ALL_WITH_NOTE;
import static shaftwright.study.CardPrint.LENGTHS;
import static shaftwright.study.CardPrint.NOTHING;
import static shaftwright.study.CardPrint.WINDOW;
import static shaftwright.study.Severity.DOES_NOT_FIT;
import static shaftwright.study.Severity.FITS_BUT;
import static shaftwright.study.Severity.MEASURE_AGAIN;
import static shaftwright.study.Severity.NO_VERDICT;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shaftwright.shaft.ShaftEnd;

/**
 * What may stand between a builder and a shaft, the gravest first: its rank, how much it weighs,
 * what the shop card may print while it holds, and its sentence.
 */
public enum Finding {
    /** Something needed is missing or can't be read. */
    INCOMPLETE(1, NO_VERDICT, NOTHING, "{MISSING}."),
    /** Two heights can't carry a verdict. */
    TWO_HEIGHTS(
            2,
            NO_VERDICT,
            NOTHING,
            "Two heights can't show what happens between them. Measure at least three."),
    /** The wheel is to travel beyond the known path. */
    BEYOND_PATH(
            2,
            NO_VERDICT,
            NOTHING,
            "{BEYOND_WAY} of {BEYOND_WANTED} goes beyond the known path, which ends at"
                    + " {BEYOND_KNOWN}. Measure further, or ask for less travel."),
    /** A workbook was changed since all states were computed; without formulas that can't be. */
    STATES_OUT_OF_DATE(
            2,
            NO_VERDICT,
            NOTHING,
            "All states are asked for, and their figures are not current: fill."),
    /** No length works. */
    NO_WINDOW(
            3,
            DOES_NOT_FIT,
            NOTHING,
            "No length works, short by {SHORTFALL} with margins kept: a shaft that {SHORTER_WOULD}"
                    + " at {SHORTEST_AT} {LONGER_WOULD} at {LONGEST_AT}. See Levers."),
    INNER_ANGLE(4, DOES_NOT_FIT, NOTHING, inner(AtEnd.STEEP)),
    OUTER_ANGLE(4, DOES_NOT_FIT, NOTHING, outer(AtEnd.STEEP)),
    /** The tilted shaft, or its end, touches a cup's bore or lip. */
    TOUCHES_CUP(
            5,
            DOES_NOT_FIT,
            NOTHING,
            "The shaft touches the {MOUTH_END} cup by {MOUTH_OVERLAP} at {MOUTH_AT}. Take a"
                    + " thinner or shorter end, or a wider cup."),
    /** One or more readings are placed as wrong. */
    SUSPECT_READINGS(
            6,
            MEASURE_AGAIN,
            NOTHING,
            "The readings contradict each other. Measure again: {SUSPECTS}."),
    /** Readings contradict, and which is wrong can't be told. */
    READINGS_CONTRADICT(
            6,
            MEASURE_AGAIN,
            NOTHING,
            "Readings of {UNPLACED} contradict each other, and so few can't show which is wrong."
                    + " Measure one more height, best near {NEXT_HEIGHT}."),
    /** A mock-up reads other than the joints' figures say, or what no stick can. */
    MOCK_UP_CONTRADICTS(
            7,
            MEASURE_AGAIN,
            NOTHING,
            "The mock-up {STICK_WRONG}: {STICK_SAYS}. Check {STICK_CHECK}, then read the stick"
                    + " again."),
    /** The only blank that would serve has splines of another shape. */
    BLANK_UNMATED(
            8,
            DOES_NOT_FIT,
            NOTHING,
            "The {SPLINE_END} spline of blank {SPLINE_BLANK} does not mate with the joint:"
                    + " {SPLINE_CLASH}, and no other blank serves. Take another blank or joint."),
    INNER_FLANGE_UNMATED(
            8, DOES_NOT_FIT, NOTHING, inner(AtEnd.FLANGE).replace("{MATE}", "transaxle")),
    OUTER_FLANGE_UNMATED(8, DOES_NOT_FIT, NOTHING, outer(AtEnd.FLANGE).replace("{MATE}", "hub")),
    INNER_BOLTS_TOO_TIGHT(9, FITS_BUT, ALL_WITH_NOTE, inner(AtEnd.BOLTS)),
    OUTER_BOLTS_TOO_TIGHT(9, FITS_BUT, ALL_WITH_NOTE, outer(AtEnd.BOLTS)),
    /** The weakest part is below the wanted safety factor. */
    TOO_WEAK(
            10,
            FITS_BUT,
            ALL_WITH_NOTE,
            "The weakest part ({WEAKEST_PART}) has a safety factor of {WEAKEST_FACTOR}, below the"
                    + " {FACTOR_WANTED} wanted: choose a stronger one, or lower the torque."),
    /** The shaft's most tired section is below the wanted factor in fatigue. */
    TOO_TIRED(
            10,
            FITS_BUT,
            ALL_WITH_NOTE,
            "The shaft's most tired section ({TIRED_PART}) has a fatigue factor of {TIRED_FACTOR},"
                    + " below the {TIRED_WANTED} wanted: choose a thicker bar or a stronger steel,"
                    + " or round its notches off."),
    /** A damper, strap or bump stop ends bump before the wanted travel. */
    BUMP_ENDS_EARLY(
            11,
            FITS_BUT,
            ALL_WITH_NOTE,
            "Bump ends {BUMP_MISSING} early, at {BUMP_ENDS_AT} ({BUMP_STOP}): change that part, or"
                    + " ask for less bump."),
    DROOP_ENDS_EARLY(
            11,
            FITS_BUT,
            ALL_WITH_NOTE,
            "Droop ends {DROOP_MISSING} early, at {DROOP_ENDS_AT} ({DROOP_STOP}): change that"
                    + " part, or ask for less droop."),
    /** Full bump takes ground clearance that is wanted. */
    TOO_LOW(
            11,
            FITS_BUT,
            ALL_WITH_NOTE,
            "Full bump leaves {CLEARANCE_MISSING} less than the {CLEARANCE_WANTED} of ground"
                    + " clearance wanted: ask for less bump, or fit larger tyres."),
    INNER_BOOT_TOUCHES(12, FITS_BUT, ALL_WITH_NOTE, inner(AtEnd.BOOT)),
    OUTER_BOOT_TOUCHES(12, FITS_BUT, ALL_WITH_NOTE, outer(AtEnd.BOOT)),
    INNER_BOOT_STRAINED(12, FITS_BUT, ALL_WITH_NOTE, inner(AtEnd.STRAIN)),
    OUTER_BOOT_STRAINED(12, FITS_BUT, ALL_WITH_NOTE, outer(AtEnd.STRAIN)),
    INNER_BENCH_ENDS(13, FITS_BUT, ALL_WITH_NOTE, inner(AtEnd.BENCH)),
    OUTER_BENCH_ENDS(13, FITS_BUT, ALL_WITH_NOTE, outer(AtEnd.BENCH)),
    /** 13b of the trade's table: a groove's land is thinner than three groove depths. */
    THIN_LAND(
            13,
            FITS_BUT,
            ALL_WITH_NOTE,
            "The land outside the {LAND_END} groove is {LAND_MISSING} short of the"
                    + " {LAND_WANTED} wanted: make that stub longer, or take another blank."),
    /** 13b likewise: a new groove is cut into an old one. */
    GROOVES_MEET(
            13,
            FITS_BUT,
            ALL_WITH_NOTE,
            "The new groove at the {GROOVE_END} end, {GROOVE_OUTER_WALL} to {GROOVE_INNER_WALL}"
                    + " from it, cuts into the old one at {OLD_OUTER_WALL} to {OLD_INNER_WALL}:"
                    + " take another blank, or another stub there."),
    /** 13b likewise: a case-hardened blank is cut, as no other serves. */
    CUTS_CASE(
            13,
            FITS_BUT,
            ALL_WITH_NOTE,
            "The blank is case-hardened and not to be cut, and no other on the list serves: have"
                    + " one made to length, or take a through-hardened one."),
    /** No multiple of the shop increment lies inside the window. */
    NO_INCREMENT(
            14,
            FITS_BUT,
            WINDOW,
            "The window is {WINDOW_WIDTH} wide and holds no multiple of the shop increment,"
                    + " {INCREMENT}: work to {FINER_INCREMENT}."),
    /** No blank gives the length, or none was typed. */
    NO_BLANK(
            15,
            FITS_BUT,
            LENGTHS,
            "No blank {BLANKS_THERE} {END_TO_END} end to end: {BLANKS_SEE}."),
    /** The tyres stand out too far. */
    TOO_WIDE(
            16,
            FITS_BUT,
            ALL,
            "The overall width is {WIDTH_OVER} over the limit of {WIDTH_LIMIT}: take less wheel"
                    + " spacer, more offset or narrower tyres."),
    INNER_RUNS_STEEP(17, FITS_BUT, ALL, inner(AtEnd.RUNS)),
    OUTER_RUNS_STEEP(17, FITS_BUT, ALL, outer(AtEnd.RUNS)),
    INNER_RUNS_HOT(17, FITS_BUT, ALL, inner(AtEnd.HOT)),
    OUTER_RUNS_HOT(17, FITS_BUT, ALL, outer(AtEnd.HOT)),
    /** Checks before measuring are not ticked. */
    CHECKS_OPEN(
            18,
            FITS_BUT,
            ALL,
            "{CHECKS_OPEN} of {CHECKS} checks before measuring are not ticked, so lengths may"
                    + " move: see Guide."),
    /** Camber or toe was never read. */
    ANGLES_UNREAD(
            18,
            FITS_BUT,
            ALL,
            "{UNREAD} never read, so zero is taken, which may move lengths by more than a tape's"
                    + " error: read along with each height.");

    private static final Map<Finding, Sentence<SideSlot>> SENTENCES = new EnumMap<>(Finding.class);
    private static final Map<Finding, Integer> NUMBERS = new EnumMap<>(Finding.class);

    static {
        for (Finding finding : values()) {
            SENTENCES.put(finding, Sentence.of(SideSlot.class, finding.template));
            NUMBERS.put(finding, NUMBERS.size() + 1);
        }
    }

    private final int rank;
    private final Severity severity;
    private final CardPrint card;
    private final String template;

    Finding(int rank, Severity severity, CardPrint card, String template) {
        this.rank = rank;
        this.severity = severity;
        this.card = card;
        this.template = template;
    }

    private static String inner(String template) {
        return template.replace("{END}", "inner").replace("{END_", "{INNER_");
    }

    private static String outer(String template) {
        return template.replace("{END}", "outer").replace("{END_", "{OUTER_");
    }

    /** Sentences that both ends have alike. */
    private static final class AtEnd {
        static final String STEEP =
                "The {END} joint reaches {END_STEEPEST} at {END_STEEPEST_AT}, {END_OVER} over its"
                        + " limit of {END_LIMIT}. Ask for less travel, or choose a joint for"
                        + " steeper angles.";
        static final String BOLTS =
                "The {END} joint's flange bolts are tightened to {END_BOLT_SHARE} of their proof"
                        + " load, more than {END_BOLT_MOST}: tighten them with at most"
                        + " {END_BOLT_TORQUE}.";
        static final String BOOT =
                "The {END} boot touches a tube by {END_BOOT_OVERLAP} at {END_BOOT_AT}: move the"
                        + " tube, or take a smaller boot.";
        static final String FLANGE =
                "The {END} joint does not bolt to the {MATE}'s flange: {END_FLANGE_PART}"
                        + " {END_FLANGE_JOINT} against {END_FLANGE_HAS}. An adapter is wanted; type"
                        + " its thickness as that end's cup spacer.";
        static final String STRAIN =
                "The {END} boot is {END_STRAIN} by {END_STRAIN_BY} at {END_STRAIN_AT}: take another"
                        + " boot, or ask for less travel.";
        static final String BENCH =
                "The {END} joint's bench table ends at {END_BENCH_END}, and the shaft goes"
                        + " {END_BENCH_OVER} further: measure its plunge at steeper angles.";
        static final String RUNS =
                "At ride height the {END} joint runs at {END_RIDE}, {END_RUNNING_OVER} over its"
                        + " running limit of {END_RUNNING}: raise or lower the transaxle.";

        static final String HOT =
                "At ride height and top speed the {END} joint runs at {END_SPEED_ANGLE} rpm times"
                        + " degrees, over its limit of {END_SPEED_LIMIT}: raise or lower the"
                        + " transaxle, or drive slower.";

        private AtEnd() {}
    }

    /** Place in the order of all findings, 1 the gravest; workbooks hold it as a number. */
    public int number() {
        return NUMBERS.get(this);
    }

    /** Place in the trade's table of findings, 1 the gravest. */
    public int rank() {
        return rank;
    }

    public Severity severity() {
        return severity;
    }

    /** What the shop card may print while it holds. */
    public CardPrint card() {
        return card;
    }

    /** Whether no shaft fits while it holds, or none that a blank of the list gives. */
    boolean isObstacle() {
        return severity.graverThan(FITS_BUT) || this == NO_BLANK;
    }

    public Sentence<SideSlot> sentence() {
        return SENTENCES.get(this);
    }

    /** Whether it holds on a side. */
    boolean holds(SideFacts side) {
        PathFacts path = side.path();
        if (severity == FITS_BUT && path.silent()) {
            return false;
        }
        return switch (this) {
            case INCOMPLETE -> !path.missing().isEmpty();
            case TWO_HEIGHTS -> path.missing().isEmpty() && path.twoHeights();
            case BEYOND_PATH -> path.missing().isEmpty() && path.beyond().isPresent();
            case STATES_OUT_OF_DATE -> !path.silent() && path.outdated();
            case SUSPECT_READINGS ->
                    path.contradiction().isPresent()
                            && !path.contradiction().get().suspects().isEmpty();
            case READINGS_CONTRADICT ->
                    path.contradiction().isPresent()
                            && path.contradiction().get().suspects().isEmpty();
            case MOCK_UP_CONTRADICTS -> !path.silent() && side.mockUp().isPresent();
            case INNER_BOLTS_TOO_TIGHT ->
                    side.strength().innerBolts().isPresent()
                            && side.strength().innerBolts().get().tooTight();
            case OUTER_BOLTS_TOO_TIGHT ->
                    side.strength().outerBolts().isPresent()
                            && side.strength().outerBolts().get().tooTight();
            case TOO_WEAK -> side.strength().tooWeak();
            case TOO_TIRED -> side.strength().returning().tooTired();
            case INNER_RUNS_HOT -> hot(side, side.strength().returning().inner(), ShaftEnd.INNER);
            case OUTER_RUNS_HOT -> hot(side, side.strength().returning().outer(), ShaftEnd.OUTER);
            case BUMP_ENDS_EARLY -> side.travel().bump().isPresent();
            case DROOP_ENDS_EARLY -> side.travel().droop().isPresent();
            case TOO_LOW -> side.travel().ground().isPresent();
            case INNER_BOOT_TOUCHES -> TravelFacts.touches(side.travel().innerBoot());
            case OUTER_BOOT_TOUCHES -> TravelFacts.touches(side.travel().outerBoot());
            case TOO_WIDE -> side.width().isPresent() && side.width().get().tooWide();
            case CHECKS_OPEN -> !path.checksOpen().isEmpty();
            case ANGLES_UNREAD -> path.unread() != PathFacts.Unread.NOTHING;
            default -> !path.silent() && side.shaft().isPresent() && holds(side.shaft().get());
        };
    }

    private static boolean hot(
            SideFacts side, Optional<ReturningFacts.SpeedLimit> limit, ShaftEnd end) {
        return !side.path().silent()
                && side.shaft().isPresent()
                && limit.isPresent()
                && limit.get()
                        .passed(
                                end.either(
                                        side.shaft().get().inner().atRide(),
                                        side.shaft().get().outer().atRide()));
    }

    /** The same of what the shaft alone decides. */
    private boolean holds(ShaftFacts shaft) {
        WindowFacts window = shaft.window();
        return switch (this) {
            case NO_WINDOW -> !window.fits();
            case INNER_ANGLE -> shaft.inner().tooSteep();
            case OUTER_ANGLE -> shaft.outer().tooSteep();
            case TOUCHES_CUP -> shaft.touches();
            case BLANK_UNMATED -> window.fits() && shaft.mating().blank().isPresent();
            case INNER_FLANGE_UNMATED -> shaft.mating().innerFlange().isPresent();
            case OUTER_FLANGE_UNMATED -> shaft.mating().outerFlange().isPresent();
            case INNER_BOOT_STRAINED -> shaft.mating().innerBoot().isPresent();
            case OUTER_BOOT_STRAINED -> shaft.mating().outerBoot().isPresent();
            case INNER_BENCH_ENDS -> shaft.inner().beyondBench();
            case OUTER_BENCH_ENDS -> shaft.outer().beyondBench();
            case THIN_LAND -> window.fits() && shaft.blank().thinLand().isPresent();
            case GROOVES_MEET -> window.fits() && shaft.blank().groovesMet().isPresent();
            case CUTS_CASE -> window.fits() && shaft.blank().cutsCase();
            case NO_INCREMENT -> window.noIncrement();
            case NO_BLANK ->
                    window.fits() && !shaft.blank().serves() && shaft.mating().blank().isEmpty();
            case INNER_RUNS_STEEP -> shaft.inner().runsSteep();
            case OUTER_RUNS_STEEP -> shaft.outer().runsSteep();
            default -> throw new IllegalStateException(this + " is not about the shaft");
        };
    }
}
