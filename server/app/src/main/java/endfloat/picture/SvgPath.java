package endfloat.picture;

/** The strokes of one path, in absolute coordinates. */
public final class SvgPath {
  private final StringBuilder data = new StringBuilder();

  public SvgPath line(double x1, double y1, double x2, double y2) {
    return from(x1, y1).to(x2, y2);
  }

  /** Lifts the pen and sets it down. */
  public SvgPath from(double x, double y) {
    return step('M', x, y);
  }

  public SvgPath to(double x, double y) {
    if (data.length() == 0) {
      throw new IllegalStateException("the pen is not down yet");
    }
    return step('L', x, y);
  }

  /** Back to where the pen was set down. */
  public SvgPath close() {
    data.append('Z');
    return this;
  }

  /**
   * Strokes at 45 degrees that fill a rectangle.
   *
   * @param pitch between two strokes, along x
   */
  public SvgPath hatch(double left, double top, double right, double bottom, double pitch) {
    double height = bottom - top;
    for (double x = left - height + pitch; x < right; x += pitch) {
      double x1 = Math.max(x, left);
      double x2 = Math.min(x + height, right);
      if (x2 > x1) {
        line(x1, bottom - (x1 - x), x2, bottom - (x2 - x));
      }
    }
    return this;
  }

  private SvgPath step(char letter, double x, double y) {
    data.append(letter).append(SvgWriter.number(x)).append(' ').append(SvgWriter.number(y));
    return this;
  }

  boolean isEmpty() {
    return data.length() == 0;
  }

  String data() {
    return data.toString();
  }
}
