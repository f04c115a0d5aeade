package endfloat.engine;

import endfloat.catalogue.Parameter;
import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Series;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lists among the arguments of a calculation that are series over the same rows: they go together
 * row by row, by the labels of the rows. A row at which one of them has no value is left out of
 * all, which is said.
 */
final class PairedLists {
  private final CalculateTerm term;
  private final Value[] values;

  private PairedLists(CalculateTerm term, Value[] values) {
    this.term = term;
    this.values = values;
  }

  /** The arguments as the calculation takes them. */
  static Value[] of(CalculateTerm term, Value[] values, Frame frame) {
    PairedLists lists = new PairedLists(term, values.clone());
    Map<List<Object>, List<Integer>> alike = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      if (lists.isList(i)) {
        Series series = lists.series(i);
        alike.computeIfAbsent(List.of(series.axes(), series.size()), k -> new ArrayList<>()).add(i);
      }
    }
    if (alike.isEmpty()) {
      return values;
    }
    alike.values().forEach(together -> lists.pair(together, frame));
    return lists.values;
  }

  private boolean isList(int at) {
    Parameter.Form form = term.calculation().parameters().get(at).form();
    return values[at] instanceof Series series
        && !series.axes().isEmpty()
        && (form == Parameter.Form.LIST || form == Parameter.Form.INDEXED);
  }

  private Series series(int at) {
    return (Series) values[at];
  }

  private void pair(List<Integer> together, Frame frame) {
    Series first = series(together.get(0));
    boolean[] missing = new boolean[first.size()];
    int count = 0;
    for (int at : together) {
      int[] partners = Elementwise.partners(first, series(at), term.arguments()[at].span());
      if (partners != null) {
        values[at] = taken(series(at), partners);
      }
      List<Value> elements = series(at).elements();
      for (int row = 0; row < missing.length; row++) {
        if (!missing[row] && elements.get(row) instanceof Absent) {
          missing[row] = true;
          count++;
        }
      }
    }
    if (count == 0) {
      return;
    }
    frame.hint(SelectionTerms.leftOut(term.span(), count, missing.length));
    int[] kept = new int[missing.length - count];
    int next = 0;
    for (int row = 0; row < missing.length; row++) {
      if (!missing[row]) {
        kept[next++] = row;
      }
    }
    together.forEach(at -> values[at] = taken(series(at), kept));
  }

  private static Series taken(Series series, int[] rows) {
    List<List<String>> labels = new ArrayList<>(rows.length);
    List<Value> elements = new ArrayList<>(rows.length);
    for (int row : rows) {
      labels.add(series.labels().get(row));
      elements.add(series.elements().get(row));
    }
    return new Series(series.axes(), labels, elements);
  }
}
