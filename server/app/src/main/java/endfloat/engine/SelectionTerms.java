package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.engine.Value.Words;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Some of the rows: those at which a condition holds, or one group after another. */
final class SelectionTerms {
  private SelectionTerms() {}

  /** {@code only(x, where: condition)}. A row of which the condition has no value is left out. */
  record Only(Span span, Term series, Term condition) implements Term {
    @Override
    public Value evaluate(Frame frame) {
      Series whole = (Series) series.evaluate(frame);
      Series holds = (Series) condition.evaluate(frame);
      int[] partners = Elementwise.partners(whole, holds, condition.span());
      List<List<String>> labels = new ArrayList<>();
      List<Value> elements = new ArrayList<>();
      int unknown = 0;
      for (int i = 0; i < whole.size(); i++) {
        Value one = holds.elements().get(partners == null ? i : partners[i]);
        if (one instanceof Truth truth && truth.holds()) {
          labels.add(whole.labels().get(i));
          elements.add(whole.elements().get(i));
        }
        unknown += one instanceof Absent ? 1 : 0;
      }
      if (unknown > 0) {
        frame.hint(leftOut(condition.span(), unknown, whole.size()));
      }
      return new Series(whole.axes(), labels, elements);
    }
  }

  /** Says how many rows are not counted. */
  static LineProblem leftOut(Span span, int missing, int of) {
    return new LineProblem(
        span,
        missing + " of " + of + " rows have no value here and are left out.",
        "",
        LineProblem.Severity.HINT);
  }

  /**
   * One value for each group, the groups in the order of their texts, column after column. A group
   * that has too few values for one has none; a row that lacks a text is in no group.
   */
  static Series byGroups(
      SeriesTerms.Reduce of, Series whole, Function<List<Value>, Value> reduce, Frame frame) {
    List<Series> by = new ArrayList<>();
    List<int[]> partners = new ArrayList<>();
    for (Term column : of.by()) {
      Series groups = (Series) column.evaluate(frame);
      by.add(groups);
      partners.add(Elementwise.partners(whole, groups, column.span()));
    }
    Map<List<String>, List<Value>> groups = new TreeMap<>(SelectionTerms::inOrder);
    int missing = 0;
    for (int i = 0; i < whole.size(); i++) {
      List<String> group = group(by, partners, i);
      if (group != null) {
        groups.computeIfAbsent(group, g -> new ArrayList<>()).add(whole.elements().get(i));
      }
      missing += group == null || whole.elements().get(i) instanceof Absent ? 1 : 0;
    }
    if (missing > 0) {
      frame.hint(leftOut(of.span(), missing, whole.size()));
    }
    List<List<String>> labels = new ArrayList<>();
    List<Value> elements = new ArrayList<>();
    groups.forEach(
        (label, values) -> {
          labels.add(label);
          elements.add(reduced(SeriesTerms.present(values), reduce));
        });
    return new Series(of.axes(), labels, elements);
  }

  /** The texts of a row; null where it lacks one. */
  private static List<String> group(List<Series> by, List<int[]> partners, int row) {
    String[] texts = new String[by.size()];
    for (int c = 0; c < texts.length; c++) {
      int[] at = partners.get(c);
      Value group = by.get(c).elements().get(at == null ? row : at[row]);
      if (group instanceof Absent) {
        return null;
      }
      texts[c] = label(group);
    }
    return List.of(texts);
  }

  private static int inOrder(List<String> one, List<String> other) {
    int order = 0;
    for (int i = 0; order == 0 && i < one.size(); i++) {
      order = one.get(i).compareTo(other.get(i));
    }
    return order;
  }

  private static Value reduced(List<Value> values, Function<List<Value>, Value> reduce) {
    try {
      return reduce.apply(values);
    } catch (LineFailure e) {
      return new Absent(e.problem().message());
    }
  }

  private static String label(Value group) {
    return group instanceof Words words ? words.text() : ((Truth) group).holds() ? "yes" : "no";
  }
}
