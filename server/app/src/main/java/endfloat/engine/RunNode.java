package endfloat.engine;

import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The run of a java clause. Its name has a point in it and no figure; what the clause gives is read
 * off it by {@link GivenNode}.
 */
final class RunNode extends Node {
  /** The clause as a whole: no column of any line. */
  static final Span WHOLE = new Span(1, 1, 1);

  private final Clause.Java source;
  private final GivesHead head;
  private final Set<String> namesRead;
  private List<Slot> used = List.of();
  private JavaTerm term;
  private CellRunner runner = CellRunner.NONE;
  private int attempt;

  RunNode(Clause.Java source, GivesHead head) {
    super(source.id(), 0);
    this.source = source;
    this.head = head;
    // in an order that an edit of the source leaves alone
    Set<String> names = new TreeSet<>(JavaNames.maybeRead(source.text()));
    head.gives().forEach(give -> names.remove(give.name()));
    this.namesRead = names;
  }

  static String nameOf(String clause) {
    return clause + ".run";
  }

  @Override
  String name() {
    return nameOf(source.id());
  }

  @Override
  Set<String> namesRead() {
    return namesRead;
  }

  /** Of the words of the source only those that the record has. */
  @Override
  List<Slot> feeds() {
    return Arrays.stream(reads()).filter(slot -> !slot.givers().isEmpty()).toList();
  }

  @Override
  void check(ValueGraph graph) {
    runner = graph.cellRunner();
    used = feeds();
    Map<String, Slot> byJava = new HashMap<>();
    List<JavaTerm.Input> inputs = new ArrayList<>();
    for (Slot slot : used) {
      String java = JavaNames.camel(slot.name());
      Slot other = byJava.putIfAbsent(java, slot);
      if (other != null) {
        throw new LineFailure(
            WHOLE,
            java + " may be " + other.name() + " or " + slot.name() + ".",
            "Rename one of them.");
      }
      if (slot.kind() instanceof Kind.Parts) {
        throw new LineFailure(
            WHOLE,
            slot.name() + " is a list of parts, which Java cannot read here.",
            "Give the number that is needed a line and a name of its own.");
      }
      inputs.add(JavaTerm.Input.of(java, slot.kind(), source.text()));
    }
    if (head.gives().isEmpty() && head.problems().isEmpty() && !source.text().isBlank()) {
      throw new LineFailure(
          WHOLE,
          "The clause gives nothing.",
          "Say above the source what it gives, such as crossing [degC].");
    }
    if (!head.problems().isEmpty()) {
      throw new LineFailure(WHOLE, "What the clause gives cannot be read.", "Correct its head.");
    }
    term = new JavaTerm(source.text(), inputs, head.gives(), runner);
    found(new Kind.Fields(Map.of()), null, List.of());
  }

  @Override
  Value evaluate(Frame frame) {
    if (source.text().isBlank()) {
      throw LineFailure.notYet(WHOLE, "There is no source yet.", "Write one.");
    }
    runner
        .refusal(source.text())
        .ifPresent(
            no -> {
              throw LineFailure.notYet(WHOLE, no.message(), no.wayOut());
            });
    Value[] values = new Value[used.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = term.inputs().get(i).read(frame.of(used.get(i)));
    }
    return frame.heavy(term, values, attempt + ":" + source.gives() + ":" + source.text());
  }

  /** It is to be run once more, whatever came of it before. */
  void again() {
    attempt++;
  }

  /** The names of the record that it reads. */
  List<String> readNames() {
    return feeds().stream().map(Slot::name).toList();
  }

  List<Give> gives() {
    return head.gives();
  }

  List<LineProblem> headProblems() {
    return head.problems();
  }
}
