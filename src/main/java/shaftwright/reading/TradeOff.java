package shaftwright.reading;

import shaftwright.study.Price;

/**
 * A variant of a scenario that fits, and what it is worth.
 *
 * @param innerJoint name of the joint at the transaxle
 * @param outerJoint name of the joint at the hub
 * @param blanks blanks of the left and the right shaft
 * @param hubShift each hub further out than measured, mm
 * @param bump travel above ride, mm
 * @param droop travel below ride, mm, positive
 * @param leastSlack least slack before bottoming or pull-out on either side, mm
 * @param cost of the vehicle's set, not known where any of it is not priced
 */
public record TradeOff(
        String innerJoint,
        String outerJoint,
        String blanks,
        double hubShift,
        double bump,
        double droop,
        double leastSlack,
        Price cost) {
    /** From full droop to full bump, mm. */
    public double travel() {
        return bump + droop;
    }
}
