package endfloat.review;

import java.util.List;

/** Readings do not fit the record; nothing was done. */
public class RerunRefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> problems;

  RerunRefusedException(List<String> problems) {
    super(String.join("\n", problems));
    this.problems = List.copyOf(problems);
  }

  /** All that is wrong, each a sentence with column and row where it has one. */
  public List<String> problems() {
    return problems == null ? List.of(getMessage()) : problems;
  }
}
