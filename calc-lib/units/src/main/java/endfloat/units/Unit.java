package endfloat.units;

/** A unit of the table or a product of such units. */
public sealed interface Unit permits ExactUnit {
  /** As it was asked for: {@code lbf.ft}, {@code 1/K}. */
  String symbol();

  /** As it is printed: {@code lbf·ft}, {@code 10⁻⁶/K}, {@code °C}. */
  String print();

  Dimension dimension();

  /**
   * Whether a number in it is a point on a temperature scale (degC, degF); kelvin is a difference.
   */
  boolean isTemperaturePoint();

  /** The interval of a temperature scale (degC to kelvin); itself for any other. */
  Unit interval();

  /**
   * A decimal text (also a fraction such as {@code 1 15/16}) in this unit to SI, exactly, then
   * rounded once.
   */
  double toSi(String decimal);

  double toSi(double value);

  /** The number in this unit that the shortest decimal of the SI double stands for. */
  double fromSi(double si);
}
