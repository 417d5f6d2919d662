package shaftwright.functions;

import static shaftwright.functions.Allowed.ANY;

import java.util.List;
import shaftwright.shaft.TravelSteps;
import shaftwright.travel.ClearanceRule;

/** Travel of the wheel and the ground clearance that it uses up. */
final class TravelFunctions {
    private static final String HEAVE = "body moves straight down, wheel upright";

    private TravelFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of("GROUNDCLEARANCE", "Ground clearance at a travel.", Measure.LENGTH)
                        .length("clearanceride", ANY, "ground clearance at ride")
                        .length("travel", ANY, "wheel travel, positive in bump")
                        .length("tyregain", ANY, 0, "clearance gained by another tyre")
                        .formula("clearanceride+tyregain-travel")
                        .source(HEAVE)
                        .example("300 + 16.75 − 120", 9, 300, 120, 16.75, 196.75)
                        .number(a -> rule(a, 0).clearance(Lines.STRAIGHT_UP, a.number("travel"))),
                of(
                                "BUMPLIMIT",
                                "Bump travel that leaves the wanted ground clearance.",
                                Measure.LENGTH)
                        .length("clearanceride", ANY, "ground clearance at ride")
                        .length("clearancewanted", ANY, "clearance to be left at full bump")
                        .length("tyregain", ANY, 0, "clearance gained by another tyre")
                        .formula("clearanceride+tyregain-clearancewanted")
                        .source(HEAVE)
                        .example("300 + 16.75 − 180", 9, 300, 180, 16.75, 136.75)
                        .number(TravelFunctions::bumpLimit),
                of(
                                "TRAVELSTEPS",
                                "The 25 travels of the workbook's tables, in a column, droop first.",
                                Measure.LENGTH)
                        .length("droop", Allowed.POSITIVE, "droop travel")
                        .length("bump", Allowed.POSITIVE, "bump travel")
                        .source("12 even steps to ride and 12 from it")
                        .example("first of 25", 9, 120, 144, new double[] {-120})
                        .block(TravelFunctions::steps),
                of(
                                "MOTIONRATIO",
                                "Change of one length over change of another, such as damper over wheel.",
                                Measure.NUMBER)
                        .length("lengthfirst", ANY, "one length at the first position")
                        .length("lengthsecond", ANY, "at the second position")
                        .length("travelfirst", ANY, "wheel travel at the first position")
                        .length("travelsecond", ANY, "at the second position")
                        .formula("(lengthsecond-lengthfirst)/(travelsecond-travelfirst)")
                        .only("travelsecond<>travelfirst")
                        .source("difference quotient")
                        .example("−30 over 50", 9, 520, 490, 0, 50, -0.6)
                        .number(TravelFunctions::ratio));
    }

    private static Declaration of(String name, String meaning, Measure result) {
        return new Declaration(Topic.TRAVEL, name, meaning, result);
    }

    private static ClearanceRule rule(Arguments a, double wanted) {
        return new ClearanceRule(a.number("clearanceride"), a.number("tyregain"), wanted, 0);
    }

    private static double bumpLimit(Arguments a) {
        List<Double> steps = rule(a, a.number("clearancewanted")).steps(Lines.STRAIGHT_UP);
        return steps.get(steps.size() - 1);
    }

    private static double[][] steps(Arguments a) {
        double[] travels = TravelSteps.of(-a.number("droop"), a.number("bump"));
        double[][] column = new double[travels.length][];
        for (int row = 0; row < travels.length; row++) {
            column[row] = new double[] {travels[row]};
        }
        return column;
    }

    private static double ratio(Arguments a) {
        double travel = a.number("travelsecond") - a.number("travelfirst");
        if (travel == 0) {
            throw Arguments.impossible("both positions are the same");
        }
        return (a.number("lengthsecond") - a.number("lengthfirst")) / travel;
    }
}
