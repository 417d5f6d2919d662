package shaftwright.shaft;

import shaftwright.joint.MountedJoint;

/**
 * The length chosen from a window.
 *
 * @param shortest the window's short end
 * @param longest the window's long end
 * @param target overall length that the bias asks for, mm, before rounding
 * @param chosen the length to make
 * @param rounded how the rounding went
 */
public record LengthChoice(
        ShaftLength shortest,
        ShaftLength longest,
        double target,
        ShaftLength chosen,
        Rounded rounded) {

    /**
     * Takes {@code E_lo + bias (E_hi − E_lo)} and rounds it to the increment without leaving the
     * window. With an empty window it is the same point between the crossed limits, unrounded.
     */
    public static LengthChoice of(
            LengthWindow window, MountedJoint inner, MountedJoint outer, LengthRule rule) {
        ShaftLength shortest = ShaftLength.ofSpacing(window.shortest().value(), inner, outer);
        ShaftLength longest = ShaftLength.ofSpacing(window.longest().value(), inner, outer);
        double low = shortest.endToEnd();
        double high = longest.endToEnd();
        double target = low + rule.bias() * (high - low);
        Rounded rounded = rounding(window, rule, low, high);
        double chosen = target;
        if (rounded == Rounded.TO_INCREMENT) {
            double increment = rule.increment();
            double nearest = Rounding.whole(Rounding.sixth(target / increment)) * increment;
            chosen = Math.min(Math.max(nearest, lowest(low, increment)), highest(high, increment));
        }
        return new LengthChoice(
                shortest, longest, target, ShaftLength.ofEndToEnd(chosen, inner, outer), rounded);
    }

    /** Whether an increment was asked for and the window holds none. */
    public boolean noIncrementFits() {
        return rounded == Rounded.NO_INCREMENT_FITS;
    }

    private static Rounded rounding(LengthWindow window, LengthRule rule, double low, double high) {
        if (!window.fits()) {
            return Rounded.NO_WINDOW;
        }
        if (rule.increment() == 0) {
            return Rounded.NOT_ASKED;
        }
        return lowest(low, rule.increment()) <= highest(high, rule.increment())
                ? Rounded.TO_INCREMENT
                : Rounded.NO_INCREMENT_FITS;
    }

    private static double lowest(double low, double increment) {
        return Math.ceil(Rounding.sixth(low / increment)) * increment;
    }

    private static double highest(double high, double increment) {
        return Math.floor(Rounding.sixth(high / increment)) * increment;
    }
}
