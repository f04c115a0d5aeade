package endfloat.thermal;

/** The temperature at which a size means what it says: 20 °C, ISO 1. */
final class ReferenceTemperature {
  static final double KELVIN = 293.15;

  private ReferenceTemperature() {}

  static double riseTo(double temperature) {
    return temperature - KELVIN;
  }
}
