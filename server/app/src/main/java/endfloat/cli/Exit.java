package endfloat.cli;

import endfloat.engine.Figure;
import endfloat.engine.Verdict;
import java.util.Collection;

/** Exit codes. Where several hold, 2 comes before 1 and 1 before 0. */
final class Exit {
  /** Done; a verdict "not proven" is no fault. */
  static final int DONE = 0;

  /** A verdict is outside, or figures disagree. */
  static final int OUTSIDE = 1;

  /** The input cannot be used as it stands. */
  static final int BAD_INPUT = 2;

  private Exit() {}

  /** OUTSIDE where one of these figures is. */
  static int ofVerdicts(Collection<Figure> figures) {
    boolean outside =
        figures.stream().anyMatch(f -> f.verdict().filter(Verdict.OUTSIDE::equals).isPresent());
    return outside ? OUTSIDE : DONE;
  }
}
