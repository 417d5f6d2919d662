package shaftwright.suspension;

import java.util.List;
import java.util.stream.IntStream;

/** The rows of one side as columns of numbers, and the heights that they are seen from. */
final class TapeColumns {
    private final List<TapeRow> list;
    private final double rideHeight;
    private final double innerHeight;
    private final double lowest;
    private final double highest;

    TapeColumns(List<TapeRow> rows, double rideHeight, double innerHeight) {
        list = List.copyOf(rows);
        this.rideHeight = rideHeight;
        this.innerHeight = innerHeight;
        lowest = rows.stream().mapToDouble(TapeRow::height).min().orElseThrow();
        highest = rows.stream().mapToDouble(TapeRow::height).max().orElseThrow();
    }

    List<TapeRow> list() {
        return list;
    }

    int rows() {
        return list.size();
    }

    TapeRow row(int i) {
        return list.get(i);
    }

    /** Between the lowest and the highest row, mm. */
    double travel() {
        return highest - lowest;
    }

    double t(int i) {
        return list.get(i).height() - rideHeight;
    }

    /** Normalised travel of a row, -1 to 1. */
    double s(int i) {
        return (2 * list.get(i).height() - highest - lowest) / (highest - lowest);
    }

    double[] s() {
        double[] s = new double[rows()];
        for (int i = 0; i < s.length; i++) {
            s[i] = s(i);
        }
        return s;
    }

    /** Which rows have this quantity. */
    int[] present(MeasuredQuantity quantity) {
        return IntStream.range(0, rows())
                .filter(i -> quantity.of(list.get(i)).isPresent())
                .toArray();
    }

    /** Whether both the lowest and the highest row are among those of a fit. */
    boolean reachesBothEnds(QuantityFit fit) {
        boolean low = false;
        boolean high = false;
        for (int point = 0; point < fit.points(); point++) {
            low |= s(fit.row(point)) <= -1;
            high |= s(fit.row(point)) >= 1;
        }
        return low && high;
    }

    /** How often each row's distance was read. */
    double[] readings() {
        return list.stream().mapToDouble(TapeRow::readings).toArray();
    }

    /** V of a row with this distance, mm². */
    double squaredReach(int i, double distance) {
        double rise = rise(i);
        double x = list.get(i).foreAft();
        return distance * distance - x * x - rise * rise;
    }

    /** Distance of a row with this squared reach, mm. */
    double distance(int i, double squaredReach) {
        double rise = rise(i);
        double x = list.get(i).foreAft();
        return Math.sqrt(squaredReach + x * x + rise * rise);
    }

    private double rise(int i) {
        return list.get(i).height() - innerHeight;
    }

    /** Height of the outer datum at this normalised travel, mm from the rows' reference. */
    double height(double s) {
        return (s * (highest - lowest) + highest + lowest) / 2;
    }

    HubPath path(
            Polynomial foreAft,
            Polynomial reachSquared,
            Polynomial camber,
            Polynomial toe,
            FitDoubt doubt) {
        return new HubPath(
                lowest - rideHeight,
                highest - rideHeight,
                rideHeight - innerHeight,
                foreAft,
                reachSquared,
                camber,
                toe,
                doubt);
    }
}
