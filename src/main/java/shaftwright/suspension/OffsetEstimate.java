package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;

/**
 * What readings tell of offsets: that {@code Σ coefficient · offset} is this much, give or take one
 * standard uncertainty. The uncertainty comes from the covariance of the least squares, {@code c'
 * (J' W J)⁻¹ c}, by what tape, repeats and height may do to each reading.
 *
 * @param flangeOut coefficient of the output flange's offset outward
 * @param flangeUp coefficient of the output flange's offset upward
 * @param datumOut coefficient of the hub datum's offset along the stub axis
 * @param value mm
 * @param uncertainty standard uncertainty, mm; infinite when the readings say nothing of it
 */
public record OffsetEstimate(
        double flangeOut, double flangeUp, double datumOut, double value, double uncertainty) {
    /** Below this a coefficient is not worth a word. */
    private static final double SLIGHT = 0.05;

    /** An estimate of one of the three offsets, or of several together. */
    static OffsetEstimate of(double[] coefficients, double value, double uncertainty) {
        return new OffsetEstimate(
                coefficients[0], coefficients[1], coefficients[2], value, uncertainty);
    }

    /** Whether the readings tell it well enough to be of use. */
    public boolean isTold() {
        return uncertainty <= Calibration.WORST_TOLD;
    }

    /**
     * What it is an estimate of, the greatest part first: "flange out less datum out", "flange up
     * and 0.4 × flange out".
     */
    public String words() {
        double[] coefficients = {flangeOut, flangeUp, datumOut};
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < coefficients.length; i++) {
            if (Math.abs(coefficients[i]) >= SLIGHT) {
                int at = 0;
                while (at < order.size()
                        && tenths(coefficients[order.get(at)]) >= tenths(coefficients[i])) {
                    at++;
                }
                order.add(at, i);
            }
        }
        StringBuilder text = new StringBuilder();
        for (int i : order) {
            if (text.length() > 0) {
                text.append(coefficients[i] > 0 ? " and " : " less ");
            }
            long tenths = tenths(coefficients[i]);
            text.append(tenths == 10 ? "" : "0." + tenths + " × ")
                    .append(LinkageOffset.ALL.get(i).shortWord());
        }
        return text.toString();
    }

    /** A coefficient's size as it is written, in tenths. */
    static long tenths(double coefficient) {
        return Math.round(10 * Math.abs(coefficient));
    }
}
