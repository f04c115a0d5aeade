package endfloat.picture;

/**
 * What a limit strip shows: a value with its expanded uncertainty against one limit or two. All
 * numbers are in the unit shown.
 *
 * @param value the value
 * @param expandedUncertainty half the length of the whisker; 0 where the value is exact
 * @param low the lower limit; null where there is none
 * @param high the upper limit; null where there is none
 * @param guard by how much the guarded rule draws the limits in; 0 for another rule
 * @param verdict gives the mark its shape
 * @param words the value with its uncertainty and unit as it is printed, for the text alternative
 * @param unit as it is printed; empty for a pure number
 * @param fresh the limits of a new part, where those that judge are wider; null for none
 */
public record LimitStrip(
    double value,
    double expandedUncertainty,
    Limit low,
    Limit high,
    double guard,
    Mark verdict,
    String words,
    String unit,
    Fresh fresh) {

  /**
   * What a new part may measure.
   *
   * @param low NaN where only the upper end is given
   * @param high NaN where only the lower end is given
   */
  public record Fresh(double low, double high) {}

  /** A strip without limits of a new part. */
  public LimitStrip(
      double value,
      double expandedUncertainty,
      Limit low,
      Limit high,
      double guard,
      Mark verdict,
      String words,
      String unit) {
    this(value, expandedUncertainty, low, high, guard, verdict, words, unit, null);
  }

  /**
   * One limit.
   *
   * @param at where it is
   * @param text the number as it was typed
   */
  public record Limit(double at, String text) {}

  /** The verdict, as a shape: nobody needs to see its colour. */
  public enum Mark {
    /** A dot. */
    WITHIN("within"),
    /** A hollow diamond. */
    NOT_PROVEN("not proven"),
    /** A triangle. */
    OUTSIDE("outside");

    private final String word;

    Mark(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public LimitStrip {
    require(Double.isFinite(value), "a value of " + value);
    require(
        Double.isFinite(expandedUncertainty) && expandedUncertainty >= 0,
        "an uncertainty of " + expandedUncertainty);
    require(Double.isFinite(guard) && guard >= 0, "a guard band of " + guard);
    require(low != null || high != null, "no limit at all");
    require(low == null || Double.isFinite(low.at()), "a lower limit that is no number");
    require(high == null || Double.isFinite(high.at()), "an upper limit that is no number");
    require(
        low == null || high == null || low.at() <= high.at(), "a lower limit above the upper one");
  }

  private static void require(boolean fits, String what) {
    if (!fits) {
      throw new IllegalArgumentException("a limit strip cannot show " + what);
    }
  }

  /** For the page, looks by class; the style sheet is {@code css/strip.css}. */
  public String svg() {
    return new LimitStripDrawing(this, Ink.PAGE).svg();
  }

  /**
   * For the page, with where the value was before: a hollow mark there, an arrow from it to the
   * value.
   */
  public String svgFrom(double before, Mark verdictBefore) {
    return new LimitStripDrawing(this, Ink.PAGE).from(before, verdictBefore).svg();
  }

  /** For a printed document, looks by presentation attributes. */
  public String svgForPrint() {
    return new LimitStripDrawing(this, LimitStripDrawing.PRINT).svg();
  }

  /** The strip in words: verdict, value, limits, guard band, and whether it is drawn off scale. */
  public String label() {
    StringBuilder label = new StringBuilder(verdict.word()).append(": ").append(words);
    label.append(" against ");
    if (low == null) {
      label.append("at most ").append(high.text());
    } else if (high == null) {
      label.append("at least ").append(low.text());
    } else {
      label.append(low.text()).append(" to ").append(high.text());
    }
    if (!unit.isEmpty()) {
      label.append(' ').append(unit);
    }
    if (guard > 0) {
      label.append(", limits drawn in by the uncertainty");
    }
    StripScale scale = new StripScale(this);
    if (scale.isBeyond(value)) {
      label.append(", drawn at the end of the strip");
    }
    return label.toString();
  }
}
