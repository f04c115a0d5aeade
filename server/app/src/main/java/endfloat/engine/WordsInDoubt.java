package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.catalogue.Result;
import endfloat.definition.OwnUncertainty;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a calculation says the same in words (clear or wedged, yes or no) all over the
 * uncertainty of what it was given. A number carries its uncertainty with it; a word cannot.
 *
 * <p>Each uncertain argument is moved by U either way, and with it those that vary with it as far
 * as they do: readings of one instrument move together.
 */
final class WordsInDoubt {
  private static final int MOST_PLACES = 40;

  private final Calculation calculation;
  private final Value[] values;
  private final Object[] arguments;
  private final Frame frame;

  /**
   * @param result name of the result in words; empty where the calculation has one only
   * @param otherwise what it would say
   * @param argument that was moved
   */
  record Doubt(String calculation, String result, String otherwise, String argument) {
    LineProblem at(Span span) {
      return new LineProblem(
          span,
          (result.isEmpty() ? calculation : result)
              + " would be \""
              + otherwise
              + "\" elsewhere within the uncertainty of "
              + argument
              + ".",
          "Both answers are possible; look at the numbers beside it.",
          LineProblem.Severity.HINT);
    }
  }

  WordsInDoubt(Calculation calculation, Value[] values, Object[] arguments, Frame frame) {
    this.calculation = calculation;
    this.values = values;
    this.arguments = arguments;
    this.frame = frame;
  }

  Optional<Doubt> among(Object[] results) {
    if (calculation.heavy()
        || calculation.results().stream().noneMatch(WordsInDoubt::isAnswer)
        || calculation.parameters().stream().anyMatch(WordsInDoubt::isOwnUncertainty)
        || !Arguments.uncertain(values)) {
      return Optional.empty();
    }
    List<Arguments.Place> places = Arguments.uncertainPlaces(values, calculation);
    if (places.size() > MOST_PLACES) {
      return Optional.empty();
    }
    for (Arguments.Place place : places) {
      for (double sense : new double[] {1, -1}) {
        Optional<Doubt> doubt = moved(places, place, sense, results);
        if (doubt.isPresent()) {
          return doubt;
        }
      }
    }
    return Optional.empty();
  }

  /** Of few possible words; a free text says where or how, not whether. */
  private static boolean isAnswer(Result result) {
    return result.form() == Result.Form.TRUTH
        || (result.form() == Result.Form.TEXT && !result.choices().isEmpty());
  }

  /** Its words count the uncertainty already. */
  static boolean isOwnUncertainty(Parameter parameter) {
    return parameter.fallback().flatMap(OwnUncertainty::of).isPresent();
  }

  private Optional<Doubt> moved(
      List<Arguments.Place> places, Arguments.Place one, double sense, Object[] results) {
    Correlations correlations = frame.correlations();
    double u = correlations.standardUncertainty(one.value().gradient());
    if (u == 0) {
      return Optional.empty();
    }
    double degrees = correlations.degreesOfFreedom(one.value().gradient(), u);
    double steps = sense * Coverage.factor(frame.settings().coverage(), degrees) / u;
    Object[] there = arguments;
    for (Arguments.Place place : places) {
      double covariance = correlations.covariance(place.value().gradient(), one.value().gradient());
      there = place.with(there, place.value().si() + steps * covariance);
    }
    Object[] said;
    try {
      said = calculation.call(there, Progress.IGNORED);
    } catch (RefusedException | ArithmeticException | IllegalArgumentException e) {
      return Optional.empty();
    }
    for (int i = 0; i < results.length; i++) {
      Result declared = calculation.results().get(i);
      if (isAnswer(declared) && results[i] != null && !results[i].equals(said[i])) {
        return Optional.of(
            new Doubt(
                calculation.name(),
                declared.name(),
                String.valueOf(said[i]).toLowerCase(Locale.ROOT),
                calculation.parameters().get(one.argument()).name()));
      }
    }
    return Optional.empty();
  }
}
