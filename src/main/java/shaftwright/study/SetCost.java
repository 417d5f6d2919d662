package shaftwright.study;

import java.util.ArrayList;
import java.util.List;

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
