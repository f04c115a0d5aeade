package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Whether saved figures are those that come out now: numbers to 1e-9 of the value and 1e-6 of the
 * uncertainty, texts, units and verdicts alike; or all bit for bit.
 */
public final class Agree {
  private static final double OF_VALUE = 1e-9;
  private static final double OF_UNCERTAINTY = 1e-6;

  private final boolean exact;
  private final List<Difference> differences = new ArrayList<>();

  private Agree(boolean exact) {
    this.exact = exact;
  }

  /**
   * What came of it.
   *
   * @param compared how many figures were saved
   * @param differences none where all agree
   * @param savedLibrary version of the library they came from; empty where none was said
   * @param library version of this one
   * @param sourceChanged whether the record is another than the one the figures were saved with
   * @param limitsCounted whether it was saved with how its limits read, and they read so now
   */
  public record Report(
      int compared,
      List<Difference> differences,
      String savedLibrary,
      String library,
      boolean sourceChanged,
      boolean limitsCounted) {
    /** Whether there were figures to compare, and all agree. */
    public boolean agrees() {
      return compared > 0 && differences.isEmpty();
    }
  }

  /**
   * A figure that is not as it was saved.
   *
   * @param clause number of its clause, or empty where that is gone
   * @param what differs: {@code value}, {@code u}, {@code unit}, {@code verdict}, {@code labels},
   *     or {@code figure} where it is only saved or only computed
   * @param saved as JSON; empty where nothing was
   * @param now as JSON; empty where nothing is
   */
  public record Difference(String name, String clause, String what, String saved, String now) {}

  /**
   * Compares the figures saved with a record with those it gives now.
   *
   * @param exact asks for equal bits
   */
  public static Report of(InvestigationRecord record, boolean exact) {
    return between(record, Results.recomputed(record), exact);
  }

  /** Compares the figures saved with a record with results that were computed of it already. */
  public static Report with(InvestigationRecord record, JsonNode results) {
    return between(record, results, false);
  }

  private static Report between(InvestigationRecord record, JsonNode results, boolean exact) {
    Agree agree = new Agree(exact);
    Map<String, JsonNode> now = new LinkedHashMap<>();
    results.path("figures").forEach(figure -> now.put(figure.path("name").asText(), figure));
    List<JsonNode> saved = record.savedFigures();
    for (JsonNode figure : saved) {
      JsonNode other = now.remove(figure.path("name").asText());
      agree.compare(record, figure, other);
    }
    if (!saved.isEmpty()) {
      now.values().forEach(figure -> agree.only(record, figure, "", figure.path("value")));
    }
    String hash = record.tree().at("/hashes/source").asText();
    return new Report(
        saved.size(),
        List.copyOf(agree.differences),
        record.savedLibrary(),
        results.path("library").asText(),
        !hash.isEmpty() && !hash.equals(record.sourceHash()),
        Results.counted(record.tree().path("results")).equals(Results.counted(results)));
  }

  private void compare(InvestigationRecord record, JsonNode saved, JsonNode now) {
    if (now == null) {
      only(record, saved, saved.path("value"), "");
      return;
    }
    for (String what : List.of("unit", "value", "u", "verdict", "labels")) {
      JsonNode before = saved.get(what);
      JsonNode after = now.get(what);
      if (!same(what, before, after)) {
        differences.add(
            new Difference(
                saved.path("name").asText(), clause(record, now), what, text(before), text(after)));
      }
    }
  }

  private void only(InvestigationRecord record, JsonNode figure, Object saved, Object now) {
    differences.add(
        new Difference(
            figure.path("name").asText(),
            clause(record, figure),
            "figure",
            saved.toString(),
            now.toString()));
  }

  private static String clause(InvestigationRecord record, JsonNode figure) {
    return record.cell(figure.path("cell").asText()).map(Cell::number).orElse("");
  }

  private static String text(JsonNode node) {
    return node == null || node.isNull() ? "" : node.toString();
  }

  private boolean same(String what, JsonNode saved, JsonNode now) {
    if (saved == null || now == null || saved.isNull() || now.isNull()) {
      return text(saved).equals(text(now));
    }
    if (saved.isArray() && now.isArray()) {
      if (saved.size() != now.size()) {
        return false;
      }
      for (int i = 0; i < saved.size(); i++) {
        if (!same(what, saved.get(i), now.get(i))) {
          return false;
        }
      }
      return true;
    }
    if (saved.isNumber() && now.isNumber()) {
      double tolerance = what.equals("u") ? OF_UNCERTAINTY : OF_VALUE;
      return close(saved.doubleValue(), now.doubleValue(), tolerance);
    }
    return Objects.equals(saved, now);
  }

  private boolean close(double saved, double now, double tolerance) {
    if (exact) {
      // + 0.0: a file knows no -0.0
      return Double.doubleToLongBits(saved + 0.0) == Double.doubleToLongBits(now + 0.0);
    }
    return Math.abs(saved - now) <= tolerance * Math.max(Math.abs(saved), Math.abs(now));
  }
}
