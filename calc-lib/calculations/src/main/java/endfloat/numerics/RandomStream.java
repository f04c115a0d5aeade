package endfloat.numerics;

/**
 * Random numbers that are the same on every JDK and machine: SplitMix64 (Steele, Lea, Flood, 2014)
 * for the bits, a ziggurat of 256 layers (Marsaglia, Tsang, 2000) for normals. One stream a block
 * of trials, so that the number of threads cannot change a result.
 */
public final class RandomStream {
  private static final int LAYERS = 256;
  private static final double TAIL = 3.654152885361009;
  private static final double[] X = new double[LAYERS + 1];
  private static final double[] Y = new double[LAYERS + 1];

  static {
    double area = TAIL * density(TAIL) + tailArea();
    X[0] = area / density(TAIL);
    X[1] = TAIL;
    for (int i = 2; i < LAYERS; i++) {
      X[i] = StrictMath.sqrt(-2 * StrictMath.log(area / X[i - 1] + density(X[i - 1])));
    }
    X[LAYERS] = 0;
    for (int i = 0; i <= LAYERS; i++) {
      Y[i] = density(X[i]);
    }
  }

  private long state;

  /**
   * @param seed of the whole run
   * @param block number of the block, so that each has its own stream
   */
  public RandomStream(long seed, long block) {
    state = mixed(seed) + mixed(block * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
  }

  private static double density(double x) {
    return StrictMath.exp(-x * x / 2);
  }

  /** Area under exp(-x^2/2) beyond the last layer. */
  private static double tailArea() {
    return StrictMath.sqrt(2 * StrictMath.PI) * Normal.above(TAIL);
  }

  private static long mixed(long bits) {
    long z = bits;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  private long bits() {
    state += 0x9E3779B97F4A7C15L;
    return mixed(state);
  }

  /** Evenly over 0 to 1, both ends left out. */
  public double uniform() {
    return ((bits() >>> 12) + 0.5) * 0x1p-52;
  }

  /** Standard normal. */
  public double normal() {
    while (true) {
      long bits = bits();
      int layer = (int) (bits & (LAYERS - 1));
      double x = (bits >> 11) * 0x1p-52 * X[layer];
      if (Math.abs(x) < X[layer + 1]) {
        return x;
      }
      if (layer == 0) {
        return beyond(x < 0);
      }
      if (Y[layer] + uniform() * (Y[layer + 1] - Y[layer]) < density(x)) {
        return x;
      }
    }
  }

  /** From the tail, after Marsaglia. */
  private double beyond(boolean negative) {
    while (true) {
      double x = -StrictMath.log(uniform()) / TAIL;
      double y = -StrictMath.log(uniform());
      if (y + y > x * x) {
        return negative ? -(TAIL + x) : TAIL + x;
      }
    }
  }
}
