package endfloat.engine;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a name stands for: a number with its gradient, or several of them, a text, a truth. */
public sealed interface Value {

  /** Whether it is bit for bit the same, its gradient too. */
  default boolean sameAs(Value other) {
    return equals(other);
  }

  /**
   * A quantity or a temperature.
   *
   * @param si in coherent SI, a temperature in kelvin; always finite
   */
  record Scalar(double si, Gradient gradient) implements Value {
    public static Scalar exact(double si) {
      return new Scalar(si, Gradient.NONE);
    }

    /** Bits, so that -0 and 0 differ and nothing is lost unseen. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Scalar s
          && Double.doubleToLongBits(si) == Double.doubleToLongBits(s.si)
          && gradient.sameAs(s.gradient);
    }

    @Override
    public int hashCode() {
      return Double.hashCode(si) ^ gradient.hashCode();
    }
  }

  /** Yes or no. */
  record Truth(boolean holds) implements Value {}

  /** A text. */
  record Words(String text) implements Value {}

  /**
   * An argument or a field that has no value here.
   *
   * @param why a sentence for who asks for it; may be empty
   */
  record Absent(String why) implements Value {
    static final Absent ABSENT = new Absent("");
  }

  /**
   * Several values with stations.
   *
   * @param axes names of the axes; none for a plain list
   * @param labels for each element one label an axis
   */
  record Series(List<String> axes, List<List<String>> labels, List<Value> elements)
      implements Value {
    static Series list(List<Value> elements) {
      return new Series(
          List.of(), java.util.Collections.nCopies(elements.size(), List.of()), elements);
    }

    Series withElements(List<Value> others) {
      return new Series(axes, labels, others);
    }

    public int size() {
      return elements.size();
    }

    /** Labels of one element by axis, in the order of the axes. */
    public Map<String, String> labelsAt(int at) {
      Map<String, String> byAxis = new LinkedHashMap<>();
      for (int i = 0; i < axes.size(); i++) {
        byAxis.put(axes.get(i), labels.get(at).get(i));
      }
      return byAxis;
    }
  }

  /** Named results of one calculation, in its order. */
  record Fields(List<String> names, List<Value> values) implements Value {
    public Value get(String name) {
      int at = names.indexOf(name);
      return at < 0 ? Absent.ABSENT : values.get(at);
    }
  }

  /**
   * What the run of a java clause came to; no line reads it, but for those that give its values.
   *
   * @param given in the order of the head
   * @param carried in words how uncertainty was carried; empty where there was none
   * @param lost for each value given why it has none, in words; empty where it has its own
   */
  record Ran(
      List<Value> given,
      List<CellRunner.Shown> shown,
      String carried,
      List<String> lost,
      double milliseconds)
      implements Value {}

  /** A part built by its constructor, its components in order. */
  @SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
  record PartValue(String part, Value[] components) implements Value {
    @Override
    public boolean equals(Object other) {
      return other instanceof PartValue p
          && part.equals(p.part)
          && Arrays.equals(components, p.components);
    }

    @Override
    public int hashCode() {
      return 31 * part.hashCode() + Arrays.hashCode(components);
    }

    @Override
    public String toString() {
      return part + Arrays.toString(components);
    }
  }

  /** A list of parts. */
  record PartList(List<PartValue> parts) implements Value {}
}
