package shaftwright.study;

import static shaftwright.study.SlotKind.ANGLE;
import static shaftwright.study.SlotKind.ANGLE_EXCESS;
import static shaftwright.study.SlotKind.CHOICE;
import static shaftwright.study.SlotKind.COUNT;
import static shaftwright.study.SlotKind.EXCESS;
import static shaftwright.study.SlotKind.FACTOR;
import static shaftwright.study.SlotKind.FACTOR_ABOVE;
import static shaftwright.study.SlotKind.FINE_LENGTH;
import static shaftwright.study.SlotKind.LENGTH;
import static shaftwright.study.SlotKind.NAME;
import static shaftwright.study.SlotKind.SHOP_LENGTH;
import static shaftwright.study.SlotKind.TORQUE;
import static shaftwright.study.SlotKind.TRAVEL;

import java.util.Arrays;
import java.util.List;
import shaftwright.build.MeasuringCheck;
import shaftwright.joint.BoltPattern;
import shaftwright.mockup.MockUpCheck.Suspicion;
import shaftwright.mockup.UnusableReading.Flaw;
import shaftwright.shaft.Binding;
import shaftwright.study.TravelFacts.EarlyEnd;
import shaftwright.suspension.ReadingContradiction;
import shaftwright.units.LengthUnit;

/**
 * What the sentences on one side are filled with: lengths in mm, angles in rad, torques in N·m.
 *
 * <p>A choice's words stand in the order of the constants that choose among them, so that formulas,
 * which know no constants, may count as well.
 */
@SuppressWarnings("EnumOrdinal")
public enum SideSlot implements Slot {
    MISSING(NAME),
    BEYOND_WAY(CHOICE, "Bump", "Droop"),
    BEYOND_WANTED(LENGTH),
    BEYOND_KNOWN(TRAVEL),
    SHORTFALL(EXCESS),
    SHORTEST_AT(NAME),
    SHORTER_WOULD(
            CHOICE,
            "does not pull out",
            "keeps the inner joint's soft stop",
            "keeps the outer joint's soft stop"),
    LONGEST_AT(NAME),
    LONGER_WOULD(
            CHOICE,
            "bottoms",
            "bottoms with its inner end in the cup",
            "bottoms with its outer end in the cup",
            "bottoms with both ends in the cups"),
    INNER_STEEPEST(ANGLE),
    INNER_STEEPEST_AT(NAME),
    INNER_LIMIT(ANGLE),
    INNER_OVER(ANGLE_EXCESS),
    OUTER_STEEPEST(ANGLE),
    OUTER_STEEPEST_AT(NAME),
    OUTER_LIMIT(ANGLE),
    OUTER_OVER(ANGLE_EXCESS),
    MOUTH_END(CHOICE, "inner", "outer"),
    MOUTH_OVERLAP(EXCESS),
    MOUTH_AT(NAME),
    SUSPECTS(NAME),
    UNPLACED(NAME),
    NEXT_HEIGHT(NAME),
    STICK_WRONG(CHOICE, "contradicts the plan", "can't be used"),
    STICK_SAYS(NAME),
    STICK_DOES(CHOICE, "bottoms", "pulls out"),
    STICK_BY(EXCESS),
    STICK_WHEN(CHOICE, "sooner", "later"),
    STICK_AT(TRAVEL),
    STICK_THAN(CHOICE, "joints'", "corrected"),
    STICK_CHECK(
            CHOICE,
            Suspicion.PLACES.words(),
            Suspicion.PLUNGE.words(),
            Suspicion.BOTTOMS.words(),
            Suspicion.PULL_OUTS.words(),
            Flaw.SWAPPED.check(),
            Flaw.TOO_LONG.check()),
    SPLINE_END(CHOICE, "inner", "outer"),
    SPLINE_BLANK(NAME),
    SPLINE_CLASH(NAME),
    INNER_FLANGE_PART(CHOICE, parts()),
    INNER_FLANGE_JOINT(NAME),
    INNER_FLANGE_HAS(NAME),
    OUTER_FLANGE_PART(CHOICE, parts()),
    OUTER_FLANGE_JOINT(NAME),
    OUTER_FLANGE_HAS(NAME),
    INNER_BOLT_SHARE(FACTOR_ABOVE),
    INNER_BOLT_MOST(FACTOR),
    INNER_BOLT_TORQUE(TORQUE),
    OUTER_BOLT_SHARE(FACTOR_ABOVE),
    OUTER_BOLT_MOST(FACTOR),
    OUTER_BOLT_TORQUE(TORQUE),
    WEAKEST_PART(NAME),
    WEAKEST_FACTOR(FACTOR),
    FACTOR_WANTED(FACTOR),
    TIRED_PART(NAME),
    TIRED_FACTOR(FACTOR),
    TIRED_WANTED(FACTOR),
    BUMP_STOP(NAME),
    BUMP_MISSING(EXCESS),
    BUMP_ENDS_AT(TRAVEL),
    DROOP_STOP(NAME),
    DROOP_MISSING(EXCESS),
    DROOP_ENDS_AT(TRAVEL),
    CLEARANCE_MISSING(EXCESS),
    CLEARANCE_WANTED(LENGTH),
    INNER_BOOT_OVERLAP(EXCESS),
    INNER_BOOT_AT(TRAVEL),
    OUTER_BOOT_OVERLAP(EXCESS),
    OUTER_BOOT_AT(TRAVEL),
    INNER_STRAIN(CHOICE, strains()),
    INNER_STRAIN_BY(NAME),
    INNER_STRAIN_AT(TRAVEL),
    OUTER_STRAIN(CHOICE, strains()),
    OUTER_STRAIN_BY(NAME),
    OUTER_STRAIN_AT(TRAVEL),
    INNER_BENCH_END(ANGLE),
    INNER_BENCH_OVER(ANGLE_EXCESS),
    OUTER_BENCH_END(ANGLE),
    OUTER_BENCH_OVER(ANGLE_EXCESS),
    LAND_END(CHOICE, "inner", "outer"),
    LAND_MISSING(EXCESS),
    LAND_WANTED(LENGTH),
    GROOVE_END(CHOICE, "inner", "outer"),
    GROOVE_OUTER_WALL(LENGTH),
    GROOVE_INNER_WALL(LENGTH),
    OLD_OUTER_WALL(LENGTH),
    OLD_INNER_WALL(LENGTH),
    WINDOW_WIDTH(FINE_LENGTH),
    INCREMENT(FINE_LENGTH),
    FINER_INCREMENT(FINE_LENGTH),
    BLANKS_THERE(CHOICE, "on Parts gives", "with its lengths is typed on Parts to give"),
    BLANKS_SEE(CHOICE, "see Blanks", "type one there"),
    END_TO_END(SHOP_LENGTH),
    WIDTH_OVER(EXCESS),
    WIDTH_LIMIT(LENGTH),
    INNER_RIDE(ANGLE),
    INNER_RUNNING(ANGLE),
    INNER_RUNNING_OVER(ANGLE_EXCESS),
    OUTER_RIDE(ANGLE),
    OUTER_RUNNING(ANGLE),
    OUTER_RUNNING_OVER(ANGLE_EXCESS),
    INNER_SPEED_ANGLE(COUNT),
    INNER_SPEED_LIMIT(COUNT),
    OUTER_SPEED_ANGLE(COUNT),
    OUTER_SPEED_LIMIT(COUNT),
    CHECKS_OPEN(COUNT),
    CHECKS(COUNT),
    UNREAD(CHOICE, "Camber was", "Toe was", "Camber and toe were"),
    SLACK_IN(LENGTH),
    SLACK_IN_AT(NAME),
    SLACK_OUT(LENGTH),
    SLACK_OUT_AT(NAME);

    private final SlotKind kind;
    private final List<String> words;

    SideSlot(SlotKind kind, String... words) {
        this.kind = kind;
        this.words = List.of(words);
    }

    private static String[] parts() {
        return Arrays.stream(BoltPattern.Part.values())
                .map(BoltPattern.Part::words)
                .toArray(String[]::new);
    }

    private static String[] strains() {
        return Arrays.stream(BootStrain.Kind.values())
                .map(BootStrain.Kind::words)
                .toArray(String[]::new);
    }

    @Override
    public SlotKind kind() {
        return kind;
    }

    @Override
    public List<String> words() {
        return words;
    }

    /** What stands in it for a side on which the sentence's finding holds. */
    String text(SideFacts side, LengthUnit unit) {
        return switch (kind) {
            case NAME -> name(side, unit);
            case CHOICE -> words.get(choice(side));
            case SHOP_LENGTH ->
                    Wording.shopLength(number(side), shaft(side).window().increment(), unit);
            default -> kind.text(number(side), unit);
        };
    }

    private String name(SideFacts side, LengthUnit unit) {
        return switch (this) {
            case MISSING -> side.path().missing();
            case UNPLACED -> ReadingWording.unplaced(contradiction(side));
            case NEXT_HEIGHT -> ReadingWording.nextHeight(contradiction(side), unit);
            case SUSPECTS -> ReadingWording.listed(contradiction(side), unit);
            case STICK_SAYS ->
                    mockUp(side)
                            .unusable()
                            .map(reading -> MockUpWording.unusableAt(reading, unit))
                            .orElseGet(
                                    () ->
                                            MockUpWording.CONTRADICTS.text(
                                                    slot -> slot.text(side, unit)));
            case SPLINE_BLANK -> unmated(side).name();
            case SPLINE_CLASH -> MatingWording.clash(unmated(side).clash());
            case INNER_FLANGE_JOINT, OUTER_FLANGE_JOINT ->
                    MatingWording.measure(flange(side).part(), flange(side).jointHas(), unit);
            case INNER_FLANGE_HAS, OUTER_FLANGE_HAS ->
                    MatingWording.measure(flange(side).part(), flange(side).flangeHas(), unit);
            case INNER_STRAIN_BY, OUTER_STRAIN_BY -> strain(mating(side)).by(unit);
            case SHORTEST_AT -> Wording.at(shaft(side).window().shortest(), unit);
            case LONGEST_AT -> Wording.at(shaft(side).window().longest(), unit);
            case INNER_STEEPEST_AT -> Wording.at(shaft(side).inner().steepest(), unit);
            case OUTER_STEEPEST_AT -> Wording.at(shaft(side).outer().steepest(), unit);
            case MOUTH_AT -> Wording.at(mouth(shaft(side)), unit);
            case SLACK_IN_AT -> Wording.at(shaft(side).slackIn(), unit);
            case SLACK_OUT_AT -> Wording.at(shaft(side).slackOut(), unit);
            case WEAKEST_PART -> side.strength().weakest().orElseThrow().part();
            case TIRED_PART -> side.strength().returning().mostTired().orElseThrow().part();
            case BUMP_STOP -> side.travel().bump().orElseThrow().stop().words();
            case DROOP_STOP -> side.travel().droop().orElseThrow().stop().words();
            default -> throw new IllegalStateException(this + " is not a name");
        };
    }

    private static ReadingContradiction contradiction(SideFacts side) {
        return side.path().contradiction().orElseThrow();
    }

    private static MockUpFacts mockUp(SideFacts side) {
        return side.mockUp().orElseThrow();
    }

    /** Number of the word, from 0. */
    private int choice(SideFacts side) {
        return switch (this) {
            case BEYOND_WAY -> side.path().beyond().orElseThrow().way().ordinal();
            case SHORTER_WOULD -> shaft(side).window().lower().ordinal();
            case LONGER_WOULD -> shaft(side).window().upper().ordinal();
            case STICK_WRONG -> mockUp(side).unusable().isPresent() ? 1 : 0;
            case STICK_DOES -> mockUp(side).worst().end().ordinal();
            case STICK_WHEN -> mockUp(side).sooner() ? 0 : 1;
            case STICK_THAN -> mockUp(side).corrected() ? 1 : 0;
            case STICK_CHECK ->
                    mockUp(side)
                            .unusable()
                            .map(each -> Suspicion.values().length + each.flaw().ordinal())
                            .orElse(mockUp(side).suspicion().ordinal());
            case BLANKS_THERE, BLANKS_SEE -> shaft(side).blank().listed() ? 0 : 1;
            case MOUTH_END -> shaft(side).mouth().orElseThrow().end().ordinal();
            case SPLINE_END -> unmated(side).end().ordinal();
            case INNER_FLANGE_PART, OUTER_FLANGE_PART -> flange(side).part().ordinal();
            case INNER_STRAIN, OUTER_STRAIN -> strain(mating(side)).kind().ordinal();
            case LAND_END -> land(side).end().ordinal();
            case GROOVE_END -> met(shaft(side)).end().ordinal();
            // Nothing unread comes first among the facts, and is never said.
            case UNREAD -> side.path().unread().ordinal() - 1;
            default -> throw new IllegalStateException(this + " is not a choice");
        };
    }

    private double number(SideFacts side) {
        return switch (this) {
            case BEYOND_WANTED -> side.path().beyond().orElseThrow().wanted();
            case BEYOND_KNOWN -> side.path().beyond().orElseThrow().known();
            case CHECKS_OPEN -> side.path().checksOpen().size();
            case CHECKS -> MeasuringCheck.values().length;
            case STICK_BY -> mockUp(side).by();
            case STICK_AT -> mockUp(side).worst().reading().travel();
            case INNER_BOLT_SHARE -> side.strength().innerBolts().orElseThrow().share();
            case INNER_BOLT_MOST -> side.strength().innerBolts().orElseThrow().most();
            case INNER_BOLT_TORQUE -> side.strength().innerBolts().orElseThrow().mostTorque();
            case OUTER_BOLT_SHARE -> side.strength().outerBolts().orElseThrow().share();
            case OUTER_BOLT_MOST -> side.strength().outerBolts().orElseThrow().most();
            case OUTER_BOLT_TORQUE -> side.strength().outerBolts().orElseThrow().mostTorque();
            case WEAKEST_FACTOR -> side.strength().tooWeakFactor();
            case FACTOR_WANTED -> side.strength().factorWanted();
            case TIRED_FACTOR -> side.strength().returning().tooTiredFactor();
            case TIRED_WANTED -> side.strength().returning().factorWanted().orElseThrow();
            case INNER_SPEED_ANGLE -> above(innerSpeed(side).reached(shaft(side).inner().atRide()));
            case INNER_SPEED_LIMIT -> Math.floor(innerSpeed(side).most());
            case OUTER_SPEED_ANGLE -> above(outerSpeed(side).reached(shaft(side).outer().atRide()));
            case OUTER_SPEED_LIMIT -> Math.floor(outerSpeed(side).most());
            case BUMP_MISSING -> missing(side.travel().bump().orElseThrow());
            case BUMP_ENDS_AT -> side.travel().bump().orElseThrow().at();
            case DROOP_MISSING -> missing(side.travel().droop().orElseThrow());
            case DROOP_ENDS_AT -> side.travel().droop().orElseThrow().at();
            case CLEARANCE_MISSING ->
                    side.travel().ground().orElseThrow().wanted()
                            - side.travel().ground().orElseThrow().atBump();
            case CLEARANCE_WANTED -> side.travel().ground().orElseThrow().wanted();
            case INNER_BOOT_OVERLAP -> -side.travel().innerBoot().orElseThrow().value();
            case INNER_BOOT_AT -> side.travel().innerBoot().orElseThrow().travel();
            case OUTER_BOOT_OVERLAP -> -side.travel().outerBoot().orElseThrow().value();
            case OUTER_BOOT_AT -> side.travel().outerBoot().orElseThrow().travel();
            case WIDTH_OVER ->
                    side.width().orElseThrow().overall() - side.width().orElseThrow().limit();
            case WIDTH_LIMIT -> side.width().orElseThrow().limit();
            default -> number(shaft(side));
        };
    }

    private double number(ShaftFacts shaft) {
        return switch (this) {
            case SHORTFALL -> -shaft.window().width();
            case WINDOW_WIDTH -> shaft.window().width();
            case INCREMENT -> shaft.window().increment();
            case FINER_INCREMENT -> shaft.window().finerIncrement();
            case INNER_STEEPEST -> shaft.inner().steepest().value();
            case INNER_LIMIT -> shaft.inner().limit();
            case INNER_OVER -> shaft.inner().steepest().value() - shaft.inner().limit();
            case INNER_BENCH_END -> shaft.inner().benchEnd();
            case INNER_BENCH_OVER -> shaft.inner().steepest().value() - shaft.inner().benchEnd();
            case INNER_RIDE -> shaft.inner().atRide();
            case INNER_RUNNING -> shaft.inner().running();
            case INNER_RUNNING_OVER -> shaft.inner().atRide() - shaft.inner().running();
            case OUTER_STEEPEST -> shaft.outer().steepest().value();
            case OUTER_LIMIT -> shaft.outer().limit();
            case OUTER_OVER -> shaft.outer().steepest().value() - shaft.outer().limit();
            case OUTER_BENCH_END -> shaft.outer().benchEnd();
            case OUTER_BENCH_OVER -> shaft.outer().steepest().value() - shaft.outer().benchEnd();
            case OUTER_RIDE -> shaft.outer().atRide();
            case OUTER_RUNNING -> shaft.outer().running();
            case OUTER_RUNNING_OVER -> shaft.outer().atRide() - shaft.outer().running();
            case INNER_STRAIN_AT, OUTER_STRAIN_AT -> strain(shaft.mating()).worst().travel();
            case MOUTH_OVERLAP -> -mouth(shaft).value();
            case LAND_MISSING -> land(shaft).missing();
            case LAND_WANTED -> land(shaft).wanted();
            case GROOVE_OUTER_WALL -> met(shaft).cut().outer();
            case GROOVE_INNER_WALL -> met(shaft).cut().inner();
            case OLD_OUTER_WALL -> Math.max(0, met(shaft).old().outer());
            case OLD_INNER_WALL -> met(shaft).old().inner();
            case END_TO_END -> shaft.endToEnd();
            case SLACK_IN -> shaft.slackIn().value();
            case SLACK_OUT -> shaft.slackOut().value();
            default -> throw new IllegalStateException(this + " is not a number");
        };
    }

    /** The next whole number, so that what is above a limit reads so. */
    private static double above(double number) {
        return Double.parseDouble(Wording.roundedUp(number, 0));
    }

    private static ReturningFacts.SpeedLimit innerSpeed(SideFacts side) {
        return side.strength().returning().inner().orElseThrow();
    }

    private static ReturningFacts.SpeedLimit outerSpeed(SideFacts side) {
        return side.strength().returning().outer().orElseThrow();
    }

    private static double missing(EarlyEnd end) {
        return Math.abs(end.wanted() - end.at());
    }

    private static ShaftFacts shaft(SideFacts side) {
        return side.shaft().orElseThrow();
    }

    private static MatingFacts mating(SideFacts side) {
        return shaft(side).mating();
    }

    private static MatingFacts.UnmatedBlank unmated(SideFacts side) {
        return mating(side).blank().orElseThrow();
    }

    /** Of the end that the slot's name begins with. */
    private MatingFacts.UnmatedFlange flange(SideFacts side) {
        MatingFacts facts = mating(side);
        return (isInner() ? facts.innerFlange() : facts.outerFlange()).orElseThrow();
    }

    private BootStrain strain(MatingFacts facts) {
        return (isInner() ? facts.innerBoot() : facts.outerBoot()).orElseThrow();
    }

    private boolean isInner() {
        return name().startsWith("INNER_");
    }

    private static Binding mouth(ShaftFacts shaft) {
        return shaft.mouth().orElseThrow().gap();
    }

    private static ShaftFacts.Land land(SideFacts side) {
        return land(shaft(side));
    }

    private static ShaftFacts.MetGrooves met(ShaftFacts shaft) {
        return shaft.blank().groovesMet().orElseThrow();
    }

    private static ShaftFacts.Land land(ShaftFacts shaft) {
        return shaft.blank().thinLand().orElseThrow();
    }
}
