package endfloat.engine;

import java.util.Optional;

/** How a value with its uncertainty is judged against a limit. */
public enum DecisionRule {
  /** The value alone decides (ILAC-G8:09/2019, 4.2.1): what makers' tables mean. */
  SIMPLE("simple"),
  /** The value must clear the limit by U = k u, on either side (ILAC-G8:09/2019, 4.2.2). */
  GUARDED("guarded"),
  /**
   * The probability of conformity must reach 95 %, that of non-conformity likewise to be outside
   * (default of ISO 14253-1:2017; for one limit the same as a guard band of 1.65 u).
   */
  PROBABILITY("probability");

  /** Probability that PROBABILITY asks for. */
  static final double REQUIRED = 0.95;

  private final String word;

  DecisionRule(String word) {
    this.word = word;
  }

  /** As a limit line and the record write it. */
  public String word() {
    return word;
  }

  public static Optional<DecisionRule> of(String word) {
    for (DecisionRule rule : values()) {
      if (rule.word.equals(word)) {
        return Optional.of(rule);
      }
    }
    return Optional.empty();
  }
}
