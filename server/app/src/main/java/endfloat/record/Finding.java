package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * What was found of a part, or that nothing was, or that nobody looked.
 *
 * @param part id in the register, or empty
 * @param smallest size that the method would have shown
 */
public record Finding(
    String part,
    String place,
    String damage,
    String size,
    String method,
    String smallest,
    State state,
    String disposition) {

  /** Not inspected is a state of its own: it is not the same as nothing found. */
  public enum State {
    FOUND("found"),
    NO_INDICATION("no indication"),
    NOT_INSPECTED("not inspected");

    private final String word;

    State(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** Whatever is not said to have been looked at was not. */
    static State of(String word) {
      for (State state : values()) {
        if (state.word.equals(word)) {
          return state;
        }
      }
      return NOT_INSPECTED;
    }
  }

  /** Field that is missing for the finding to mean something; empty for none. */
  public String missing() {
    return switch (state) {
      case NO_INDICATION -> method.isBlank() ? "method" : smallest.isBlank() ? "smallest" : "";
      case FOUND -> damage.isBlank() ? "damage" : "";
      case NOT_INSPECTED -> "";
    };
  }

  static List<Finding> all(JsonNode clause) {
    List<Finding> findings = new ArrayList<>();
    for (JsonNode node : clause.path("findings")) {
      findings.add(
          new Finding(
              Texts.text(node, "part"),
              Texts.text(node, "place"),
              Texts.text(node, "damage"),
              Texts.text(node, "size"),
              Texts.text(node, "method"),
              Texts.text(node, "smallest"),
              State.of(Texts.text(node, "state")),
              Texts.text(node, "disposition")));
    }
    return List.copyOf(findings);
  }
}
