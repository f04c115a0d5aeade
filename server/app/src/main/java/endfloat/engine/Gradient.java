package endfloat.engine;

import java.util.Arrays;

/**
 * How a value moves with each root, one standard uncertainty of the root at a time [SI]. Sparse,
 * immutable, in the order of the roots, with no entry that is exactly zero: so {@code x - x} has an
 * empty gradient and an uncertainty of exactly 0.
 */
public final class Gradient {
  public static final Gradient NONE = new Gradient(new Root[0], new double[0]);

  private final Root[] roots;
  private final double[] parts;

  private Gradient(Root[] roots, double[] parts) {
    this.roots = roots;
    this.parts = parts;
  }

  /** One root alone. */
  static Gradient of(Root root, double part) {
    return part == 0 ? NONE : new Gradient(new Root[] {root}, new double[] {part});
  }

  public boolean isEmpty() {
    return roots.length == 0;
  }

  public int size() {
    return roots.length;
  }

  public Root root(int at) {
    return roots[at];
  }

  public double part(int at) {
    return parts[at];
  }

  /** The part of one root; 0 where the value does not move with it. */
  public double part(Root root) {
    int at = Arrays.binarySearch(roots, root);
    return at < 0 ? 0 : parts[at];
  }

  Gradient without(Root root) {
    int at = Arrays.binarySearch(roots, root);
    if (at < 0) {
      return this;
    }
    Root[] left = new Root[roots.length - 1];
    double[] amounts = new double[left.length];
    System.arraycopy(roots, 0, left, 0, at);
    System.arraycopy(roots, at + 1, left, at, left.length - at);
    System.arraycopy(parts, 0, amounts, 0, at);
    System.arraycopy(parts, at + 1, amounts, at, left.length - at);
    return new Gradient(left, amounts);
  }

  Gradient times(double slope) {
    if (roots.length == 0 || slope == 0) {
      return NONE;
    }
    if (slope == 1) {
      return this;
    }
    double[] scaled = new double[parts.length];
    boolean vanished = false;
    for (int i = 0; i < parts.length; i++) {
      scaled[i] = slope * parts[i];
      vanished |= scaled[i] == 0;
    }
    return vanished ? dense(roots, scaled, roots.length) : new Gradient(roots, scaled);
  }

  /** {@code a x + b y}, the gradient of a function of two values with the slopes a and b. */
  static Gradient combine(double a, Gradient x, double b, Gradient y) {
    if (x.roots.length == 0 || a == 0) {
      return y.times(b);
    }
    if (y.roots.length == 0 || b == 0) {
      return x.times(a);
    }
    Root[] merged = new Root[x.roots.length + y.roots.length];
    double[] sums = new double[merged.length];
    int count = 0;
    int i = 0;
    int j = 0;
    while (i < x.roots.length || j < y.roots.length) {
      int order =
          i == x.roots.length ? 1 : j == y.roots.length ? -1 : x.roots[i].compareTo(y.roots[j]);
      double sum = order < 0 ? a * x.parts[i] : order > 0 ? b * y.parts[j] : 0;
      Root root = order <= 0 ? x.roots[i] : y.roots[j];
      if (order == 0) {
        sum = a * x.parts[i] + b * y.parts[j];
      }
      i += order <= 0 ? 1 : 0;
      j += order >= 0 ? 1 : 0;
      if (sum != 0) {
        merged[count] = root;
        sums[count++] = sum;
      }
    }
    return count == merged.length
        ? new Gradient(merged, sums)
        : new Gradient(Arrays.copyOf(merged, count), Arrays.copyOf(sums, count));
  }

  private static Gradient dense(Root[] roots, double[] parts, int length) {
    Root[] kept = new Root[length];
    double[] amounts = new double[length];
    int count = 0;
    for (int i = 0; i < length; i++) {
      if (parts[i] != 0) {
        kept[count] = roots[i];
        amounts[count++] = parts[i];
      }
    }
    return count == 0
        ? NONE
        : new Gradient(Arrays.copyOf(kept, count), Arrays.copyOf(amounts, count));
  }

  /** Sum of the squares of all parts: the variance where no roots are correlated. */
  double squares() {
    double sum = 0;
    for (double part : parts) {
      sum += part * part;
    }
    return sum;
  }

  /** Bit for bit the same, down to the words of each root. */
  @SuppressWarnings("ReferenceEquality") // the same object first, which it mostly is
  boolean sameAs(Gradient other) {
    if (this == other) {
      return true;
    }
    if (roots.length != other.roots.length || !Arrays.equals(parts, other.parts)) {
      return false;
    }
    for (int i = 0; i < roots.length; i++) {
      if (!roots[i].sameAs(other.roots[i])) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Gradient g && sameAs(g);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(roots) + Arrays.hashCode(parts);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < roots.length; i++) {
      text.append(i == 0 ? "" : ", ").append(roots[i]).append(' ').append(parts[i]);
    }
    return text.toString();
  }
}
