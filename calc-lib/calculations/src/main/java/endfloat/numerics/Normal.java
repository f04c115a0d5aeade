package endfloat.numerics;

import org.apache.commons.math3.special.Erf;

/** The normal distribution. */
public final class Normal {
  private static final double ROOT_TWO = StrictMath.sqrt(2);

  private Normal() {}

  /** Share of a standard normal distribution above z, accurate far out in the tail. */
  public static double above(double z) {
    return Erf.erfc(z / ROOT_TWO) / 2;
  }

  /** Share of a standard normal distribution below z. */
  public static double below(double z) {
    return above(-z);
  }
}
