package shaftwright.doubt;

import java.util.List;

/**
 * Contributions taken together, each counting one for one and independent of the others.
 *
 * @param standard combined standard uncertainty, mm: root of the sum of squares
 * @param bias sum of the biases, mm
 * @param worst all at their worst at once, mm, biases included
 */
public record Combined(double standard, double bias, double worst) {
    /** Coverage factor, about 95 in 100. JCGM 100:2008, 6.3.3. */
    public static final double COVERAGE = 2;

    /** All of them; none gives zero. */
    public static Combined of(List<Contribution> contributions) {
        double squares = 0;
        double bias = 0;
        double worst = 0;
        for (Contribution each : contributions) {
            double standard = each.standard();
            squares += standard * standard;
            bias += each.bias();
            worst += each.worst();
        }
        return new Combined(Math.sqrt(squares), bias, worst);
    }

    /** Twice the standard uncertainty and the biases on top, mm. */
    public double rootSumSquare() {
        return COVERAGE * standard + bias;
    }
}
