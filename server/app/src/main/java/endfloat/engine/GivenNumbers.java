package endfloat.engine;

import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The numbers that a java clause gives, one after the other; those of a table are in the units of
 * its head, all others in SI.
 */
@SuppressWarnings("ArrayRecordComponent") // made once, altered by nobody
record GivenNumbers(double[] si, List<Optional<Unit>> units) {

  static GivenNumbers of(List<Give> gives, List<CellRunner.Given> given) {
    List<Double> numbers = new ArrayList<>();
    List<Optional<Unit>> units = new ArrayList<>();
    for (int i = 0; i < gives.size(); i++) {
      add(given.get(i).numbers(), Optional.empty(), numbers, units);
      for (int j = 0; j < gives.get(i).columns().size(); j++) {
        Optional<Unit> unit = gives.get(i).columns().get(j).unit();
        add(given.get(i).columns().get(j), unit, numbers, units);
      }
    }
    return new GivenNumbers(numbers.stream().mapToDouble(x -> x).toArray(), List.copyOf(units));
  }

  private static void add(
      double[] some, Optional<Unit> unit, List<Double> numbers, List<Optional<Unit>> units) {
    for (double number : some) {
      numbers.add(si(unit, number));
      units.add(unit);
    }
  }

  private static double si(Optional<Unit> unit, double number) {
    return unit.isEmpty() ? number : unit.get().toSi(number);
  }

  /** The numbers of a trial in SI; null where they do not stand against these. */
  double[] alike(double[] trial) {
    if (trial == null || trial.length != si.length) {
      return null;
    }
    double[] numbers = new double[trial.length];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = si(units.get(i), trial[i]);
    }
    return numbers;
  }
}
