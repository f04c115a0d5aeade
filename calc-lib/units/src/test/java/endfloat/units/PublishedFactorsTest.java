package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published conversions of the truth set, topic "units", each with its id and source. */
class PublishedFactorsTest {
  private static final String SP_811 =
      "NIST Special Publication 811 (2008 ed., B. N. Taylor and A. Thompson), Appendix B.8";
  private static final String DERIVED_811 = "Derived from " + SP_811;
  private static final String WEIGHTS_AND_MEASURES =
      "UK Weights and Measures Act 1985, Schedule 1; " + SP_811 + " (4.546 09 E-03 m^3)";
  private static final String LONG_TON =
      "Derived: 2240 lbf per long ton (UK Weights and Measures Act 1985, Schedule 1) with lbf and"
          + " inch of NIST SP 811 Appendix B.8";

  private static void converts(
      String id, String source, String given, String from, double value, String to, double tol) {
    assertTrue(!id.isEmpty() && !source.isEmpty());
    double got = UnitTable.find(to).fromSi(UnitTable.find(from).toSi(given));
    assertEquals(value, got, tol, id + ", " + source);
  }

  private static void relative(
      String id, String source, String given, String from, double value, String to, double tol) {
    converts(id, source, given, from, value, to, tol * Math.abs(value));
  }

  @Test
  void lengthsAreExact() {
    relative("A01-inch", SP_811, "1", "in", 25.4, "mm", 0);
    relative("A01-thou", SP_811, "1", "thou", 25.4, "um", 0);
  }

  @Test
  void forcesAndTorquesFollowFromTheirDefinitions() {
    relative("A01-lbf", SP_811, "1", "lbf", 4.4482216152605, "N", 1e-12);
    relative("A01-lbf-ft", SP_811, "1", "lbf*ft", 1.3558179483314, "N*m", 1e-12);
    relative("A01-ozf-in", SP_811, "1", "ozf*in", 0.00706155181422604, "N*m", 1e-10);
    relative("A01-kgf", SP_811, "1", "kgf", 9.80665, "N", 0);
    relative("A01-lb-in2", SP_811, "1", "lb*in^2", 0.0002926396534292, "kg*m^2", 1e-10);
  }

  @Test
  void pressuresAndStressesFollowFromTheirDefinitions() {
    relative("A01-tsi", LONG_TON, "1", "tonf_UK/in^2", 15.444256336697, "MPa", 1e-10);
    relative("A01-bar-psi", SP_811, "1", "bar", 14.5037737730209, "psi", 1e-12);
    relative("A01-mmHg", SP_811, "1", "mmHg", 133.322387415, "Pa", 1e-12);
    relative("A01-inH2O", SP_811, "1", "inH2O", 249.08891, "Pa", 1e-12);
    converts("A01-inHg-boost", DERIVED_811, "44.92", "inHg", 152.116, "kPa", 0.01);
  }

  /** The edge of A01-inHg-60F: it must not be read as the conventional inch. */
  @Test
  void inchOfMercuryAt60DegFIsNotTheConventionalOne() {
    relative("A01-inHg-60F", SP_811, "1", "inHg_60degF", 3376.85, "Pa", 2e-6);
    double ratio = UnitTable.find("inHg_60degF").toSi("1") / UnitTable.find("inHg").toSi("1");
    assertEquals(0.99718, ratio, 5e-6);
  }

  @Test
  void speedsVolumesAndConsumptionFollowFromTheirDefinitions() {
    relative("A01-rpm", SP_811, "1", "rpm", 0.10471975511966, "rad/s", 1e-12);
    relative("A01-arcmin", SP_811, "1", "arcmin", 0.000290888208665722, "rad", 1e-12);
    relative("A01-gal-uk", WEIGHTS_AND_MEASURES, "1", "gal_UK", 4.54609, "L", 0);
    relative("A01-sfc", SP_811, "0.5", "lb/(hp*h)", 304.138694, "g/(kW*h)", 1e-8);
    relative("A01-cSt", SP_811, "15", "cSt", 1.5e-5, "m^2/s", 0);
    relative("A01-reyn", SP_811, "4e-6", "reyn", 0.027579029172673, "Pa*s", 1e-12);
  }

  @Test
  void temperaturesArePointsAndIntervalsAreNot() {
    converts("A01-degF-abs-212", SP_811, "212", "degF", 100, "degC", 0);
    assertEquals(0, UnitTable.find("degF").toSi("-459.67"), 0, "A01-degF-abs-zero, " + SP_811);
    assertEquals(293.15, UnitTable.find("degC").toSi("20"), 0, "A01-degC-to-K, " + SP_811);
    relative("A01-cte-per-degF", SP_811, "6.5e-6", "1/delta_degF", 1.17e-5, "1/K", 0);
  }

  /**
   * NIST SP 811 (2008), Appendix B.8, from memory: seven printed figures, bold (exact) where the
   * tolerance is 0.
   */
  @ParameterizedTest
  @CsvSource({
    "yd, 0.9144, m, 0",
    "mi, 1609.344, m, 0",
    "uin, 2.54e-8, m, 0",
    "lb, 0.45359237, kg, 0",
    "oz, 2.834952e-2, kg, 5e-7",
    "gr, 6.479891e-5, kg, 0",
    "slug, 14.59390, kg, 5e-7",
    "ton_UK, 1016.047, kg, 5e-7",
    "ton_US, 907.1847, kg, 5e-7",
    "ozf, 0.2780139, N, 5e-7",
    "kip, 4448.222, N, 5e-7",
    "lbf.in, 0.1129848, N.m, 5e-7",
    "psi, 6894.757, Pa, 5e-7",
    "ksi, 6.894757, MPa, 5e-7",
    "kgf/cm^2, 98066.5, Pa, 0",
    "kgf/mm^2, 9.80665, MPa, 0",
    "atm, 101325, Pa, 0",
    "Torr, 133.3224, Pa, 5e-7",
    "inHg, 3386.389, Pa, 5e-7",
    "inHg_32degF, 3386.38, Pa, 5e-7",
    "inH2O_60degF, 248.84, Pa, 5e-7",
    "ftH2O, 2989.067, Pa, 5e-7",
    "hp, 745.6999, W, 5e-7",
    "PS, 735.49875, W, 0",
    "Btu_IT, 1055.056, J, 5e-7",
    "Btu_th, 1054.350, J, 5e-7",
    "cal_IT, 4.1868, J, 0",
    "cal_th, 4.184, J, 0",
    "kWh, 3.6, MJ, 0",
    "cP, 0.001, Pa.s, 0",
    "gal_US, 3.785412, L, 5e-7",
    "pt_UK, 0.56826125, L, 0",
    "fl_oz_UK, 28.41306, mL, 5e-7",
    "fl_oz_US, 29.57353, mL, 5e-7",
    "in^3, 16.387064, cm^3, 0",
    "in^4, 4.162314e-7, m^4, 5e-7",
    "knot, 0.5144444, m/s, 5e-7",
    "ft/min, 0.00508, m/s, 0",
    "lb/in^3, 27679.90, kg/m^3, 5e-7",
    "lbf/in, 175.1268, N/m, 5e-7",
    "deg, 1.745329e-2, rad, 5e-7",
    "arcsec, 4.848137e-6, rad, 5e-7",
    "Btu_IT/(lb.delta_degF), 4186.8, J/(kg.K), 0",
    "Oe, 79.57747, A/m, 5e-7",
    "gauss, 0.0001, T, 0"
  })
  void agreesWithNistSp811(String unit, double value, String si, double tolerance) {
    relative("SP 811 " + unit, SP_811, "1", unit, value, si, tolerance);
  }
}
