package shaftwright.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import shaftwright.suspension.TapeRow;
import shaftwright.suspension.TapeSettings;

/**
 * What was measured on one side: the distance between the two datums at several heights of the
 * wheel. Whether the rows make sense together is judged when a path is fitted through them.
 *
 * @param innerHeight of the inner datum above the floor, mm
 * @param rideHeight of the outer datum with the wheel at ride, above the same floor, mm
 * @param centreToDatum vehicle's centre plane to the inner datum, mm; empty when it was not
 *     measured
 * @param settings graduations of the tape, and the curve to be fitted
 * @param rows in any order, at different heights
 * @param checksOpen what was not made sure of before measuring
 */
public record Readings(
        double innerHeight,
        double rideHeight,
        OptionalDouble centreToDatum,
        TapeSettings settings,
        List<TapeRow> rows,
        Set<MeasuringCheck> checksOpen) {
    public Readings {
        rows = List.copyOf(rows);
        checksOpen = Set.copyOf(checksOpen);
    }

    /** A side of which nothing was read yet. */
    public static Readings of(double innerHeight, double rideHeight, TapeSettings settings) {
        return new Readings(
                innerHeight, rideHeight, OptionalDouble.empty(), settings, List.of(), Set.of());
    }

    /** These with the inner datum so far from the vehicle's centre plane, mm. */
    public Readings withCentreToDatum(double outward) {
        return new Readings(
                innerHeight, rideHeight, OptionalDouble.of(outward), settings, rows, checksOpen);
    }

    /**
     * These and one height more, at which nothing but the distance was read.
     *
     * @param height of the outer datum above the floor, mm
     * @param distances between the datums, mm: repeat readings
     */
    public Readings and(double height, double... distances) {
        return and(
                new TapeRow(
                        rows.size() + 1,
                        height,
                        Arrays.stream(distances).boxed().collect(Collectors.toList()),
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
    }

    /** These and one row more. */
    public Readings and(TapeRow row) {
        List<TapeRow> more = new ArrayList<>(rows);
        more.add(row);
        return new Readings(innerHeight, rideHeight, centreToDatum, settings, more, checksOpen);
    }

    /** These, taken without having made sure of some things before. */
    public Readings withOpen(Set<MeasuringCheck> checks) {
        return new Readings(innerHeight, rideHeight, centreToDatum, settings, rows, checks);
    }
}
