package endfloat.engine;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Scalar;
import endfloat.units.Unit;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/** The numbers of a column, eight bytes each; a missing one is NaN inside and absent outside. */
final class ColumnValues extends AbstractList<Value> implements RandomAccess {
  private static final double ROOT_2 = 1.4142135623730951;

  private final double[] si;

  private ColumnValues(double[] si) {
    this.si = si;
  }

  /** Values without uncertainty. */
  static List<Value> exact(double[] si) {
    return new ColumnValues(si);
  }

  /**
   * Values of which one figure u is known. As for an instrument of which no more is known, half the
   * variance is one error that all share, and half is each value's own.
   *
   * @param u standard uncertainty of one value [SI]
   */
  static List<Value> uncertain(String name, TablePart.Typed part, double[] si, double u) {
    String words = "u = " + part.column().u().strip() + " of the column";
    Root common = root("table:" + name, name, "half the variance of " + words + ", common to all");
    Gradient shared = Gradient.of(common, u / ROOT_2);
    List<Value> values = new ArrayList<>(si.length);
    for (int row = 0; row < si.length; row++) {
      if (Double.isNaN(si[row])) {
        values.add(Absent.ABSENT);
        continue;
      }
      String label = part.rows().labels().get(row).get(0);
      Root own =
          root("table:" + name + ":" + label, name, "half the variance of " + words + ", its own");
      values.add(new Scalar(si[row], Gradient.combine(1, shared, 1, Gradient.of(own, u / ROOT_2))));
    }
    return values;
  }

  /** Values taken with an instrument, each alone. */
  static List<Value> measured(
      String name, TablePart.Typed part, double[] si, InstrumentFigures stated, Unit unit) {
    List<Value> values = new ArrayList<>(si.length);
    for (int row = 0; row < si.length; row++) {
      if (Double.isNaN(si[row])) {
        values.add(Absent.ABSENT);
        continue;
      }
      String place = "table:" + name + ":" + part.rows().labels().get(row).get(0);
      Gradient gradient = new ReadingGradient(place, name, stated).of(si[row], unit);
      values.add(new Scalar(si[row], gradient));
    }
    return values;
  }

  private static Root root(String id, String subject, String words) {
    return new Root(id, Root.Kind.INPUT, subject, words, Double.POSITIVE_INFINITY);
  }

  @Override
  public Value get(int index) {
    double value = si[index];
    return Double.isNaN(value) ? Absent.ABSENT : Scalar.exact(value);
  }

  @Override
  public int size() {
    return si.length;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ColumnValues values
        ? Arrays.equals(si, values.si)
        : super.equals(other);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(si);
  }
}
