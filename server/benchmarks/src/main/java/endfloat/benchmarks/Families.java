package endfloat.benchmarks;

import java.util.ArrayList;
import java.util.List;

/**
 * Task: recalculation. Every tenth cell is an input; around each stands a family of ten formulas
 * that depend on it, spread over the whole numbering, so that an edit touches eleven far places.
 */
final class Families {
  private Families() {}

  /** The formulas of family k in the working language; the first line is its input. */
  static List<String> lines(int k, double input) {
    List<String> lines = new ArrayList<>();
    lines.add("i%d = %s".formatted(k, Double.toString(input)));
    for (String formula :
        List.of(
            "a# = i# * 1.01 + 0.37",
            "b# = a# * a# - i#",
            "c# = sqrt(b# * b# + 1)",
            "d# = c# / (1 + a# * a#)",
            "e# = a# + d#",
            "f# = e# * 0.5 + b#",
            "g# = sqrt(f# * f# + e# * e#)",
            "h# = g# - c#",
            "j# = h# * e#",
            "l# = j# + g#")) {
      lines.add(formula.replace("#", Integer.toString(k)));
    }
    return lines;
  }

  /** The eleventh line of a family: what all the others run into. */
  static String last(int k) {
    return "l" + k;
  }

  /**
   * One edit by hand: sets an input and brings its ten dependents up to date.
   *
   * @param cells families interleaved: line r of family k stands at {@code r * families + k}
   */
  static double byHand(double[] cells, int families, int k, double input) {
    double a = input * 1.01 + 0.37;
    double b = a * a - input;
    double c = Math.sqrt(b * b + 1);
    double d = c / (1 + a * a);
    double e = a + d;
    double f = e * 0.5 + b;
    double g = Math.sqrt(f * f + e * e);
    double h = g - c;
    double j = h * e;
    double last = j + g;
    double[] family = {input, a, b, c, d, e, f, g, h, j, last};
    for (int r = 0; r < family.length; r++) {
      cells[r * families + k] = family[r];
    }
    return last;
  }
}
