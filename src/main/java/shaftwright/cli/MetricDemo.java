package shaftwright.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;

/**
 * The demo vehicle as a builder with a metric tape would have typed it: readings to half a
 * millimetre, other lengths to a tenth, divisions of tape and shop of one millimetre.
 */
final class MetricDemo {
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final Set<String> DIVISIONS =
            Set.of("shop_increment", "tape_graduation", "height_graduation");

    private MetricDemo() {}

    /** The same inputs in millimetres. */
    static Map<String, GivenInput> of(Map<String, GivenInput> inches) {
        Map<String, GivenInput> metric = new LinkedHashMap<>();
        for (Map.Entry<String, GivenInput> given : inches.entrySet()) {
            List<String> texts = column(given.getKey(), given.getValue().texts());
            metric.put(given.getKey(), new GivenInput(texts, given.getValue().single()));
        }
        metric.put("unit", GivenInput.one("mm"));
        return metric;
    }

    private static List<String> column(String name, List<String> texts) {
        Input input = Contract.named(name);
        if (DIVISIONS.contains(name)) {
            return List.of("1");
        }
        double factor = input.kind().factor(LengthUnit.INCH);
        if (input.kind() != InputKind.LENGTH && factor == 1) {
            return texts;
        }
        List<String> metric = new ArrayList<>();
        for (String text : texts) {
            if (factor != 1 && !text.isEmpty()) {
                metric.add(number(new BigDecimal(text).doubleValue() * factor));
                continue;
            }
            metric.add(
                    text.isEmpty()
                            ? ""
                            : length(text, input.grid() == Grid.READING ? HALF : TENTH));
        }
        return metric;
    }

    /** Three digits, as people round. */
    private static String number(double value) {
        return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }

    private static String length(String text, BigDecimal division) {
        // Lengths that were given in millimetres stay as exact as they are.
        if (text.endsWith(" mm")) {
            return text.substring(0, text.length() - 3);
        }
        BigDecimal mm = BigDecimal.valueOf(Length.parse(text, LengthUnit.INCH).mm());
        BigDecimal rounded =
                mm.divide(division, 0, RoundingMode.HALF_UP)
                        .multiply(division)
                        .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
