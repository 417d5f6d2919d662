package shaftwright.contract;

import shaftwright.study.Wording;
import shaftwright.units.LengthUnit;

/** What a builder types into an input cell. */
public enum InputKind {
    /** A tape text such as {@code 25 3/8}, {@code 645 mm}, or a number in the workbook's unit. */
    LENGTH("mm"),
    /** A number of degrees. */
    ANGLE("deg"),
    /** A plain number without a unit. */
    NUMBER(""),
    /** A whole number. */
    COUNT(""),
    /** An amount in the builder's currency. */
    MONEY("money"),
    /** A torque: N·m, in a workbook of inches lb·ft. */
    TORQUE("N·m"),
    /** Weight on a wheel: kg, in a workbook of inches lb. */
    LOAD("kg"),
    /** A stress: MPa, in a workbook of inches ksi. */
    STRESS("MPa"),
    /** Road speed: km/h, in a workbook of inches mph. */
    SPEED("km/h"),
    /** Density: kg/m³, in a workbook of inches lb/in³. */
    DENSITY("kg/m³"),
    /** Free text. */
    TEXT(""),
    /** One of a fixed list of words. */
    CHOICE(""),
    /** The name of a row in another table of the workbook. */
    PICK(""),
    /** A tyre size as printed on its side. */
    TYRE("");

    private final String unit;

    InputKind(String unit) {
        this.unit = unit;
    }

    /** Unit in which the value is handed on: {@code mm}, {@code deg}, {@code money} or empty. */
    public String unit() {
        return unit;
    }

    /** Whether the cell's content becomes a number. */
    public boolean numeric() {
        return switch (this) {
            case TEXT, CHOICE, PICK, TYRE -> false;
            default -> true;
        };
    }

    /**
     * What a bare number is multiplied with to give {@link #unit()}: 1 but for lb·ft and the like.
     */
    public double factor(LengthUnit bare) {
        return bare == LengthUnit.INCH ? inchFactor() : 1;
    }

    /** The same in a workbook of inches; international pound and foot, standard gravity. */
    public double inchFactor() {
        return switch (this) {
            case TORQUE -> Wording.POUND_FOOT;
            case LOAD -> 0.45359237;
            case STRESS -> 6.894757293168361;
            case SPEED -> 1.609344;
            case DENSITY -> 27679.904710203125;
            default -> 1;
        };
    }

    /** Unit of a bare number, empty where it has none of its own. */
    public String symbol(LengthUnit bare) {
        if (this == LENGTH) {
            return bare.symbol();
        }
        boolean inches = bare == LengthUnit.INCH;
        return switch (this) {
            case ANGLE -> "°";
            case TORQUE -> inches ? "lb·ft" : unit;
            case LOAD -> inches ? "lb" : unit;
            case STRESS -> inches ? "ksi" : unit;
            case SPEED -> inches ? "mph" : unit;
            case DENSITY -> inches ? "lb/in³" : unit;
            default -> "";
        };
    }

    /** The bare number that stands for a value in mm, rad or plain in a workbook of this unit. */
    public double typed(double number, LengthUnit bare) {
        return switch (this) {
            case LENGTH -> number / bare.mm();
            case ANGLE -> Math.toDegrees(number);
            default -> number / factor(bare);
        };
    }
}
