package endfloat.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.Default;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Second method: exact partial derivatives against differences of the calculation itself, at random
 * points of its range.
 */
class PartialsTest {
  private static final int POINTS = 12;

  @TestFactory
  Stream<DynamicTest> partialsAgreeWithDifferences() {
    return Catalogue.library().all().stream()
        .filter(c -> c.partials().isPresent())
        .filter(
            c ->
                c.parameters().stream()
                    .allMatch(
                        p ->
                            p.form() == Parameter.Form.QUANTITY
                                || p.form() == Parameter.Form.CHOICE))
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> agree(c)));
  }

  private static void agree(Calculation calculation) {
    Random random = new Random(calculation.name().hashCode());
    int accepted = 0;
    for (int trial = 0; accepted < POINTS && trial < 4000; trial++) {
      Object[] at = point(calculation, random);
      if (trial > 2000) {
        keepSmallBesideTheFirst(calculation, at);
      }
      try {
        if (agreeAt(calculation, at)) {
          accepted++;
        }
      } catch (RefusedException e) {
        // outside where it holds; another point
      }
    }
    assertTrue(accepted > 0, "no point of " + calculation.name() + " was accepted");
  }

  private static boolean agreeAt(Calculation calculation, Object[] at) {
    double[][] exact = calculation.partials().orElseThrow().at(at);
    List<double[]> columns = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      if (calculation.parameters().get(i).form() == Parameter.Form.QUANTITY) {
        columns.add(
            Double.isNaN((double) at[i]) || isTeeth(calculation.parameters().get(i))
                ? new double[0]
                : differences(calculation, at, i, step((double) at[i])));
      }
    }
    double[] values = numbers(calculation, at);
    assertEquals(values.length, exact.length, "rows of " + calculation.name());
    for (int row = 0; row < exact.length; row++) {
      if (isNoDifference(calculation, row)) {
        continue;
      }
      assertEquals(columns.size(), exact[row].length, "columns of " + calculation.name());
      double scale = Math.abs(values[row]);
      int column = 0;
      for (int i = 0; i < at.length; i++) {
        if (calculation.parameters().get(i).form() != Parameter.Form.QUANTITY) {
          continue;
        }
        if (columns.get(column).length > 0) {
          double size = Math.max(Math.abs((double) at[i]), 1e-6);
          assertEquals(
              columns.get(column)[row],
              exact[row][column],
              1e-5 * (Math.abs(exact[row][column]) + scale / size) + 1e-12,
              calculation.name()
                  + ": result "
                  + row
                  + " by "
                  + calculation.parameters().get(i).name()
                  + " at "
                  + java.util.Arrays.toString(at));
        }
        column++;
      }
    }
    return true;
  }

  /**
   * What a change leads to keeps its value whatever the reading was, but not its uncertainty
   * (BacklashTest holds its derivatives); a probability that comes from uncertainties has none.
   */
  private static boolean isNoDifference(Calculation calculation, int row) {
    String name =
        calculation.results().stream()
            .filter(r -> r.form() != Result.Form.TEXT)
            .toList()
            .get(row)
            .name();
    return name.equals("backlash") && calculation.name().equals("bevel_shims")
        || name.equals("probability") && calculation.name().equals("big_enough");
  }

  /** Teeth are whole: there is no difference to take. */
  private static boolean isTeeth(Parameter parameter) {
    return parameter.name().startsWith("teeth");
  }

  private static double step(double value) {
    return value == 0 ? 1e-7 : 1e-4 * Math.abs(value);
  }

  /** Central differences with one step of Richardson. */
  private static double[] differences(Calculation c, Object[] at, int i, double h) {
    double[] wide = central(c, at, i, h);
    double[] narrow = central(c, at, i, h / 2);
    for (int k = 0; k < wide.length; k++) {
      narrow[k] = (4 * narrow[k] - wide[k]) / 3;
    }
    return narrow;
  }

  private static double[] central(Calculation c, Object[] at, int i, double h) {
    Object[] moved = at.clone();
    moved[i] = (double) at[i] + h;
    double[] high = numbers(c, moved);
    moved[i] = (double) at[i] - h;
    double[] low = numbers(c, moved);
    for (int k = 0; k < high.length; k++) {
      high[k] = (high[k] - low[k]) / (2 * h);
    }
    return high;
  }

  private static double[] numbers(Calculation calculation, Object[] arguments) {
    return Stream.of(calculation.call(arguments, Progress.IGNORED))
        .filter(r -> r instanceof Double || r instanceof Uncertain)
        .mapToDouble(r -> r instanceof Uncertain u ? u.value() : (double) r)
        .toArray();
  }

  private static Object[] point(Calculation calculation, Random random) {
    return calculation.parameters().stream().map(p -> value(p, random)).toArray();
  }

  /** Where a calculation holds for small angles, its shifts are small beside its first length. */
  private static void keepSmallBesideTheFirst(Calculation calculation, Object[] at) {
    for (int i = 1; i < at.length; i++) {
      if (calculation.parameters().get(i).unit().equals("mm")) {
        at[i] = (double) at[i] / 100;
      }
    }
  }

  private static Object value(Parameter parameter, Random random) {
    if (parameter.form() == Parameter.Form.CHOICE) {
      return parameter.choices().get(random.nextInt(parameter.choices().size()));
    }
    boolean mayBeAbsent =
        parameter.fallback().filter(Default.NOT_GIVEN::equals).isPresent() && random.nextBoolean();
    if (mayBeAbsent) {
      return Double.NaN;
    }
    if (isTeeth(parameter)) {
      return (double) (12 + random.nextInt(60));
    }
    double low = parameter.range().map(ValidRange::least).orElse(Double.NEGATIVE_INFINITY);
    double high = parameter.range().map(ValidRange::greatest).orElse(Double.POSITIVE_INFINITY);
    double typical = typical(parameter.unit());
    if (UnitTable.find(parameter.unit().startsWith("<") ? "1" : parameter.unit())
        .isTemperaturePoint()) {
      return 250 + 200 * random.nextDouble();
    }
    double from = Math.max(low, low >= 0 ? Math.min(typical / 10, high) : -typical);
    double to = Math.min(high, Math.max(typical, 2 * Math.abs(from)));
    return from + (to - from) * (0.05 + 0.9 * random.nextDouble());
  }

  /** A size such as an engine has, in SI. */
  private static double typical(String unit) {
    return switch (unit) {
      case "mm" -> 0.1;
      case "1/K" -> 2e-5;
      case "K" -> 80;
      case "deg" -> 0.6;
      case "1" -> 30;
      case "MPa" -> 1e8;
      case "GPa" -> 2e11;
      case "N.m" -> 200;
      case "rpm" -> 200;
      default -> 10;
    };
  }
}
