package shaftwright.suspension;

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi's turns, which keep the digits
 * of small eigenvalues as far as the matrix has them. Source: G. H. Golub, C. F. Van Loan, Matrix
 * Computations, section on Jacobi methods.
 */
final class SymmetricMatrix {
    private static final int MOST_SWEEPS = 30;

    private final double[][] matrix;
    private final double[][] vectors;

    /**
     * @param matrix symmetric, row by row; destroyed
     */
    SymmetricMatrix(double[][] matrix) {
        this.matrix = matrix;
        int n = matrix.length;
        vectors = new double[n][n];
        for (int i = 0; i < n; i++) {
            vectors[i][i] = 1;
        }
        for (int sweep = 0; sweep < MOST_SWEEPS && !diagonal(); sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    turn(p, q);
                }
            }
        }
    }

    private boolean diagonal() {
        double off = 0;
        double on = 0;
        for (int i = 0; i < matrix.length; i++) {
            on += Math.abs(matrix[i][i]);
            for (int j = 0; j < i; j++) {
                off += Math.abs(matrix[i][j]);
            }
        }
        return off <= 1e-17 * on;
    }

    /** Turns the plane of two axes so that their common element becomes zero. */
    private void turn(int p, int q) {
        if (!(Math.abs(matrix[p][q]) > 0)) {
            return;
        }
        double theta = (matrix[q][q] - matrix[p][p]) / (2 * matrix[p][q]);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double c = 1 / Math.sqrt(t * t + 1);
        double s = t * c;
        for (double[] row : matrix) {
            turn(row, p, q, c, s);
        }
        for (int j = 0; j < matrix.length; j++) {
            double a = matrix[p][j];
            matrix[p][j] = c * a - s * matrix[q][j];
            matrix[q][j] = s * a + c * matrix[q][j];
        }
        for (double[] row : vectors) {
            turn(row, p, q, c, s);
        }
    }

    private static void turn(double[] row, int p, int q, double c, double s) {
        double a = row[p];
        row[p] = c * a - s * row[q];
        row[q] = s * a + c * row[q];
    }

    /** An eigenvalue, in no order. */
    double value(int k) {
        return matrix[k][k];
    }

    /** An element of its vector of length one. */
    double vector(int k, int element) {
        return vectors[element][k];
    }
}
