package shaftwright.live;

import shaftwright.contract.InputKind;
import shaftwright.units.LengthUnit;

/** What a live cell holds, which decides its number format and the unit written in its heading. */
public enum Quantity {
    /** A length in mm, as the working sheets keep it. */
    MILLIMETRE,
    /** A length in the workbook's own unit, as a builder reads it. */
    SHOWN_LENGTH,
    /** An angle in rad, as the working sheets keep it. */
    RADIAN,
    /** An angle in degrees, as a builder reads it. */
    DEGREE,
    /** A number with its own meaning. */
    NUMBER,
    /** A torque in the workbook's own unit. */
    TORQUE,
    /** A safety factor or a share. */
    FACTOR,
    /** A count. */
    WHOLE,
    /** A row's number inside its table: a constant, by which rows are found again. */
    ORDINAL,
    /** An amount in the builder's currency. */
    MONEY,
    /** A text. */
    TEXT;

    /**
     * A number of the core as a cell of this quantity holds it.
     *
     * @param number in mm, rad or N·m where it is a length, an angle or a torque
     * @param unit the workbook's own
     */
    double shown(double number, LengthUnit unit) {
        return switch (this) {
            case SHOWN_LENGTH -> number / unit.mm();
            case DEGREE -> Math.toDegrees(number);
            case TORQUE -> number / InputKind.TORQUE.factor(unit);
            default -> number;
        };
    }
}
