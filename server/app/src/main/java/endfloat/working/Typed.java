package endfloat.working;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Part;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A checked expression: what is left to do is arithmetic on SI doubles. Every function is resolved,
 * every argument stands in the place of its parameter, every default is written out, every number
 * is in SI.
 *
 * <p>A node whose kind is a {@link Kind.Series} while its operands are scalars or series works
 * element by element; series align by their labels and scalars spread. {@link Reduce} and {@link
 * Pick} take a whole series.
 */
public sealed interface Typed {
  Span span();

  Kind kind();

  /** A number in SI: a literal, pi, an implied unit already applied; a temperature in kelvin. */
  record Constant(Span span, Kind kind, double si) implements Typed {}

  /** A text in quotes, or the text of a choice. */
  record Words(Span span, String text) implements Typed {
    @Override
    public Kind kind() {
      return new Kind.Words();
    }
  }

  /** An argument that was not given and whose default is "not given": NaN, or null for a text. */
  record NotGiven(Span span, Kind kind) implements Typed {}

  /** The value of a name of the record. */
  record Name(Span span, Kind kind, String name) implements Typed {}

  /** One named result out of a record of results; of each element where {@code of} is a series. */
  record Field(Span span, Kind kind, Typed of, String field) implements Typed {}

  /** A function of the language. */
  record Apply(Span span, Kind kind, BuiltIn function, List<Typed> arguments) implements Typed {}

  /** {@code a < b <= c}: operators.size() == operands.size() - 1. Texts only for = and !=. */
  record Compare(Span span, Kind kind, List<Typed> operands, List<Expression.Comparator> operators)
      implements Typed {}

  /** {@code if condition then a else b}; only the branch that holds is evaluated. */
  record Choose(Span span, Kind kind, Typed condition, Typed then, Typed otherwise)
      implements Typed {}

  /**
   * {@code max(x)} or {@code max(x, over: "plane")} of a series.
   *
   * @param over the axes taken together; empty for all of the series, which gives a scalar
   * @param by series of texts or truths beside it: one value for each that they have together; none
   *     for all as one
   * @param share of the values that lie below, for a quantile
   */
  record Reduce(
      Span span,
      Kind kind,
      BuiltIn function,
      Typed series,
      List<String> over,
      List<Typed> by,
      Optional<Typed> share)
      implements Typed {}

  /** {@code only(x, where: condition)}: the elements at which the condition holds. */
  record Only(Span span, Kind kind, Typed series, Typed condition) implements Typed {}

  /**
   * {@code pick(x, cylinder: 3, stage: "as found")}.
   *
   * @param labels label wanted on each axis named; axes not named stay
   * @param stage another stage than the record's current one
   */
  record Pick(
      Span span, Kind kind, Typed series, Map<String, String> labels, Optional<String> stage)
      implements Typed {}

  /** {@code [a, b, c]}: a plain list, or a list of parts where the kind is {@link Kind.Parts}. */
  record ListOf(Span span, Kind kind, List<Typed> elements) implements Typed {}

  /**
   * A calculation of the library. Its kind is that of its result: a quantity, text, truth or list,
   * or {@link Kind.Fields}; a series of it where {@code elementByElement}.
   *
   * @param arguments one for each parameter, in its order
   * @param elementByElement whether an argument for a scalar parameter is a series
   */
  record Calculate(
      Span span,
      Kind kind,
      Calculation calculation,
      List<Typed> arguments,
      boolean elementByElement)
      implements Typed {}

  /** A part, built by its constructor; one argument for each component, in its order. */
  record Build(Span span, Kind kind, Part part, List<Typed> components) implements Typed {}
}
