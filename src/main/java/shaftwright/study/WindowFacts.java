package shaftwright.study;

import shaftwright.shaft.Binding;
import shaftwright.shaft.LengthRule;
import shaftwright.shaft.LengthWindow;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.Position;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.SideResult;

/**
 * The length window and what was made of it; mm.
 *
 * @param shortest shortest race spacing that holds, margins kept
 * @param lower what sets it
 * @param longest longest race spacing that holds, margins kept
 * @param upper what sets it
 * @param increment what the shop cuts lengths to, 0 for none
 * @param incrementFits whether the window holds a multiple of it
 */
public record WindowFacts(
        Binding shortest,
        Lower lower,
        Binding longest,
        Upper upper,
        double increment,
        boolean incrementFits) {

    /** What a shorter shaft would do. */
    public enum Lower {
        PULLS_OUT,
        PASSES_INNER_SOFT_STOP,
        PASSES_OUTER_SOFT_STOP;

        static Lower of(Position position) {
            if (!position.softStopBinds()) {
                return PULLS_OUT;
            }
            boolean inner =
                    position.innerPulled().isPresent()
                            && position.innerPulled().get().spacing()
                                    == position.shortestBySoftStops();
            return inner ? PASSES_INNER_SOFT_STOP : PASSES_OUTER_SOFT_STOP;
        }
    }

    /** What a longer shaft would do. */
    public enum Upper {
        RACES_BOTTOM,
        INNER_END_BOTTOMS,
        OUTER_END_BOTTOMS,
        BOTH_ENDS_BOTTOM;

        static Upper of(boolean innerEnd, boolean outerEnd) {
            if (innerEnd) {
                return outerEnd ? BOTH_ENDS_BOTTOM : INNER_END_BOTTOMS;
            }
            return outerEnd ? OUTER_END_BOTTOMS : RACES_BOTTOM;
        }
    }

    /** The window of a side as it was computed. */
    static WindowFacts of(SideResult result, LengthRule rule) {
        LengthWindow window = result.window();
        return new WindowFacts(
                window.shortest(),
                lower(result),
                window.longest(),
                upper(result),
                rule.increment(),
                result.choice().rounded() == Rounded.TO_INCREMENT);
    }

    /** What sets the lower end of a side's window. */
    public static Lower lower(SideResult result) {
        return Lower.of(result.at(result.window().shortest()));
    }

    /** What sets its upper end. */
    public static Upper upper(SideResult result) {
        PlungeState inward = result.at(result.window().longest()).inward();
        return Upper.of(
                result.setup().inner().endBottoms(inward.innerAngle()),
                result.setup().outer().endBottoms(inward.outerAngle()));
    }

    /** A window narrower than this is taken for this wide when a finer increment is looked for. */
    private static final double LEAST_WIDTH = 0.001;

    /** Whether any length works. */
    public boolean fits() {
        return shortest.value() <= longest.value();
    }

    double width() {
        return longest.value() - shortest.value();
    }

    boolean noIncrement() {
        return fits() && increment > 0 && !incrementFits;
    }

    /** The increment halved until it is less than the window is wide, so that one must fit. */
    double finerIncrement() {
        double ratio = increment / Math.max(width(), LEAST_WIDTH);
        double settled = Math.rint(Math.log(ratio) / Math.log(2) * 1e9) / 1e9;
        return increment / Math.pow(2, Math.floor(settled) + 1);
    }
}
