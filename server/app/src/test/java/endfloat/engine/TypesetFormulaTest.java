package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Parameter;
import endfloat.definition.Default;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the page typesets is what the method computes: the formula of a calculation against its
 * method at random valid points, value and every slope. A formula's slopes are exact and those of a
 * method are its own or differences, so this holds the two ways of differentiating to each other.
 */
class TypesetFormulaTest {
  private static final int POINTS = 40;

  static Stream<String> formulas() {
    return Catalogue.library().all().stream()
        .filter(c -> c.formula().isPresent())
        .map(Calculation::name);
  }

  @ParameterizedTest
  @MethodSource("formulas")
  void isWhatTheMethodComputes(String name) {
    Calculation calculation = Catalogue.library().find(name).orElseThrow();
    Random random = new Random(name.hashCode());
    String unit = calculation.results().get(0).unit();
    for (int point = 0; point < POINTS; point++) {
      String lines = lines(calculation, random, unit);
      SheetOfLines sheet = SheetOfLines.of(lines);
      assertEquals(List.of(), sheet.errors(), lines);
      double value = (double) sheet.result("by_method").orElseThrow().value();
      double u = (double) sheet.result("by_method").orElseThrow().u();
      SheetOfLines.Result difference = sheet.result("difference").orElseThrow();
      assertEquals(0, (double) difference.value(), 1e-11 * Math.abs(value), lines);
      assertEquals(0, (double) difference.u(), 1e-7 * u, lines);
      assertTrue(u > 0, lines);
    }
  }

  private static String lines(Calculation calculation, Random random, String unit) {
    StringBuilder lines = new StringBuilder();
    StringBuilder arguments = new StringBuilder();
    for (Parameter parameter : calculation.parameters()) {
      boolean optional = parameter.fallback().filter(Default.NOT_GIVEN::equals).isPresent();
      if (parameter.form() == Parameter.Form.QUANTITY && !optional) {
        double value = value(parameter, random);
        double spread = parameter.unit().equals("degC") ? 1 : 0.01 * Math.abs(value) + 1e-9;
        String printed = parameter.unit().equals("1") ? "" : " " + parameter.unit();
        lines.append(
            String.format(
                Locale.ROOT,
                "%s = %.9e%s \u00b1 %.3e%s%n",
                parameter.name(),
                value,
                printed,
                spread,
                printed));
        arguments
            .append(arguments.length() == 0 ? "" : ", ")
            .append(parameter.name())
            .append(": ")
            .append(parameter.name());
      }
    }
    return lines
        + String.format(
            Locale.ROOT,
            "by_method [%s] = %s(%s)%nby_formula [%s] = %s%ndifference = by_method - by_formula%n",
            unit,
            calculation.name(),
            arguments,
            unit,
            calculation.formula().orElseThrow());
  }

  /** Well inside the range; where there is none, of the size such things have. */
  private static double value(Parameter parameter, Random random) {
    Unit unit = UnitTable.find(parameter.unit());
    double share = 0.05 + 0.9 * random.nextDouble();
    double least = parameter.range().map(r -> unit.fromSi(r.least())).orElse(Double.NaN);
    double greatest = parameter.range().map(r -> unit.fromSi(r.greatest())).orElse(Double.NaN);
    double low = Double.isFinite(least) ? least : parameter.unit().equals("1/K") ? 5e-6 : 2;
    double high =
        Double.isFinite(greatest) ? greatest : parameter.unit().equals("1/K") ? 30e-6 : low + 80;
    return low + share * (high - low);
  }

  @Test
  void someCalculationsHaveOne() {
    assertTrue(formulas().count() >= 10);
  }
}
