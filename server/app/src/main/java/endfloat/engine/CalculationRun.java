package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import endfloat.catalogue.ValidRange;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Fields;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.engine.Value.Words;
import endfloat.units.Scatter;
import endfloat.units.Uncertain;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** One run of a calculation: its value, and its gradient through every uncertain argument. */
final class CalculationRun {
  private static final double ROOT_3 = 1.7320508075688772;

  private final CalculateTerm term;
  private final Calculation calculation;
  private final Value[] values;

  /** So many gradients are added one after the other. */
  private static final int FEW = 32;

  private final String identity;
  private final Frame frame;
  private final Progress progress;
  private final Object[] arguments;
  private String refusedNearby = "";

  /** Numbers of which the uncertainty cannot be stated, though that of others can. */
  private boolean[] unstated = new boolean[0];

  CalculationRun(
      CalculateTerm term, Value[] values, String identity, Frame frame, Progress progress) {
    this.term = term;
    this.calculation = term.calculation();
    this.values = values;
    this.identity = identity;
    this.frame = frame;
    this.progress = progress;
    this.arguments = Arguments.of(values, calculation.parameters());
    OwnUncertainties.fill(arguments, values, calculation.parameters(), frame);
  }

  Value value() {
    Object[] results = call();
    double[] numbers = Outputs.numbers(results, calculation.results());
    unstated = new boolean[numbers.length];
    Gradient[] gradients = gradients(numbers);
    Bending.note(term, values, arguments, numbers, gradients, frame);
    int[] next = {0};
    List<Value> fields = new ArrayList<>(results.length);
    for (int i = 0; i < results.length; i++) {
      fields.add(value(results[i], calculation.results().get(i), gradients, next));
    }
    new WordsInDoubt(calculation, values, arguments, frame)
        .among(results)
        .ifPresent(doubt -> frame.hint(doubt.at(term.span())));
    if (!calculation.givesRecord()) {
      if (fields.get(0) instanceof Absent absent) {
        throw new LineFailure(term.span(), Refusals.sentence(absent.why()), "");
      }
      return fields.get(0);
    }
    return new Fields(calculation.results().stream().map(Result::name).toList(), fields);
  }

  private Object[] call() {
    try {
      return calculation.call(arguments.clone(), progress);
    } catch (OutOfRangeException e) {
      throw Refusals.outOfRange(e, term, frame);
    } catch (RefusedException e) {
      throw Refusals.refused(e, term.span());
    } catch (ArithmeticException | IllegalArgumentException e) {
      throw new LineFailure(
          term.span(),
          "No result was found by " + calculation.name() + " for these arguments.",
          "Check their sizes and units against the reference page.");
    }
  }

  private Value value(Object result, Result declared, Gradient[] gradients, int[] next) {
    if (result instanceof Double number) {
      int at = next[0]++;
      return unstated[at]
          ? new Absent(
              (declared.name().isEmpty() ? calculation.name() : declared.name())
                  + " changes without a slope here, so its uncertainty cannot be stated;"
                  + " to have it alone give the values without uncertainty")
          : Functions.scalar(term.span(), number, gradients[at]);
    }
    if (result instanceof Uncertain uncertain) {
      Gradient gradient = gradients[next[0]++];
      if (uncertain.isAbsent()) {
        return new Absent(uncertain.whyAbsent());
      }
      Gradient own = Gradient.of(libraryRoot(declared), uncertain.standardUncertainty());
      return Functions.scalar(
          term.span(), uncertain.value(), Gradient.combine(1, gradient, 1, own));
    }
    if (result instanceof double[] list) {
      List<Value> elements = new ArrayList<>(list.length);
      for (double number : list) {
        elements.add(Functions.scalar(term.span(), number, gradients[next[0]++]));
      }
      return Series.list(elements);
    }
    if (result instanceof Boolean holds) {
      return new Truth(holds);
    }
    return result == null ? Absent.ABSENT : new Words(result.toString());
  }

  /** One root a property: the same material has the same error wherever it is named. */
  private Root libraryRoot(Result result) {
    StringBuilder what = new StringBuilder();
    for (Value value : values) {
      if (value instanceof Words words) {
        what.append(what.length() == 0 ? "" : ", ").append(words.text());
      }
    }
    String subject =
        what.length() == 0
            ? identity
            : Materials.subject(calculation, what.toString(), result.name());
    return new Root(
        "library:" + calculation.name() + ":" + subject + ":" + result.name(),
        Root.Kind.LIBRARY,
        subject,
        (result.name().isEmpty() ? calculation.name() : result.name())
            + " of "
            + subject
            + (calculation.heavy()
                ? ", what so many trials leave open"
                : ", spread of the library's value"),
        Double.POSITIVE_INFINITY);
  }

  private Gradient[] gradients(double[] numbers) {
    Gradient[] gradients = new Gradient[numbers.length];
    java.util.Arrays.fill(gradients, Gradient.NONE);
    if (numbers.length == 0) {
      return gradients;
    }
    double[][] partials = exactPartials();
    boolean ofLists = partials != null && Outputs.isWhole(partials, numbers.length, arguments);
    List<List<Gradient>> parts = new ArrayList<>();
    for (int k = 0; k < numbers.length; k++) {
      parts.add(new ArrayList<>());
    }
    int column = -1;
    int before = 0;
    for (int i = 0; i < values.length; i++) {
      Parameter parameter = calculation.parameters().get(i);
      boolean quantity = parameter.form() == Parameter.Form.QUANTITY;
      boolean list = parameter.form() == Parameter.Form.LIST;
      column += quantity ? 1 : 0;
      int here = before;
      before += Outputs.numbers(arguments[i]);
      for (Arguments.Place place : Arguments.places(values[i], parameter, i)) {
        if (place.value().gradient().isEmpty()) {
          continue;
        }
        double[] slopes = null;
        if (ofLists && (quantity || list)) {
          slopes = Outputs.column(partials, here + place.element());
        } else if (quantity && partials != null) {
          slopes = Outputs.column(partials, column, calculation.results(), numbers.length);
        }
        boolean exact = ofLists && slopes != null && calculation.givesRecord();
        add(parts, numbers, slopes == null ? differences(place, numbers) : slopes, place, exact);
      }
    }
    for (int k = 0; k < gradients.length; k++) {
      gradients[k] = sum(parts.get(k), 0, parts.get(k).size());
    }
    addModelError(gradients);
    addScatter(gradients);
    return gradients;
  }

  private double[][] exactPartials() {
    if (calculation.partials().isEmpty() || !Arguments.uncertain(values)) {
      return null;
    }
    return calculation.partials().get().at(arguments.clone());
  }

  /**
   * @param exact slopes of columns that the calculation brings itself, and of several results: one
   *     that has none leaves the others as they are
   */
  private void add(
      List<List<Gradient>> parts,
      double[] numbers,
      double[] slopes,
      Arguments.Place place,
      boolean exact) {
    for (int k = 0; k < slopes.length; k++) {
      if (Double.isNaN(numbers[k])) {
        continue;
      }
      if (Double.isFinite(slopes[k])) {
        parts.get(k).add(place.value().gradient().times(slopes[k]));
      } else if (exact) {
        unstated[k] = true;
      } else {
        throw noSlope(place);
      }
    }
  }

  /** By halves, so that a thousand values with roots of their own take no million steps. */
  private static Gradient sum(List<Gradient> parts, int from, int to) {
    if (to - from > FEW) {
      int middle = (from + to) >>> 1;
      return Gradient.combine(1, sum(parts, from, middle), 1, sum(parts, middle, to));
    }
    Gradient sum = Gradient.NONE;
    for (int i = from; i < to; i++) {
      sum = Gradient.combine(1, sum, 1, parts.get(i));
    }
    return sum;
  }

  private double[] differences(Arguments.Place place, double[] numbers) {
    Optional<ValidRange> range = place.range();
    Object[] base = place.amongMany() ? apart(place) : arguments;
    DoubleFunction<double[]> trial = x -> tried(place, base, x);
    double si = place.value().si();
    double u = frame.correlations().standardUncertainty(place.value().gradient());
    double least = range.map(ValidRange::least).orElse(Double.NEGATIVE_INFINITY);
    double greatest = range.map(ValidRange::greatest).orElse(Double.POSITIVE_INFINITY);
    double[] slopes =
        place.amongMany()
            ? Slopes.ofOneAmongMany(trial, numbers, si, u, least, greatest)
            : Slopes.at(trial, numbers, si, u, least, greatest);
    if (slopes == null) {
      throw noSlope(place);
    }
    return slopes;
  }

  /**
   * The arguments with readings equal to this one moved off it by more than a step, those before it
   * up and those behind it down the order: of equal readings one is the greatest and one the least,
   * and the slopes of a choice add up to one.
   */
  private Object[] apart(Arguments.Place place) {
    double x = place.value().si();
    double u = frame.correlations().standardUncertainty(place.value().gradient());
    double spacing = 4 * Slopes.stepAmongMany(x, u);
    Parameter parameter = calculation.parameters().get(place.argument());
    Object[] moved = arguments;
    for (Arguments.Place other :
        Arguments.places(values[place.argument()], parameter, place.argument())) {
      if (other.element() != place.element() && other.value().si() == x) {
        moved = other.with(moved, x + (place.element() - other.element()) * spacing);
      }
    }
    return moved;
  }

  private LineFailure noSlope(Arguments.Place place) {
    Span span = term.arguments()[place.argument()].span();
    return new LineFailure(
        span,
        "How "
            + calculation.name()
            + " changes with "
            + calculation.parameters().get(place.argument()).name()
            + " cannot be found here, so its uncertainty cannot be stated.",
        refusedNearby.isEmpty()
            ? "Move the value away from the end of the range, or give it without uncertainty."
            : "Beside this value it is refused: " + Refusals.sentence(refusedNearby));
  }

  private double[] tried(Arguments.Place place, Object[] base, double x) {
    try {
      Object[] results = calculation.call(place.with(base, x), progress);
      double[] numbers = Outputs.numbers(results, calculation.results());
      for (double number : numbers) {
        if (Double.isInfinite(number)) {
          return null;
        }
      }
      return numbers;
    } catch (RefusedException e) {
      refusedNearby = e.getMessage();
      return null;
    } catch (ArithmeticException | IllegalArgumentException e) {
      return null;
    }
  }

  /** Independent roots that results have in common, such as slope and intercept of a line. */
  private void addScatter(Gradient[] gradients) {
    if (calculation.scatter().isEmpty()) {
      return;
    }
    Scatter scatter = calculation.scatter().get().at(arguments.clone());
    for (int j = 0; j < scatter.parts()[0].length; j++) {
      Root root =
          new Root(
              "scatter:" + identity + ":" + j,
              Root.Kind.SCATTER,
              calculation.name(),
              calculation.name() + ", scatter of its data",
              scatter.degreesOfFreedom());
      for (int k = 0; k < gradients.length; k++) {
        gradients[k] =
            Gradient.combine(1, gradients[k], 1, Gradient.of(root, scatter.parts()[k][j]));
      }
    }
  }

  private void addModelError(Gradient[] gradients) {
    if (calculation.modelError().isEmpty()) {
      return;
    }
    double[] halfWidths = calculation.modelError().get().halfWidths(arguments.clone());
    Root root =
        new Root(
            "model:" + identity,
            Root.Kind.MODEL,
            calculation.name(),
            calculation.name() + ", error of its model, rectangular",
            Double.POSITIVE_INFINITY);
    for (int k = 0; k < halfWidths.length; k++) {
      if (!Double.isNaN(halfWidths[k])) {
        Gradient own = Gradient.of(root, halfWidths[k] / ROOT_3);
        gradients[k] = Gradient.combine(1, gradients[k], 1, own);
      }
    }
  }
}
