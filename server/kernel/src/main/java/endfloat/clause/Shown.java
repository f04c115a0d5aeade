package endfloat.clause;

import java.util.List;

/** Where a clause's progress and what it shows go. */
public interface Shown {
  /**
   * How far the work is.
   *
   * @param fraction done, 0 to 1
   */
  void progress(double fraction);

  /** A text, as it is to stand there. */
  void text(String text);

  /** An SVG document. */
  void svg(String svg);

  /**
   * A table.
   *
   * @param rows texts, one a head
   */
  void table(List<String> heads, List<List<String>> rows);
}
