package shaftwright.functions;

import static shaftwright.functions.Allowed.NOT_NEGATIVE;
import static shaftwright.functions.Allowed.POSITIVE;

import java.util.ArrayList;
import java.util.List;
import shaftwright.doubt.Combined;
import shaftwright.doubt.Contribution;
import shaftwright.suspension.NextReading;
import shaftwright.suspension.TapeRow;

/** How far readings and what follows from them may be off. */
final class DoubtFunctions {
    private static final String GUM = "JCGM 100:2008";

    private DoubtFunctions() {}

    static List<CellFunction> all() {
        return List.of(
                of("TAPEDOUBT", "Standard uncertainty of a reading to the nearest graduation.")
                        .length("graduation", NOT_NEGATIVE, "smallest division of the tape")
                        .formula("graduation/2/SQRT(3)")
                        .source(GUM + ", 4.3.7: even spread over half a graduation either way")
                        .example("1/√12 = 0.2887", 4, 1, 0.2887)
                        .number(
                                a ->
                                        single(Contribution.Kind.GRADUATION, a.number("graduation"))
                                                .standard()),
                of("PLUSMINUS", "Standard uncertainty of a length stated as plus or minus a limit.")
                        .length("limit", NOT_NEGATIVE, "the limit either way")
                        .formula("limit/SQRT(3)")
                        .source(GUM + ", 4.3.7")
                        .example("1/√3 = 0.5774", 4, 1, 0.5774)
                        .number(
                                a ->
                                        single(Contribution.Kind.PLUS_MINUS, a.number("limit"))
                                                .standard()),
                of(
                                "REPEATDOUBT",
                                "Standard uncertainty of the mean of repeated readings, two or more.")
                        .lengths("readings", POSITIVE, "the same length, read again and again")
                        .source(GUM + ", 4.2.3: s/√n")
                        .example("s = 2 of 10, 12, 14; 2/√3", 4, new double[] {10, 12, 14}, 1.1547)
                        .number(DoubtFunctions::repeats),
                of(
                                "ROOTSUMSQUARE",
                                "Independent contributions taken together, root of the sum of squares.")
                        .lengths("contributions", NOT_NEGATIVE, "standard uncertainty of each")
                        .source(GUM + ", 5.1.2 with sensitivities of 1")
                        .example("√(3² + 4²)", 9, new double[] {3, 4}, 5)
                        .number(a -> combined(Contribution.Kind.SCATTER, a).standard()),
                of("WORSTCASE", "All limits reached at once.")
                        .lengths("limits", NOT_NEGATIVE, "the limits, each either way")
                        .source("plain sum")
                        .example("3 + 4", 9, new double[] {3, 4}, 7)
                        .number(a -> combined(Contribution.Kind.PLUS_MINUS, a).worst()),
                of(
                                "EXPANDED",
                                "Twice a standard uncertainty and a bias on top: about 95 in 100 lie inside.")
                        .length("standard", NOT_NEGATIVE, "combined standard uncertainty")
                        .length("bias", NOT_NEGATIVE, 0, "sum of biases")
                        .formula("2*standard+bias")
                        .source(GUM + ", 6.3.3, coverage factor 2")
                        .example("2 · 1.5 + 1", 9, 1.5, 1, 4)
                        .number(
                                a ->
                                        new Combined(a.number("standard"), a.number("bias"), 0)
                                                .rootSumSquare()),
                of(
                                "READINGGAIN",
                                "By how much one more reading lowers the doubt of the hub path at its height.")
                        .length("doubt", NOT_NEGATIVE, "doubt of the hub path there")
                        .length("reading", NOT_NEGATIVE, "standard uncertainty of the reading")
                        .length("allowance", NOT_NEGATIVE, 0, "for the curve, within that doubt")
                        .formula(
                                "IF(doubt=allowance,0,(doubt-allowance)*(1-reading/SQRT((doubt-allowance)^2/4+reading^2)))")
                        .only("allowance<=doubt")
                        .source("update of a variance by one more row: Sherman and Morrison 1950")
                        .example("u = 3: 6 − 6 · 4/√(3² + 4²)", 9, 7, 4, 1, 1.2)
                        .number(DoubtFunctions::gain));
    }

    private static Declaration of(String name, String meaning) {
        return new Declaration(Topic.DOUBT, name, meaning, Measure.LENGTH);
    }

    private static Contribution single(Contribution.Kind kind, double amount) {
        return new Contribution("contribution", kind, amount);
    }

    private static Combined combined(Contribution.Kind kind, Arguments a) {
        List<Contribution> contributions = new ArrayList<>();
        for (double amount :
                a.numbers(kind == Contribution.Kind.SCATTER ? "contributions" : "limits")) {
            contributions.add(single(kind, amount));
        }
        if (contributions.isEmpty()) {
            throw Arguments.wrong("no contribution is given");
        }
        return Combined.of(contributions);
    }

    private static double gain(Arguments a) {
        double doubt = a.number("doubt");
        double allowance = a.number("allowance");
        if (allowance > doubt) {
            throw Arguments.impossible("the allowance is more than the whole doubt");
        }
        return NextReading.gainThere(doubt, allowance, a.number("reading"));
    }

    private static double repeats(Arguments a) {
        List<Double> readings = new ArrayList<>();
        for (double reading : a.numbers("readings")) {
            readings.add(reading);
        }
        int count = readings.size();
        if (count < 2) {
            throw Arguments.wrong("two readings at least");
        }
        TapeRow row = TapeRow.of(1, 0, 1);
        double scatter =
                new TapeRow(1, 0, readings, 0, row.camber(), row.toe()).scatter() / (count - 1);
        return Contribution.ofRepeats("repeats", Math.sqrt(scatter), count).standard();
    }
}
