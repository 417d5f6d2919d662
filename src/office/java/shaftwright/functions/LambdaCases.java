package shaftwright.functions;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes named formulas and calls of them with expected results, for {@code lambda.mjs}. */
public final class LambdaCases {
    private static final int SETS = 20;
    private static final long SEED = 7;

    private LambdaCases() {}

    /** Takes the file to be written. */
    public static void main(String[] arguments) throws IOException {
        List<String> names = new ArrayList<>();
        for (Map.Entry<String, String> formula : LambdaText.all().entrySet()) {
            names.add(quoted(formula.getKey()) + ":" + quoted(formula.getValue()));
        }
        List<String> cases = new ArrayList<>();
        for (CellFunction function : Catalogue.all()) {
            if (function.expression().isPresent()) {
                RandomArguments random = new RandomArguments(function.name().hashCode() + SEED);
                for (int set = 0; set < SETS; set++) {
                    cases.add(call(function, random.plausible(function.parameters())));
                }
            }
        }
        Files.writeString(
                Path.of(arguments[0]),
                "{\"names\":{"
                        + String.join(",\n", names)
                        + "},\"cases\":["
                        + String.join(",\n", cases)
                        + "]}\n");
    }

    private static String call(CellFunction function, List<Value> given) {
        Value result = function.evaluate(given);
        double scale = 1e-12;
        for (Value value : given) {
            if (value instanceof Value.Numeric number) {
                scale = Math.max(scale, Math.abs(number.number()) * 1e-3);
            }
        }
        String expected = "null";
        if (result instanceof Value.Numeric number) {
            expected = Double.toString(number.number());
            scale = Math.max(scale, Math.abs(number.number()));
        }
        String formula = new Example(given, List.of(), 0, "").formula(function.name());
        return "{\"formula\":"
                + quoted(formula)
                + ",\"expected\":"
                + expected
                + ",\"scale\":"
                + scale
                + "}";
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
