package shaftwright.live;

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
     * @param number in mm or rad where it is a length or an angle
     * @param unit the workbook's own unit of length, mm
     */
    double shown(double number, double unit) {
        return switch (this) {
            case SHOWN_LENGTH -> number / unit;
            case DEGREE -> Math.toDegrees(number);
            default -> number;
        };
    }
}
