package shaftwright.live;

import shaftwright.formula.LengthTextFormula;
import shaftwright.formula.Pieces;
import shaftwright.units.InchStep;
import shaftwright.units.LengthUnit;

/**
 * Lengths in mm as fractions of an inch at the shop's step, which the cell {@code
 * shop_sixtyfourths} holds: the texts of {@link InchStep}.
 */
final class StepFormula {
    private StepFormula() {}

    /** How many sixty-fourths a step of so many mm has; 0 unless it is whole ones of an inch. */
    static String sixtyFourths(String millimetres) {
        return Pieces.of("inch", LengthUnit.INCH.mm())
                .and("count", millimetres + "/<inch>*64")
                .in(
                        """
                        IF(unit="inch",IFERROR(IF(ROUND(<count>,6)=ROUND(<count>,0),ROUND(<count>,0),
                        0),0),0)
                        """);
    }

    /** Whether a length is a whole number of steps, where there is a step. */
    static String isStep(String millimetres) {
        return steps(millimetres) + "=ROUND(" + steps(millimetres) + ",0)";
    }

    static String nearest(String millimetres) {
        return text("ROUND(" + steps(millimetres) + ",0)");
    }

    static String down(String millimetres) {
        return text("INT(" + steps(millimetres) + ")");
    }

    private static String steps(String millimetres) {
        return Pieces.of("inch", LengthUnit.INCH.mm())
                .in("ROUND(" + millimetres + "/<inch>*64/shop_sixtyfourths,6)");
    }

    private static String text(String steps) {
        return LengthTextFormula.inches(steps, "ABS(" + steps + ")*shop_sixtyfourths/64");
    }
}
