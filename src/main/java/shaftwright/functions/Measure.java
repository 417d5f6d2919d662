package shaftwright.functions;

import shaftwright.units.LengthUnit;

/** What a number stands for, and in which unit a cell holds it. */
public enum Measure {
    /** Inches or millimetres, as the function's unit argument says; mm in the core. */
    LENGTH("length"),
    /** The square of a length, likewise. */
    AREA("length²"),
    /** Degrees in cells, radians in the core. */
    ANGLE("deg"),
    TORQUE("N·m"),
    FORCE("N"),
    STRESS("MPa"),
    MODULUS("GPa"),
    DENSITY("kg/m³"),
    SHAFT_SPEED("rpm"),
    ROAD_SPEED("km/h"),
    HOURS("h"),
    /** A plain number, such as a ratio or a count. */
    NUMBER(""),
    TEXT("text"),
    /** The unit of the other lengths: in, inch or mm. */
    UNIT("in or mm");

    private static final double GPA = 1000;

    private final String unit;

    Measure(String unit) {
        this.unit = unit;
    }

    /** Unit in cells, as descriptions name it; empty for a plain number. */
    public String unit() {
        return unit;
    }

    /** Whether cells hold it as a number. */
    public boolean isNumber() {
        return this != TEXT && this != UNIT;
    }

    /** Whether its number in a cell depends on the unit of lengths. */
    public boolean hasLength() {
        return this == LENGTH || this == AREA;
    }

    /** A cell's number in the core's unit. */
    double fromCell(double number, LengthUnit unit) {
        return switch (this) {
            case LENGTH -> number * unit.mm();
            case AREA -> number * unit.mm() * unit.mm();
            case ANGLE -> Math.toRadians(number);
            case MODULUS -> number * GPA;
            default -> number;
        };
    }

    /** The core's number as a cell holds it. */
    double toCell(double number, LengthUnit unit) {
        return switch (this) {
            case LENGTH -> number / unit.mm();
            case AREA -> number / unit.mm() / unit.mm();
            case ANGLE -> Math.toDegrees(number);
            case MODULUS -> number / GPA;
            default -> number;
        };
    }
}
