package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Candidate causes against the evidence, and what each adds.
 *
 * @param unit in which the effect is shown; bare numbers are in it
 * @param observed expression: the effect as it was found
 * @param needed expression: how much of it makes the damage possible
 */
public record CauseBoard(String unit, String observed, String needed, List<Cause> causes) {

  /**
   * One candidate.
   *
   * @param key by which marks refer to it
   * @param contribution expression: what it adds to the effect; empty where no size is known
   * @param ruledOut whether it stands as ruled out
   * @param fact the decisive fact that rules it out
   */
  public record Cause(String key, String name, String contribution, boolean ruledOut, String fact) {

    /** Ruled out takes a named fact; without one a cause stays open. */
    public boolean isOpen() {
      return !ruledOut || fact.isBlank();
    }
  }

  static CauseBoard of(JsonNode clause) {
    List<Cause> causes = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (JsonNode node : clause.path("causes")) {
      causes.add(
          new Cause(
              Keys.own(node, "id", causes.size(), taken),
              Texts.text(node, "name"),
              Texts.text(node, "contribution"),
              Texts.text(node, "standing").equals("ruled out"),
              Texts.text(node, "fact")));
    }
    return new CauseBoard(
        Texts.text(clause, "unit"),
        Texts.text(clause, "observed"),
        Texts.text(clause, "needed"),
        List.copyOf(causes));
  }
}
