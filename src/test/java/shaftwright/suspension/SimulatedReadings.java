package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Tape readings of invented linkages as a careful builder takes them: heights about evenly spaced,
 * the highest and the lowest distance read three times with the tape taken off, everything to the
 * graduation of its tape or gauge.
 *
 * @param path that the readings are taken of
 * @param rows the readings
 * @param settings the tape
 */
record SimulatedReadings(HubPath path, List<TapeRow> rows, TapeSettings settings) {
    static final double RIDE = 500;
    static final double INNER = 555;
    static final double INCH_TAPE = 25.4 / 16;
    static final double MILLIMETRE_TAPE = 1;

    /** Travel measured either way, mm. */
    static final double REACHED = 125;

    private static final double SOLVED = 130;
    private static final HubAtRide HUB =
            new HubAtRide(new Vector(0, 150, 0), new Vector(6, 812, RIDE - INNER), -0.014, 0.005);

    /** What a careful hand adds to a distance and a height, standard deviation, mm. */
    private static final double HAND = 0.3;

    /** The same of plumb lines, mm. */
    private static final double PLUMB = 0.7;

    /** The same of a camber gauge, rad. */
    private static final double GAUGE = Math.toRadians(0.15);

    private static final double GAUGE_GRADUATION = Math.toRadians(0.1);

    /** Nine paths: five of links, two each of trailing and semi-trailing arms. */
    static List<HubPath> paths() {
        List<HubPath> paths = new ArrayList<>();
        for (int seed = 0; seed < 5; seed++) {
            paths.add(path(LinkageKind.FIVE_LINK, links(new Random(seed))));
        }
        for (double length : new double[] {380, 520}) {
            double ahead = HUB.outerDatum().x() + length;
            paths.add(
                    path(
                            LinkageKind.TRAILING_ARM,
                            List.of(new Vector(ahead, 500, HUB.outerDatum().z()))));
        }
        for (double skew : new double[] {120, 200}) {
            paths.add(
                    path(
                            LinkageKind.SEMI_TRAILING_ARM,
                            List.of(new Vector(450 - skew, 300, -20), new Vector(480, 700, -25))));
        }
        return paths;
    }

    private static List<Vector> links(Random random) {
        double[][] at = {
            {175, 330, -140}, {8, 778, -165},
            {-215, 318, -132}, {-5, 770, -160},
            {120, 392, 34}, {-14, 752, 60},
            {-150, 384, 38}, {-25, 748, 62},
            {-262, 338, -122}, {-148, 770, -140}
        };
        List<Vector> points = new ArrayList<>();
        for (double[] p : at) {
            points.add(new Vector(near(p[0], random), near(p[1], random), near(p[2], random)));
        }
        return points;
    }

    private static double near(double about, Random random) {
        return about + 40 * random.nextDouble() - 20;
    }

    private static HubPath path(LinkageKind kind, List<Vector> points) {
        return LinkagePath.of(Linkage.of(kind, points, HUB), -SOLVED, SOLVED).path();
    }

    static SimulatedReadings of(HubPath path, int count, double graduation, Random random) {
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean end = i == 0 || i == count - 1;
            double aside = end ? 0 : 8 * random.nextDouble() - 4;
            double t = -REACHED + 2 * REACHED * i / (count - 1) + aside;
            HubPoint at = path.at(t);
            List<Double> distances = new ArrayList<>();
            for (int k = 0; k < (end ? 3 : 1); k++) {
                distances.add(seen(at.distance() + HAND * random.nextGaussian(), graduation));
            }
            rows.add(
                    new TapeRow(
                            i + 1,
                            seen(RIDE + t + HAND * random.nextGaussian(), graduation),
                            distances,
                            seen(at.foreAft() + PLUMB * random.nextGaussian(), graduation),
                            angle(at.camber(), random),
                            angle(at.toe(), random)));
        }
        return new SimulatedReadings(path, rows, TapeSettings.of(graduation, graduation));
    }

    private static OptionalDouble angle(double angle, Random random) {
        return OptionalDouble.of(seen(angle + GAUGE * random.nextGaussian(), GAUGE_GRADUATION));
    }

    private static double seen(double value, double graduation) {
        return graduation * Math.round(value / graduation);
    }

    /** The same with one row's distance off. */
    SimulatedReadings off(int row, double mm) {
        TapeRow read = rows.get(row);
        return with(
                row,
                new TapeRow(
                        read.number(),
                        read.height(),
                        read.distances().stream().map(c -> c + mm).toList(),
                        read.foreAft(),
                        read.camber(),
                        read.toe()));
    }

    /** The same with another row in one's place. */
    SimulatedReadings with(int row, TapeRow other) {
        List<TapeRow> changed = new ArrayList<>(rows);
        changed.set(row, other);
        return new SimulatedReadings(path, changed, settings);
    }

    MeasuredPath fit() {
        return MeasuredPath.fit(rows, RIDE, INNER, settings);
    }
}
