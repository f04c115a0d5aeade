package endfloat.units;

/**
 * A library value with its own spread, such as a handbook expansion coefficient; or, where nobody
 * can vouch for one, only the reason why it is absent.
 *
 * @param value in SI; NaN where absent
 * @param standardUncertainty in SI, 0 or more; NaN where absent
 * @param whyAbsent what to tell who asks for an absent value, a sentence; empty where there is a
 *     value
 */
public record Uncertain(double value, double standardUncertainty, String whyAbsent) {

  public Uncertain(double value, double standardUncertainty) {
    this(value, standardUncertainty, "");
  }

  public static Uncertain absent(String why) {
    return new Uncertain(Double.NaN, Double.NaN, why);
  }

  /** Whether there is no value; whoever reads it is refused with {@link #whyAbsent}. */
  public boolean isAbsent() {
    return !whyAbsent.isEmpty();
  }
}
