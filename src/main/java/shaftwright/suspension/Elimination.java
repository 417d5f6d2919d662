package shaftwright.suspension;

/** Small sets of linear equations, solved in place by Gaussian elimination with row exchanges. */
final class Elimination {
    private Elimination() {}

    /**
     * Solves {@code A x = b}.
     *
     * @param a square, row by row; destroyed
     * @param b right side; holds x afterwards
     * @return the determinant of A; 0 when there is no solution, b is then of no use
     */
    static double solve(double[][] a, double[] b) {
        int n = b.length;
        double determinant = 1;
        for (int k = 0; k < n; k++) {
            int pivot = pivot(a, k);
            if (pivot != k) {
                swap(a, b, k, pivot);
                determinant = -determinant;
            }
            double[] row = a[k];
            determinant *= row[k];
            if (!(Math.abs(row[k]) > 0)) {
                return 0;
            }
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / row[k];
                for (int j = k + 1; j < n; j++) {
                    a[i][j] -= factor * row[j];
                }
                b[i] -= factor * b[k];
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j = k + 1; j < n; j++) {
                sum -= a[k][j] * b[j];
            }
            b[k] = sum / a[k][k];
        }
        return determinant;
    }

    private static int pivot(double[][] a, int k) {
        int best = k;
        for (int i = k + 1; i < a.length; i++) {
            if (Math.abs(a[i][k]) > Math.abs(a[best][k])) {
                best = i;
            }
        }
        return best;
    }

    private static void swap(double[][] a, double[] b, int i, int j) {
        double[] row = a[i];
        a[i] = a[j];
        a[j] = row;
        double right = b[i];
        b[i] = b[j];
        b[j] = right;
    }

    /**
     * How many rows are independent, by elimination with full exchange.
     *
     * @param a rows of about length one; destroyed
     * @param least pivots below this count as zero
     */
    static int rank(double[][] a, double least) {
        int columns = a[0].length;
        int rank = 0;
        while (rank < a.length) {
            int bestRow = rank;
            int bestColumn = 0;
            for (int i = rank; i < a.length; i++) {
                for (int j = 0; j < columns; j++) {
                    if (Math.abs(a[i][j]) > Math.abs(a[bestRow][bestColumn])) {
                        bestRow = i;
                        bestColumn = j;
                    }
                }
            }
            double pivot = a[bestRow][bestColumn];
            if (!(Math.abs(pivot) > least)) {
                return rank;
            }
            double[] row = a[bestRow];
            a[bestRow] = a[rank];
            a[rank] = row;
            for (int i = rank + 1; i < a.length; i++) {
                double factor = a[i][bestColumn] / pivot;
                for (int j = 0; j < columns; j++) {
                    a[i][j] -= factor * row[j];
                }
                a[i][bestColumn] = 0;
            }
            rank++;
        }
        return rank;
    }
}
