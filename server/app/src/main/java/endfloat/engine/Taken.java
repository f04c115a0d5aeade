package endfloat.engine;

import endfloat.record.Reading;
import java.util.ArrayList;
import java.util.List;

/** What was taken at one station at one stage: repeats with one instrument at one temperature. */
final class Taken {
  private final Reading.Entry first;
  private final String at;
  private final List<Double> values = new ArrayList<>();
  private final List<String> texts = new ArrayList<>();

  /**
   * @param at JSON Pointer of the entry
   */
  Taken(Reading.Entry first, String at) {
    this.first = first;
    this.at = at;
  }

  void add(double si, String text) {
    values.add(si);
    texts.add(text.strip());
  }

  Reading.Entry first() {
    return first;
  }

  String at() {
    return at;
  }

  int count() {
    return values.size();
  }

  /** The digits, where one reading was taken. */
  String text() {
    return texts.size() == 1 ? texts.get(0) : "";
  }

  double mean() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.size();
  }

  /** Experimental standard deviation of the mean (JCGM 100, 4.2.3); of two readings or more. */
  double deviationOfMean() {
    double mean = mean();
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    int n = values.size();
    return Math.sqrt(squares / (n - 1) / n);
  }
}
