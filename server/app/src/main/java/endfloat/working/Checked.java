package endfloat.working;

import endfloat.units.Unit;
import java.util.List;
import java.util.Optional;

/** A line whose kinds have been found: all that is needed to evaluate it without asking again. */
public sealed interface Checked {
  Line line();

  /** Hints and warnings; errors only in {@link Refused}. */
  List<LineProblem> problems();

  /** The line has an error and no result. */
  record Refused(Line line, List<LineProblem> problems) implements Checked {}

  /**
   * A definition that gives a value.
   *
   * @param kind of the value; a declared angle or its absence already applied
   * @param unit declared, or else the one that its first number or name was given in; empty where
   *     neither says
   * @param value the value, or the mean where there is a distribution
   * @param spread after ±
   * @param distribution where the line is normal(...), rectangular(...) and so on; then no spread
   */
  record Value(
      Line.Definition line,
      Kind kind,
      Optional<Unit> unit,
      Typed value,
      Optional<Spread> spread,
      Optional<Distribution> distribution,
      List<LineProblem> problems)
      implements Checked {}

  /**
   * A definition that solves. One unknown: the line's value is that unknown. Several: the value is
   * a {@link Kind.Fields} with one field an unknown.
   *
   * @param unit as in {@link Value}
   */
  record Solved(
      Line.Definition line,
      Kind kind,
      Optional<Unit> unit,
      List<Equation> equations,
      List<Unknown> unknowns,
      List<LineProblem> problems)
      implements Checked {}

  /**
   * A limit on a value, judged for each element of a series.
   *
   * @param place a name, or a field of one
   * @param low in the kind of the place; empty for none
   * @param high in the kind of the place; empty for none
   * @param unit the one the limit was typed in
   */
  record Limited(
      Line.Limit line,
      Typed place,
      Optional<Typed> low,
      Optional<Typed> high,
      Optional<Unit> unit,
      List<LineProblem> problems)
      implements Checked {}

  /** Two inputs that vary together. */
  record Correlated(Line.Correlate line, Typed coefficient, List<LineProblem> problems)
      implements Checked {}

  /**
   * What stands after ±: U = half, or half times the size of the value where relative; u = U / k.
   *
   * @param half expanded uncertainty [SI]
   * @param relative whether half is a fraction of the value
   * @param coverage k, the constant 2 where the line does not say
   * @param degrees of freedom; empty for infinite
   */
  record Spread(Typed half, boolean relative, Typed coverage, Optional<Typed> degrees) {}

  /** Two sides that must be equal. */
  record Equation(Typed left, Typed right) {}

  /**
   * One unknown of a solve and its bracket.
   *
   * @param kind of the unknown, known from its bracket
   */
  record Unknown(String name, Kind kind, Typed low, Typed high) {}

  /** What an input may be drawn from. */
  record Distribution(Shape shape, List<Typed> parameters) {}

  /** The parameters of each, in order. */
  enum Shape {
    /** value, standard uncertainty */
    NORMAL,
    /** low, high */
    RECTANGULAR,
    /** low, mode, high */
    TRIANGULAR,
    /** low, high */
    ARCSINE,
    /** value, scale, degrees of freedom */
    STUDENT_T,
    /** a series of values, each as likely as the others */
    SAMPLED
  }
}
