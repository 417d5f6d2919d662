package shaftwright.study;

import shaftwright.units.LengthUnit;

/** What stands in a slot of a sentence, and how it is written. */
public enum SlotKind {
    /** A length in mm, written in the workbook's unit. */
    LENGTH,
    /** A length in mm to two decimals more, where steps of a shop are compared. */
    FINE_LENGTH,
    /** A shaft's length in mm: as a fraction of an inch where it is one at the shop's step. */
    SHOP_LENGTH,
    /** A length in mm by which something is over or short; too small a one never reads as 0. */
    EXCESS,
    /** An angle in rad, written in degrees. */
    ANGLE,
    /** An angle in rad by which something is over; too small a one never reads as 0. */
    ANGLE_EXCESS,
    /** A travel in mm: "3.20 in bump", "ride height". */
    TRAVEL,
    /** A plain number to two decimals. */
    FACTOR,
    /** A number that is above a limit, rounded up so that it reads so. */
    FACTOR_ABOVE,
    /** A torque in N·m, written in the unit that goes with the workbook's; rounded down. */
    TORQUE,
    /** A count. */
    COUNT,
    /** A text of the builder's or of another part of the study. */
    NAME,
    /** One of the slot's own words, by their number from 1. */
    CHOICE;

    /**
     * The number as it stands in a sentence.
     *
     * @param number in mm, rad, N·m or plain
     * @param unit the workbook's
     * @throws IllegalArgumentException for a name or a choice, which are no numbers, and for a
     *     shop's length, which takes its step
     */
    public String text(double number, LengthUnit unit) {
        return switch (this) {
            case LENGTH -> Wording.length(number, unit);
            case FINE_LENGTH -> Wording.fineLength(number, unit);
            case EXCESS -> Wording.excess(number, unit);
            case ANGLE -> Wording.angle(number);
            case ANGLE_EXCESS -> Wording.angleExcess(number);
            case TRAVEL -> Wording.travel(number, unit);
            case FACTOR -> Wording.rounded(number, 2);
            case FACTOR_ABOVE -> Wording.roundedUp(number, 2);
            case TORQUE -> Wording.torque(number, unit);
            case COUNT -> Wording.rounded(number, 0);
            case SHOP_LENGTH -> throw new IllegalArgumentException(this + " takes a step");
            case NAME, CHOICE -> throw new IllegalArgumentException(this + " is not a number");
        };
    }
}
