package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.engine.Value.Scalar;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A source with its inputs. Its uncertainty comes by differences: the source is run again with each
 * uncertain number moved, and believed where steps of three widths tell one story.
 */
record JavaTerm(String source, List<Input> inputs, List<Give> gives, CellRunner runner)
    implements SlowTerm {

  /** A name of the source and what it stands for; of a record of results what the source names. */
  record Input(String java, Kind kind) {
    static Input of(String java, Kind kind, String source) {
      if (!(kind instanceof Kind.Fields all)) {
        return new Input(java, kind);
      }
      Set<String> named = JavaNames.fieldsRead(source, java);
      Map<String, Kind> read = new LinkedHashMap<>();
      all.fields()
          .forEach(
              (name, field) -> {
                boolean isNamed = named.isEmpty() || named.contains(JavaNames.camel(name));
                if (isNamed && !(field instanceof Kind.Parts)) {
                  read.put(name, field);
                }
              });
      return new Input(java, new Kind.Fields(read));
    }

    /** So much of a value as the source reads: only that is tried with other numbers. */
    Value read(Value value) {
      if (!(value instanceof Value.Fields all) || !(kind instanceof Kind.Fields read)) {
        return value;
      }
      List<String> names = List.copyOf(read.fields().keySet());
      return new Value.Fields(names, names.stream().map(all::get).toList());
    }
  }

  @Override
  public Span span() {
    return RunNode.WHOLE;
  }

  @Override
  public String called() {
    return "java clause";
  }

  @Override
  public boolean runsElsewhere() {
    return true;
  }

  @Override
  public Value run(Value[] values, String identity, Frame frame, Progress progress) {
    List<CellRunner.Read> reads = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      reads.add(new CellRunner.Read(inputs.get(i).java(), inputs.get(i).kind(), values[i]));
    }
    JavaSlopes slopes = JavaSlopes.of(values, frame.correlations());
    CellRunner.Outcome outcome;
    try {
      outcome = runner.run(new CellRunner.Job(source, reads, gives, slopes.trials()), progress);
    } catch (CellRunner.CellFailureException e) {
      List<LineProblem> problems = e.problems();
      throw new LineFailure(problems.get(0)).with(problems.subList(1, problems.size()));
    }
    GivenNumbers numbers = GivenNumbers.of(gives, outcome.given());
    JavaSlopes.Found found = slopes.found(numbers, outcome.trials());
    List<Value> given = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    int[] next = {0};
    for (int i = 0; i < gives.size(); i++) {
      int first = next[0];
      given.add(value(gives.get(i), outcome.given().get(i), numbers.si(), found.gradients(), next));
      lost.add(lost(found, first, next[0]));
    }
    return new Value.Ran(given, outcome.shown(), found.carried(), lost, outcome.milliseconds());
  }

  /** Why the numbers from one to another have no uncertainty; empty where they have theirs. */
  private static String lost(JavaSlopes.Found found, int from, int to) {
    if (from == to) {
      return "";
    }
    for (int k = from; k < to; k++) {
      if (found.rough()[k]) {
        return "Uncertainty is not carried: it is no smooth function of what is read.";
      }
    }
    return found.lost();
  }

  private static Value value(
      Give give, CellRunner.Given given, double[] si, Gradient[] gradients, int[] next) {
    return switch (give.form()) {
      case QUANTITY -> new Scalar(si[next[0]], gradients[next[0]++]);
      case SERIES ->
          series(given.axes(), given.labels(), given.numbers().length, si, gradients, next);
      case TEXT, CHART -> new Value.Words(given.text());
      case TRUTH -> new Value.Truth(given.truth());
      case TABLE -> table(give, given, si, gradients, next);
    };
  }

  private static Value.Series series(
      List<String> axes,
      List<List<String>> labels,
      int count,
      double[] si,
      Gradient[] gradients,
      int[] next) {
    List<Value> elements = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      elements.add(new Scalar(si[next[0]], gradients[next[0]++]));
    }
    return axes.isEmpty() ? Value.Series.list(elements) : new Value.Series(axes, labels, elements);
  }

  private static Value table(
      Give give, CellRunner.Given given, double[] si, Gradient[] gradients, int[] next) {
    List<Value> columns = new ArrayList<>();
    for (int i = 0; i < give.columns().size(); i++) {
      int rows = given.columns().get(i).length;
      columns.add(series(List.of(), List.of(), rows, si, gradients, next));
    }
    return new Value.Fields(give.columns().stream().map(Give.Column::name).toList(), columns);
  }
}
