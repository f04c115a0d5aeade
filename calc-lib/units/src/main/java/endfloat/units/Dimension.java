package endfloat.units;

/**
 * Rational exponents of length, mass, time, temperature, current and angle. Immutable, compared by
 * value.
 */
public final class Dimension {
  public static final Dimension NONE = new Dimension();
  public static final Dimension LENGTH = new Dimension();
  public static final Dimension MASS = new Dimension();
  public static final Dimension TIME = new Dimension();
  public static final Dimension TEMPERATURE = new Dimension();
  public static final Dimension CURRENT = new Dimension();
  public static final Dimension ANGLE = new Dimension();

  private Dimension() {}

  public Dimension times(Dimension other) {
    throw new UnsupportedOperationException();
  }

  public Dimension over(Dimension other) {
    throw new UnsupportedOperationException();
  }

  /** The power numerator/denominator; denominator above 0. */
  public Dimension power(int numerator, int denominator) {
    throw new UnsupportedOperationException();
  }

  /** This dimension without its angle. */
  public Dimension withoutAngle() {
    throw new UnsupportedOperationException();
  }

  /** This dimension with the angle exponent of another. */
  public Dimension withAngleOf(Dimension other) {
    throw new UnsupportedOperationException();
  }

  public boolean hasAngle() {
    throw new UnsupportedOperationException();
  }

  /**
   * Whether two values may be added: equal but for angle; where the rest is exactly 1/time, angle
   * equal too (60 rpm is not 60 Hz).
   */
  public boolean same(Dimension other) {
    throw new UnsupportedOperationException();
  }

  /**
   * The trade's word: length, force, pressure, torque or energy, "length per time" where there is
   * no word.
   */
  public String words() {
    throw new UnsupportedOperationException();
  }
}
