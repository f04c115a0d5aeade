package endfloat.shafts;

import endfloat.definition.RefusedException;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Exact solution of a straight beam of several spans by Timoshenko's theory, or Euler's where the
 * shear stiffness is infinite.
 *
 * <p>Deflection y and load point the same way; slope is the turn of the section, θ = dy/dx − V/(k G
 * A); M is sagging, M = −E I dθ/dx; V = dM/dx. Each span is solved in closed form, so the values
 * are those of beam theory at every x, not only at nodes.
 */
final class BeamLine {
  private final List<Span> spans;
  private final double[] nodes;
  private final double[] movement;
  private final double[] shearAtStart;
  private final double[] momentAtStart;
  private final Support[] supports;

  /**
   * What holds a node.
   *
   * @param stiffness against deflection [N/m]; 0 free, infinite rigid
   * @param tiltStiffness against turning [N m/rad]; 0 free, infinite clamped
   * @param offset how far out of line the support stands, positive as deflection is [m]
   */
  record Support(double stiffness, double tiltStiffness, double offset) {
    static final Support NONE = new Support(0, 0, 0);

    Support(double stiffness, double tiltStiffness) {
      this(stiffness, tiltStiffness, 0);
    }
  }

  /**
   * @param spans from left to right
   * @param supports one a node, spans.size() + 1 of them
   * @param forces one a node [N]
   * @param couples one a node, positive in the sense that raises the slope [N m]
   * @throws RefusedException if the supports leave the beam free to move
   */
  BeamLine(List<Span> spans, List<Support> supports, double[] forces, double[] couples) {
    this.spans = List.copyOf(spans);
    this.supports = supports.toArray(new Support[0]);
    int count = spans.size() + 1;
    nodes = new double[count];
    for (int i = 0; i < spans.size(); i++) {
      nodes[i + 1] = nodes[i] + spans.get(i).length();
    }
    movement = solve(forces, couples);
    shearAtStart = new double[spans.size()];
    momentAtStart = new double[spans.size()];
    for (int i = 0; i < spans.size(); i++) {
      double[] end = endForces(i);
      shearAtStart[i] = -end[0];
      momentAtStart[i] = end[1];
    }
  }

  private double[] solve(double[] forces, double[] couples) {
    int size = 2 * nodes.length;
    RealMatrix stiffness = new Array2DRowRealMatrix(size, size);
    double[] load = new double[size];
    for (int i = 0; i < spans.size(); i++) {
      double[][] k = stiffnessOf(spans.get(i));
      double[] q = spans.get(i).endLoads();
      for (int r = 0; r < 4; r++) {
        load[2 * i + r] += q[r];
        for (int c = 0; c < 4; c++) {
          stiffness.addToEntry(2 * i + r, 2 * i + c, k[r][c]);
        }
      }
    }
    for (int n = 0; n < nodes.length; n++) {
      load[2 * n] += forces[n];
      load[2 * n + 1] += couples[n];
      hold(stiffness, load, 2 * n, supports[n].stiffness(), supports[n].offset());
      hold(stiffness, load, 2 * n + 1, supports[n].tiltStiffness(), 0);
    }
    return scaledSolution(stiffness, load);
  }

  private static void hold(
      RealMatrix stiffness, double[] load, int row, double spring, double place) {
    if (Double.isInfinite(spring)) {
      for (int c = 0; c < load.length; c++) {
        load[c] -= stiffness.getEntry(c, row) * place;
        stiffness.setEntry(row, c, 0);
        stiffness.setEntry(c, row, 0);
      }
      stiffness.setEntry(row, row, 1);
      load[row] = place;
    } else {
      stiffness.addToEntry(row, row, spring);
      load[row] += spring * place;
    }
  }

  /**
   * Rows of force and of moment differ by many powers of ten; scaling by the diagonal keeps the
   * singularity test honest.
   */
  private static double[] scaledSolution(RealMatrix stiffness, double[] load) {
    int size = load.length;
    double[] scale = new double[size];
    for (int i = 0; i < size; i++) {
      double diagonal = stiffness.getEntry(i, i);
      scale[i] = diagonal > 0 ? 1 / Math.sqrt(diagonal) : 1;
    }
    RealMatrix scaled = new Array2DRowRealMatrix(size, size);
    RealVector right = new ArrayRealVector(size);
    for (int r = 0; r < size; r++) {
      right.setEntry(r, load[r] * scale[r]);
      for (int c = 0; c < size; c++) {
        scaled.setEntry(r, c, stiffness.getEntry(r, c) * scale[r] * scale[c]);
      }
    }
    try {
      double[] solution = new LUDecomposition(scaled, 1e-13).getSolver().solve(right).toArray();
      for (int i = 0; i < size; i++) {
        solution[i] *= scale[i];
      }
      return solution;
    } catch (SingularMatrixException e) {
      throw new RefusedException(
          "The shaft is not held: it can move or turn freely. Give it two bearings, or one that also holds it against tilting.");
    }
  }

  private static double[][] stiffnessOf(Span span) {
    double l = span.length();
    double shearPart = 12 * span.bending() / (span.shear() * l * l);
    double k = span.bending() / ((1 + shearPart) * l * l * l);
    double a = 6 * l * k;
    double near = (4 + shearPart) * l * l * k;
    double far = (2 - shearPart) * l * l * k;
    return new double[][] {
      {12 * k, a, -12 * k, a}, {a, near, -a, far}, {-12 * k, -a, 12 * k, -a}, {a, far, -a, near}
    };
  }

  private double[] endForces(int i) {
    double[][] k = stiffnessOf(spans.get(i));
    double[] q = spans.get(i).endLoads();
    double[] end = new double[4];
    for (int r = 0; r < 4; r++) {
      for (int c = 0; c < 4; c++) {
        end[r] += k[r][c] * movement[2 * i + c];
      }
      end[r] -= q[r];
    }
    return end;
  }

  double length() {
    return nodes[nodes.length - 1];
  }

  double[] nodes() {
    return nodes.clone();
  }

  /** Force of the support at a node, positive against the load [N]. */
  double reaction(int node, double force) {
    return -supportBalance(node) + force;
  }

  private double supportBalance(int node) {
    double sum = 0;
    if (node < spans.size()) {
      sum += endForces(node)[0];
    }
    if (node > 0) {
      sum += endForces(node - 1)[2];
    }
    return sum;
  }

  /**
   * What the beam does at one place.
   *
   * @param rise dy/dx: the slope of the section and the shear's own
   */
  record State(double deflection, double slope, double moment, double shear, double rise) {}

  /**
   * @param x from the left end, inside the beam [m]; at a node the span to its right is meant
   */
  State at(double x) {
    int i = spanAt(x);
    return within(i, x - nodes[i]);
  }

  int spanAt(double x) {
    int i = 0;
    while (i < spans.size() - 1 && x >= nodes[i + 1]) {
      i++;
    }
    return i;
  }

  /** State at a distance from the left end of a span. */
  State within(int i, double s) {
    Span span = spans.get(i);
    double v = shearAtStart[i];
    double m = momentAtStart[i];
    double slopeFall = (m * s + v * s * s / 2 - span.loadIntegral(3, s)) / span.bending();
    double sag = (m * s * s / 2 + v * s * s * s / 6 - span.loadIntegral(4, s)) / span.bending();
    double sheared = span.isStiffInShear() ? 0 : (v * s - span.loadIntegral(2, s)) / span.shear();
    double slope = movement[2 * i + 1] - slopeFall;
    double shear = v - span.loadIntegral(1, s);
    return new State(
        movement[2 * i] + movement[2 * i + 1] * s - sag + sheared,
        slope,
        m + v * s - span.loadIntegral(2, s),
        shear,
        slope + (span.isStiffInShear() ? 0 : shear / span.shear()));
  }

  int spanCount() {
    return spans.size();
  }

  Span span(int i) {
    return spans.get(i);
  }
}
