package endfloat.gears;

/**
 * Form factors of Lewis for full-depth teeth of 20 degrees, load at the tip: Shigley's Mechanical
 * Engineering Design, Table 14-2 (from memory). Between the rows they run straight in 1/z, which
 * the rack closes.
 */
final class LewisForm {
  private static final double[] TEETH = {
    12,
    13,
    14,
    15,
    16,
    17,
    18,
    19,
    20,
    21,
    22,
    24,
    26,
    28,
    30,
    34,
    38,
    43,
    50,
    60,
    75,
    100,
    150,
    300,
    400,
    Double.POSITIVE_INFINITY
  };
  private static final double[] FACTOR = {
    0.245, 0.261, 0.277, 0.290, 0.296, 0.303, 0.309, 0.314, 0.322, 0.328, 0.331, 0.337, 0.346,
    0.353, 0.359, 0.371, 0.384, 0.397, 0.409, 0.422, 0.435, 0.447, 0.460, 0.472, 0.480, 0.485
  };

  private LewisForm() {}

  static double factor(double teeth) {
    if (Double.isInfinite(teeth)) {
      return FACTOR[FACTOR.length - 1];
    }
    int row = 0;
    while (TEETH[row + 1] <= teeth) {
      row++;
    }
    double low = 1 / TEETH[row];
    double share = (low - 1 / teeth) / (low - 1 / TEETH[row + 1]);
    return FACTOR[row] + share * (FACTOR[row + 1] - FACTOR[row]);
  }
}
