package shaftwright.workbook;

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
        return this == LENGTH || this == ANGLE || this == NUMBER || this == COUNT || this == MONEY;
    }

    /** The bare number that stands for a value in mm, rad or plain in a workbook of this unit. */
    public double typed(double number, LengthUnit bare) {
        return switch (this) {
            case LENGTH -> number / bare.mm();
            case ANGLE -> Math.toDegrees(number);
            default -> number;
        };
    }
}
