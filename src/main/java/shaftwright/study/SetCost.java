package shaftwright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.build.Spares;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.SideResult;

/**
 * What a vehicle's set costs: two shafts, four joints, four boot kits and whatever else the builder
 * adds. A total is a number only when all of it is priced; else it says what it leaves out.
 *
 * @param shafts the pair
 * @param joints all four
 * @param boots kits of all joints that have one
 * @param other the builder's own addition, in the builder's currency
 * @param spares to be carried
 */
public record SetCost(Price shafts, Price joints, Price boots, double other, Price spares) {
    /** Of a scenario that is not used. */
    public static final SetCost NONE =
            new SetCost(
                    Price.lacking(""), Price.lacking(""), Price.lacking(""), 0, Price.lacking(""));

    /**
     * What a set costs.
     *
     * @param shafts the pair
     * @param inner parts at the transaxle, of which a vehicle has two
     * @param outer parts at the hub, likewise
     * @param other the builder's own addition, in the builder's currency
     */
    public static SetCost of(
            Price shafts, PartPrices inner, PartPrices outer, double other, Spares spares) {
        Price carried =
                shafts.times(spares.shafts() / 2.0)
                        .plus(inner.jointPrice().times(spares.innerJoints()))
                        .plus(outer.jointPrice().times(spares.outerJoints()))
                        .plus(inner.boot().times(spares.innerBoots()))
                        .plus(outer.boot().times(spares.outerBoots()));
        Price joints =
                inner.joint().isPresent() && outer.joint().isPresent()
                        ? inner.jointPrice().plus(outer.jointPrice()).times(2)
                        : Price.lacking("no joint");
        return new SetCost(
                shafts,
                joints,
                inner.boot().plus(outer.boot()).times(2),
                other,
                carried.isKnown() ? carried : Price.lacking(Price.NOT_PRICED));
    }

    /** The pair's own price, else those of the blanks that both shafts are cut from. */
    public static Price shafts(
            OptionalDouble pair, Optional<SideResult> left, Optional<SideResult> right) {
        if (pair.isPresent()) {
            return Price.of(pair.getAsDouble());
        }
        if (left.isEmpty() || right.isEmpty()) {
            return Price.lacking("no shaft");
        }
        Optional<CutPlan> one = left.get().plan();
        Optional<CutPlan> other = right.get().plan();
        return one.isPresent() && other.isPresent()
                ? Price.typed(one.get().blank().price())
                        .plus(Price.typed(other.get().blank().price()))
                : Price.lacking("no blank");
    }

    /** For one vehicle, without spares. */
    public Price total() {
        return missing().isEmpty()
                ? shafts.plus(joints).plus(boots).plus(Price.of(other))
                : Price.lacking(without());
    }

    /** The same with the spares. */
    public Price withSpares() {
        Price both = total().plus(spares);
        return both.isKnown() ? both : Price.lacking(Price.NOT_PRICED);
    }

    /** What is priced of it, in the builder's currency. */
    public double priced() {
        double sum = other;
        for (Price price : List.of(shafts, joints, boots)) {
            sum += price.amount().orElse(0);
        }
        return sum;
    }

    /** What of it is not priced: shafts, joints, boots. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (!shafts.isKnown()) {
            missing.add("shafts");
        }
        if (!joints.isKnown()) {
            missing.add("joints");
        }
        if (!boots.isKnown()) {
            missing.add("boots");
        }
        return missing;
    }

    private String without() {
        return priced() == 0
                ? Price.NOT_PRICED
                : Price.money(priced()) + " without " + String.join(", ", missing());
    }
}
