package shaftwright.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Suspect points found the long way: a polynomial in powers of s is fitted anew, by Hipparchus's QR
 * decomposition, each time that a point is left out. Shares no code with what it is held against.
 */
final class Refits {
    private final double[] s;
    private final double[] weights;
    private final double[] values;
    private final int degree;

    Refits(double[] s, double[] weights, double[] values, int degree) {
        this.s = s;
        this.weights = weights;
        this.values = values;
        this.degree = degree;
    }

    private RealMatrix design(List<Integer> rows) {
        RealMatrix design = new Array2DRowRealMatrix(rows.size(), degree + 1);
        for (int i = 0; i < rows.size(); i++) {
            for (int power = 0; power <= degree; power++) {
                int row = rows.get(i);
                design.setEntry(i, power, Math.sqrt(weights[row]) * Math.pow(s[row], power));
            }
        }
        return design;
    }

    private List<Integer> without(List<Integer> gone) {
        return IntStream.range(0, s.length).boxed().filter(i -> !gone.contains(i)).toList();
    }

    private RealVector coefficients(List<Integer> gone) {
        List<Integer> rows = without(gone);
        RealVector right = new ArrayRealVector(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            right.setEntry(i, Math.sqrt(weights[rows.get(i)]) * values[rows.get(i)]);
        }
        return new QRDecomposition(design(rows)).getSolver().solve(right);
    }

    /** The curve without some points. */
    double value(List<Integer> gone, double at) {
        RealVector c = coefficients(gone);
        double sum = 0;
        for (int power = 0; power <= degree; power++) {
            sum += c.getEntry(power) * Math.pow(at, power);
        }
        return sum;
    }

    /** Standard uncertainty of the curve through all points. */
    double deviation(double at) {
        RealMatrix design = design(without(List.of()));
        RealMatrix covariance = MatrixUtils.inverse(design.transposeMultiply(design));
        RealVector powers = new ArrayRealVector(degree + 1);
        for (int power = 0; power <= degree; power++) {
            powers.setEntry(power, Math.pow(at, power));
        }
        return Math.sqrt(powers.dotProduct(covariance.operate(powers)));
    }

    /** Standardized residuals without some points, 0 for these and for those that decide alone. */
    double[] standardised(List<Integer> gone) {
        List<Integer> rows = without(gone);
        RealMatrix q = new QRDecomposition(design(rows)).getQ();
        double[] z = new double[s.length];
        for (int i = 0; i < rows.size(); i++) {
            double hat = 0;
            for (int k = 0; k <= degree; k++) {
                hat += q.getEntry(i, k) * q.getEntry(i, k);
            }
            int row = rows.get(i);
            double residual = values[row] - value(gone, s[row]);
            z[row] = 1 - hat < 1e-6 ? 0 : Math.abs(residual) * Math.sqrt(weights[row] / (1 - hat));
        }
        return z;
    }

    /** The points left out, in order, by the rules of the trade document. */
    List<Integer> leftOut(int most) {
        List<Integer> gone = new ArrayList<>();
        while (gone.size() < most) {
            int next = gone.size() + 1;
            double[] z = standardised(gone);
            int worst = 0;
            for (int i = 0; i < z.length; i++) {
                worst = z[i] > z[worst] ? i : worst;
            }
            boolean may = s.length - next - degree - 1 >= 2 && 3 * next <= s.length;
            if (z[worst] <= 3.5 || !may) {
                return gone;
            }
            gone.add(worst);
        }
        return gone;
    }
}
