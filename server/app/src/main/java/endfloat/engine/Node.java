package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * One line or one reading in the graph. Its spans count from its own first line, so that it stays
 * as it is when lines are put in above it.
 */
abstract class Node extends PlacedNode {
  private boolean unchecked = true;
  private Kind kindTold;
  private Unit unitTold;

  private Figure.State state = Figure.State.WAITING;
  private Kind kind;
  private Unit unit;
  private Value value;
  private LineProblem problem;
  private List<LineProblem> hints = List.of();
  private List<LineProblem> checkHints = List.of();
  private List<LineProblem> remarks = List.of();
  private Set<String> uncarried = Set.of();

  Node(String clause, int offset) {
    super(clause, offset);
  }

  /**
   * Finds kinds and makes terms; called when the line or the kind of a name it reads has changed.
   *
   * @throws LineFailure if the line means nothing
   */
  abstract void check(ValueGraph graph);

  /**
   * @return its value; null for one that gives none
   * @throws LineFailure if it has no value
   */
  abstract Value evaluate(Frame frame);

  /**
   * The value it would have in another frame, such as one of a trial; nothing is kept of it.
   *
   * @throws LineFailure if it would have no value
   */
  Value tried(Frame frame) {
    return evaluate(frame);
  }

  boolean isUnchecked() {
    return unchecked;
  }

  void uncheck() {
    unchecked = true;
  }

  Figure.State state() {
    return state;
  }

  Kind kind() {
    return kind;
  }

  Unit unit() {
    return unit;
  }

  Value value() {
    return value;
  }

  LineProblem problem() {
    return problem;
  }

  List<LineProblem> hints() {
    return hints;
  }

  /**
   * Names that it rests on whose uncertainty is not known to be whole; its own stands for less than
   * it is then, and no verdict is proven by it.
   */
  Set<String> uncarried() {
    return uncarried;
  }

  /** The name that it gives where its own uncertainty is not carried; empty where it is. */
  String givesUncarried() {
    return "";
  }

  private Set<String> uncarriedBelow() {
    Set<String> below = Set.of();
    for (Slot feed : feeds()) {
      for (Node giver : feed.givers()) {
        if (!giver.uncarried.isEmpty()) {
          below = new TreeSet<>(below);
          below.addAll(giver.uncarried);
        }
      }
    }
    return below;
  }

  /** What the parser remarked on it. */
  void remarks(List<LineProblem> ofParser) {
    remarks = ofParser;
  }

  /** Starts from what another in its place had worked out, so that an equal result is no change. */
  void inherit(Node old) {
    kind = old.kind;
    unit = old.unit;
    kindTold = old.kindTold;
    unitTold = old.unitTold;
    state = old.state;
    value = old.value;
    problem = old.problem;
    hints = old.hints;
    uncarried = old.uncarried;
  }

  /** What the check found out; a unit may be null. */
  void found(Kind ofValue, Unit shown, List<LineProblem> found) {
    kind = ofValue;
    unit = shown;
    checkHints = remarks.isEmpty() ? found : joined(remarks, found);
  }

  /** Brings it up to date; tells what has changed. */
  Change update(ValueGraph graph) {
    // told, not found: a solve may have had the kinds of its circle found before their turn
    Kind kindBefore = kindTold;
    Unit unitBefore = unitTold;
    Figure.State stateBefore = state;
    Value valueBefore = value;
    LineProblem problemBefore = problem;
    List<LineProblem> hintsBefore = hints;
    Set<String> uncarriedBefore = uncarried;
    boolean other = refresh(graph);
    boolean moved = hasMovedElsewhere();
    kindTold = kind;
    unitTold = unit;
    boolean sameKind = Objects.equals(kindBefore, kind);
    boolean sameUnit = unitBefore == unit || Objects.equals(unitBefore, unit);
    boolean sameValue =
        !moved
            && uncarriedBefore.equals(uncarried)
            && stateBefore == state
            && (valueBefore == value
                || (valueBefore != null && value != null && valueBefore.sameAs(value)));
    boolean same =
        !other
            && sameKind
            && sameUnit
            && sameValue
            && Objects.equals(problemBefore, problem)
            && hintsBefore.equals(hints);
    return !sameKind || !sameUnit
        ? Change.KIND
        : !sameValue ? Change.VALUE : same ? Change.NONE : Change.WORDS;
  }

  /** Whether a value that it gives beside its own is another than when this was last asked. */
  boolean hasMovedElsewhere() {
    return false;
  }

  /** How far a change goes. */
  enum Change {
    NONE,
    /** Only what is said of it. */
    WORDS,
    VALUE,
    KIND
  }

  /** Whether something beside the value has changed that a figure shows. */
  private boolean refresh(ValueGraph graph) {
    hints = List.of();
    if (graph.isDoubled(this) || !cycle().isEmpty()) {
      stop(Figure.State.ERROR, null);
      kind = null;
      unit = null;
      return false;
    }
    if (unchecked || (circle() != null && circle().isUnchecked())) {
      unchecked = true;
      if (!kindsKnown(graph)) {
        stop(Figure.State.WAITING, null);
        kind = null;
        unit = null;
        if (circle() != null) {
          circle().uncheck();
        }
        return false;
      }
      if (!ready(graph)) {
        stop(Figure.State.WAITING, null);
        return false;
      }
      try {
        check(graph);
        unchecked = false;
      } catch (LineFailure e) {
        kind = null;
        unit = null;
        stop(Figure.State.ERROR, e.problem());
        if (circle() != null) {
          circle().uncheck();
        }
        return false;
      }
    }
    if (!isFed()) {
      stop(unfed(), null);
      return false;
    }
    return compute(graph);
  }

  /** What it is in while what it reads has no value. */
  Figure.State unfed() {
    return Figure.State.WAITING;
  }

  private boolean kindsKnown(ValueGraph graph) {
    return circle() != null
        ? graph.kindsKnown(circle().needs())
        : graph.kindsKnown(reads()) && graph.kindsKnown(seeks());
  }

  /** Whether all that it reads has a value. */
  private boolean isFed() {
    for (Slot read : feeds()) {
      if (!isFedBy(read)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a name has the value that this line asks of it. */
  boolean isFedBy(Slot read) {
    return read.isFresh()
        || (readsAtStages(read)
            && read.giver() instanceof ReadingNode reading
            && reading.isReadElsewhere());
  }

  /** Whether it asks for a reading at a stage that it names, and not for the present one. */
  boolean readsAtStages(Slot read) {
    return false;
  }

  /**
   * Before its check: finds what the lines of its circle mean, where it closes one.
   *
   * @return whether it can be checked
   */
  boolean ready(ValueGraph graph) {
    return true;
  }

  /** Finds its kind before its turn, if it has one. */
  void prepare(ValueGraph graph) {
    kind = null;
    unit = null;
    if (graph.isDoubled(this) || !cycle().isEmpty() || !kindsKnown(graph)) {
      return;
    }
    try {
      check(graph);
      unchecked = false;
    } catch (LineFailure e) {
      // its own turn says what is wrong
      kind = null;
      unit = null;
    }
  }

  private boolean compute(ValueGraph graph) {
    List<LineProblem> further = List.of();
    uncarried = uncarriedBelow();
    try {
      graph.evaluation().begin(name());
      value = evaluate(graph.evaluation());
      state = Figure.State.FRESH;
      problem = null;
    } catch (LineFailure e) {
      stop(e.state(), e.problem());
      further = e.further();
    }
    if (!uncarried.isEmpty() && !name().isEmpty()) {
      graph.evaluation().hint(restsOnUncarried());
    }
    String lost = state == Figure.State.FRESH ? givesUncarried() : "";
    if (!lost.isEmpty()) {
      uncarried = new TreeSet<>(uncarried);
      uncarried.add(lost);
    }
    List<LineProblem> noted = graph.evaluation().end();
    noted = further.isEmpty() ? noted : joined(further, noted);
    hints = checkHints.isEmpty() ? noted : joined(checkHints, noted);
    return settled();
  }

  private LineProblem restsOnUncarried() {
    return new LineProblem(
        new Span(1, 1, 2),
        "Its uncertainty is not whole: it rests on "
            + String.join(", ", uncarried)
            + ", whose own is not carried.",
        "No verdict is proven by it.",
        LineProblem.Severity.HINT);
  }

  private static List<LineProblem> joined(List<LineProblem> first, List<LineProblem> second) {
    List<LineProblem> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /** After an evaluation: settles what else the figure shows; whether that has changed. */
  boolean settled() {
    return false;
  }

  /** Leaves it without a value. */
  private void stop(Figure.State now, LineProblem why) {
    uncarried = Set.of();
    state = now;
    problem = why;
    value = null;
    stopped();
  }

  /** Forgets what else it had worked out. */
  void stopped() {}
}
