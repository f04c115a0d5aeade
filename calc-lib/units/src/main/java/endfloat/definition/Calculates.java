package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a public static method as a calculation of the library. Its camelCase name becomes the
 * snake_case name of the working language, its parameters become named arguments in the same way,
 * its package is its subject, the first sentence of its Javadoc its summary, and the {@code @param}
 * and {@code @return} texts the descriptions.
 *
 * <p>The method takes and gives numbers in coherent SI. A parameter is a {@code double} (a
 * quantity), a {@code double[]} (a list), an {@link endfloat.units.Indexed} (readings with
 * stations), a {@code String}, an enum (a text of the language), a {@code List} of a record marked
 * {@link Part}, or, last and not shown, a {@link Progress}. The result is a {@code double} with
 * {@link In} on the method, or a Java record whose components are {@code double}, {@code double[]},
 * {@code String}, {@code boolean}, an enum or {@link endfloat.units.Uncertain}.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.CLASS)
public @interface Calculates {
  /** Name in the working language, where it is not the method's name in snake_case. */
  String name() default "";

  /**
   * Standard and clause, handbook and table, or "derived from ..." with what it was derived from.
   */
  String source();

  /** The usual cautions, each a sentence; printed by the reference page and the report. */
  String[] cautions() default {};

  /** Other words of the trade, British and American, under which a person would look for it. */
  String[] terms() default {};

  /** A calculation too slow for the edit path. */
  boolean heavy() default false;

  /**
   * Name of a static method beside it with the same parameters that gives the exact partial
   * derivatives, one row a numeric result in order, one column a scalar quantity argument in order
   * (SI). A calculation that takes lists may give a row for every number of its results and a
   * column for every number of its quantities and lists, in order; so a choice among the elements
   * is not made anew for each difference. Without it the engine differentiates numerically and the
   * calculation must be smooth to 1e-12.
   */
  String partials() default "";

  /**
   * Name of a static method beside it with the same parameters that gives the half-width of the
   * model's own error (SI): one number for a scalar result, an array with one for each number of a
   * record; NaN where it is not counted. It enters the uncertainty as one independent rectangular
   * root.
   */
  String modelError() default "";

  /**
   * Name of a static method beside it with the same parameters that gives what the scatter of its
   * data leaves in its results, a {@link endfloat.units.Scatter}: of a line through points the
   * uncertainty of slope and intercept, which vary together.
   */
  String scatter() default "";
}
