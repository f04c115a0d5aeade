package endfloat.engine;

import endfloat.record.Instrument;
import java.util.List;

/**
 * Where a figure comes from and what needs it.
 *
 * @param origin what it rests on, down to readings and inputs
 * @param contributions to its uncertainty, the largest first; empty where it is no single number
 * @param neededBy all that rests on it, nearest first
 */
public record Trace(Origin origin, List<Contribution> contributions, List<Need> neededBy) {

  /** What a value is. */
  public enum Sort {
    READING,
    INPUT,
    COMPUTED,
    SOLVED,
    BROKEN
  }

  /**
   * One value of the tree.
   *
   * @param text its line; of a reading what is measured
   * @param given where an input comes from, as its comment says
   * @param instruments with which a reading was taken, as registered
   * @param from what it reads; empty for a value that stands in the tree already
   */
  public record Origin(
      String name,
      String clause,
      String label,
      int line,
      Sort sort,
      String text,
      String given,
      List<Instrument> instruments,
      List<Origin> from) {}

  /**
   * The share of one root in the variance.
   *
   * @param standardUncertainty of the figure if this root were alone [SI]; its sign tells which way
   *     the figure goes as the root rises
   * @param share of the variance; with correlated roots shares do not add up to 1
   */
  public record Contribution(
      Root.Kind kind, String subject, String words, double standardUncertainty, double share) {}

  /**
   * A value or a limit that rests on the figure.
   *
   * @param name of the value, or of the one that a limit is set on
   * @param limit whether it is a limit
   * @param direct whether it names the figure itself
   */
  public record Need(
      String name, String clause, String label, int line, boolean limit, boolean direct) {}
}
