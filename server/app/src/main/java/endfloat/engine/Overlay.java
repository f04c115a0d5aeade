package endfloat.engine;

import endfloat.working.LineProblem;
import java.util.HashMap;
import java.util.Map;

/** The record with a few values put in the place of its own, for as long as a question takes. */
final class Overlay implements Frame {
  private final Frame beneath;
  private final String purpose;
  private final Map<Slot, Value> values = new HashMap<>();

  /**
   * @param purpose of the trials, in words: to solve through, to draw
   */
  Overlay(Frame beneath, String purpose) {
    this.beneath = beneath;
    this.purpose = purpose;
  }

  void put(Slot slot, Value value) {
    values.put(slot, value);
  }

  @Override
  public Value of(Slot slot) {
    Value value = values.get(slot);
    return value == null ? beneath.of(slot) : value;
  }

  @Override
  public Correlations correlations() {
    return beneath.correlations();
  }

  @Override
  public Materials materials() {
    return beneath.materials();
  }

  @Override
  public GraphSettings settings() {
    return beneath.settings();
  }

  /** Work that is left for later cannot be asked for once a trial. */
  @Override
  public Value heavy(SlowTerm term, Value[] values, String identity) {
    if (beneath instanceof Evaluation evaluation && evaluation.leavesHeavyWork()) {
      throw new LineFailure(
          term.span(),
          "The " + term.called() + " is too slow " + purpose + ".",
          "Take a quicker relation, or look at a few values by hand.");
    }
    return beneath.heavy(term, values, identity);
  }

  /** Only the answer counts, not the way there. */
  @Override
  public void hint(LineProblem hint) {
    // nothing to be said of trials
  }
}
