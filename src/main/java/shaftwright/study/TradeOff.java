package shaftwright.study;

import shaftwright.build.Scenario;
import shaftwright.shaft.Blank;

/**
 * A variant of a scenario that fits, and what it is worth.
 *
 * @param scenario the variant
 * @param bump travel above ride, mm
 * @param left blank of the left shaft
 * @param right blank of the right shaft
 * @param leastSlack least slack before bottoming or pull-out on either side, mm
 * @param cost of the vehicle's set, not known where any of it is not priced
 */
public record TradeOff(
        Scenario scenario, double bump, Blank left, Blank right, double leastSlack, Price cost) {
    /** Travel below ride, mm, above zero. */
    public double droop() {
        return scenario.travel().droop();
    }

    /** From full droop to full bump, mm. */
    public double travel() {
        return bump + droop();
    }
}
