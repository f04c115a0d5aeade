package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Fields;
import endfloat.engine.Value.PartList;
import endfloat.engine.Value.PartValue;
import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.working.BuiltIn;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Terms that take or make a series, a list or a record as a whole. */
final class SeriesTerms {
  private SeriesTerms() {}

  /** {@code max(x, over: "plane")}, {@code mean(x, by: wear.batch)}, {@code quantile(x, 0.9)}. */
  record Reduce(
      Span span,
      BuiltIn function,
      Term series,
      List<String> over,
      List<String> axes,
      List<Term> by,
      Optional<Term> share)
      implements Term {
    @Override
    public Value evaluate(Frame frame) {
      if (!(series.evaluate(frame) instanceof Series whole)) {
        throw new IllegalStateException("no series to reduce at " + span);
      }
      double below = share.map(s -> ((Scalar) s.evaluate(frame)).si()).orElse(Double.NaN);
      if (!by.isEmpty()) {
        return SelectionTerms.byGroups(this, whole, group -> of(group, below), frame);
      }
      if (over.isEmpty() || over.size() == whole.axes().size()) {
        return reduced(whole.elements(), below, frame);
      }
      List<String> left = whole.axes().stream().filter(a -> !over.contains(a)).toList();
      Map<List<String>, List<Value>> groups = new LinkedHashMap<>();
      for (int i = 0; i < whole.size(); i++) {
        Map<String, String> at = whole.labelsAt(i);
        groups
            .computeIfAbsent(left.stream().map(at::get).toList(), l -> new ArrayList<>())
            .add(whole.elements().get(i));
      }
      List<Value> reduced = new ArrayList<>();
      groups.values().forEach(group -> reduced.add(reduced(group, below, frame)));
      return new Series(left, List.copyOf(groups.keySet()), reduced);
    }

    private Value reduced(List<Value> all, double below, Frame frame) {
      List<Value> present = present(all);
      if (present.size() < all.size()) {
        frame.hint(SelectionTerms.leftOut(span, all.size() - present.size(), all.size()));
      }
      return of(present, below);
    }

    private Value of(List<Value> values, double below) {
      return function == BuiltIn.QUANTILE
          ? Reductions.quantile(span, values, below)
          : Reductions.of(function, span, values);
    }
  }

  /** Those that are there: the list itself where all are. */
  static List<Value> present(List<Value> values) {
    boolean whole = true;
    for (Value value : values) {
      whole &= !(value instanceof Absent);
    }
    return whole ? values : values.stream().filter(v -> !(v instanceof Absent)).toList();
  }

  /** {@code pick(x, cylinder: 3, stage: "as found")}. */
  record Pick(Span span, Term series, Map<String, String> labels, Optional<String> stage)
      implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Value from = stage.isPresent() ? atStage(stage.get()) : series.evaluate(frame);
      if (labels.isEmpty() || !(from instanceof Series whole)) {
        return from;
      }
      List<String> left = whole.axes().stream().filter(a -> !labels.containsKey(a)).toList();
      List<List<String>> kept = new ArrayList<>();
      List<Value> elements = new ArrayList<>();
      for (int i = 0; i < whole.size(); i++) {
        Map<String, String> at =
            whole.axes().isEmpty() ? Map.of("place", Integer.toString(i + 1)) : whole.labelsAt(i);
        if (labels.entrySet().stream().allMatch(l -> l.getValue().equals(at.get(l.getKey())))) {
          kept.add(left.stream().map(at::get).toList());
          elements.add(whole.elements().get(i));
        }
      }
      if (elements.isEmpty()) {
        throw new LineFailure(
            span,
            "There is no value at "
                + Elementwise.station(List.copyOf(labels.keySet()), List.copyOf(labels.values()))
                + ".",
            "Pick a station that has been read.");
      }
      if (left.isEmpty() && elements.get(0) instanceof Absent) {
        throw new LineFailure(
            span, "This row has no value here.", "Pick another row, or enter the value.");
      }
      return left.isEmpty() ? elements.get(0) : new Series(left, kept, elements);
    }

    private Value atStage(String wanted) {
      if (!(series instanceof Named name)
          || !(name.slot().giver() instanceof ReadingNode reading)) {
        throw new LineFailure(
            span,
            "A stage can be picked of readings only.",
            "Pick the readings at that stage first and work on from there.");
      }
      return reading.atStage(wanted, span);
    }
  }

  /** One named result. */
  record Field(Span span, Term of, String field) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Value whole = of.evaluate(frame);
      if (whole instanceof Series series) {
        return series.withElements(series.elements().stream().map(this::get).toList());
      }
      return get(whole);
    }

    private Value get(Value value) {
      Value found = ((Fields) value).get(field);
      if (found instanceof Absent absent) {
        throw new LineFailure(
            span,
            absent.why().isEmpty()
                ? "There is no " + field + " here."
                : Refusals.sentence(absent.why()),
            absent.why().isEmpty() ? "See the reference page for when it is given." : "");
      }
      return found;
    }
  }

  /** {@code [a, b, c]}. */
  @SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
  record Listing(Span span, Term[] elements) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      List<Value> values = new ArrayList<>(elements.length);
      for (Term element : elements) {
        values.add(element.evaluate(frame));
      }
      if (!values.isEmpty() && values.get(0) instanceof PartValue) {
        return new PartList(values.stream().map(PartValue.class::cast).toList());
      }
      return Series.list(values);
    }
  }

  /**
   * A part from its components, or a list of parts from series of them.
   *
   * @param each whether a component is a series
   */
  @SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
  record Build(Span span, String part, Term[] components, boolean each) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Value[] values = new Value[components.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = components[i].evaluate(frame);
      }
      return each ? parts(values) : new PartValue(part, values);
    }

    private PartList parts(Value[] values) {
      Series built =
          (Series)
              Elementwise.map(
                  values, Planner.spans(components), (one, at) -> new PartValue(part, one));
      List<PartValue> parts = new ArrayList<>(built.size());
      for (int i = 0; i < built.size(); i++) {
        if (!(built.elements().get(i) instanceof PartValue one)) {
          throw new LineFailure(
              span,
              "The "
                  + part
                  + " at "
                  + Elementwise.station(built.axes(), built.labels().get(i))
                  + " is not whole.",
              "Enter what is missing, or choose the rows with only(...).");
        }
        parts.add(one);
      }
      return new PartList(parts);
    }
  }
}
