package endfloat.working;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The words that the remarks of a limit know. */
final class LimitWords {
  private static final Map<String, List<String>> KNOWN =
      Map.of("rule", List.of("guarded", "probability", "simple"), "state", List.of("new", "worn"));

  private LimitWords() {}

  static String refused(String note, String said) {
    return "There is no " + note + " \"" + said + "\" for a limit";
  }

  /** What to write in place of a word that is not known; empty for one that is. */
  static Optional<String> wayOut(String note, String said) {
    List<String> known = KNOWN.get(note);
    if (known == null || known.contains(said)) {
      return Optional.empty();
    }
    List<String> nearest = Nearest.of(said, known);
    return Optional.of(
        nearest.isEmpty()
            ? "Write " + Nearest.choices(known)
            : "Nearest: \"" + nearest.get(0) + "\"");
  }
}
