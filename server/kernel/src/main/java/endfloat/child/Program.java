package endfloat.child;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A clause as it comes in the metadata of a request: what it reads with the values, what it gives,
 * and the values to try it with once more.
 *
 * @param trials each a number to put in the place of another
 * @param trialMilliseconds that all trials may take; where they would take longer there are none
 */
record Program(
    String source, List<Read> reads, List<Give> gives, List<Trial> trials, long trialMilliseconds) {
  /** The same with trials for as long as they take. */
  Program(String source, List<Read> reads, List<Give> gives, List<Trial> trials) {
    this(source, reads, gives, trials, Long.MAX_VALUE);
  }

  /** Under this name it stands in the metadata. */
  static final String KEY = "endfloat";

  /**
   * @param java name of the field
   * @param form {@code quantity}, {@code series}, {@code text}, {@code texts}, {@code truth} or
   *     {@code record}
   * @param type interface of its kind; empty where there is none
   */
  record Read(String java, String form, String type, Map<?, ?> value) {
    static Read of(Map<?, ?> read) {
      return new Read(text(read, "java"), text(read, "form"), text(read, "type"), read);
    }

    /** The named parts of a record of results; none of anything else. */
    List<Read> fields() {
      return list(value.get("fields")).stream().map(one -> of((Map<?, ?>) one)).toList();
    }
  }

  /**
   * @param form {@code quantity}, {@code series}, {@code text}, {@code truth}, {@code chart} or
   *     {@code table}
   * @param unit coherent unit of its dimension
   * @param columns names of the columns of a table that are figures
   */
  record Give(String java, String form, String type, String unit, List<String> columns) {}

  /**
   * @param read which of the values read
   * @param element which of its numbers, from 0
   */
  record Trial(int read, int element, double si) {}

  /** Empty where a request is no clause. */
  static Optional<Program> of(String source, Map<String, Object> metadata) {
    if (metadata == null || !(metadata.get(KEY) instanceof Map<?, ?> clause)) {
      return Optional.empty();
    }
    List<Read> reads = new ArrayList<>();
    for (Object one : list(clause.get("reads"))) {
      reads.add(Read.of((Map<?, ?>) one));
    }
    List<Give> gives = new ArrayList<>();
    for (Object one : list(clause.get("gives"))) {
      Map<?, ?> give = (Map<?, ?>) one;
      gives.add(
          new Give(
              text(give, "java"),
              text(give, "form"),
              text(give, "type"),
              text(give, "unit"),
              list(give.get("columns")).stream().map(String::valueOf).toList()));
    }
    List<Trial> trials = new ArrayList<>();
    for (Object one : list(clause.get("trials"))) {
      List<?> trial = (List<?>) one;
      trials.add(
          new Trial(
              whole(trial.get(0)), whole(trial.get(1)), ((Number) trial.get(2)).doubleValue()));
    }
    long most =
        clause.get("trialMilliseconds") instanceof Number number
            ? number.longValue()
            : Long.MAX_VALUE;
    return Optional.of(new Program(source, reads, gives, trials, most));
  }

  static List<?> list(Object value) {
    return value instanceof List<?> list ? list : List.of();
  }

  private static String text(Map<?, ?> of, String key) {
    return of.get(key) == null ? "" : String.valueOf(of.get(key));
  }

  private static int whole(Object number) {
    return ((Number) number).intValue();
  }
}
