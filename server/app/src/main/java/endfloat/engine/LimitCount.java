package endfloat.engine;

/**
 * How many limits of a record read how: the one rule by which sheet, shelf and report count.
 *
 * <p>A limit counts once for each value that it judges, so once a station of a series; rows of a
 * schedule of fits are limits like any other. One that cannot be judged counts once: in error where
 * its own line is wrong, else waiting. What a value is only compared with does not count.
 */
public record LimitCount(int within, int notProven, int outside, int waiting, int inError) {

  /** The limits of a record as they stand now. */
  public static LimitCount of(ValueGraph graph) {
    int[] verdicts = new int[Verdict.values().length];
    int waiting = 0;
    int inError = 0;
    for (Node node : graph.nodes()) {
      if (node instanceof BrokenNode broken && broken.isLimit()) {
        inError++;
      }
      if (!(node instanceof LimitNode limit) || !limit.decides()) {
        continue;
      }
      if (limit.state() == Figure.State.FRESH) {
        for (Verdict verdict : limit.verdicts()) {
          verdicts[verdict.ordinal()]++;
        }
      } else if (limit.state() == Figure.State.ERROR) {
        inError++;
      } else {
        waiting++;
      }
    }
    return new LimitCount(
        verdicts[Verdict.WITHIN.ordinal()],
        verdicts[Verdict.NOT_PROVEN.ordinal()],
        verdicts[Verdict.OUTSIDE.ordinal()],
        waiting,
        inError);
  }
}
