package endfloat.units;

import java.util.Arrays;

/**
 * Rational exponents of length, mass, time, temperature, current and angle. Immutable, compared by
 * value.
 *
 * <p>Angle is a base of its own so that 60 rpm and 60 Hz differ, but a soft one: {@link #same} lets
 * it pass where nothing can go wrong.
 */
public final class Dimension {
  private static final String[] BASES = {
    "length", "mass", "time", "temperature", "current", "angle"
  };
  private static final int ANGLE_AT = 5;

  public static final Dimension NONE = new Dimension(new int[BASES.length], 1);
  public static final Dimension LENGTH = base(0);
  public static final Dimension MASS = base(1);
  public static final Dimension TIME = base(2);
  public static final Dimension TEMPERATURE = base(3);
  public static final Dimension CURRENT = base(4);
  public static final Dimension ANGLE = base(ANGLE_AT);
  private static final Dimension PER_TIME = NONE.over(TIME);

  /** Over the one denominator, in lowest terms. */
  private final int[] numerators;

  private final int denominator;

  private Dimension(int[] numerators, int denominator) {
    int common = denominator;
    for (int n : numerators) {
      common = gcd(common, Math.abs(n));
    }
    this.numerators = new int[numerators.length];
    for (int i = 0; i < numerators.length; i++) {
      this.numerators[i] = numerators[i] / common;
    }
    this.denominator = denominator / common;
  }

  private static Dimension base(int at) {
    int[] one = new int[BASES.length];
    one[at] = 1;
    return new Dimension(one, 1);
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  public Dimension times(Dimension other) {
    return combined(other, 1);
  }

  public Dimension over(Dimension other) {
    return combined(other, -1);
  }

  private Dimension combined(Dimension other, int sign) {
    try {
      int[] sum = new int[BASES.length];
      for (int i = 0; i < sum.length; i++) {
        int mine = Math.multiplyExact(numerators[i], other.denominator);
        int others = Math.multiplyExact(sign * other.numerators[i], denominator);
        sum[i] = Math.addExact(mine, others);
      }
      return new Dimension(sum, Math.multiplyExact(denominator, other.denominator));
    } catch (ArithmeticException e) {
      throw tooHigh(e);
    }
  }

  /** The power numerator/denominator; denominator above 0. */
  public Dimension power(int numerator, int denominator) {
    if (denominator <= 0) {
      throw new IllegalArgumentException("denominator " + denominator + " is not above 0");
    }
    if (numerator == 1 && denominator == 1) {
      return this;
    }
    try {
      int[] raised = new int[BASES.length];
      for (int i = 0; i < raised.length; i++) {
        raised[i] = Math.multiplyExact(numerators[i], numerator);
      }
      return new Dimension(raised, Math.multiplyExact(this.denominator, denominator));
    } catch (ArithmeticException e) {
      throw tooHigh(e);
    }
  }

  private static UnitException tooHigh(ArithmeticException cause) {
    UnitException e =
        new UnitException("the power of this quantity is too high", "take a lower exponent");
    e.initCause(cause);
    return e;
  }

  /** This dimension without its angle. */
  public Dimension withoutAngle() {
    return withAngleOf(NONE);
  }

  /** This dimension with the angle exponent of another. */
  public Dimension withAngleOf(Dimension other) {
    int[] changed = new int[BASES.length];
    for (int i = 0; i < changed.length; i++) {
      changed[i] = numerators[i] * other.denominator;
    }
    changed[ANGLE_AT] = other.numerators[ANGLE_AT] * denominator;
    return new Dimension(changed, denominator * other.denominator);
  }

  public boolean hasAngle() {
    return numerators[ANGLE_AT] != 0;
  }

  /** Whether it is a pure number, with no angle either. */
  public boolean isNone() {
    return equals(NONE);
  }

  /**
   * Whether two values may be added: equal but for angle; where the rest is exactly 1/time, angle
   * equal too (60 rpm is not 60 Hz).
   */
  public boolean same(Dimension other) {
    Dimension rest = withoutAngle();
    if (!rest.equals(other.withoutAngle())) {
      return false;
    }
    return !rest.equals(PER_TIME) || equals(other);
  }

  /**
   * The trade's word: length, force, pressure, torque or energy, "length^5 per time" where there is
   * no word.
   */
  public String words() {
    return DimensionWords.of(this);
  }

  static int bases() {
    return BASES.length;
  }

  static String baseName(int at) {
    return BASES[at];
  }

  /** Exponent of one base, over {@link #denominator()}. */
  int numerator(int at) {
    return numerators[at];
  }

  int denominator() {
    return denominator;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension d
        && denominator == d.denominator
        && Arrays.equals(numerators, d.numerators);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(numerators) + denominator;
  }

  @Override
  public String toString() {
    return words();
  }
}
