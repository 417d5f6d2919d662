package shaftwright.workbook.live;

import java.math.BigDecimal;
import java.math.RoundingMode;
import shaftwright.units.LengthUnit;

/**
 * Numbers inside sentences, once as a formula and once as the core writes them. The formula rounds
 * before it formats and never uses a locale's separators, so that both give the same text
 * everywhere.
 */
final class Phrases {
    private static final int SETTLED = 8;

    private Phrases() {}

    /** Decimals of a length in a sentence. */
    static int decimals(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 2 : 1;
    }

    /** A length in the workbook's unit, with the unit. */
    static String length(String millimetres) {
        return "FIXED(ROUND(ROUND(("
                + millimetres
                + ")/tape_mm,8),unit_decimals),unit_decimals,1)&unit_word";
    }

    /** The same text by the core. */
    static String length(double millimetres, LengthUnit unit) {
        return rounded(millimetres / unit.mm(), decimals(unit)) + " " + unit.symbol();
    }

    /** An angle in degrees, with the sign. */
    static String angle(String radians) {
        return "FIXED(ROUND(ROUND(DEGREES(" + radians + "),8),1),1,1)&\"°\"";
    }

    static String angle(double radians) {
        return rounded(Math.toDegrees(radians), 1) + "°";
    }

    /** A travel: "3.20 in bump", "ride height". */
    static String travel(String millimetres) {
        return "IF(ROUND(ROUND(ABS("
                + millimetres
                + ")/tape_mm,8),unit_decimals)=0,\"ride height\","
                + length("ABS(" + millimetres + ")")
                + "&IF("
                + millimetres
                + ">0,\" bump\",\" droop\"))";
    }

    static String travel(double millimetres, LengthUnit unit) {
        double size = Math.abs(millimetres);
        if (decimal(size / unit.mm(), decimals(unit)).signum() == 0) {
            return "ride height";
        }
        return length(size, unit) + (millimetres > 0 ? " bump" : " droop");
    }

    /**
     * Halves away from zero, as spreadsheets round. Lengths off a tape end in halves often, and
     * have been through millimetres: what that did to the last digits is settled first.
     */
    static String rounded(double value, int decimals) {
        return decimal(value, decimals).toPlainString();
    }

    private static BigDecimal decimal(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(SETTLED, RoundingMode.HALF_UP)
                .setScale(decimals, RoundingMode.HALF_UP);
    }
}
