package endfloat.engine;

import endfloat.engine.Value.Fields;
import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The uncertainty of what a source gives, by differences. Each uncertain number is moved to both
 * sides by its standard uncertainty, a quarter and a sixteenth of it. Where the slopes agree the
 * source is smooth enough for its uncertainty to be carried; where they do not (it rounds, chooses,
 * draws lots) none is claimed.
 */
final class JavaSlopes {
  private static final double[] STEPS = {1, 1.0 / 4, 1.0 / 16};

  /** Of the uncertainty of a result, by which the two narrow steps may differ. */
  private static final double NARROW = 0.05;

  /** The same for the widest step, where a curve may bend. */
  private static final double WIDE = 0.5;

  /** Part of a value below which a difference is its rounding. */
  private static final double ROUNDING = 1e-12;

  private final List<Place> places;

  /** An uncertain number among the values. */
  private record Place(int read, int element, Scalar value, double u) {}

  /**
   * What was found.
   *
   * @param carried in words how uncertainty was carried; empty where nothing read was uncertain
   * @param lost in words why none was; empty where it was
   * @param rough for each number whether it is no smooth function, so that none is claimed for it
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, altered by nobody
  record Found(Gradient[] gradients, String carried, String lost, boolean[] rough) {}

  private JavaSlopes(List<Place> places) {
    this.places = places;
  }

  static JavaSlopes of(Value[] values, Correlations correlations) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      List<Scalar> numbers = new ArrayList<>();
      numbers(values[i], numbers);
      for (int j = 0; j < numbers.size(); j++) {
        Gradient gradient = numbers.get(j).gradient();
        double u = gradient.isEmpty() ? 0 : correlations.standardUncertainty(gradient);
        if (u > 0) {
          places.add(new Place(i, j, numbers.get(j), u));
        }
      }
    }
    return new JavaSlopes(places);
  }

  /** The numbers within a value, in the order in which a trial counts them. */
  private static void numbers(Value value, List<Scalar> into) {
    if (value instanceof Scalar scalar) {
      into.add(scalar);
    } else if (value instanceof Series series) {
      series.elements().forEach(element -> numbers(element, into));
    } else if (value instanceof Fields fields) {
      fields.values().forEach(field -> numbers(field, into));
    }
  }

  List<CellRunner.Trial> trials() {
    List<CellRunner.Trial> trials = new ArrayList<>();
    for (Place place : places) {
      for (double step : STEPS) {
        trials.add(trial(place, step));
        trials.add(trial(place, -step));
      }
    }
    return trials;
  }

  private static CellRunner.Trial trial(Place place, double step) {
    return new CellRunner.Trial(
        place.read(), place.element(), place.value().si() + step * place.u());
  }

  /**
   * @param trials the same values again, then as {@link #trials}; empty where there was no time
   */
  Found found(GivenNumbers given, List<double[]> trials) {
    double[] here = given.si();
    Gradient[] none = new Gradient[here.length];
    Arrays.fill(none, Gradient.NONE);
    if (places.isEmpty() || here.length == 0) {
      return new Found(none, "", "", new boolean[here.length]);
    }
    if (trials.isEmpty()) {
      return lost(none, "it takes too long to be run again with every reading moved");
    }
    double[] again = given.alike(trials.get(0));
    if (again == null || !Arrays.equals(again, here)) {
      return lost(none, "a second run with the same values gave other numbers");
    }
    double[][][] moves = new double[places.size()][][];
    for (int i = 0; i < moves.length; i++) {
      moves[i] = moves(given, trials, 1 + 2 * STEPS.length * i);
      if (moves[i] == null) {
        return lost(none, "it refuses when a reading is moved by its own uncertainty");
      }
    }
    boolean[] rough = new boolean[here.length];
    for (int k = 0; k < here.length; k++) {
      rough[k] = !isSmooth(moves, k, here[k]);
    }
    return new Found(gradients(moves, none, rough), carried(), "", rough);
  }

  /** For each width the movement of every number for one standard uncertainty. */
  private static double[][] moves(GivenNumbers given, List<double[]> trials, int first) {
    double[][] moves = new double[STEPS.length][];
    for (int s = 0; s < STEPS.length; s++) {
      double[] above = given.alike(trials.get(first + 2 * s));
      double[] below = given.alike(trials.get(first + 2 * s + 1));
      if (above == null || below == null) {
        return null;
      }
      moves[s] = new double[above.length];
      for (int k = 0; k < above.length; k++) {
        moves[s][k] = (above[k] - below[k]) / (2 * STEPS[s]);
      }
    }
    return moves;
  }

  private static boolean isSmooth(double[][][] moves, int k, double here) {
    double sum = 0;
    for (double[][] of : moves) {
      for (double[] width : of) {
        sum = Math.max(sum, Math.abs(width[k]));
      }
    }
    double rounding = ROUNDING * Math.abs(here) / STEPS[STEPS.length - 1];
    for (double[][] of : moves) {
      double fine = of[2][k];
      if (Math.abs(of[1][k] - fine) > NARROW * sum + rounding
          || Math.abs(of[0][k] - fine) > WIDE * sum + rounding) {
        return false;
      }
    }
    return true;
  }

  private Gradient[] gradients(double[][][] moves, Gradient[] none, boolean[] rough) {
    Gradient[] gradients = none.clone();
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      for (int k = 0; k < gradients.length; k++) {
        if (rough[k]) {
          continue;
        }
        // the error of a difference falls as the square of its step
        double move = (16 * moves[i][2][k] - moves[i][1][k]) / 15;
        gradients[k] =
            Gradient.combine(1, gradients[k], move / place.u(), place.value().gradient());
      }
    }
    return gradients;
  }

  private String carried() {
    return "Uncertainty is carried by differences, through "
        + (places.size() == 1 ? "one number" : places.size() + " numbers")
        + " that the source reads.";
  }

  private static Found lost(Gradient[] none, String why) {
    return new Found(
        none, "", "Uncertainty is not carried: " + why + ".", new boolean[none.length]);
  }
}
