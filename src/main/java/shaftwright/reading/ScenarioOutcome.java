package shaftwright.reading;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import shaftwright.book.CellPlace;
import shaftwright.build.Side;
import shaftwright.build.Wheel;
import shaftwright.contract.Contract;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.ScenarioFacts;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.SetCost;
import shaftwright.study.SideDrawing;
import shaftwright.study.StrengthStudy;
import shaftwright.study.WheelFigures;

/** One scenario column: its tyre, the rows of the parts it picks, both sides, widths and cost. */
public final class ScenarioOutcome {
    /** Rows, from 1, of the picked parts; 0 for none. */
    record Picks(int innerJoint, int outerJoint, int innerBoot, int outerBoot, int blank) {}

    /**
     * Tyre and wheel.
     *
     * @param nominalDiameter by the tyre's size, mm, NaN when no size is given or it states none
     * @param nominalWidth by the tyre's size, mm, NaN when no size is given
     * @param wheel as it counts
     * @param figures what it does to the ground clearance
     * @param clearanceAtBump mm, empty while it is not known
     * @param track mm, empty while it is not known
     * @param overall over both tyres, mm, empty while it is not known
     */
    record WheelOutcome(
            double nominalDiameter,
            double nominalWidth,
            Wheel wheel,
            WheelFigures figures,
            OptionalDouble clearanceAtBump,
            OptionalDouble track,
            OptionalDouble overall) {}

    private final int number;
    private final boolean used;
    private final String trouble;
    private final Picks picks;
    private final WheelOutcome wheel;
    private final SideOutcome left;
    private final SideOutcome right;
    private final SetCost cost;

    /** Studied when it is first asked for. */
    private final Supplier<StrengthStudy> study;

    private StrengthStudy strength;

    ScenarioOutcome(
            int number,
            boolean used,
            String trouble,
            Picks picks,
            WheelOutcome wheel,
            SideOutcome left,
            SideOutcome right,
            SetCost cost,
            Supplier<StrengthStudy> study) {
        this.number = number;
        this.used = used;
        this.trouble = trouble;
        this.picks = picks;
        this.wheel = wheel;
        this.left = left;
        this.right = right;
        this.cost = cost;
        this.study = study;
    }

    /** Letter of a zero-based scenario. */
    public static String letter(int scenario) {
        return CellPlace.columnLetters(scenario);
    }

    /** Zero-based scenario of a letter in either case, empty when it is no letter of one. */
    public static OptionalInt number(String letter) {
        return IntStream.range(0, Contract.MOST_SCENARIOS)
                .filter(scenario -> letter(scenario).equalsIgnoreCase(letter))
                .findFirst();
    }

    /** Zero-based column. */
    public int number() {
        return number;
    }

    public String letter() {
        return letter(number);
    }

    /** Whether the column has a name. */
    public boolean used() {
        return used;
    }

    /** What keeps both sides from being computed, empty when nothing does. */
    public String trouble() {
        return trouble;
    }

    public SideOutcome side(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /**
     * The verdict on it, while it is in use.
     *
     * @param widthLimit over both tyres, mm, empty when there is none
     */
    ScenarioVerdict verdict(OptionalDouble widthLimit) {
        ScenarioFacts facts =
                ScenarioFacts.of(strength(), left.study(), wheel.overall(), widthLimit);
        return new ScenarioVerdict(left.verdict(facts), right.verdict(facts));
    }

    /** Whether both sides have a result. */
    public boolean computed() {
        return left.result().isPresent() && right.result().isPresent();
    }

    /** Least slack of both sides before bottoming, beyond their margins, mm. */
    public OptionalDouble spareInward() {
        return spare(side -> side.leastSlackIn().value(), SideOutcome::marginInward);
    }

    /** The same before pull-out. */
    public OptionalDouble spareOutward() {
        return spare(side -> side.leastSlackOut().value(), SideOutcome::marginOutward);
    }

    private OptionalDouble spare(
            ToDoubleFunction<SideResult> slack, ToDoubleFunction<SideOutcome> margin) {
        return Stream.of(left, right)
                .filter(side -> computed())
                .mapToDouble(
                        side ->
                                slack.applyAsDouble(side.result().orElseThrow())
                                        - margin.applyAsDouble(side))
                .min();
    }

    /** Row, from 1, of the joint at an end; 0 for none. */
    public int jointRow(ShaftEnd end) {
        return end == ShaftEnd.INNER ? picks.innerJoint() : picks.outerJoint();
    }

    /** The same of the boot. */
    public int bootRow(ShaftEnd end) {
        return end == ShaftEnd.INNER ? picks.innerBoot() : picks.outerBoot();
    }

    /** Row, from 1, of the wanted blank; 0 for the best. */
    public int blankRowWanted() {
        return picks.blank();
    }

    /** By size, mm, NaN when no size is given or it states none. */
    public double tyreNominalDiameter() {
        return wheel.nominalDiameter();
    }

    /** By size, mm, NaN when no size is given. */
    public double tyreNominalWidth() {
        return wheel.nominalWidth();
    }

    /** Measured or by size, mm. */
    public double tyreSectionWidth() {
        return wheel.wheel().sectionWidth().orElse(Double.NaN);
    }

    /** Measured or by size, mm. */
    public double tyreDiameter() {
        return wheel.wheel().diameter().orElse(Double.NaN);
    }

    /** What this tyre adds to the radius of the one that the clearance was measured with, mm. */
    public double tyreRadiusGain() {
        return wheel.figures().radiusGain();
    }

    /** Outer datum to wheel centre along the stub axis, mm. */
    public double wheelArm() {
        return wheel.figures().arm();
    }

    /** Its wheel as it is drawn. */
    SideDrawing.Wheel drawnWheel() {
        return SideDrawing.Wheel.of(wheel.figures(), wheel.wheel());
    }

    public double clearanceAtRide() {
        return wheel.figures().clearanceAtRide().orElse(Double.NaN);
    }

    public double clearanceAtBump() {
        return wheel.clearanceAtBump().orElse(Double.NaN);
    }

    public double track() {
        return wheel.track().orElse(Double.NaN);
    }

    /** Track and tyre section, mm. */
    public double overallWidth() {
        return wheel.overall().orElse(Double.NaN);
    }

    /** What the vehicle's set costs; none in a column that is not used. */
    public SetCost cost() {
        return cost;
    }

    /** What its parts carry; nothing is given in a column that is not used. */
    public StrengthStudy strength() {
        if (strength == null) {
            strength = used ? study.get() : StrengthStudy.UNKNOWN;
        }
        return strength;
    }
}
