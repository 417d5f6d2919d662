package shaftwright.doubt;

import java.util.List;

/**
 * Trials of a shaft in a vehicle that is a little different each time: propagation of distributions
 * as in JCGM 101:2008. A difference in the distance between the joints takes from one slack what it
 * gives the other.
 */
public final class SlackTrials {
    private final SlackTable table;
    private final Contribution[] contributions;
    private final TrialNumbers numbers;

    private int bottoming;
    private int bottomingAtBump;
    private int bottomingAtDroop;
    private int pullOut;
    private int pullOutAtBump;
    private int pullOutAtDroop;
    private double mean;
    private double squares;

    private SlackTrials(SlackTable table, List<Contribution> contributions, long seed) {
        this.table = table;
        this.contributions = contributions.toArray(new Contribution[0]);
        numbers = new TrialNumbers(seed);
    }

    /**
     * Makes the trials. The same arguments give the same answer, to the bit.
     *
     * @param table the shaft over its travel
     * @param contributions to the distance, each the same over the travel within a trial
     * @param seed where the random numbers start
     * @param trials how many, 1 or more; ten thousand tell a chance of 1 in 100 to within 1 in 1000
     */
    public static SlackChances run(
            SlackTable table, List<Contribution> contributions, long seed, int trials) {
        if (trials < 1) {
            throw new IllegalArgumentException("trials must be 1 or more; have " + trials);
        }
        SlackTrials run = new SlackTrials(table, contributions, seed);
        double[] weights = new double[table.shapes().length];
        for (int i = 1; i <= trials; i++) {
            run.trial(weights, i);
        }
        return run.chances(trials);
    }

    private void trial(double[] weights, int number) {
        double common = table.allowance() * numbers.even();
        for (Contribution contribution : contributions) {
            common += drawn(contribution);
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] = numbers.normal();
        }
        double leastIn = Double.POSITIVE_INFINITY;
        double leastOut = Double.POSITIVE_INFINITY;
        double in = 0;
        double out = 0;
        double[] slackIn = table.slackIn();
        double[] slackOut = table.slackOut();
        double[][] shapes = table.shapes();
        for (int row = 0; row < slackIn.length; row++) {
            double longer = common;
            for (int k = 0; k < weights.length; k++) {
                longer += weights[k] * shapes[k][row];
            }
            in = slackIn[row] + longer;
            out = slackOut[row] - longer;
            leastIn = Math.min(leastIn, in);
            leastOut = Math.min(leastOut, out);
            if (row == 0) {
                bottomingAtDroop += in < 0 ? 1 : 0;
                pullOutAtDroop += out < 0 ? 1 : 0;
            }
        }
        bottomingAtBump += in < 0 ? 1 : 0;
        pullOutAtBump += out < 0 ? 1 : 0;
        bottoming += leastIn < 0 ? 1 : 0;
        pullOut += leastOut < 0 ? 1 : 0;
        spread(leastIn + leastOut, number);
    }

    /** Welford's running mean and sum of squares, which does not lose digits. */
    private void spread(double window, int number) {
        double off = window - mean;
        mean += off / number;
        squares += off * (window - mean);
    }

    private double drawn(Contribution contribution) {
        return switch (contribution.kind()) {
            case GRADUATION -> contribution.amount() / 2 * numbers.even();
            case PLUS_MINUS -> contribution.amount() * numbers.even();
            case SCATTER -> contribution.amount() * numbers.normal();
            case BIAS -> numbers.even() < 0 ? -contribution.amount() : contribution.amount();
        };
    }

    private SlackChances chances(int trials) {
        double n = trials;
        return new SlackChances(
                trials,
                bottoming / n,
                bottomingAtBump / n,
                bottomingAtDroop / n,
                pullOut / n,
                pullOutAtBump / n,
                pullOutAtDroop / n,
                mean,
                trials > 1 ? Math.sqrt(squares / (n - 1)) : 0);
    }
}
