package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.working.Checked;
import endfloat.working.Span;
import endfloat.working.Typed;
import java.util.List;
import java.util.Optional;

/** The right side of a definition, made ready: its value and the spread it has of its own. */
final class Formula {
  private static final double ROOT_2 = 1.4142135623730951;
  private static final double ROOT_3 = 1.7320508075688772;

  private final String owner;
  private final Root.Kind rootKind;
  private final String words;
  private final Span span;
  private final Term value;
  private final Optional<SpreadTerms> spread;
  private final Optional<Checked.Shape> shape;
  private final Term[] parameters;

  private static final double TOO_LARGE = 1e150;

  private record SpreadTerms(Term half, boolean relative, Term coverage, Optional<Term> degrees) {}

  /**
   * @param owner id of what it belongs to, from which the id of its root is made
   * @param words what stands after ±, or the distribution, as typed
   */
  Formula(String owner, Root.Kind rootKind, String words, Checked.Value checked, Planner planner) {
    this.owner = owner;
    this.rootKind = rootKind;
    this.words = words;
    this.span = checked.value().span();
    this.value = planner.plan(checked.value());
    this.spread =
        checked
            .spread()
            .map(
                s ->
                    new SpreadTerms(
                        planner.plan(s.half()),
                        s.relative(),
                        planner.plan(s.coverage()),
                        s.degrees().map(planner::plan)));
    this.shape = checked.distribution().map(Checked.Distribution::shape);
    List<Typed> given =
        checked.distribution().map(Checked.Distribution::parameters).orElse(List.of());
    this.parameters = given.stream().map(planner::plan).toArray(Term[]::new);
  }

  /** Whether the value brings uncertainty of its own, not only that of what it reads. */
  boolean hasOwnSpread() {
    return spread.isPresent() || shape.isPresent();
  }

  boolean hasRelativeSpread() {
    return spread.isPresent() && spread.get().relative();
  }

  String rootId() {
    return "input:" + owner;
  }

  Value evaluate(Frame frame) {
    Value made = made(frame);
    hold(made);
    return made;
  }

  /** What is larger than this leaves no room for squares, nor for a smaller unit to show it in. */
  private void hold(Value made) {
    if (made instanceof Value.Series series) {
      series.elements().forEach(this::hold);
    } else if (made instanceof Value.Fields fields) {
      fields.values().forEach(this::hold);
    } else if (made instanceof Scalar scalar) {
      boolean holds = Math.abs(scalar.si()) < TOO_LARGE;
      for (int i = 0; holds && i < scalar.gradient().size(); i++) {
        holds = Math.abs(scalar.gradient().part(i)) < TOO_LARGE;
      }
      if (!holds) {
        throw new LineFailure(
            span,
            "The result or its uncertainty is too large to be reckoned with.",
            "Check the exponents and the units.");
      }
    }
  }

  private Value made(Frame frame) {
    Value plain = value.evaluate(frame);
    if (spread.isPresent()) {
      return spread(plain, spread.get(), frame);
    }
    return shape.isPresent() ? distributed((Scalar) plain, shape.get(), frame) : plain;
  }

  private Value spread(Value plain, SpreadTerms terms, Frame frame) {
    Value half = terms.half().evaluate(frame);
    double coverage = number(terms.coverage(), frame);
    if (!(coverage > 0)) {
      throw new LineFailure(
          terms.coverage().span(),
          "The coverage factor k must be above zero.",
          "Take it from the certificate; it is 2 where nothing else is said.");
    }
    double degrees = Double.POSITIVE_INFINITY;
    if (terms.degrees().isPresent()) {
      degrees = number(terms.degrees().get(), frame);
      if (!(degrees > 0)) {
        throw new LineFailure(
            terms.degrees().get().span(),
            "Degrees of freedom must be above zero.",
            "Leave them out where they are not known.");
      }
    }
    return own(plain, rootId(), standard(plain, half, terms, coverage), degrees);
  }

  private static double number(Term term, Frame frame) {
    return ((Scalar) term.evaluate(frame)).si();
  }

  private static double standard(Value plain, Value half, SpreadTerms terms, double coverage) {
    double size = ((Scalar) half).si();
    if (size < 0) {
      throw new LineFailure(
          terms.half().span(), "What stands after \u00b1 must not be negative.", "Drop the sign.");
    }
    double of = Math.abs(((Scalar) plain).si());
    if (terms.relative() && of == 0 && size > 0) {
      throw new LineFailure(
          terms.half().span(),
          "A share of nought is nought, and would say that the value is exact.",
          "Write the uncertainty in the unit of the value.");
    }
    return (terms.relative() ? size * of : size) / coverage;
  }

  private Scalar own(Value plain, String rootId, double u, double degrees) {
    Scalar scalar = (Scalar) plain;
    Root root = new Root(rootId, rootKind, owner, words, degrees);
    return Functions.scalar(
        span, scalar.si(), Gradient.combine(1, scalar.gradient(), 1, Gradient.of(root, u)));
  }

  private Value distributed(Scalar mean, Checked.Shape shape, Frame frame) {
    double[] p = new double[shape == Checked.Shape.SAMPLED ? 0 : parameters.length];
    for (int i = 0; i < p.length; i++) {
      p[i] = number(parameters[i], frame);
    }
    double degrees = shape == Checked.Shape.STUDENT_T ? p[2] : Double.POSITIVE_INFINITY;
    double u =
        switch (shape) {
          case NORMAL, STUDENT_T -> p[1];
          case RECTANGULAR -> (p[1] - p[0]) / 2 / ROOT_3;
          case ARCSINE -> (p[1] - p[0]) / 2 / ROOT_2;
          case TRIANGULAR -> triangular(p[0], p[1], p[2]);
          case SAMPLED -> sampled((Series) parameters[0].evaluate(frame));
        };
    if (!(u >= 0) || !(degrees > 0)) {
      throw new LineFailure(
          span,
          "This distribution is turned inside out.",
          "Give the lower end before the upper, and spreads and degrees above zero.");
    }
    return own(Scalar.exact(mean.si()), rootId(), u, degrees);
  }

  /** NaN where the three do not rise. */
  private static double triangular(double low, double mode, double high) {
    if (!(low <= mode && mode <= high)) {
      return Double.NaN;
    }
    double left = mode - low;
    double right = high - mode;
    return Math.sqrt((left * left + left * right + right * right) / 18);
  }

  /** Each value as likely as the others: the deviation of the population. */
  private static double sampled(Series series) {
    double mean = 0;
    for (Value value : series.elements()) {
      mean += ((Scalar) value).si() / series.size();
    }
    double squares = 0;
    for (Value value : series.elements()) {
      double off = ((Scalar) value).si() - mean;
      squares += off * off;
    }
    return Math.sqrt(squares / series.size());
  }
}
