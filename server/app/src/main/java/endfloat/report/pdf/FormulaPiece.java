package endfloat.report.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a formula that has been set: its size and what is drawn, in em of the formula's own
 * type, from the left end of its line; up is positive.
 *
 * @param height above the line
 * @param depth below the line, positive downward
 */
record FormulaPiece(double width, double height, double depth, List<Mark> marks) {

  /** What is drawn. */
  sealed interface Mark permits Letters, Rule, Root {
    Mark moved(double right, double up);
  }

  /**
   * A text, its line from (x, y).
   *
   * @param size of its type to that of the formula
   * @param stretch how many times higher than it is by itself, as a bracket may be
   */
  record Letters(String text, double x, double y, double size, double stretch) implements Mark {
    @Override
    public Mark moved(double right, double up) {
      return new Letters(text, x + right, y + up, size, stretch);
    }
  }

  /** A stroke across, from its lower left corner. */
  record Rule(double x, double y, double width, double thickness) implements Mark {
    @Override
    public Mark moved(double right, double up) {
      return new Rule(x + right, y + up, width, thickness);
    }
  }

  /** The hook of a root, from its lower left corner to where its bar begins. */
  record Root(double x, double y, double width, double height, double thickness) implements Mark {
    @Override
    public Mark moved(double right, double up) {
      return new Root(x + right, y + up, width, height, thickness);
    }
  }

  static final FormulaPiece NOTHING = new FormulaPiece(0, 0, 0, List.of());

  static FormulaPiece space(double width) {
    return new FormulaPiece(width, 0, 0, List.of());
  }

  /** The same, put elsewhere; it takes no more room to the right. */
  FormulaPiece raised(double up) {
    return new FormulaPiece(
        width, height + up, depth - up, marks.stream().map(m -> m.moved(0, up)).toList());
  }

  /** The two side by side. */
  FormulaPiece then(FormulaPiece next) {
    return with(next, width, 0).wide(width + next.width);
  }

  /** Both, the other with its left end at (right, up); as wide as they reach. */
  FormulaPiece with(FormulaPiece other, double right, double up) {
    List<Mark> both = new ArrayList<>(marks);
    other.marks.forEach(mark -> both.add(mark.moved(right, up)));
    return new FormulaPiece(
        Math.max(width, right + other.width),
        Math.max(height, other.height + up),
        Math.max(depth, other.depth - up),
        both);
  }

  FormulaPiece wide(double newWidth) {
    return new FormulaPiece(newWidth, height, depth, marks);
  }

  FormulaPiece sized(double newHeight, double newDepth) {
    return new FormulaPiece(width, newHeight, newDepth, marks);
  }
}
