package shaftwright.study;

import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/**
 * The scale by which a shop changes lengths, and how far such a change is still a modification and
 * not another vehicle. Limits and steps: common practice, no source.
 *
 * @param fine step in which the least change is looked for, mm
 * @param coarse a change that is worth the work, mm
 * @param farthest that a drive unit or a hub is moved, mm
 * @param thickest spacer between joint and cup, mm
 */
record ShopScale(double fine, double coarse, double farthest, double thickest) {
    private static final ShopScale INCH = new ShopScale(25.4 / 16, 6.35, 76.2, 19.05);
    private static final ShopScale MILLIMETRE = new ShopScale(1, 5, 75, 20);

    static ShopScale of(LengthUnit unit) {
        return unit == LengthUnit.INCH ? INCH : MILLIMETRE;
    }

    /** An amount in words. Amounts are steps of the scale, so that rounding them hides nothing. */
    static String shown(double mm, LengthUnit unit) {
        return new Length(mm)
                .format(
                        unit == LengthUnit.INCH
                                ? LengthStyle.SIXTY_FOURTHS
                                : LengthStyle.MILLIMETRES);
    }
}
