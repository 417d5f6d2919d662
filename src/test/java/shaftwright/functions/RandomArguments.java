package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Arguments that a builder might give, and such as nobody should. */
public final class RandomArguments {
    private static final double[] NASTY_NUMBERS = {
        0,
        -0.0,
        -1,
        1e-300,
        -1e-300,
        1e300,
        -1e300,
        1e15,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        Double.MIN_VALUE,
        Double.MAX_VALUE,
        90,
        45,
        1e9
    };
    private static final String[] NASTY_TEXTS = {
        "", " ", "x", "25 3/0", "3/8", "mm", "#N/A", "1e3", "235/75 R15", "\u0000", "'", "in", "12'"
    };

    private static final Set<String> WHOLE = Set.of("rows", "parts", "teeth", "count");

    private final SplittableRandom random;

    public RandomArguments(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Plausible arguments for every parameter, numbers inside and seldom outside their range. */
    public List<Value> plausible(List<Parameter> parameters) {
        List<Value> values = new ArrayList<>();
        for (Parameter parameter : parameters) {
            if (parameter.isRange()) {
                values.add(column(parameter));
            } else if (parameter.measure() == Measure.UNIT) {
                values.add(Value.of(random.nextBoolean() ? "mm" : "in"));
            } else if (parameter.measure() == Measure.TEXT) {
                boolean bolt = parameter.name().equals("strengthclass");
                values.add(Value.of(bolt ? "10.9" : "235/75 R15"));
            } else {
                values.add(Value.of(number(parameter)));
            }
        }
        return values;
    }

    private Value column(Parameter parameter) {
        List<List<Value>> rows = new ArrayList<>();
        double number = number(parameter) / 4;
        for (int row = 0; row < 5; row++) {
            rows.add(List.of(Value.of(number)));
            number += Math.abs(number(parameter)) / 8;
        }
        return new Value.Block(rows);
    }

    private double number(Parameter parameter) {
        double most = Math.min(parameter.allowed().most(), 600);
        double least = Math.max(parameter.allowed().least(), -600);
        double number = least + (most - least) * random.nextDouble();
        if (WHOLE.contains(parameter.name())) {
            number = Math.rint(number);
        }
        return number;
    }

    /** Anything that a cell or an area may hold, and too many or too few of them. */
    public List<Value> nasty(List<Parameter> parameters) {
        List<Value> values = plausible(parameters);
        for (int change = random.nextInt(3); change >= 0; change--) {
            if (!values.isEmpty()) {
                values.set(random.nextInt(values.size()), nasty());
            }
        }
        if (random.nextInt(8) == 0) {
            values.add(nasty());
        }
        return random.nextInt(6) == 0
                ? values.subList(0, random.nextInt(values.size() + 1))
                : values;
    }

    private Value nasty() {
        return switch (random.nextInt(5)) {
            case 0 -> Value.BLANK;
            case 1 -> Value.of(NASTY_TEXTS[random.nextInt(NASTY_TEXTS.length)]);
            case 2 -> new Value.Fault(random.nextBoolean() ? "#N/A" : "#DIV/0!");
            case 3 -> block();
            default -> Value.of(NASTY_NUMBERS[random.nextInt(NASTY_NUMBERS.length)]);
        };
    }

    private Value block() {
        int height = random.nextInt(4);
        int width = 1 + random.nextInt(3);
        List<List<Value>> rows = new ArrayList<>();
        for (int row = 0; row < height; row++) {
            List<Value> cells = new ArrayList<>();
            for (int column = 0; column < width; column++) {
                cells.add(
                        random.nextInt(3) == 0
                                ? Value.BLANK
                                : Value.of(NASTY_NUMBERS[random.nextInt(NASTY_NUMBERS.length)]));
            }
            rows.add(cells);
        }
        return new Value.Block(rows);
    }
}
