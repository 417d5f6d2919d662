package shaftwright.doubt;

/**
 * The slack of a shaft over the travel and how the hub path behind it may be off. Rows go from
 * droop to bump.
 *
 * @param slackIn mm at each row, nothing taken off for doubt or margins
 * @param slackOut mm at each row
 * @param shapes ways in which the path may be off, independent of each other: mm of distance at
 *     each row, for one standard deviation; none for a path that is sure
 * @param allowance mm at each row that the true curve may lie off the fitted one, either way
 */
// The arrays are read in the innermost loop of the trials; lists of boxes would cost a tenfold.
@SuppressWarnings("ArrayRecordComponent")
public record SlackTable(double[] slackIn, double[] slackOut, double[][] shapes, double allowance) {
    public SlackTable {
        if (slackIn.length == 0 || slackOut.length != slackIn.length) {
            throw new IllegalArgumentException(
                    "both slacks at every row; have " + slackIn.length + " and " + slackOut.length);
        }
        for (double[] shape : shapes) {
            if (shape.length != slackIn.length) {
                throw new IllegalArgumentException(
                        "one value per row; have " + shape.length + " of " + slackIn.length);
            }
        }
        if (!(allowance >= 0 && allowance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("allowance must be 0 or more; have " + allowance);
        }
        slackIn = slackIn.clone();
        slackOut = slackOut.clone();
        shapes = shapes.clone();
    }
}
