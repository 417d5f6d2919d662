package shaftwright.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What a builder's tape shows on the invented vehicle: the linkage's true distances, each with a
 * hand's error and read to the nearest sixteenth; heights that are off by up to half a mark; camber
 * and toe to a tenth of a degree. Seeded, so always the same.
 */
final class ForestSpecialReadings {
    /** One side of the vehicle and how it was measured. */
    record Side(
            String name,
            ForestSpecialLinkage linkage,
            double innerOffset,
            String rideHeight,
            List<String> heights,
            int repeatsAtEnds,
            List<Integer> rowsWithAngles,
            long seed) {}

    static final double INCH = 25.4;

    /** Height of the inner output flange above the floor, with the vehicle on stands. */
    static final String INNER_HEIGHT = "20 1/2";

    private static final double GRADUATION = INCH / 16;

    /** How well a hand holds a tape between two flange faces, standard deviation, mm. */
    private static final double HAND = 0.4;

    static final Side LEFT =
            new Side(
                    "left",
                    ForestSpecialLinkage.left(),
                    inches("5 7/8"),
                    "18 5/16",
                    List.of(
                            "13 7/16",
                            "14 11/16",
                            "15 15/16",
                            "17 3/16",
                            "18 5/16",
                            "19 5/8",
                            "20 15/16",
                            "22 1/4",
                            "23 5/8"),
                    3,
                    List.of(0, 2, 4, 6, 8),
                    11);

    static final Side RIGHT =
            new Side(
                    "right",
                    ForestSpecialLinkage.right(),
                    inches("5 3/4"),
                    "18 3/8",
                    List.of("13 3/8", "15 1/8", "16 3/4", "18 3/8", "20 1/8", "21 7/8", "23 9/16"),
                    2,
                    List.of(0, 3, 6),
                    12);

    private ForestSpecialReadings() {}

    /** Prints the lines of the demo inputs that are derived here. */
    public static void main(String[] args) {
        for (Side side : List.of(LEFT, RIGHT)) {
            columns(side).forEach((name, column) -> System.out.println(line(name, column)));
            linkage(side).forEach((name, column) -> System.out.println(line(name, column)));
        }
    }

    private static String line(String name, List<Object> column) {
        StringBuilder line = new StringBuilder("  \"" + name + "\": [");
        String separator = "";
        for (Object entry : column) {
            line.append(separator).append(entry instanceof String ? "\"" + entry + "\"" : entry);
            separator = ", ";
        }
        return line.append("],").toString();
    }

    /** The measured columns of a side by the names of their inputs. */
    static Map<String, List<Object>> columns(Side side) {
        Map<String, List<Object>> columns = new LinkedHashMap<>();
        String[] names = {
            "height",
            "distance_first",
            "distance_second",
            "distance_third",
            "fore_aft",
            "camber",
            "toe"
        };
        for (String name : names) {
            columns.put(name + "_" + side.name(), new ArrayList<>());
        }
        Random random = new Random(side.seed());
        for (int row = 0; row < side.heights().size(); row++) {
            List<Object> readings = readings(side, row, random);
            for (int k = 0; k < names.length; k++) {
                columns.get(names[k] + "_" + side.name()).add(readings.get(k));
            }
        }
        return columns;
    }

    /**
     * The linkage's inputs of a side by their names: points at the side's ride height, read to the
     * nearest sixteenth from a mark abreast of the inner flange.
     */
    static Map<String, List<Object>> linkage(Side side) {
        double inner = inches(INNER_HEIGHT);
        ForestSpecialLinkage.Pose ride = side.linkage().at(inches(side.rideHeight()) - inner);
        List<Vector3D> points = new ArrayList<>();
        List<ForestSpecialLinkage.Link> links = side.linkage().links();
        for (int[] wishbone : new int[][] {{2, 3}, {0, 1}}) {
            points.add(links.get(wishbone[0]).chassis());
            points.add(links.get(wishbone[1]).chassis());
            points.add(ride.at(links.get(wishbone[0]).upright(), ForestSpecialLinkage.DATUM));
        }
        points.add(links.get(4).chassis());
        points.add(ride.at(links.get(4).upright(), ForestSpecialLinkage.DATUM));
        Map<String, List<Object>> columns = new LinkedHashMap<>();
        put(columns, "outer_ahead", side, List.of(sixteenths(ride.datum().getX())));
        put(columns, "outer_out", side, List.of(sixteenths(ride.datum().getY())));
        put(columns, "static_camber", side, List.of(tenthOfDegree(ride.camber())));
        put(columns, "static_toe", side, List.of(tenthOfDegree(ride.toe())));
        put(columns, "point_ahead", side, tape(points, Vector3D::getX));
        put(columns, "point_out", side, tape(points, Vector3D::getY));
        put(columns, "point_height", side, tape(points, p -> p.getZ() + inner));
        return columns;
    }

    private static void put(
            Map<String, List<Object>> columns, String name, Side side, List<Object> column) {
        columns.put(name + "_" + side.name(), column);
    }

    private static List<Object> tape(List<Vector3D> points, ToDoubleFunction<Vector3D> along) {
        List<Object> column = new ArrayList<>();
        for (Vector3D point : points) {
            double mm = along.applyAsDouble(point);
            column.add((mm < 0 ? "-" : "") + sixteenths(Math.abs(mm)));
        }
        return column;
    }

    private static List<Object> readings(Side side, int row, Random random) {
        String height = side.heights().get(row);
        double missed = (random.nextDouble() - 0.5) * GRADUATION;
        double z = inches(height) - inches(INNER_HEIGHT) + missed;
        ForestSpecialLinkage.Pose pose = side.linkage().at(z);
        double distance = distance(side, pose);
        boolean end = row == 0 || row == side.heights().size() - 1;
        List<Object> readings = new ArrayList<>();
        readings.add(height);
        for (int k = 0; k < 3; k++) {
            double held = distance + HAND * random.nextGaussian();
            readings.add(k == 0 || (end && k < side.repeatsAtEnds()) ? sixteenths(held) : "");
        }
        readings.add(sixteenths(pose.datum().getX()));
        boolean angles = side.rowsWithAngles().contains(row);
        readings.add(angles ? tenthOfDegree(pose.camber()) : "");
        readings.add(angles ? tenthOfDegree(pose.toe()) : "");
        return readings;
    }

    /** True distance between the flange faces' centres, mm. */
    static double distance(Side side, ForestSpecialLinkage.Pose pose) {
        return Vector3D.distance(pose.datum(), new Vector3D(0, side.innerOffset(), 0));
    }

    /** Inches and a fraction, such as 25 3/8, in mm. */
    static double inches(String text) {
        double sum = 0;
        for (String word : text.split(" ", -1)) {
            int slash = word.indexOf('/');
            sum +=
                    slash < 0
                            ? Integer.parseInt(word)
                            : Double.parseDouble(word.substring(0, slash))
                                    / Integer.parseInt(word.substring(slash + 1));
        }
        return sum * INCH;
    }

    private static String sixteenths(double mm) {
        int count = (int) Math.round(mm / GRADUATION);
        int whole = count / 16;
        int numerator = count % 16;
        int denominator = 16;
        while (numerator != 0 && numerator % 2 == 0) {
            numerator /= 2;
            denominator /= 2;
        }
        if (numerator == 0) {
            return Integer.toString(whole);
        }
        String fraction = numerator + "/" + denominator;
        return whole == 0 ? fraction : whole + " " + fraction;
    }

    private static double tenthOfDegree(double angle) {
        return Math.round(Math.toDegrees(angle) * 10) / 10.0;
    }
}
