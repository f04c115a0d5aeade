package endfloat.benchmarks;

import endfloat.engine.Clause;
import java.util.ArrayList;
import java.util.List;

/**
 * Task: recalculation. Every tenth cell is an input; around each stands a family of ten formulas
 * that depend on it, spread over the whole numbering, so that an edit touches eleven far places.
 */
final class Families {
  private Families() {}

  private static final List<String> FORMULAS =
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
          "l# = j# + g#");

  /** Lines of one clause, as in a long record. */
  private static final int CLAUSE = 20;

  /** The input of family k. */
  static String input(int k, String value) {
    return "i" + k + " = " + value;
  }

  /**
   * The whole record in clauses of twenty lines: all inputs first, then the first formula of every
   * family, and so on.
   *
   * @param spread what stands after each input, such as {@code ± 0.01}; empty where it is exact
   */
  static List<Clause.Working> clauses(int families, String spread) {
    List<String> lines = new ArrayList<>();
    for (int k = 0; k < families; k++) {
      lines.add(input(k, start(k) + spread));
    }
    for (String formula : FORMULAS) {
      for (int k = 0; k < families; k++) {
        lines.add(formula.replace("#", Integer.toString(k)));
      }
    }
    List<Clause.Working> clauses = new ArrayList<>();
    for (int from = 0; from < lines.size(); from += CLAUSE) {
      String text = String.join("\n", lines.subList(from, Math.min(from + CLAUSE, lines.size())));
      clauses.add(new Clause.Working("c" + from, "", text));
    }
    return clauses;
  }

  /** What input k is at first. */
  static String start(int k) {
    return "1." + (100 + k % 900);
  }

  /** The clause that holds input k, with that input typed anew. */
  static Clause.Working edited(List<Clause.Working> clauses, int k, String value, String spread) {
    Clause.Working clause = clauses.get(k / CLAUSE);
    String before = input(k, start(k) + spread);
    String text = clause.text().replace(before, input(k, value + spread));
    return new Clause.Working(clause.id(), clause.label(), text);
  }

  /** The same formulas as plain expressions for a general evaluator, of one family. */
  static List<String> plain() {
    return FORMULAS.stream().map(f -> f.substring(f.indexOf('=') + 2).replace("#", "")).toList();
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
