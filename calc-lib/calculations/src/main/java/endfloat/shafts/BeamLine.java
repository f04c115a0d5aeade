package endfloat.shafts;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
 * A); M is sagging, M = −E I dθ/dx; V = dM/dx. The unknowns are the movements of supports and ends;
 * between them each {@link Bay} is solved in closed form, so the values are those of beam theory at
 * every x.
 */
final class BeamLine {
  private static final double SMALL_SLOPE = 0.1;
  private static final int SLOPES_LOOKED_AT = 8;

  private final List<Span> spans;
  private final double[] nodes;
  private final BeamState[] starts;
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
   * @throws RefusedException if the supports leave the beam free to move, or it bends too far
   */
  BeamLine(List<Span> spans, List<Support> supports, double[] forces, double[] couples) {
    this.spans = List.copyOf(spans);
    this.supports = supports.toArray(new Support[0]);
    nodes = new double[spans.size() + 1];
    for (int i = 0; i < spans.size(); i++) {
      nodes[i + 1] = nodes[i] + spans.get(i).length();
    }
    int[] ends = bayEnds();
    List<Bay> bays = new ArrayList<>();
    for (int b = 0; b + 1 < ends.length; b++) {
      bays.add(new Bay(ends[b], ends[b + 1] - 1, this.spans, forces, couples));
    }
    double[] movement = solve(bays, ends, forces, couples);
    starts = new BeamState[spans.size()];
    for (int b = 0; b < bays.size(); b++) {
      BeamState start =
          bays.get(b)
              .start(
                  movement[2 * b], movement[2 * b + 1], movement[2 * b + 2], movement[2 * b + 3]);
      bays.get(b).carried(start, starts);
    }
    holdSmallSlopes();
  }

  /** Small slopes are what the theory rests on; at a tenth it is half a per cent out. */
  private void holdSmallSlopes() {
    for (int i = 0; i < spans.size(); i++) {
      double step = spans.get(i).length() / SLOPES_LOOKED_AT;
      for (int j = 0; j <= SLOPES_LOOKED_AT; j++) {
        double slope = Math.abs(within(i, step * j).slope());
        if (!(slope <= SMALL_SLOPE)) {
          throw new RefusedException(
              String.format(
                  Locale.ROOT,
                  "It would bend to a slope of %.3g rad; beam theory holds for small slopes, up to"
                      + " %.1g rad. Are the loads and lengths in their units?",
                  slope,
                  SMALL_SLOPE));
        }
      }
    }
  }

  /** The ends of the beam and the nodes that something holds. */
  private int[] bayEnds() {
    List<Integer> ends = new ArrayList<>();
    for (int n = 0; n < nodes.length; n++) {
      Support support = supports[n];
      if (n == 0
          || n == nodes.length - 1
          || support.stiffness() != 0
          || support.tiltStiffness() != 0) {
        ends.add(n);
      }
    }
    return ends.stream().mapToInt(Integer::intValue).toArray();
  }

  private double[] solve(List<Bay> bays, int[] ends, double[] forces, double[] couples) {
    int size = 2 * ends.length;
    RealMatrix stiffness = new Array2DRowRealMatrix(size, size);
    double[] load = new double[size];
    for (int b = 0; b < bays.size(); b++) {
      Bay bay = bays.get(b);
      double[] held = bay.heldForces();
      for (int c = 0; c < 4; c++) {
        load[2 * b + c] -= held[c];
        double[] column =
            bay.endForces(c == 0 ? 1 : 0, c == 1 ? 1 : 0, c == 2 ? 1 : 0, c == 3 ? 1 : 0);
        for (int r = 0; r < 4; r++) {
          stiffness.addToEntry(2 * b + r, 2 * b + c, column[r]);
        }
      }
    }
    for (int e = 0; e < ends.length; e++) {
      load[2 * e] += forces[ends[e]];
      load[2 * e + 1] += couples[ends[e]];
      Support support = supports[ends[e]];
      hold(stiffness, load, 2 * e, support.stiffness(), support.offset());
      hold(stiffness, load, 2 * e + 1, support.tiltStiffness(), 0);
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

  double[] nodes() {
    return nodes.clone();
  }

  /** Force of the support at a node, positive against the load [N]. */
  double reaction(int node, double force) {
    double fromRight = node < spans.size() ? starts[node].shear() : 0;
    double fromLeft = node > 0 ? within(node - 1, spans.get(node - 1).length()).shear() : 0;
    return force - fromLeft + fromRight;
  }

  /**
   * @param x from the left end, inside the beam [m]; at a node the span to its right is meant
   */
  BeamState at(double x) {
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
  BeamState within(int i, double s) {
    return starts[i].along(spans.get(i), s);
  }

  /** dy/dx at a distance from the left end of a span. */
  double rise(int i, double s) {
    return within(i, s).rise(spans.get(i));
  }

  int spanCount() {
    return spans.size();
  }

  Span span(int i) {
    return spans.get(i);
  }
}
