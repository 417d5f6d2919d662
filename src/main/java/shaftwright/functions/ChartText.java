package shaftwright.functions;

import java.util.function.UnaryOperator;
import shaftwright.strength.TorsionChart;
import shaftwright.strength.TorsionChart.Coefficient;
import shaftwright.strength.TorsionChart.Stretch;

/** A chart of notches in torsion as a formula. */
public final class ChartText {
    private ChartText() {}

    /**
     * What follows from the chart's factor, which is 1 or more.
     *
     * @param sharpness depth over radius, no less than the chart's least
     * @param depth twice the depth over the larger diameter
     * @param then what is made of the factor
     * @param beyond what is said of a notch sharper than the chart has
     */
    public static String of(
            TorsionChart chart,
            String sharpness,
            String depth,
            UnaryOperator<String> then,
            String beyond) {
        StringBuilder text = new StringBuilder();
        for (Stretch stretch : chart.stretches()) {
            text.append("IF(ROUND(")
                    .append(sharpness)
                    .append(',')
                    .append(TorsionChart.SETTLED)
                    .append(")<=")
                    .append(Allowed.plain(stretch.most()))
                    .append(',')
                    .append(then.apply("MAX(1," + cubic(stretch, sharpness, depth) + ")"))
                    .append(',');
        }
        return text + beyond + ")".repeat(chart.stretches().size());
    }

    private static String cubic(Stretch stretch, String sharpness, String depth) {
        return text(stretch.first(), sharpness)
                + ("+" + depth + "*(" + text(stretch.second(), sharpness))
                + ("+" + depth + "*(" + text(stretch.third(), sharpness))
                + ("+" + depth + "*(" + text(stretch.fourth(), sharpness) + ")))");
    }

    private static String text(Coefficient coefficient, String sharpness) {
        return Allowed.plain(coefficient.constant())
                + signed(coefficient.root())
                + ("*SQRT(" + sharpness + ")")
                + signed(coefficient.linear())
                + ("*" + sharpness);
    }

    private static String signed(double number) {
        return (number < 0 ? "" : "+") + Allowed.plain(number);
    }
}
