package endfloat.engine;

/**
 * How many limits of a record read how: the one rule by which sheet, shelf and report count.
 *
 * <p>A limit counts once for each value that it judges, so once a station of a series; rows of a
 * schedule of fits are limits like any other. One that cannot be judged counts once: in error where
 * its own line is wrong, else waiting, as does a row of a schedule with nothing measured. What a
 * value is only compared with does not count.
 */
public record LimitCount(int within, int notProven, int outside, int waiting, int inError) {

  /** The limits of a record as they stand now. */
  public static LimitCount of(ValueGraph graph) {
    int[] verdicts = new int[Verdict.values().length];
    int waiting = unmeasured(graph);
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

  private static int unmeasured(ValueGraph graph) {
    int count = 0;
    for (Clause clause : graph.source().clauses()) {
      if (clause instanceof Clause.Fields fields) {
        count +=
            (int) fields.lines().stream().filter(FieldLine.Unmeasured.class::isInstance).count();
      }
    }
    return count;
  }
}
