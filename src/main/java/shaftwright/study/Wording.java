package shaftwright.study;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import shaftwright.shaft.Binding;
import shaftwright.units.InchStep;
import shaftwright.units.LengthUnit;

/**
 * Numbers as they stand in sentences: lengths in the workbook's unit, angles in degrees. Halves
 * round away from zero, as spreadsheets round. Lengths off a tape end in halves often, and have
 * been through millimetres: what that did to the last digits is settled first.
 */
public final class Wording {
    /** N·m in a pound-force foot: 4.4482216152605 N times 0.3048 m, both exact. */
    public static final double POUND_FOOT = 1.3558179483314003;

    /** Decimals of an angle in degrees. */
    public static final int ANGLE_DECIMALS = 1;

    private static final int SETTLED = 8;

    private Wording() {}

    /** Decimals of a length in a sentence. */
    public static int decimals(LengthUnit unit) {
        return unit == LengthUnit.INCH ? 2 : 1;
    }

    /** A length in mm: "25.31 in", "642.9 mm". */
    public static String length(double millimetres, LengthUnit unit) {
        return rounded(millimetres / unit.mm(), decimals(unit)) + " " + unit.symbol();
    }

    /**
     * A shaft's length in mm: "25 5/16 in" where inch workbooks cut to steps of an inch and it is a
     * whole number of them, else in decimals.
     *
     * @param step what the shop cuts lengths to, mm, 0 for none
     */
    public static String shopLength(double millimetres, double step, LengthUnit unit) {
        return Optional.of(unit)
                .filter(LengthUnit.INCH::equals)
                .flatMap(inch -> InchStep.of(step))
                .flatMap(inches -> inches.exact(millimetres))
                .orElseGet(() -> length(millimetres, unit));
    }

    /** The same to two decimals more. */
    public static String fineLength(double millimetres, LengthUnit unit) {
        return rounded(millimetres / unit.mm(), decimals(unit) + 2) + " " + unit.symbol();
    }

    /** A length by which something is over or short: "less than 0.01 in" rather than 0. */
    public static String excess(double millimetres, LengthUnit unit) {
        return atLeastOneStep(millimetres / unit.mm(), decimals(unit), " " + unit.symbol());
    }

    /** An angle in rad: "22.4°". */
    public static String angle(double radians) {
        return rounded(Math.toDegrees(radians), ANGLE_DECIMALS) + "°";
    }

    /** An angle by which something is over: "less than 0.1°" rather than 0. */
    public static String angleExcess(double radians) {
        return atLeastOneStep(Math.toDegrees(radians), ANGLE_DECIMALS, "°");
    }

    private static String atLeastOneStep(double value, int decimals, String unit) {
        BigDecimal rounded = decimal(value, decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0
                ? "less than " + BigDecimal.ONE.movePointLeft(decimals).toPlainString() + unit
                : rounded.toPlainString() + unit;
    }

    /** A travel in mm: "3.20 in bump", "ride height". */
    public static String travel(double millimetres, LengthUnit unit) {
        double size = Math.abs(millimetres);
        if (decimal(size / unit.mm(), decimals(unit), RoundingMode.HALF_UP).signum() == 0) {
            return "ride height";
        }
        return length(size, unit) + (millimetres > 0 ? " bump" : " droop");
    }

    /** Where an extreme is met: "4.75 in droop (full left lock, under drive)". */
    public static String at(Binding binding, LengthUnit unit) {
        String travel = travel(binding.travel(), unit);
        return binding.state().isEmpty() ? travel : travel + " (" + binding.state() + ")";
    }

    /** A torque in N·m, rounded down to a whole number: "43 lb·ft". */
    public static String torque(double newtonMetres, LengthUnit unit) {
        return unit == LengthUnit.INCH
                ? roundedDown(newtonMetres / POUND_FOOT, 0) + " lb·ft"
                : roundedDown(newtonMetres, 0) + " N·m";
    }

    public static String rounded(double value, int decimals) {
        return decimal(value, decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** A safety factor to hundredths; one that fails, below 1, never reads as 1. */
    public static String factor(double value) {
        return value < 1 ? rounded(Math.min(value, 0.99), 2) : rounded(value, 2);
    }

    /** Toward zero. */
    static String roundedDown(double value, int decimals) {
        return decimal(value, decimals, RoundingMode.DOWN).toPlainString();
    }

    /** Away from zero. */
    static String roundedUp(double value, int decimals) {
        return decimal(value, decimals, RoundingMode.UP).toPlainString();
    }

    private static BigDecimal decimal(double value, int decimals, RoundingMode mode) {
        return BigDecimal.valueOf(value)
                .setScale(SETTLED, RoundingMode.HALF_UP)
                .setScale(decimals, mode);
    }
}
