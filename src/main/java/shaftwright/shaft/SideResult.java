package shaftwright.shaft;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import shaftwright.joint.BootStretch;
import shaftwright.suspension.NoLateralReachException;

/**
 * Everything computed for one side of one scenario.
 *
 * @param setup what it was computed from
 * @param positions the position table, droop first
 * @param window the spacings that a shaft may have: in all states, where several are asked for
 * @param choice the length chosen inside it
 * @param blankReviews what each blank is good for
 * @param unmated the blank that would be followed if splines mated by their count alone; empty
 *     where one serves anyway, or where none would
 * @param plan the blank and cuts to follow, when a blank serves
 * @param length the shaft's final length: the plan's, or the chosen one when no blank serves
 * @param fitted the position table with that shaft in. Its limits are those of the stubs that the
 *     joints are meant to have; an existing groove gives the same stub or a shorter one, which can
 *     only add inward travel
 * @param states the shaft in every state, where several are asked for at once: extremes are then
 *     those of all states, while both tables are of the setup's own
 */
public record SideResult(
        SideSetup setup,
        List<Position> positions,
        LengthWindow window,
        LengthChoice choice,
        List<BlankReview> blankReviews,
        Optional<BlankReview> unmated,
        Optional<CutPlan> plan,
        ShaftLength length,
        List<FittedPosition> fitted,
        Optional<StatesResult> states) {

    public SideResult {
        positions = List.copyOf(positions);
        blankReviews = List.copyOf(blankReviews);
        fitted = List.copyOf(fitted);
    }

    /** Position table, window, length, blank, and the table with the shaft in, in one state. */
    public static SideResult of(
            SideSetup setup,
            LengthRule rule,
            RingSpec ring,
            List<Blank> blanks,
            OptionalInt onlyBlank) {
        return of(setup, List.of(), rule, ring, blanks, onlyBlank);
    }

    /**
     * The same in several states at once.
     *
     * @param setup one side of one scenario
     * @param states the states in which the shaft must serve; none for the setup's own alone
     * @param rule how the length is chosen
     * @param ring rings and grooves of the shaft
     * @param blanks the builder's list, possibly empty
     * @param onlyBlank row of the only blank to consider (none is when the list has no such row),
     *     or empty for the best
     * @throws NoLateralReachException if the hub path has none somewhere
     * @throws UnreachableCentresException if no shaft can join the joint centres
     */
    public static SideResult of(
            SideSetup setup,
            List<StateSetup> states,
            LengthRule rule,
            RingSpec ring,
            List<Blank> blanks,
            OptionalInt onlyBlank) {
        List<Position> positions = Position.table(setup);
        LengthWindow own = LengthWindow.of(positions);
        Optional<StatesWindow> over =
                states.isEmpty() ? Optional.empty() : Optional.of(StatesWindow.of(states));
        LengthWindow window = over.map(own::narrowedTo).orElse(own);
        LengthChoice choice = LengthChoice.of(window, setup.inner(), setup.outer(), rule);
        ShaftOrder order = new ShaftOrder(choice, setup.inner(), setup.outer(), ring);
        List<BlankReview> reviews = BlankReview.all(blanks, order);
        Optional<CutPlan> plan = BlankReview.best(reviews, onlyBlank);
        ShaftLength length = plan.isPresent() ? plan.get().length() : choice.chosen();
        List<FittedPosition> fitted = FittedPosition.table(setup, positions, length.spacing());
        return new SideResult(
                setup,
                positions,
                window,
                choice,
                reviews,
                BlankReview.unmated(reviews, onlyBlank),
                plan,
                length,
                fitted,
                over.map(all -> StatesResult.of(all, length.spacing())));
    }

    /** With the wheel hanging. */
    public FittedPosition atDroop() {
        return fitted.get(TravelSteps.DROOP);
    }

    /** At static height. */
    public FittedPosition atRide() {
        return fitted.get(TravelSteps.RIDE);
    }

    /** With the wheel fully up. */
    public FittedPosition atBump() {
        return fitted.get(TravelSteps.BUMP);
    }

    /** Least inward slack of all positions, mm. */
    public Binding leastSlackIn() {
        return states.map(StatesResult::slackIn).orElseGet(() -> least(FittedPosition::slackIn));
    }

    /** Least outward slack of all positions, mm. */
    public Binding leastSlackOut() {
        return states.map(StatesResult::slackOut).orElseGet(() -> least(FittedPosition::slackOut));
    }

    /** Least free play of all positions, mm. */
    public Binding leastFreePlay() {
        return states.map(StatesResult::freePlay).orElseGet(() -> least(FittedPosition::freePlay));
    }

    /** Steepest angle of the inner joint with the shaft in, rad. */
    public Binding steepestInner() {
        return states.map(StatesResult::steepestInner)
                .orElseGet(() -> greatest(FittedPosition::innerAngle));
    }

    /** Steepest angle of the outer joint with the shaft in, rad. */
    public Binding steepestOuter() {
        return states.map(StatesResult::steepestOuter)
                .orElseGet(() -> greatest(FittedPosition::outerAngle));
    }

    /** Least clearance in either cup's mouth, mm; empty when there is nothing to touch. */
    public Optional<Binding> leastMouthClearance() {
        return mouth().map(MouthGap::gap);
    }

    /** The same with the cup that it is met in. */
    public Optional<MouthGap> mouth() {
        return states.isPresent() ? states.get().mouth() : ownMouth();
    }

    private Optional<MouthGap> ownMouth() {
        return finite(least(FittedPosition::leastMouth))
                .map(gap -> new MouthGap(gap, fitted.get(gap.row()).tighterMouth()));
    }

    /** The inner joint's angle at static height: what it runs at for good, rad. */
    public double innerAtRide() {
        return states.map(StatesResult::innerAtRide).orElseGet(() -> atRide().innerAngle());
    }

    /** The same of the outer joint, rad. */
    public double outerAtRide() {
        return states.map(StatesResult::outerAtRide).orElseGet(() -> atRide().outerAngle());
    }

    /** The row of a position table at or beside which an end of the window is set. */
    public Position at(Binding end) {
        return states.map(all -> all.window().at(end)).orElseGet(() -> positions.get(end.row()));
    }

    /** Greatest of a boot's figure over the travel; negative infinity when it is not judged. */
    public Binding greatestOfBoot(ShaftEnd end, ToDoubleFunction<BootStretch> figure) {
        return greatest(
                row -> row.boot(end).map(figure::applyAsDouble).orElse(Double.NEGATIVE_INFINITY));
    }

    /** A boot's shortest fibre over the travel, mm; infinity while its seats are not known. */
    public double shortestFibre(ShaftEnd end) {
        return -greatestOfBoot(end, boot -> -boot.shortest()).value();
    }

    /** Least reserve of the outward stops that are not hard, mm; empty when all are. */
    public Optional<Binding> leastSoftReserve() {
        return states.isPresent()
                ? states.get().softReserve()
                : finite(least(FittedPosition::softReserve));
    }

    /** Gap between the rims of the two cups at a position, mm; empty when a rim is not known. */
    public OptionalDouble mouthGap(int row) {
        OptionalDouble inner = setup.inner().joint().mouth();
        OptionalDouble outer = setup.outer().joint().mouth();
        return inner.isEmpty() || outer.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        positions.get(row).line().length(inner.getAsDouble(), outer.getAsDouble()));
    }

    /**
     * The widest of them and where in the travel it is; empty when a rim is not known. A shaft no
     * longer than this goes in between the bolted cups.
     */
    public Optional<Binding> widestMouthGap() {
        if (mouthGap(0).isEmpty()) {
            return Optional.empty();
        }
        int widest = 0;
        for (int row = 1; row < positions.size(); row++) {
            if (mouthGap(row).getAsDouble() > mouthGap(widest).getAsDouble()) {
                widest = row;
            }
        }
        return Optional.of(
                new Binding(
                        mouthGap(widest).getAsDouble(), widest, positions.get(widest).travel()));
    }

    /** Plunge used over the travel, mm: the greatest centre distance less the least. */
    public double plungeUsed() {
        DoubleSummaryStatistics distances =
                positions.stream().mapToDouble(Position::distance).summaryStatistics();
        return distances.getMax() - distances.getMin();
    }

    private Binding least(ToDoubleFunction<FittedPosition> column) {
        return extreme(column, 1);
    }

    private Binding greatest(ToDoubleFunction<FittedPosition> column) {
        return extreme(column, -1);
    }

    private Binding extreme(ToDoubleFunction<FittedPosition> column, int sense) {
        int found = 0;
        double extreme = column.applyAsDouble(fitted.get(0));
        for (int row = 1; row < fitted.size(); row++) {
            double value = column.applyAsDouble(fitted.get(row));
            if (sense * value < sense * extreme) {
                found = row;
                extreme = value;
            }
        }
        return new Binding(extreme, found, fitted.get(found).travel());
    }

    private static Optional<Binding> finite(Binding binding) {
        return Double.isInfinite(binding.value()) ? Optional.empty() : Optional.of(binding);
    }
}
