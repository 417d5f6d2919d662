package shaftwright.functions;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * A worked example of a function.
 *
 * @param arguments what is given
 * @param expected the result, of a block its first row
 * @param decimals to how many decimals the expected numbers are known
 * @param from where the expected result comes from
 */
public record Example(List<Value> arguments, List<Value> expected, int decimals, String from) {
    public Example {
        arguments = List.copyOf(arguments);
        expected = List.copyOf(expected);
    }

    /** As typed into a cell, without the equals sign, blocks as array constants. */
    public String formula(String function) {
        StringBuilder text = new StringBuilder(function).append('(');
        for (int i = 0; i < arguments.size(); i++) {
            text.append(i == 0 ? "" : ",").append(written(arguments.get(i)));
        }
        return text.append(')').toString();
    }

    /** The expected result as a reader sees it. */
    public String shown() {
        StringBuilder text = new StringBuilder();
        for (Value value : expected) {
            text.append(text.length() == 0 ? "" : ", ").append(shown(value));
        }
        return text.toString();
    }

    private String shown(Value value) {
        if (value instanceof Value.Numeric number) {
            return decimals > 9
                    ? Allowed.plain(number.number())
                    : BigDecimal.valueOf(number.number())
                            .setScale(Math.max(0, decimals), RoundingMode.HALF_UP)
                            .stripTrailingZeros()
                            .toPlainString();
        }
        return value instanceof Value.Text text ? text.text() : written(value);
    }

    static String written(Value value) {
        if (value instanceof Value.Numeric number) {
            return Allowed.plain(number.number());
        }
        if (value instanceof Value.Text text) {
            return '"' + text.text().replace("\"", "\"\"") + '"';
        }
        if (value instanceof Value.Fault fault) {
            return fault.code();
        }
        if (value instanceof Value.Block block) {
            StringBuilder text = new StringBuilder("{");
            for (int row = 0; row < block.rows().size(); row++) {
                text.append(row == 0 ? "" : ";");
                List<Value> cells = block.rows().get(row);
                for (int column = 0; column < cells.size(); column++) {
                    text.append(column == 0 ? "" : ",").append(written(cells.get(column)));
                }
            }
            return text.append('}').toString();
        }
        return "";
    }
}
