package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** The factors against two other tables: GNU Units 2.22 and the reference library of JSR 385. */
class SecondOpinionTest {

  @TestFactory
  Stream<DynamicTest> agreesWithGnuUnits() throws IOException {
    return lines().stream()
        .map(line -> line.split(" \\| ", -1))
        .map(
            cell ->
                DynamicTest.dynamicTest(
                    cell[0] + " = " + cell[1],
                    () -> {
                      double expected = Double.parseDouble(cell[3]);
                      assertEquals(
                          expected, UnitTable.find(cell[0]).interval().toSi("1"), 1e-14 * expected);
                    }));
  }

  @Test
  void gnuListIsWhole() throws IOException {
    assertTrue(lines().size() > 85, "only " + lines().size() + " lines");
  }

  private static List<String> lines() throws IOException {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                SecondOpinionTest.class.getResourceAsStream("gnu-units-2.22.txt"),
                StandardCharsets.UTF_8))) {
      return in.lines().filter(l -> !l.startsWith("#")).toList();
    }
  }

  /**
   * indriya 2.2.3 and systems-common 2.1. Left out because they are wrong or mean something else:
   * NonSI.HORSEPOWER is the metric one, USCustomary.BARREL is no oil barrel, NonSI.INCH_OF_MERCURY
   * is rounded, rpm counts the radian as 1 Hz, and every UCUM constant (horsepower is off by 550).
   */
  @Test
  void agreesWithTheReferenceLibraryOfJsr385() {
    Map<String, Unit<?>> others =
        Map.ofEntries(
            Map.entry("in", USCustomary.INCH),
            Map.entry("ft", USCustomary.FOOT),
            Map.entry("yd", USCustomary.YARD),
            Map.entry("mi", USCustomary.MILE),
            Map.entry("nmi", USCustomary.NAUTICAL_MILE),
            Map.entry("lb", USCustomary.POUND),
            Map.entry("oz", USCustomary.OUNCE),
            Map.entry("ton_UK", Imperial.TON_UK),
            Map.entry("t", Imperial.METRIC_TON),
            Map.entry("lbf", Imperial.POUND_FORCE),
            Map.entry("hp", USCustomary.HORSEPOWER),
            Map.entry("gal_US", USCustomary.GALLON_LIQUID),
            Map.entry("pt_US", USCustomary.PINT),
            Map.entry("fl_oz_US", USCustomary.FLUID_OUNCE),
            Map.entry("gal_UK", Imperial.GALLON_UK),
            Map.entry("fl_oz_UK", Imperial.FLUID_OUNCE),
            Map.entry("qt_UK", Imperial.QUART),
            Map.entry("pt_UK", Imperial.PINT),
            Map.entry("in^3", Imperial.CUBIC_INCH),
            Map.entry("L", Units.LITRE),
            Map.entry("km/h", Units.KILOMETRE_PER_HOUR),
            Map.entry("knot", USCustomary.KNOT),
            Map.entry("mph", USCustomary.MILE_PER_HOUR),
            Map.entry("min", Units.MINUTE),
            Map.entry("h", Units.HOUR),
            Map.entry("d", Units.DAY),
            Map.entry("week", Units.WEEK),
            Map.entry("rev", USCustomary.REVOLUTION),
            Map.entry("deg", USCustomary.DEGREE_ANGLE),
            Map.entry("arcmin", USCustomary.MINUTE_ANGLE),
            Map.entry("arcsec", USCustomary.SECOND_ANGLE),
            Map.entry("gon", USCustomary.GRADE),
            Map.entry("%", Units.PERCENT));
    assertAll(
        others.entrySet().stream()
            .map(
                pair ->
                    () -> {
                      double factor = inSystemUnit(pair.getValue());
                      assertEquals(
                          factor,
                          UnitTable.find(pair.getKey()).toSi("1"),
                          1e-14 * factor,
                          pair.getKey());
                    }));
  }

  private static double inSystemUnit(Unit<?> unit) {
    try {
      return unit.getConverterToAny(unit.getSystemUnit()).convert(1.0);
    } catch (IncommensurableException e) {
      throw new AssertionError(e);
    }
  }
}
