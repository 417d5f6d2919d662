package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Collects what is wrong or worth a warning in the rows of one side, before a curve is fitted. */
final class ReadingCheck {
    /** Rows closer than this can't tell how the path changes between them, mm. */
    static final double SAME_HEIGHT = 0.5;

    static final int MOST_READINGS = 3;

    /** Longer than any vehicle, mm. */
    private static final double LONGEST_DISTANCE = 100_000;

    /** Beyond this a camber or toe was surely typed in a wrong unit, rad. */
    private static final double STEEPEST_ANGLE = Math.toRadians(45);

    private final List<ReadingRemark> problems = new ArrayList<>();
    private final List<ReadingRemark> warnings = new ArrayList<>();

    List<ReadingRemark> warnings() {
        return warnings;
    }

    void refuse(ReadingRemark.Kind kind, int row, String found) {
        refuse(kind, row, found, "");
    }

    void refuse(ReadingRemark.Kind kind, int row, String found, String rest) {
        problems.add(new ReadingRemark(kind, row, found, rest));
    }

    void warn(ReadingRemark.Kind kind, int row, String found, String rest) {
        warnings.add(new ReadingRemark(kind, row, found, rest));
    }

    /** Throws when anything was refused so far. */
    void stopIfRefused() {
        if (!problems.isEmpty()) {
            throw new UnusableReadingsException(problems);
        }
    }

    void heights(double rideHeight, double innerHeight) {
        if (!Double.isFinite(rideHeight)) {
            refuse(ReadingRemark.Kind.BAD_HEIGHT, 0, "the ride height is not a number");
        }
        if (!Double.isFinite(innerHeight)) {
            refuse(
                    ReadingRemark.Kind.BAD_HEIGHT,
                    0,
                    "the height of the inner output flange is not a number");
        }
    }

    void row(TapeRow row, double innerHeight) {
        int before = problems.size();
        heightAndOffset(row);
        distances(row);
        angle(row, row.camber());
        angle(row, row.toe());
        if (problems.size() == before && !(squaredReach(row, innerHeight) > 0)) {
            refuse(
                    ReadingRemark.Kind.IMPOSSIBLE_TRIANGLE,
                    row.number(),
                    "the distance is shorter than the height difference and fore-aft offset"
                            + " between the two ends allow",
                    "check all three");
        }
    }

    static double squaredReach(TapeRow row, double innerHeight) {
        double c = row.meanDistance();
        double z = row.height() - innerHeight;
        return c * c - row.foreAft() * row.foreAft() - z * z;
    }

    private void heightAndOffset(TapeRow row) {
        if (!Double.isFinite(row.height())) {
            refuse(ReadingRemark.Kind.BAD_HEIGHT, row.number(), "the height is not a number");
        }
        if (!Double.isFinite(row.foreAft())) {
            refuse(
                    ReadingRemark.Kind.BAD_FORE_AFT,
                    row.number(),
                    "the fore-aft offset is not a number");
        }
    }

    private void distances(TapeRow row) {
        if (row.readings() == 0) {
            refuse(
                    ReadingRemark.Kind.NO_DISTANCE,
                    row.number(),
                    "a height without a distance",
                    "measure it or clear the row");
        }
        if (row.readings() > MOST_READINGS) {
            refuse(
                    ReadingRemark.Kind.TOO_MANY_READINGS,
                    row.number(),
                    "at most three readings of a distance are used");
        }
        for (double distance : row.distances()) {
            if (!(distance > 0 && distance < LONGEST_DISTANCE)) {
                refuse(
                        ReadingRemark.Kind.BAD_DISTANCE,
                        row.number(),
                        "a distance must be above zero and shorter than 100 m");
                return;
            }
        }
    }

    private void angle(TapeRow row, OptionalDouble angle) {
        if (angle.isPresent() && !(Math.abs(angle.getAsDouble()) <= STEEPEST_ANGLE)) {
            refuse(
                    ReadingRemark.Kind.BAD_ANGLE,
                    row.number(),
                    "camber and toe lie between -45 and 45 degrees");
        }
    }

    /** Checks that need all rows at once. */
    void together(List<TapeRow> rows, double rideHeight, DegreeChoice degree) {
        if (rows.size() < 2) {
            refuse(
                    ReadingRemark.Kind.TOO_FEW_ROWS,
                    0,
                    "a path needs readings at two heights at the very least, seven to be good");
            return;
        }
        if (!degree.allows(rows.size())) {
            refuse(
                    ReadingRemark.Kind.TOO_FEW_ROWS_FOR_DEGREE,
                    0,
                    "a curve of degree 4 or 5 needs readings at nine heights",
                    "measure more or choose auto");
        }
        sameHeights(rows);
        if (!rideInside(rows, rideHeight)) {
            refuse(
                    ReadingRemark.Kind.RIDE_OUTSIDE_ROWS,
                    0,
                    "the ride height lies outside the measured heights",
                    "measure below and above it, from the same reference");
        }
    }

    /** Whether rows lie on both sides of ride; heights that are no numbers don't count. */
    private static boolean rideInside(List<TapeRow> rows, double rideHeight) {
        boolean below = false;
        boolean above = false;
        for (TapeRow row : rows) {
            below |= row.height() <= rideHeight;
            above |= row.height() >= rideHeight;
        }
        return below && above;
    }

    private void sameHeights(List<TapeRow> rows) {
        for (int i = 0; i < rows.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (Math.abs(rows.get(i).height() - rows.get(j).height()) < SAME_HEIGHT) {
                    refuse(
                            ReadingRemark.Kind.SAME_HEIGHT,
                            rows.get(i).number(),
                            "the same height as row " + rows.get(j).number(),
                            "type repeat readings side by side in one row");
                }
            }
        }
    }
}
