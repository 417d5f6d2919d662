package shaftwright.suspension;

import java.util.OptionalDouble;

/** What is read at each height of the wheel; each is fitted and checked by itself. */
public enum MeasuredQuantity {
    /** Between inner and outer datum, mm; it shares its check with the row's height. */
    DISTANCE,
    /** From inner to outer datum, mm. */
    FORE_AFT,
    /** Of the wheel, rad. */
    CAMBER,
    /** Of the wheel, rad. */
    TOE;

    /** How many readings of one side can be named as suspect, one after the other. */
    public int mostSuspects() {
        return this == DISTANCE ? 6 : 2;
    }

    /** What a row has of it, mm or rad; of several readings of the distance their mean. */
    public OptionalDouble of(TapeRow row) {
        return switch (this) {
            case DISTANCE -> OptionalDouble.of(row.meanDistance());
            case FORE_AFT -> OptionalDouble.of(row.foreAft());
            case CAMBER -> row.camber();
            case TOE -> row.toe();
        };
    }

    /** Whether it is an angle, else a length. */
    public boolean isAngle() {
        return this == CAMBER || this == TOE;
    }
}
