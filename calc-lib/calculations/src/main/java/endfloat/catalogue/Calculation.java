package endfloat.catalogue;

import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.units.Scatter;
import endfloat.units.Uncertain;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One calculation of the library as every surface sees it.
 *
 * <p>Arguments are passed in the order of {@code parameters} as: {@code Double} in SI (NaN where
 * not given) for QUANTITY, {@code double[]} for LIST, {@link endfloat.units.Indexed} for INDEXED,
 * {@code String} for TEXT and CHOICE (null where not given), and for PARTS a {@code
 * List<Object[]>}, each array the components in order.
 *
 * @param name in the working language
 * @param subject last name of its package: thermal, fits, gears ...
 * @param summary one sentence
 * @param description the rest of the Javadoc, plain text
 * @param parameters in order
 * @param results one without a name for a scalar, else the fields in order
 * @param source where the relation comes from
 * @param cautions sentences
 * @param terms other words to find it by
 * @param formula as {@link endfloat.definition.TypesetAs} gives it
 * @param heavy whether it must run off the edit path
 * @param body the method behind it
 * @param partials exact derivatives: one row a QUANTITY or UNCERTAIN result, one column a QUANTITY
 *     argument
 * @param modelError half-widths of the model's own error, NaN where not counted
 * @param scatter what the scatter of its data leaves in its results
 */
public record Calculation(
    String name,
    String subject,
    String summary,
    String description,
    List<Parameter> parameters,
    List<Result> results,
    String source,
    List<String> cautions,
    List<String> terms,
    Optional<String> formula,
    boolean heavy,
    Body body,
    Optional<Partials> partials,
    Optional<ModelError> modelError,
    Optional<OfData> scatter) {

  /**
   * The method behind a calculation. Results come in the order of {@code results}: Double,
   * Uncertain, double[], String, Boolean. An absent Uncertain has no value and refuses who reads
   * it, while the other results stand.
   */
  @FunctionalInterface
  public interface Body {
    Object[] apply(Object[] arguments, Progress progress);
  }

  /** Exact derivatives of a calculation. */
  @FunctionalInterface
  public interface Partials {
    double[][] at(Object[] arguments);
  }

  /**
   * The model's own error: one root, with its half-width in each number of the results in order.
   */
  @FunctionalInterface
  public interface ModelError {
    double[] halfWidths(Object[] arguments);
  }

  /** What the scatter of the data leaves in the numbers of the results. */
  @FunctionalInterface
  public interface OfData {
    Scatter at(Object[] arguments);
  }

  /** Whether it gives a record of named results rather than one value. */
  public boolean givesRecord() {
    return !results.get(0).name().isEmpty();
  }

  /**
   * Runs the calculation.
   *
   * @return results in the order of {@code results}
   * @throws endfloat.definition.OutOfRangeException if an argument is outside its range
   * @throws endfloat.definition.RefusedException if the calculation says no, or would give no
   *     finite number
   */
  public Object[] call(Object[] arguments, Progress progress) {
    ArgumentRange.hold(parameters, arguments);
    Object[] given = body.apply(arguments, progress);
    for (int i = 0; i < given.length; i++) {
      if (!finite(given[i])) {
        throw new RefusedException(
            name
                + " gives no finite "
                + (results.get(i).name().isEmpty() ? "result" : results.get(i).name())
                + " for these arguments.");
      }
    }
    return given;
  }

  private static boolean finite(Object value) {
    if (value instanceof Double number) {
      return Double.isFinite(number);
    }
    if (value instanceof Uncertain number) {
      return number.isAbsent()
          || (Double.isFinite(number.value()) && Double.isFinite(number.standardUncertainty()));
    }
    return !(value instanceof double[] numbers)
        || Arrays.stream(numbers).allMatch(Double::isFinite);
  }
}
