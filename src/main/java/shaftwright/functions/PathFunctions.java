package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;
import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.Polynomial;
import shaftwright.suspension.TapeRow;
import shaftwright.suspension.TapeSettings;

/** The hub's path from tape readings. */
final class PathFunctions {
    private static final String FORSYTHE =
            "least squares by orthogonal polynomials, G. E. Forsythe, 1957";
    private static final double TAPE_MM = 1;

    private PathFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of(
                                "PATHTABLE",
                                "Positions from tape readings: travel, sideways reach, rise, distance and doubt of the outer datum, a row a travel.")
                        .lengths("heights", ANY, "heights of the outer datum, two at least")
                        .lengths("distances", POSITIVE, "distance between the datums at each")
                        .length("rideheight", ANY, "height of the outer datum at ride")
                        .length("innerheight", ANY, "height of the inner datum")
                        .lengths("travels", ANY, "travels wanted, inside the measured heights")
                        .length("graduation", POSITIVE, "smallest division of tape and heights")
                        .source(FORSYTHE)
                        .example(
                                "a reach of 120 at every height: 50² + 120² = 130²",
                                6,
                                HEIGHTS,
                                DISTANCES,
                                350,
                                300,
                                new double[] {0},
                                1,
                                new double[] {0, 120, 50, 130})
                        .block(PathFunctions::table),
                new Declaration(
                                Topic.PATH,
                                "NORMALTRAVEL",
                                "Travel on a scale from −1 at the lowest to 1 at the highest.",
                                Measure.NUMBER)
                        .length("travel", ANY, "travel")
                        .length("lowest", ANY, "lowest travel")
                        .length("highest", ANY, "highest travel")
                        .formula("(2*travel-highest-lowest)/(highest-lowest)")
                        .only("highest>lowest")
                        .source("usual scale for orthogonal polynomials")
                        .example("a quarter from the top", 9, 50, -100, 100, 0.5)
                        .number(PathFunctions::normal),
                new Declaration(Topic.PATH, "POLYNOMIAL", "Value of a polynomial.", Measure.NUMBER)
                        .number("variable", Measure.NUMBER, ANY, "what stands for s")
                        .numbers(
                                "coefficients",
                                Measure.NUMBER,
                                ANY,
                                "coefficients of 1, s, s² and so on, twelve at most")
                        .source("Horner's rule")
                        .example("1 + 2 · 3 + 3 · 9", 9, 3, new double[] {1, 2, 3}, 34)
                        .number(a -> polynomial(a).at(a.number("variable"))),
                new Declaration(
                                Topic.PATH,
                                "CURVEALLOWANCE",
                                "What the true path may differ from the curve through so many heights.",
                                Measure.LENGTH)
                        .number(
                                "rows",
                                Measure.NUMBER,
                                Allowed.within(2, 100),
                                "number of heights measured")
                        .length("travel", NOT_NEGATIVE, "lowest to highest height")
                        .formula(
                                "IF(rows<5,2*(travel*unit_mm/450)^3,0.8*(travel*unit_mm/450)^4)/unit_mm")
                        .only("rows=INT(rows)")
                        .source("simulation of 120 suspensions, invented")
                        .example("0.8 at 450 mm and five heights", 9, 5, 450, "mm", 0.8)
                        .number(PathFunctions::allowance));
    }

    private static final double[] HEIGHTS = {300, 350, 390};
    private static final double[] DISTANCES = {120, 130, 150};

    private static Declaration of(String name, String meaning) {
        return new Declaration(Topic.PATH, name, meaning, Measure.LENGTH);
    }

    private static double normal(Arguments a) {
        double lowest = a.number("lowest");
        double highest = a.number("highest");
        if (!(highest > lowest)) {
            throw Arguments.impossible("the highest travel must lie above the lowest");
        }
        return (2 * a.number("travel") - highest - lowest) / (highest - lowest);
    }

    private static double allowance(Arguments a) {
        TapeSettings settings = TapeSettings.of(TAPE_MM, TAPE_MM);
        return settings.curveAllowance(
                settings.degree().degree(a.whole("rows")), a.number("travel"));
    }

    private static double[][] table(Arguments a) {
        double[][] readings = a.columns("heights", "distances");
        List<TapeRow> rows = new ArrayList<>();
        for (int i = 0; i < readings[0].length; i++) {
            rows.add(
                    new TapeRow(
                            i + 1,
                            readings[0][i],
                            List.of(readings[1][i]),
                            0,
                            OptionalDouble.empty(),
                            OptionalDouble.empty()));
        }
        double graduation = a.number("graduation");
        MeasuredPath path =
                MeasuredPath.fit(
                        rows,
                        a.number("rideheight"),
                        a.number("innerheight"),
                        TapeSettings.of(graduation, graduation));
        double[] travels = a.numbers("travels");
        if (travels.length == 0) {
            throw Arguments.wrong("travels are missing");
        }
        double[][] table = new double[travels.length][];
        for (int i = 0; i < travels.length; i++) {
            if (!path.path().covers(travels[i])) {
                throw new NoValueException(Value.NO_ANSWER, "travel beyond the measured heights");
            }
            HubPoint point = path.path().at(travels[i]);
            table[i] =
                    new double[] {
                        travels[i], point.reach(), point.rise(), point.distance(), point.doubt()
                    };
        }
        return table;
    }

    private static Polynomial polynomial(Arguments a) {
        double[] coefficients = a.numbers("coefficients");
        if (coefficients.length == 0 || coefficients.length > Polynomial.MOST_COEFFICIENTS) {
            throw Arguments.impossible(coefficients.length + " coefficients");
        }
        return Polynomial.of(coefficients);
    }
}
