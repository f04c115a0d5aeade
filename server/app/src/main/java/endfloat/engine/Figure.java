package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One named value of a record as it stands now: what it is, or why it is not. A figure never
 * changes; an edit makes new ones.
 *
 * @param name of the working language
 * @param clause id of the clause that gives it
 * @param span of the line there; of a reading its place among the readings, counted from 1
 * @param kind empty while it is not known
 * @param unit declared, or the one it was typed in; empty where none is known
 * @param value empty unless FRESH; of a reading with an entry in error what could be read
 * @param standardUncertainty of a single number [SI]; 0 for anything else
 * @param degreesOfFreedom effective; infinite where none are finite, NaN where the formula of Welch
 *     and Satterthwaite does not hold
 * @param typed digits of a plain input as typed; empty for anything computed
 * @param typedUncertainty digits after ± as typed, in the unit of the value
 * @param elements of a series, or the fields of a record of results; empty for anything else
 * @param judgements of all its limits, in the order of the record, of a series for each element
 * @param problem why it has no value; a HINT where it only has not been read yet
 * @param waitingOn the lines in error that it waits for
 * @param given the comment behind the line: where an input comes from
 */
public record Figure(
    String name,
    String clause,
    Span span,
    State state,
    Optional<Kind> kind,
    Optional<Unit> unit,
    Optional<Value> value,
    double standardUncertainty,
    double degreesOfFreedom,
    Optional<String> typed,
    Optional<String> typedUncertainty,
    List<Element> elements,
    List<Judgement> judgements,
    Optional<LineProblem> problem,
    List<Waiting> waitingOn,
    List<LineProblem> hints,
    String given) {

  /** What can be said of a figure. */
  public enum State {
    FRESH,
    ERROR,
    WAITING,
    /** A heavy calculation is still running. */
    WORKING
  }

  /**
   * One value of a series or one field of a record of results.
   *
   * @param field name of the field; empty for an element of a series
   * @param labels its station by axis; empty for a field
   * @param typed digits as typed, where it was one plain reading
   * @param uncertainties of the values within, where it is a list or a record itself, in order
   */
  public record Element(
      String field,
      Map<String, String> labels,
      Value value,
      double standardUncertainty,
      double degreesOfFreedom,
      Optional<Unit> unit,
      Optional<String> typed,
      List<Judgement> judgements,
      List<Double> uncertainties) {

    /** The worst of its verdicts. */
    public Optional<Verdict> verdict() {
      return Verdict.worst(judgements);
    }
  }

  /** A line that another waits for. */
  public record Waiting(String name, String clause, String label, int line) {}

  /** The worst of all its verdicts; empty where it has no limit. */
  public Optional<Verdict> verdict() {
    return Verdict.worst(judgements);
  }

  private static final Comparator<Judgement> WORST_FIRST =
      Comparator.comparing(Judgement::verdict).thenComparing(Judgement::probability);

  /**
   * The element judged worst, of equals the one least likely to conform, of those the one furthest
   * beyond its limit.
   */
  public Optional<Element> worstElement() {
    Element worst = null;
    Judgement least = null;
    for (Element element : elements) {
      for (Judgement judgement : element.judgements()) {
        int order = least == null ? -1 : WORST_FIRST.compare(judgement, least);
        if (order < 0 || order == 0 && beyond(element, judgement) > beyond(worst, least)) {
          worst = element;
          least = judgement;
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** How far it lies beyond the nearer limit; negative within [SI]. */
  private static double beyond(Element element, Judgement judgement) {
    if (!(element.value() instanceof Value.Scalar scalar)) {
      return Double.NEGATIVE_INFINITY;
    }
    double below = judgement.low() - scalar.si();
    double above = scalar.si() - judgement.high();
    return Double.isNaN(below) ? above : Double.isNaN(above) ? below : Math.max(below, above);
  }

  /** The number [SI] of a single value that is fresh. */
  public double si() {
    if (value.isPresent() && value.get() instanceof Value.Scalar scalar) {
      return scalar.si();
    }
    throw new IllegalStateException(name + " is " + state + ", no single number");
  }
}
