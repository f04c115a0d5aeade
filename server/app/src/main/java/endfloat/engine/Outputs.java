package endfloat.engine;

import endfloat.catalogue.Result;
import endfloat.units.Uncertain;
import java.util.List;

/** The numbers among the results of a calculation, one after the other. */
final class Outputs {
  private Outputs() {}

  static double[] numbers(Object[] results, List<Result> declared) {
    int count = 0;
    for (Object result : results) {
      count +=
          result instanceof double[] list
              ? list.length
              : result instanceof Double || result instanceof Uncertain ? 1 : 0;
    }
    double[] numbers = new double[count];
    int next = 0;
    for (Object result : results) {
      if (result instanceof double[] list) {
        System.arraycopy(list, 0, numbers, next, list.length);
        next += list.length;
      } else if (result instanceof Double number) {
        numbers[next++] = number;
      } else if (result instanceof Uncertain uncertain) {
        numbers[next++] = uncertain.value();
      }
    }
    return numbers;
  }

  /**
   * One column of exact partial derivatives, set out as {@link #numbers}; null where a result is a
   * list, for which there are none.
   */
  static double[] column(double[][] partials, int column, List<Result> declared, int count) {
    if (partials.length != count || declared.stream().anyMatch(r -> r.form() == Result.Form.LIST)) {
      return null;
    }
    double[] slopes = new double[count];
    for (int i = 0; i < count; i++) {
      slopes[i] = partials[i][column];
    }
    return slopes;
  }

  /** How many numbers an argument holds that partial derivatives count: of quantities and lists. */
  static int numbers(Object argument) {
    return argument instanceof Double ? 1 : argument instanceof double[] list ? list.length : 0;
  }

  /**
   * Whether there is a row for every number that comes out, in lists too, and a column for every
   * number of a quantity or a list that goes in.
   */
  static boolean isWhole(double[][] partials, int count, Object[] arguments) {
    int in = 0;
    boolean lists = false;
    for (Object argument : arguments) {
      in += numbers(argument);
      lists |= argument instanceof double[];
    }
    return lists && partials.length == count && count > 0 && partials[0].length == in;
  }

  /** One column of such partial derivatives. */
  static double[] column(double[][] partials, int column) {
    double[] slopes = new double[partials.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = partials[i][column];
    }
    return slopes;
  }
}
