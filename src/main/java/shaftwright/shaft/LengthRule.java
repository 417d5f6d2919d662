package shaftwright.shaft;

import shaftwright.units.Require;

/**
 * How a length is chosen inside the window.
 *
 * @param bias 0 for the short end, 1 for the long end. A builder leans to the short end, since
 *     bottoming breaks the transaxle while pull-out tears a boot
 * @param increment what the shop cuts overall lengths to, mm; 0 for no rounding
 */
public record LengthRule(double bias, double increment) {
    public LengthRule {
        Require.within("length bias", bias, 0, 1);
        Require.notNegative("shop increment", increment);
    }
}
