package endfloat.engine;

/** Small sets of linear equations, by elimination with the largest pivot of each column. */
final class LinearSystem {
  private LinearSystem() {}

  /** The inverse; null for a matrix that has none. */
  static double[][] inverse(double[][] matrix) {
    int n = matrix.length;
    double[][] a = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(matrix[i], 0, a[i], 0, n);
      a[i][n + i] = 1;
    }
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int i = column + 1; i < n; i++) {
        pivot = Math.abs(a[i][column]) > Math.abs(a[pivot][column]) ? i : pivot;
      }
      double[] swapped = a[pivot];
      a[pivot] = a[column];
      a[column] = swapped;
      if (!(Math.abs(swapped[column]) > 0)) {
        return null;
      }
      scale(a, column);
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(a[i], n, inverse[i], 0, n);
    }
    return inverse;
  }

  private static void scale(double[][] a, int column) {
    double[] row = a[column];
    double pivot = row[column];
    for (int j = 0; j < row.length; j++) {
      row[j] /= pivot;
    }
    for (int i = 0; i < a.length; i++) {
      double factor = a[i][column];
      if (i != column && factor != 0) {
        for (int j = 0; j < row.length; j++) {
          a[i][j] -= factor * row[j];
        }
      }
    }
  }
}
